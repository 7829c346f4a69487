package turnalike.pieces.control;

/**
 * The factors of an individuals chart with moving ranges of two.
 *
 * @param d2 mean range of two over the standard deviation; above zero
 * @param d4 upper limit of the range over the mean range; at least one, else {@link IllegalArgumentException}
 */
public record ChartConstants(double d2, double d4) {
    /** The factors as tables print them, so that charts agree with other people's: d2 1.128, D4 3.267 (NIST/SEMATECH e-Handbook 6.3.2.2). */
    public static final ChartConstants PRINTED = new ChartConstants(1.128, 3.267);

    /** The exact factors of a normal distribution: d2 = 2/√π, D4 = 1 + 3·d3/d2 with d3 = √(2 - 4/π). */
    public static final ChartConstants EXACT =
            new ChartConstants(2 / Math.sqrt(Math.PI), 1 + 3 * Math.sqrt(2 - 4 / Math.PI) / (2 / Math.sqrt(Math.PI)));

    public ChartConstants {
        if (!(d2 > 0) || !(d4 >= 1) || !Double.isFinite(d2) || !Double.isFinite(d4)) {
            throw new IllegalArgumentException("chart factors must be above zero, were d2 %s, D4 %s".formatted(d2, d4));
        }
    }
}
