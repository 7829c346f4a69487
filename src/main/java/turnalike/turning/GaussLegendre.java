package turnalike.turning;

/**
 * Four Gauss–Legendre points on 0 to 1: a function given at them is integrated over the whole stretch, exactly to degree 7, and from its
 * start to each of the points, exactly to degree 3 (the integral of the cubic through the four values).
 */
final class GaussLegendre {
    static final int COUNT = 4;

    /** Roots of the Legendre polynomial of degree 4, moved to 0 to 1 (any handbook of numerical analysis; from memory). */
    private static final double[] AT = points();

    private static final double[] WHOLE = new double[COUNT];

    /** Shares in the integral from the start to each point, point by point; and in that from the end. */
    private static final double[] FROM_START = new double[COUNT * COUNT];

    private static final double[] FROM_END = new double[COUNT * COUNT];

    static {
        for (int j = 0; j < COUNT; j++) {
            double[] cubic = lagrange(j);
            WHOLE[j] = integral(cubic, 1);
            for (int i = 0; i < COUNT; i++) {
                FROM_START[i * COUNT + j] = integral(cubic, AT[i]);
                FROM_END[i * COUNT + j] = FROM_START[i * COUNT + j] - WHOLE[j];
            }
        }
    }

    private GaussLegendre() {}

    private static double[] points() {
        double root = 2.0 / 7 * Math.sqrt(6.0 / 5);
        double inner = Math.sqrt(3.0 / 7 - root) / 2;
        double outer = Math.sqrt(3.0 / 7 + root) / 2;
        return new double[] {0.5 - outer, 0.5 - inner, 0.5 + inner, 0.5 + outer};
    }

    /** Coefficients of the cubic that is 1 at point j and 0 at the others, lowest power first. */
    private static double[] lagrange(int j) {
        double[] out = {1, 0, 0, 0};
        int degree = 0;
        for (int k = 0; k < COUNT; k++) {
            if (k == j) {
                continue;
            }
            double scale = 1 / (AT[j] - AT[k]);
            for (int p = degree + 1; p >= 0; p--) {
                double shifted = p > 0 ? out[p - 1] : 0;
                out[p] = (shifted - AT[k] * (p <= degree ? out[p] : 0)) * scale;
            }
            degree++;
        }
        return out;
    }

    private static double integral(double[] coefficients, double to) {
        double sum = 0;
        for (int p = coefficients.length - 1; p >= 0; p--) {
            sum = (sum + coefficients[p] / (p + 1)) * to;
        }
        return sum;
    }

    /** Where point i lies, as a share of the stretch. */
    static double at(int i) {
        return AT[i];
    }

    /** The share of the value at point j in the integral over the whole stretch. */
    static double whole(int j) {
        return WHOLE[j];
    }

    /** The share of the value at point j in the integral from the start to point i. */
    static double upTo(int i, int j) {
        return FROM_START[i * COUNT + j];
    }

    /** The same from the end back to point i, or from the start. */
    static double upTo(boolean forward, int i, int j) {
        return (forward ? FROM_START : FROM_END)[i * COUNT + j];
    }

    /**
     * Integrates to each of the points, from the start or back from the end.
     *
     * @param first what stands there
     * @param length of the stretch
     * @param of the values, at four entries
     * @param at the first of these
     * @param out taken by point
     */
    static void upTo(boolean forward, double first, double length, double[] of, int at, double[] out) {
        double[] shares = forward ? FROM_START : FROM_END;
        double a = of[at] * length;
        double b = of[at + 1] * length;
        double c = of[at + 2] * length;
        double d = of[at + 3] * length;
        for (int i = 0, k = 0; i < COUNT; i++, k += COUNT) {
            out[i] = first + shares[k] * a + shares[k + 1] * b + shares[k + 2] * c + shares[k + 3] * d;
        }
    }

    /** The integral over a whole stretch of length one, of the values from an entry on. */
    static double whole(double[] of, int at) {
        return WHOLE[0] * of[at] + WHOLE[1] * of[at + 1] + WHOLE[2] * of[at + 2] + WHOLE[3] * of[at + 3];
    }
}
