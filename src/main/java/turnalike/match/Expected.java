package turnalike.match;

import java.util.List;
import java.util.Optional;
import turnalike.frame.Moment;
import turnalike.frame.Spread;
import turnalike.frame.UnbalanceLaw;

/**
 * What the unbalance of a placed wheel is likely to be, with all that is known no better than it is.
 *
 * @param law how it scatters; its figures are worked out when they are asked for
 * @param shares what scatters, the scale first
 * @param next what would be gained by measuring on; empty when nothing would
 */
public record Expected(UnbalanceLaw law, List<Share> shares, Optional<Next> next) {
    /** What the scale's share is called. */
    public static final String SCALE = "scale";

    /**
     * One thing that scatters.
     *
     * @param from what it is, as users see it
     * @param rmsGMm the root of the mean square of what it adds to the unbalance, in g·mm
     * @param stated what is taken for one piece, and where that is from
     */
    public record Share(String from, double rmsGMm, String stated) {}

    /**
     * What to measure next.
     *
     * @param pieces whose balance points would gain most, the most first
     * @param expectedGMm the expected unbalance once all of them are measured and the set is placed anew, in g·mm
     */
    public record Next(List<String> pieces, double expectedGMm) {
        public Next {
            pieces = List.copyOf(pieces);
        }
    }

    public Expected {
        shares = List.copyOf(shares);
    }

    /** {@return the expected unbalance, the mean of its size, in g·mm} */
    public double meanGMm() {
        return law.expectedGMm();
    }

    /** {@return what the true one is smaller than with a probability of 5 %, in g·mm} */
    public double fromGMm() {
        return law.quantileGMm(0.05);
    }

    /** {@return what the true one is larger than with a probability of 5 %, in g·mm: nine of ten wheels lie between} */
    public double toGMm() {
        return law.quantileGMm(0.95);
    }

    /**
     * {@return when only the scale scatters}
     *
     * @param unbalance as placed
     * @param noiseFloorGMm what the scale alone can feign
     */
    public static Expected ofScale(Moment unbalance, double noiseFloorGMm) {
        double variance = noiseFloorGMm * noiseFloorGMm / 2;
        UnbalanceLaw law = new UnbalanceLaw(unbalance, new Spread(variance, 0, variance), Spread.NONE, 1);
        return new Expected(law, List.of(new Share(SCALE, noiseFloorGMm, "its step")), Optional.empty());
    }

    /** {@return the root of the mean square of all that scatters, in g·mm} */
    public double noiseGMm() {
        return Math.sqrt(
                shares.stream().mapToDouble(s -> s.rmsGMm() * s.rmsGMm()).sum());
    }

    /** {@return the same of all but the scale} */
    public double unseenGMm() {
        return Math.sqrt(shares.stream()
                .filter(share -> !share.from().equals(SCALE))
                .mapToDouble(s -> s.rmsGMm() * s.rmsGMm())
                .sum());
    }
}
