package turnalike.trace.fit;

/** Solves the normal equations of a least-squares fit by Cholesky's method (any textbook of numerical mathematics; from memory). */
final class Cholesky {
    private Cholesky() {}

    /**
     * The solution of m·p = right; empty when m is as good as singular.
     *
     * @param m symmetric, its lower half is overwritten
     * @param right is overwritten
     * @param least a pivot below this share of its diagonal counts as none
     */
    static double[] solve(double[][] m, double[] right, double least) {
        int n = right.length;
        for (int i = 0; i < n; i++) {
            double diagonal = m[i][i];
            for (int j = 0; j <= i; j++) {
                double sum = m[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= m[i][k] * m[j][k];
                }
                if (i == j) {
                    if (!(sum > least * diagonal)) {
                        return new double[0];
                    }
                    m[i][i] = Math.sqrt(sum);
                } else {
                    m[i][j] = sum / m[j][j];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                right[i] -= m[i][k] * right[k];
            }
            right[i] /= m[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                right[i] -= m[k][i] * right[k];
            }
            right[i] /= m[i][i];
        }
        return right;
    }
}
