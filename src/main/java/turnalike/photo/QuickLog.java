package turnalike.photo;

/**
 * Natural logarithms by a table of a thousand and three terms of the series beside it: off by less than 1e-13, and several times as quick as
 * Java's own, of which a picture takes a million.
 */
final class QuickLog {
    private static final int BITS = 10;

    private static final int SHIFT = 52 - BITS;

    private static final long ONE = Double.doubleToRawLongBits(1);

    private static final long FRACTION = (1L << 52) - 1;

    /** Of the middle of each thousandth from 1 to 2: the logarithm, then one over it. */
    private static final double[] TABLE = new double[2 << BITS];

    static {
        for (int i = 0; i < 1 << BITS; i++) {
            double middle = 1 + (i + 0.5) / (1 << BITS);
            TABLE[2 * i] = Math.log(middle);
            TABLE[2 * i + 1] = 1 / middle;
        }
    }

    private static final double LOG_OF_TWO = Math.log(2);

    private QuickLog() {}

    /**
     * The logarithm.
     *
     * @param value 1 and more, finite
     */
    static double of(double value) {
        long bits = Double.doubleToRawLongBits(value);
        int i = 2 * ((int) (bits >>> SHIFT) & ((1 << BITS) - 1));
        double beside = Double.longBitsToDouble((bits & FRACTION) | ONE) * TABLE[i + 1] - 1;
        double series = beside * (1 - beside * (0.5 - beside * (1.0 / 3)));
        return (int) ((bits - ONE) >> 52) * LOG_OF_TWO + TABLE[i] + series;
    }
}
