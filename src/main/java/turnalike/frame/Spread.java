package turnalike.frame;

/**
 * How a moment scatters about its mean: the variances and the covariance of its two components, in (g·mm)².
 *
 * @param xx variance of the component toward 0°; not negative
 * @param xy covariance
 * @param yy variance of the component toward 90°; not negative
 */
public record Spread(double xx, double xy, double yy) {
    /** None at all. */
    public static final Spread NONE = new Spread(0, 0, 0);

    public Spread {
        if (!(xx >= 0) || !(yy >= 0) || !Double.isFinite(xx + xy + yy)) {
            throw new IllegalArgumentException("a spread has finite variances, was %s, %s, %s".formatted(xx, xy, yy));
        }
    }

    /**
     * {@return the scatter of a moment of that direction whose size alone scatters}
     *
     * @param cos of its direction, times whatever else scales the deviation
     * @param sin of its direction, likewise
     * @param deviationGMm standard deviation of the size, in g·mm
     */
    public static Spread along(double cos, double sin, double deviationGMm) {
        double variance = deviationGMm * deviationGMm;
        return new Spread(cos * cos * variance, cos * sin * variance, sin * sin * variance);
    }

    /**
     * {@return both together, of scatters that know nothing of one another}
     *
     * @param other the other
     */
    public Spread plus(Spread other) {
        return new Spread(xx + other.xx, xy + other.xy, yy + other.yy);
    }

    /**
     * {@return the same shape with its variances multiplied}
     *
     * @param factor not negative
     */
    public Spread times(double factor) {
        return new Spread(xx * factor, xy * factor, yy * factor);
    }

    /** {@return the root of the mean square of the whole deviation, both components together, in g·mm} */
    public double rmsGMm() {
        return Math.sqrt(xx + yy);
    }
}
