package turnalike.photo;

/** The normal law's share below a value, from a table. */
final class NormalShare {
    private static final int PER_UNIT = 64;

    private static final int REACH = 6;

    private static final double[] TABLE = new double[2 * REACH * PER_UNIT + 1];

    static {
        // The mean of the density over each step, by its ends and its middle, one, four and one: off by less than 1e-10
        // here.
        double step = 1.0 / PER_UNIT;
        double sum = 0;
        for (int i = 1; i < TABLE.length; i++) {
            double from = -REACH + (i - 1) * step;
            sum += step / 6 * (density(from) + 4 * density(from + step / 2) + density(from + step));
            TABLE[i] = sum;
        }
    }

    private NormalShare() {}

    private static double density(double at) {
        return Math.exp(-at * at / 2) / Math.sqrt(2 * Math.PI);
    }

    /** To about 1e-5: the table is read between its entries. */
    static double below(double value) {
        double at = (value + REACH) * PER_UNIT;
        if (at <= 0) {
            return 0;
        }
        if (at >= TABLE.length - 1) {
            return 1;
        }
        int i = (int) at;
        return TABLE[i] + (at - i) * (TABLE[i + 1] - TABLE[i]);
    }
}
