package turnalike.turning;

/**
 * Four Gauss–Legendre points on 0 to 1: a function given at them is integrated over the whole stretch, exactly to degree 7, and from its
 * start to each of the points, exactly to degree 3 (the integral of the cubic through the four values).
 */
final class GaussLegendre {
    static final int COUNT = 4;

    /** Roots of the Legendre polynomial of degree 4, moved to 0 to 1 (any handbook of numerical analysis; from memory). */
    private static final double[] AT = points();

    private static final double[][] UP_TO = new double[COUNT][COUNT];
    private static final double[] WHOLE = new double[COUNT];

    static {
        for (int j = 0; j < COUNT; j++) {
            double[] cubic = lagrange(j);
            for (int i = 0; i < COUNT; i++) {
                UP_TO[i][j] = integral(cubic, AT[i]);
            }
            WHOLE[j] = integral(cubic, 1);
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
        return UP_TO[i][j];
    }
}
