package turnalike.trace.drawn;

import java.util.List;

/** B-splines by de Boor's method, rational ones in homogeneous places (L. Piegl and W. Tiller, The NURBS Book; from memory). */
final class Splines {
    private static final int PER_SPAN = 64;
    private static final int HIGHEST_DEGREE = 11;

    private Splines() {}

    /**
     * Adds a spline's places; of one that is given by its fit points alone, these. One that cannot be is left out.
     *
     * @param knots as many as control points plus degree plus one
     */
    static void draw(
            List<Spot> out,
            int degree,
            double[] knots,
            double[] xs,
            double[] ys,
            double[] weights,
            double[] fitXs,
            double[] fitYs) {
        int n = xs.length;
        boolean sound = degree >= 1
                && degree <= HIGHEST_DEGREE
                && n > degree
                && ys.length == n
                && knots.length == n + degree + 1
                && isRising(knots);
        if (!sound) {
            for (int i = 0; i < fitXs.length && i < fitYs.length; i++) {
                out.add(Spot.knot(fitXs[i], fitYs[i]));
            }
            return;
        }
        boolean weighted = weights.length == n;
        for (int span = degree; span < n; span++) {
            if (knots[span + 1] > knots[span]) {
                for (int i = out.isEmpty() ? 0 : 1; i <= PER_SPAN; i++) {
                    double t = knots[span] + (knots[span + 1] - knots[span]) * i / PER_SPAN;
                    double[] p = at(t, span, degree, knots, xs, ys, weighted ? weights : new double[0]);
                    out.add(new Spot(p[0], p[1], i == 0 || i == PER_SPAN));
                }
            }
        }
    }

    private static boolean isRising(double[] knots) {
        for (int i = 1; i < knots.length; i++) {
            if (knots[i] < knots[i - 1]) {
                return false;
            }
        }
        return true;
    }

    private static double[] at(
            double t, int span, int degree, double[] knots, double[] xs, double[] ys, double[] weights) {
        double[][] d = new double[degree + 1][];
        for (int j = 0; j <= degree; j++) {
            int i = span - degree + j;
            double w = weights.length == 0 ? 1 : weights[i];
            d[j] = new double[] {xs[i] * w, ys[i] * w, w};
        }
        for (int r = 1; r <= degree; r++) {
            for (int j = degree; j >= r; j--) {
                double low = knots[span - degree + j];
                double high = knots[span + 1 + j - r];
                double share = high > low ? (t - low) / (high - low) : 0;
                for (int k = 0; k < 3; k++) {
                    d[j][k] = (1 - share) * d[j - 1][k] + share * d[j][k];
                }
            }
        }
        return new double[] {d[degree][0] / d[degree][2], d[degree][1] / d[degree][2]};
    }
}
