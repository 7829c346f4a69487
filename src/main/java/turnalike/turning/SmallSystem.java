package turnalike.turning;

/** A few linear equations, solved by elimination: rows and columns brought to one size first, since theirs are of different units. */
final class SmallSystem {
    private SmallSystem() {}

    /**
     * Solves rows · x = right. Both are left as they were.
     *
     * @param rows square, not singular
     */
    static double[] solve(double[][] rows, double[] right) {
        int n = right.length;
        double[] columnSize = new double[n];
        for (double[] row : rows) {
            for (int j = 0; j < n; j++) {
                columnSize[j] = Math.max(columnSize[j], Math.abs(row[j]));
            }
        }
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            double size = 0;
            for (int j = 0; j < n; j++) {
                a[i][j] = rows[i][j] / columnSize[j];
                size = Math.max(size, Math.abs(a[i][j]));
            }
            a[i][n] = right[i];
            for (int j = 0; j <= n; j++) {
                a[i][j] /= size;
            }
        }
        eliminate(a);
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        for (int j = 0; j < n; j++) {
            x[j] /= columnSize[j];
        }
        return x;
    }

    private static void eliminate(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            int pivot = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) {
                    pivot = i;
                }
            }
            double[] swap = a[k];
            a[k] = a[pivot];
            a[pivot] = swap;
            for (int i = k + 1; i < n; i++) {
                double share = a[i][k] / a[k][k];
                for (int j = k; j <= n; j++) {
                    a[i][j] -= share * a[k][j];
                }
            }
        }
    }
}
