package turnalike.photo;

/** The few small systems of normal equations solved here; at most ten unknowns. */
final class LeastSquares {
    private LeastSquares() {}

    /**
     * Solves in place by elimination with row exchange.
     *
     * @param rows n rows of n + 1 numbers, the right side last; spoilt afterwards
     * @return the n unknowns; where the system says nothing of one, it is 0
     */
    static double[] solve(double[][] rows) {
        int n = rows.length;
        double largest = 0;
        for (double[] row : rows) {
            for (int j = 0; j < n; j++) {
                largest = Math.max(largest, Math.abs(row[j]));
            }
        }
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(rows[i][k]) > Math.abs(rows[best][k])) {
                    best = i;
                }
            }
            double[] held = rows[k];
            rows[k] = rows[best];
            rows[best] = held;
            if (Math.abs(rows[k][k]) <= largest * 1e-14) {
                rows[k][k] = 0;
                continue;
            }
            for (int i = 0; i < n; i++) {
                if (i != k) {
                    double factor = rows[i][k] / rows[k][k];
                    for (int j = k; j <= n; j++) {
                        rows[i][j] -= factor * rows[k][j];
                    }
                }
            }
        }
        double[] unknowns = new double[n];
        for (int i = 0; i < n; i++) {
            unknowns[i] = rows[i][i] == 0 ? 0 : rows[i][n] / rows[i][i];
        }
        return unknowns;
    }
}
