package turnalike.photo;

/** The parabola through points that passes nearest to them, y over x, by least squares, each counting alike. */
final class FittedBow {
    private final double origin;

    private final double unit;

    /** Sums of the powers of x up to the fourth, of y times those up to the second, and of y². */
    private final double[] powers = new double[5];

    private final double[] products = new double[3];

    private double squares;

    /**
     * Takes points near a place.
     *
     * @param origin a place where x begins
     * @param unit how far x goes from there, about: numbers near 1 keep the sums sharp
     */
    FittedBow(double origin, double unit) {
        this.origin = origin;
        this.unit = unit;
    }

    void add(double x, double y) {
        double power = 1;
        for (int k = 0; k < powers.length; k++) {
            powers[k] += power;
            if (k < products.length) {
                products[k] += power * y;
            }
            power *= (x - origin) / unit;
        }
        squares += y * y;
    }

    /**
     * The parabola itself.
     *
     * @param origin where its x begins
     * @param unit what its x counts in
     * @param level its y there
     * @param slope its slope there
     * @param bend what its square counts by
     * @param strays what the points stray by from it, root mean square, in y
     */
    record Bow(double origin, double unit, double level, double slope, double bend, double strays) {
        double at(double x) {
            double t = (x - origin) / unit;
            return level + t * (slope + t * bend);
        }

        double slopeAt(double x) {
            return (slope + 2 * bend * (x - origin) / unit) / unit;
        }
    }

    Bow bow() {
        double[][] rows = new double[products.length][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[] {powers[i], powers[i + 1], powers[i + 2], products[i]};
        }
        double[] u = LeastSquares.solve(rows);
        double told = u[0] * products[0] + u[1] * products[1] + u[2] * products[2];
        double left = Math.sqrt(Math.max(0, squares - told) / Math.max(1, powers[0]));
        return new Bow(origin, unit, u[0], u[1], u[2], left);
    }
}
