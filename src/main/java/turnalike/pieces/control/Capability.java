package turnalike.pieces.control;

import java.util.OptionalDouble;

/**
 * How well the spread of the pieces fits between the tolerance's limits. Cp = (U - L)/6s, Cpu = (U - mean)/3s, Cpl = (mean - L)/3s, Cpk the
 * smaller of the two, k = |mid - mean| / ((U - L)/2), so that Cpk = (1 - k)Cp. Source: NIST/SEMATECH e-Handbook of Statistical Methods,
 * 6.1.6. With the deviation of the whole sample these are often called Pp and Ppk; with a chart's sigma, Cp and Cpk.
 *
 * @param potential Cp; empty with one limit
 * @param upper Cpu; empty without an upper limit; negative when the mean is beyond it
 * @param lower Cpl; likewise
 * @param worst Cpk
 * @param offCentre k, 0 when the mean is in the middle; empty with one limit
 */
public record Capability(
        OptionalDouble potential, OptionalDouble upper, OptionalDouble lower, double worst, OptionalDouble offCentre) {

    /** The least Cpk called capable (common practice, no source). */
    public static final double CAPABLE = 4.0 / 3;

    /**
     * The limits of the tolerance.
     *
     * @param lower the least value allowed, if there is one
     * @param upper the most; above the lower, and one of them present, else {@link IllegalArgumentException}
     */
    public record Limits(OptionalDouble lower, OptionalDouble upper) {
        public Limits {
            boolean both = lower.isPresent() && upper.isPresent();
            boolean crossed = both && lower.getAsDouble() >= upper.getAsDouble();
            if (crossed || (lower.isEmpty() && upper.isEmpty())) {
                throw new IllegalArgumentException("no limits: lower %s, upper %s".formatted(lower, upper));
            }
        }

        /**
         * {@return limits on both sides}
         *
         * @param lower the least value allowed
         * @param upper the most, above the lower, else {@link IllegalArgumentException}
         */
        public static Limits between(double lower, double upper) {
            return new Limits(OptionalDouble.of(lower), OptionalDouble.of(upper));
        }

        /**
         * {@return limits that lie as far below the target as above it}
         *
         * @param target the value aimed at
         * @param tolerance how far off is allowed; above zero, else {@link IllegalArgumentException}
         */
        public static Limits around(double target, double tolerance) {
            return between(target - tolerance, target + tolerance);
        }

        /**
         * {@return an upper limit alone, as for run-out}
         *
         * @param upper the most allowed
         */
        public static Limits upTo(double upper) {
            return new Limits(OptionalDouble.empty(), OptionalDouble.of(upper));
        }
    }

    /**
     * {@return the figures of pieces that spread so between limits, all three in one unit}
     *
     * @param mean of the values; finite, else {@link IllegalArgumentException}
     * @param deviation standard deviation; above zero and finite, else {@link IllegalArgumentException}
     * @param limits the tolerance's
     */
    public static Capability of(double mean, double deviation, Limits limits) {
        if (!Double.isFinite(mean) || !(deviation > 0) || !Double.isFinite(deviation)) {
            throw new IllegalArgumentException("no capability of mean %s with deviation %s".formatted(mean, deviation));
        }
        OptionalDouble upper = limits.upper().isPresent()
                ? OptionalDouble.of((limits.upper().getAsDouble() - mean) / (3 * deviation))
                : OptionalDouble.empty();
        OptionalDouble lower = limits.lower().isPresent()
                ? OptionalDouble.of((mean - limits.lower().getAsDouble()) / (3 * deviation))
                : OptionalDouble.empty();
        double worst = Math.min(upper.orElse(Double.POSITIVE_INFINITY), lower.orElse(Double.POSITIVE_INFINITY));
        if (upper.isEmpty() || lower.isEmpty()) {
            return new Capability(OptionalDouble.empty(), upper, lower, worst, OptionalDouble.empty());
        }
        double potential = (upper.getAsDouble() + lower.getAsDouble()) / 2;
        double offCentre = Math.abs(upper.getAsDouble() - lower.getAsDouble()) / (2 * potential);
        return new Capability(OptionalDouble.of(potential), upper, lower, worst, OptionalDouble.of(offCentre));
    }
}
