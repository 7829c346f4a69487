package turnalike.settings;

/**
 * The greatest value of a linear form under linear limits: maximise c·x where A·x ≤ b and x ≥ 0, with no entry of b below zero, so that
 * x = 0 is where it starts. Exact but for rounding, about 1e-12 of the entries.
 *
 * <p>The simplex method (Dantzig, 1947; from memory) on a condensed tableau. After many pivots the rule of least indices, which cannot
 * go round in circles (Bland, 1977; from memory).
 */
final class LinearProgram {
    /** Entries are lengths of millimetres, small counts and weights: what is smaller than this is rounding. */
    private static final double NOISE = 1e-11;

    /** Pivots by the steepest column before the slow and sure rule takes over. */
    private static final int STEEPEST = 2_000;

    private static final int MOST = 200_000;

    private final double[][] rows;
    private final double[] limits;
    private final double[] worth;
    /** Which variable each row, then each column, stands for: x first, then what is left of each limit. */
    private final int[] rowOf;

    private final int[] columnOf;

    private LinearProgram(double[][] rows, double[] limits, double[] worth) {
        this.rows = rows;
        this.limits = limits;
        this.worth = worth;
        this.rowOf = new int[limits.length];
        this.columnOf = new int[worth.length];
        for (int column = 0; column < columnOf.length; column++) {
            columnOf[column] = column;
        }
        for (int row = 0; row < rowOf.length; row++) {
            rowOf[row] = columnOf.length + row;
        }
    }

    /**
     * The best x.
     *
     * @param rows A, used up
     * @param limits b, none below zero, used up
     * @param worth c, used up; there must be a greatest value
     */
    static double[] solve(double[][] rows, double[] limits, double[] worth) {
        LinearProgram program = new LinearProgram(rows, limits, worth);
        for (int pivots = 0; ; pivots++) {
            int column = program.entering(pivots < STEEPEST);
            if (column < 0) {
                return program.found();
            }
            if (pivots >= MOST) {
                throw new IllegalStateException("no end after %d pivots of %d rows".formatted(MOST, limits.length));
            }
            program.pivot(program.leaving(column), column);
        }
    }

    private int entering(boolean steepest) {
        int best = -1;
        for (int column = 0; column < worth.length; column++) {
            if (worth[column] > NOISE
                    && (best < 0 || (steepest ? worth[column] > worth[best] : columnOf[column] < columnOf[best]))) {
                best = column;
            }
        }
        return best;
    }

    private int leaving(int column) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < rows.length; row++) {
            if (rows[row][column] > NOISE) {
                double ratio = limits[row] / rows[row][column];
                boolean tie = best >= 0 && Math.abs(ratio - least) <= NOISE;
                if (tie ? rowOf[row] < rowOf[best] : ratio < least) {
                    best = row;
                    least = ratio;
                }
            }
        }
        if (best < 0) {
            throw new IllegalArgumentException("no limit to variable " + columnOf[column]);
        }
        return best;
    }

    private void pivot(int row, int column) {
        double[] pivotRow = rows[row];
        double pivot = pivotRow[column];
        for (int i = 0; i < pivotRow.length; i++) {
            pivotRow[i] /= pivot;
        }
        pivotRow[column] = 1 / pivot;
        limits[row] = Math.max(0, limits[row] / pivot);
        for (int other = 0; other < rows.length; other++) {
            double factor = rows[other][column];
            if (other != row && factor != 0) {
                clear(rows[other], pivotRow, factor, column, pivot);
                limits[other] = Math.max(0, limits[other] - factor * limits[row]);
            }
        }
        clear(worth, pivotRow, worth[column], column, pivot);
        int left = rowOf[row];
        rowOf[row] = columnOf[column];
        columnOf[column] = left;
    }

    private static void clear(double[] line, double[] pivotRow, double factor, int column, double pivot) {
        for (int i = 0; i < line.length; i++) {
            line[i] -= factor * pivotRow[i];
        }
        line[column] = -factor / pivot;
    }

    private double[] found() {
        double[] x = new double[columnOf.length];
        for (int row = 0; row < rowOf.length; row++) {
            if (rowOf[row] < x.length) {
                x[rowOf[row]] = limits[row];
            }
        }
        return x;
    }
}
