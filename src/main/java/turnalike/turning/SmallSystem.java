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
        double[][] columns = new double[n][1];
        for (int i = 0; i < n; i++) {
            columns[i][0] = right[i];
        }
        double[][] solved = solve(rows, columns);
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = solved[i][0];
        }
        return x;
    }

    /** What takes any right side to its solution; for equations that are solved for many of them. */
    static double[][] inverse(double[][] rows) {
        double[][] unit = new double[rows.length][rows.length];
        for (int i = 0; i < rows.length; i++) {
            unit[i][i] = 1;
        }
        return solve(rows, unit);
    }

    /** For several right sides, one a column. */
    private static double[][] solve(double[][] rows, double[][] right) {
        int n = rows.length;
        int all = n + right[0].length;
        double[] columnSize = columnSizes(rows);
        double[][] a = new double[n][all];
        for (int i = 0; i < n; i++) {
            double size = 0;
            for (int j = 0; j < n; j++) {
                a[i][j] = rows[i][j] / columnSize[j];
                size = Math.max(size, Math.abs(a[i][j]));
            }
            System.arraycopy(right[i], 0, a[i], n, all - n);
            for (int j = 0; j < all; j++) {
                a[i][j] /= size;
            }
        }
        eliminate(a);
        double[][] x = new double[n][all - n];
        for (int i = n - 1; i >= 0; i--) {
            for (int k = n; k < all; k++) {
                double sum = a[i][k];
                for (int j = i + 1; j < n; j++) {
                    sum -= a[i][j] * x[j][k - n];
                }
                x[i][k - n] = sum / a[i][i];
            }
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < x[i].length; k++) {
                x[i][k] /= columnSize[i];
            }
        }
        return x;
    }

    private static double[] columnSizes(double[][] rows) {
        double[] out = new double[rows.length];
        for (double[] row : rows) {
            for (int j = 0; j < row.length; j++) {
                out[j] = Math.max(out[j], Math.abs(row[j]));
            }
        }
        return out;
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
                for (int j = k; j < a[i].length; j++) {
                    a[i][j] -= share * a[k][j];
                }
            }
        }
    }
}
