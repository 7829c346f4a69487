package turnalike.price;

import java.util.List;
import java.util.Optional;

/**
 * What the whole order takes of one stage.
 *
 * @param stage as the turner names it
 * @param done minutes timed
 * @param pieces timed, as far as the order wants
 * @param curve how it is learned, where enough pieces were timed one by one
 * @param total minutes of the whole order: as likely more as less where there is a curve, else at the mean of what was timed
 * @param range of the total, where there is a curve and something is still to be done
 */
public record StageForecast(
        String stage, double done, int pieces, Optional<LearningCurve> curve, double total, Optional<Range> range) {
    /** Of draws of what is still to come, in rising order. */
    static StageForecast of(
            String stage, List<Timing> timings, int wanted, double[] toCome, Optional<LearningCurve> curve) {
        double done = timings.stream().mapToDouble(Timing::minutes).sum();
        int pieces = timings.stream().mapToInt(Timing::pieces).sum();
        boolean open = pieces < wanted && curve.isPresent();
        Optional<Range> rest = open ? Optional.of(Range.of(toCome)) : Optional.empty();
        return new StageForecast(
                stage,
                done,
                pieces,
                curve,
                done + Range.middle(toCome),
                rest.map(range -> new Range(done + range.from(), done + range.to())));
    }

    /** {@return whether it is done once for the order, however many pieces there are} */
    public boolean isOnce() {
        return pieces == 0;
    }
}
