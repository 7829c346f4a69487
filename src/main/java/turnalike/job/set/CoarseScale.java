package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;
import turnalike.units.WeighingScale;

/** A scale whose one step is more than a set's masses may differ by: no weighing on it tells whether they do. */
public final class CoarseScale {
    private static final double ROUNDING = 1e-9;

    private CoarseScale() {}

    /**
     * {@return what to say of such a scale; empty where its step is small enough}
     *
     * @param scale what it shows
     * @param massPct how far a set's masses may lie apart, in per cent of their mean
     * @param piece what a piece weighs
     */
    public static Optional<String> words(WeighingScale scale, double massPct, Mass piece) {
        double step = 100 * scale.step().grams() / piece.grams();
        return step <= massPct * (1 + ROUNDING)
                ? Optional.empty()
                : Optional.of(
                        ("one step of the scale, %s, is %s %% of a piece, more than the %s %% that a set may differ by: such a"
                                        + " scale cannot tell; weigh on a finer one")
                                .formatted(
                                        scale.stepInWords(),
                                        PlainNumber.toFigures(step, 2),
                                        PlainNumber.toFigures(massPct, 3)));
    }

    /** The same by the mean of those that were weighed. */
    static Optional<String> words(SetTerms terms, List<Piece> pieces) {
        return pieces.stream().flatMap(each -> each.mass().stream()).mapToDouble(Mass::grams).average().stream()
                .boxed()
                .findFirst()
                .flatMap(mean -> words(terms.weighing(), terms.massPct(), Mass.ofGrams(mean)));
    }
}
