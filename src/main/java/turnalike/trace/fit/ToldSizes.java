package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Which sizes of a form the stations on it tell, and which are only what its form makes of stations farther off: of rows set where a
 * turner chose, a taper's far end may be where nobody measured. A size's standard deviation against a radius' follows from where the
 * stations stand (the inverse of the normal matrix of a linear fit).
 */
final class ToldSizes {
    /** A size less sure than so many radii measured there would be is carried on from elsewhere: a choice of ours. */
    private static final double MOST = 2.5;

    /** A station farther from the form than so many standard deviations, or this far, is another's. */
    private static final double SIGMAS = 6;

    private static final double LEAST_MM = 0.3;
    private static final double SAME_MM = 0.05;
    private static final double ALONG_MM = 1e-6;

    private ToldSizes() {}

    /** {@return for each part the indices of those of its sizes that no station tells; of a curve or a square none} */
    static List<List<Integer>> guessed(Data data, List<Part> parts) {
        List<boolean[]> told = new ArrayList<>();
        parts.forEach(part -> told.add(told(data, part)));
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 1; i < parts.size(); i++) {
                changed |= shared(parts.get(i - 1), told.get(i - 1), parts.get(i), told.get(i));
            }
        }
        List<List<Integer>> out = new ArrayList<>();
        for (boolean[] each : told) {
            List<Integer> guessed = new ArrayList<>();
            for (int k = 0; k < each.length; k++) {
                if (!each[k]) {
                    guessed.add(k);
                }
            }
            out.add(guessed);
        }
        return out;
    }

    /** Where two parts meet without a step, what tells of the one tells of the other; {@return whether that was news} */
    private static boolean shared(Part before, boolean[] toldBefore, Part after, boolean[] toldAfter) {
        if (toldBefore.length == 0 || toldAfter.length == 0) {
            return false;
        }
        int end = before.form().endSize();
        boolean meet = Math.abs(before.endRadius() - after.startRadius()) < SAME_MM;
        if (!meet || toldBefore[end] == toldAfter[0]) {
            return false;
        }
        toldBefore[end] = true;
        toldAfter[0] = true;
        return true;
    }

    private static boolean[] told(Data data, Part part) {
        if (part.isCurve() || part.isSquare()) {
            return new boolean[0];
        }
        int n = part.sizes().size();
        double[][] normal = new double[n][n];
        double[] weights = new double[3];
        for (int i = 0; i < data.size(); i++) {
            double u = (data.x[i] - part.fromMm()) / part.lengthMm();
            if (u * part.lengthMm() < -ALONG_MM || (u - 1) * part.lengthMm() > ALONG_MM) {
                continue;
            }
            part.form().weights(Math.max(0, Math.min(1, u)), weights);
            double radius = 0;
            for (int k = 0; k < n; k++) {
                radius += weights[k] * part.sizes().get(k);
            }
            if (Math.abs(radius - data.r[i]) > Math.max(LEAST_MM, SIGMAS * data.sigma)) {
                continue;
            }
            for (int k = 0; k < n; k++) {
                for (int m = 0; m < n; m++) {
                    normal[k][m] += weights[k] * weights[m];
                }
            }
        }
        boolean[] out = new boolean[n];
        for (int k = 0; k < n; k++) {
            double[] one = new double[n];
            one[k] = 1;
            double[] column = Cholesky.solve(copy(normal), one, 1e-9);
            out[k] = column.length > 0 && column[k] <= MOST * MOST;
        }
        // A singular matrix says nothing of which size is the untold one: each with a station of its own is told.
        return anyTold(out) ? out : alone(normal);
    }

    private static boolean anyTold(boolean[] told) {
        for (boolean each : told) {
            if (each) {
                return true;
            }
        }
        return false;
    }

    /** A size that alone makes up what some station shows. */
    private static boolean[] alone(double[][] normal) {
        boolean[] out = new boolean[normal.length];
        for (int k = 0; k < out.length; k++) {
            double others = 0;
            for (int m = 0; m < out.length; m++) {
                others += m == k ? 0 : Math.abs(normal[k][m]);
            }
            out[k] = normal[k][k] > 1 / (MOST * MOST) && others < 0.1 * normal[k][k];
        }
        return out;
    }

    private static double[][] copy(double[][] matrix) {
        double[][] out = new double[matrix.length][];
        for (int i = 0; i < out.length; i++) {
            out[i] = matrix[i].clone();
        }
        return out;
    }
}
