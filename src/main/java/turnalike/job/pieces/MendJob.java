package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.pieces.Likeness;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.CutRange;
import turnalike.pieces.mend.LightPieceOptions;
import turnalike.pieces.mend.Mend;
import turnalike.pieces.mend.MendOrder;
import turnalike.pieces.mend.MendPlan;
import turnalike.pieces.mend.Mendable;
import turnalike.pieces.mend.Removal;
import turnalike.solid.Sensitivity;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How one piece of a job is brought to weight.
 *
 * @param piece the piece
 * @param mass as weighed
 * @param target what it should weigh
 * @param plan what to do
 * @param lightWays what can be done about it in words, should it be light
 */
public record MendJob(Piece piece, Mass mass, Mass target, MendPlan plan, List<String> lightWays) {
    public MendJob {
        lightWays = List.copyOf(lightWays);
    }

    /** What is lacking where a piece cannot be mended. */
    public enum Lack {
        /** No piece has that label. */
        PIECE,
        /** The piece has not been weighed. */
        MASS,
        /** No target is given, and no other piece has been weighed to take one from. */
        TARGET
    }

    /**
     * What keeps the piece from being mended.
     *
     * @param pieces every piece of the job
     * @param label of the piece, to the letter
     * @param target what it should weigh; empty for the median of the other pieces
     * @return the first thing lacking; empty when it can be mended
     */
    public static Optional<Lack> lack(List<Piece> pieces, String label, Optional<Mass> target) {
        Optional<Piece> piece = find(pieces, label);
        if (piece.isEmpty()) {
            return Optional.of(Lack.PIECE);
        }
        if (piece.get().mass().isEmpty()) {
            return Optional.of(Lack.MASS);
        }
        return target.or(() -> median(pieces, label)).isEmpty() ? Optional.of(Lack.TARGET) : Optional.empty();
    }

    /**
     * The least visible way to the target. What the job's scale cannot tell from the target is left as it is; no cut goes beyond the
     * diameter tolerance, nor deeper than a tenth of its member's thinnest diameter (common practice, no source).
     *
     * @param job gives the pattern, the density and the tolerances
     * @param pieces every piece of the job
     * @param label of the piece, to the letter
     * @param target what it should weigh, above zero; empty for the median of the other pieces
     * @return what to do
     * @throws IllegalArgumentException when there is a {@link #lack}
     */
    public static MendJob of(Job job, List<Piece> pieces, String label, Optional<Mass> target) {
        Piece piece = find(pieces, label).orElseThrow(() -> new IllegalArgumentException("no piece " + label));
        Mass mass = piece.mass().orElseThrow(() -> new IllegalArgumentException("no mass of piece " + label));
        Mass aim = target.or(() -> median(pieces, label)).orElseThrow(() -> new IllegalArgumentException("no target"));
        // What the scale cannot tell apart is left; a cut, once made, meets the aim itself.
        MendOrder order = new MendOrder(
                label, mass, aim, job.tolerances().scale(), job.tolerances().diameter(), Length.ZERO, mendable(job));
        return new MendJob(piece, mass, aim, Mend.plan(order), lightWays(job, pieces, piece, aim));
    }

    /** A set of two at the least, of the frame's size where there is a frame; without a tolerance of mass every set passes. */
    private static List<String> lightWays(Job job, List<Piece> pieces, Piece piece, Mass aim) {
        double massPct = job.tolerances().massPct();
        if (!(massPct > 0 && massPct < 100)) {
            return List.of();
        }
        return LightPieceOptions.of(piece, pieces, Math.max(2, job.count()), massPct, aim)
                .words();
    }

    private static Optional<Piece> find(List<Piece> pieces, String label) {
        return pieces.stream().filter(piece -> piece.label().equals(label)).findFirst();
    }

    private static Optional<Mass> median(List<Piece> pieces, String label) {
        List<Piece> others =
                pieces.stream().filter(piece -> !piece.label().equals(label)).toList();
        return others.isEmpty()
                ? Optional.empty()
                : Likeness.reference(Measures.NONE, others).mass();
    }

    private static List<Mendable> mendable(Job job) {
        Density density = job.wood().density();
        List<Mendable> out = new ArrayList<>();
        for (PlacedMember placed : job.pattern().placed()) {
            Member member = placed.member();
            if (member.isShaped()) {
                out.add(new Mendable(
                        placed.number() - 1,
                        "%s between marks %d and %d"
                                .formatted(member.title(), mark(job, placed.start()), mark(job, placed.end())),
                        placed.start(),
                        placed.end(),
                        Removal.of(Sensitivity.of(placed.outline(), density)),
                        room(placed, job.tolerances().diameter()),
                        job.likeness().diameter()));
            }
        }
        return out;
    }

    /** Within the tolerance, but never deeper than a tenth of the member's thinnest diameter. */
    private static CutRange room(PlacedMember placed, Length tolerance) {
        Length tenth = placed.outline().smallestRadius().times(0.2);
        return CutRange.within(tolerance.compareTo(tenth) < 0 ? tolerance : tenth);
    }

    private static int mark(Job job, Length place) {
        return job.pattern()
                .markAt(place)
                .orElseThrow(() -> new IllegalStateException("no mark at %s mm".formatted(place.mm())));
    }

    /**
     * What to do, in words.
     *
     * @param units that lengths are told in; masses are in grams
     * @return the words, their decimal sign a point whatever the locale
     */
    public MendWords words(UnitSystem units) {
        return MendWords.of(this, units);
    }

    /** {@return how it was found, and what is assumed of the wood} */
    public List<Working> workings() {
        return List.of(
                Mend.working(),
                new Working(
                        "what a cut takes off",
                        "δ off a member's diameter takes ρ(π∫r dx · δ − πL/4 · δ²)",
                        Working.DERIVED,
                        "with the job's density; a piece of heavier wood loses a little more: weigh between cuts"));
    }
}
