package turnalike.turning;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Eigenvalues and vectors of a small symmetric matrix by Jacobi's rotations (1846; Golub &amp; Van Loan, Matrix Computations; from
 * memory). Chosen over a general solver because it keeps the small values of a matrix whose values differ by many powers of ten.
 */
final class JacobiEigen {
    private static final int MOST_SWEEPS = 60;

    private final double[][] a;
    private final double[][] turned;
    private final Integer[] order;

    private JacobiEigen(double[][] matrix) {
        int n = matrix.length;
        a = new double[n][];
        turned = new double[n][n];
        order = new Integer[n];
        for (int i = 0; i < n; i++) {
            a[i] = matrix[i].clone();
            turned[i][i] = 1;
            order[i] = i;
        }
    }

    static JacobiEigen of(double[][] symmetric) {
        JacobiEigen out = new JacobiEigen(symmetric);
        int n = symmetric.length;
        boolean more = true;
        for (int sweep = 0; sweep < MOST_SWEEPS && more; sweep++) {
            more = false;
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    more |= out.rotate(p, q);
                }
            }
        }
        Arrays.sort(out.order, Comparator.comparingDouble((Integer i) -> -out.a[i][i]));
        return out;
    }

    private boolean rotate(int p, int q) {
        double off = a[p][q];
        if (Math.abs(off) <= 1e-17 * Math.sqrt(Math.abs(a[p][p] * a[q][q]))) {
            return false;
        }
        double ratio = (a[q][q] - a[p][p]) / (2 * off);
        double t = (ratio >= 0 ? 1 : -1) / (Math.abs(ratio) + Math.hypot(1, ratio));
        double c = 1 / Math.hypot(1, t);
        double s = t * c;
        for (int k = 0; k < a.length; k++) {
            double kp = a[k][p];
            a[k][p] = c * kp - s * a[k][q];
            a[k][q] = s * kp + c * a[k][q];
        }
        for (int k = 0; k < a.length; k++) {
            double pk = a[p][k];
            a[p][k] = c * pk - s * a[q][k];
            a[q][k] = s * pk + c * a[q][k];
            double kp = turned[k][p];
            turned[k][p] = c * kp - s * turned[k][q];
            turned[k][q] = s * kp + c * turned[k][q];
        }
        a[p][q] = 0;
        a[q][p] = 0;
        return true;
    }

    /** The k-th largest value. */
    double value(int k) {
        return a[order[k]][order[k]];
    }

    /** Its vector, of length one. */
    double[] vector(int k) {
        double[] out = new double[a.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = turned[i][order[k]];
        }
        return out;
    }
}
