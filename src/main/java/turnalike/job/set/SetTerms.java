package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import turnalike.pattern.Pattern;
import turnalike.pieces.Likeness;
import turnalike.pieces.LikenessTolerances;
import turnalike.pieces.LikenessWeights;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Angle;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/**
 * What of a job decides its set, beside the frame.
 *
 * @param pattern what every piece copies
 * @param density of the wood
 * @param massPct the set's heaviest less its lightest, as a percentage of its mean
 * @param weighing what the scale shows, and the unit in which masses are told
 * @param tolerances in which likeness counts
 * @param weights how much each kind of measure counts to the eye
 * @param seat how far a seat's depth may be off
 * @param holeAngle how far a seat's hole may point beside its place
 * @param units in which lengths are told
 * @param shape the pattern's own measures, its mass and balance point left out
 * @param lengths which of several lengths a piece is made in
 * @param hand what of the set a person settled
 * @param glance whether only the set is wanted, without what its left-over pieces are good for, which takes most of the time
 */
public record SetTerms(
        Pattern pattern,
        Density density,
        double massPct,
        WeighingScale weighing,
        LikenessTolerances tolerances,
        LikenessWeights weights,
        Length seat,
        Angle holeAngle,
        UnitSystem units,
        Measures shape,
        LengthsOfPieces lengths,
        ByHand hand,
        boolean glance) {
    Mass scale() {
        return weighing.step();
    }

    /** What the left-over pieces are good for, where that is asked. */
    Optional<NextPieces> unlessGlance(Supplier<Optional<NextPieces>> next) {
        return glance ? Optional.empty() : next.get();
    }

    /** How alike those pieces are to the eye of this job. */
    Likeness likeness(List<Piece> pieces) {
        return Likeness.among(pieces, tolerances, weights);
    }
}
