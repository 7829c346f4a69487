package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The least value of a linear form under rows {@code a x >= b}, {@code x >= 0}, to which columns are added while it is solved: the revised
 * simplex method (Dantzig; from memory) with a dense inverse, primal when columns come and dual when the right side changes. A row that
 * nothing can fill is filled at a penalty, so that there always is an answer.
 */
final class MasterProgram {
    private static final double NOISE = 1e-9;
    private static final int PIVOTS_TO_REFRESH = 150;
    private static final int MOST_IDLE = 3_000;

    /** One column: its rows with their entries, and what one of it costs. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Column(int[] rows, double[] entries, double cost) {}

    private final int rows;
    private final double penalty;
    private final List<Column> columns = new ArrayList<>();
    private final BitSet closed = new BitSet();
    private final BitSet basic = new BitSet();
    /** A column's number; {@code -1 - r} for what row r has too much, {@code -1 - rows - r} for what it lacks. */
    private final int[] basis;

    private final double[][] inverse;
    private final double[] values;
    private final double[] duals;
    private double[] limits;
    private int pivots;

    MasterProgram(int rows, double penalty) {
        this.rows = rows;
        this.penalty = penalty;
        this.basis = new int[rows];
        this.inverse = new double[rows][rows];
        this.values = new double[rows];
        this.duals = new double[rows];
        this.limits = new double[rows];
    }

    /** What one pivot costs, its share of the next {@link #refresh} included, in units of some hundred steps. */
    int asks() {
        return 1 + (int) ((double) rows * rows / 10_000 * (1 + rows / (double) PIVOTS_TO_REFRESH));
    }

    int add(Column column) {
        columns.add(column);
        return columns.size() - 1;
    }

    int columns() {
        return columns.size();
    }

    /** Takes a column out of the choice; {@link #start} must follow. */
    void close(int column, boolean isClosed) {
        closed.set(column, isClosed);
    }

    /** Begins anew from no column at all. */
    void start(double[] rightSide) {
        limits = rightSide.clone();
        basic.clear();
        for (int row = 0; row < rows; row++) {
            boolean lacks = limits[row] > 0;
            basis[row] = lacks ? -1 - rows - row : -1 - row;
            Arrays.fill(inverse[row], 0);
            inverse[row][row] = lacks ? 1 : -1;
            values[row] = Math.abs(limits[row]);
        }
        price();
    }

    /** Goes on from the last answer with another right side; false when rounding forbids it and it must {@link #start}. */
    boolean restart(double[] rightSide) {
        limits = rightSide.clone();
        refreshValues();
        for (int steps = 0; steps < 4 * rows + 200; steps++) {
            int row = mostNegative();
            if (row < 0) {
                clip();
                price();
                return true;
            }
            if (!dualStep(row)) {
                return false;
            }
        }
        return false;
    }

    private void clip() {
        for (int row = 0; row < rows; row++) {
            values[row] = Math.max(0, values[row]);
        }
    }

    private int mostNegative() {
        int out = -1;
        double least = -1e-8;
        for (int row = 0; row < rows; row++) {
            if (values[row] < least) {
                least = values[row];
                out = row;
            }
        }
        return out;
    }

    private boolean dualStep(int row) {
        price();
        double[] line = inverse[row];
        int entering = Integer.MIN_VALUE;
        double leastRatio = Double.POSITIVE_INFINITY;
        double size = 0;
        for (int column = 0; column < columns.size(); column++) {
            if (closed.get(column) || basic.get(column)) {
                continue;
            }
            double entry = dot(line, columns.get(column));
            if (entry < -1e-7) {
                double ratio = Math.max(0, reduced(column)) / -entry;
                if (ratio < leastRatio - NOISE || (ratio < leastRatio + NOISE && -entry > size)) {
                    leastRatio = Math.min(ratio, leastRatio);
                    entering = column;
                    size = -entry;
                }
            }
        }
        for (int each = 0; each < rows; each++) {
            for (int own : new int[] {-1 - each, -1 - rows - each}) {
                double entry = own >= -rows ? -line[each] : line[each];
                if (entry < -1e-7 && !inBasis(own)) {
                    double ratio = Math.max(0, own >= -rows ? duals[each] : penalty - duals[each]) / -entry;
                    if (ratio < leastRatio - NOISE || (ratio < leastRatio + NOISE && -entry > size)) {
                        leastRatio = Math.min(ratio, leastRatio);
                        entering = own;
                        size = -entry;
                    }
                }
            }
        }
        if (entering == Integer.MIN_VALUE) {
            return false;
        }
        pivot(row, entering, direction(entering));
        return true;
    }

    private boolean inBasis(int own) {
        for (int each : basis) {
            if (each == own) {
                return true;
            }
        }
        return false;
    }

    /** More columns where they are worth it; how many were added, or {@link #ENOUGH}. */
    interface Pricing {
        /** The answer does not matter any more. */
        int ENOUGH = -1;

        int price(double[] duals);
    }

    /** What a search may still spend. */
    interface Meter {
        boolean spent();
    }

    /** Solves to the end; false when it was stopped before, and the value found is no bound. */
    boolean solve(Pricing pricing, Meter meter) {
        int idle = 0;
        double last = Double.POSITIVE_INFINITY;
        while (true) {
            int entering = entering();
            if (entering == Integer.MIN_VALUE) {
                if (pricing.price(duals) <= 0) {
                    return true;
                }
                continue;
            }
            if (meter.spent() || idle > MOST_IDLE) {
                return false;
            }
            double[] direction = direction(entering);
            int row = leaving(direction);
            if (row < 0) {
                return false;
            }
            pivot(row, entering, direction);
            price();
            double value = value();
            idle = value < last - NOISE ? 0 : idle + 1;
            last = Math.min(value, last);
        }
    }

    private int entering() {
        int out = Integer.MIN_VALUE;
        double least = -NOISE * Math.max(1, penalty / 1000);
        for (int column = 0; column < columns.size(); column++) {
            if (!closed.get(column) && !basic.get(column)) {
                double reduced = reduced(column);
                if (reduced < least) {
                    least = reduced;
                    out = column;
                }
            }
        }
        for (int row = 0; row < rows; row++) {
            if (duals[row] < least && !inBasis(-1 - row)) {
                least = duals[row];
                out = -1 - row;
            }
        }
        return out;
    }

    private int leaving(double[] direction) {
        int out = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < rows; row++) {
            if (direction[row] > 1e-8) {
                double ratio = values[row] / direction[row];
                boolean tie = out >= 0 && Math.abs(ratio - least) < 1e-12;
                if (tie ? direction[row] > direction[out] : ratio < least) {
                    least = ratio;
                    out = row;
                }
            }
        }
        return out;
    }

    double reduced(int column) {
        return columns.get(column).cost - dot(duals, columns.get(column));
    }

    private static double dot(double[] line, Column column) {
        double sum = 0;
        for (int i = 0; i < column.rows.length; i++) {
            sum += line[column.rows[i]] * column.entries[i];
        }
        return sum;
    }

    private double[] direction(int entering) {
        double[] out = new double[rows];
        if (entering >= 0) {
            Column column = columns.get(entering);
            for (int row = 0; row < rows; row++) {
                out[row] = dot(inverse[row], column);
            }
        } else {
            boolean surplus = entering >= -rows;
            int own = surplus ? -1 - entering : -1 - rows - entering;
            for (int row = 0; row < rows; row++) {
                out[row] = surplus ? -inverse[row][own] : inverse[row][own];
            }
        }
        return out;
    }

    private void pivot(int row, int entering, double[] direction) {
        double[] line = inverse[row];
        double by = direction[row];
        for (int i = 0; i < rows; i++) {
            line[i] /= by;
        }
        values[row] /= by;
        for (int other = 0; other < rows; other++) {
            double factor = direction[other];
            if (other != row && factor != 0) {
                double[] otherLine = inverse[other];
                for (int i = 0; i < rows; i++) {
                    otherLine[i] -= factor * line[i];
                }
                values[other] -= factor * values[row];
                if (values[other] < 0 && values[other] > -1e-10) {
                    values[other] = 0;
                }
            }
        }
        if (basis[row] >= 0) {
            basic.clear(basis[row]);
        }
        basis[row] = entering;
        if (entering >= 0) {
            basic.set(entering);
        }
        if (++pivots % PIVOTS_TO_REFRESH == 0) {
            refresh();
        }
    }

    /** The inverse anew from the basis, by Gauss and Jordan, against the rounding that pivots collect. */
    private void refresh() {
        double[][] whole = new double[rows][2 * rows];
        for (int at = 0; at < rows; at++) {
            int own = basis[at];
            if (own >= 0) {
                Column column = columns.get(own);
                for (int i = 0; i < column.rows.length; i++) {
                    whole[column.rows[i]][at] = column.entries[i];
                }
            } else if (own >= -rows) {
                whole[-1 - own][at] = -1;
            } else {
                whole[-1 - rows - own][at] = 1;
            }
            whole[at][rows + at] = 1;
        }
        for (int column = 0; column < rows; column++) {
            int best = column;
            for (int row = column + 1; row < rows; row++) {
                if (Math.abs(whole[row][column]) > Math.abs(whole[best][column])) {
                    best = row;
                }
            }
            if (Math.abs(whole[best][column]) < 1e-10) {
                return; // nearly singular: the inverse that the pivots carried is the better one
            }
            double[] swap = whole[best];
            whole[best] = whole[column];
            whole[column] = swap;
            clear(whole, column);
        }
        for (int row = 0; row < rows; row++) {
            System.arraycopy(whole[row], rows, inverse[row], 0, rows);
        }
        refreshValues();
    }

    private void clear(double[][] whole, int column) {
        double[] line = whole[column];
        double by = line[column];
        for (int i = column; i < 2 * rows; i++) {
            line[i] /= by;
        }
        for (int row = 0; row < rows; row++) {
            double factor = whole[row][column];
            if (row != column && factor != 0) {
                for (int i = column; i < 2 * rows; i++) {
                    whole[row][i] -= factor * line[i];
                }
            }
        }
    }

    private void refreshValues() {
        for (int row = 0; row < rows; row++) {
            double sum = 0;
            for (int i = 0; i < rows; i++) {
                sum += inverse[row][i] * limits[i];
            }
            values[row] = sum;
        }
    }

    private double cost(int own) {
        return own >= 0 ? columns.get(own).cost : own >= -rows ? 0 : penalty;
    }

    private void price() {
        Arrays.fill(duals, 0);
        for (int row = 0; row < rows; row++) {
            double cost = cost(basis[row]);
            if (cost != 0) {
                for (int i = 0; i < rows; i++) {
                    duals[i] += cost * inverse[row][i];
                }
            }
        }
    }

    double value() {
        double sum = 0;
        for (int row = 0; row < rows; row++) {
            sum += cost(basis[row]) * values[row];
        }
        return sum;
    }

    /** What rows lack in all: zero when the rows can be kept. */
    double lack() {
        double sum = 0;
        for (int row = 0; row < rows; row++) {
            sum += basis[row] < -rows ? values[row] : 0;
        }
        return sum;
    }

    /** How much of each column there is. */
    double[] found() {
        double[] out = new double[columns.size()];
        for (int row = 0; row < rows; row++) {
            if (basis[row] >= 0) {
                out[basis[row]] = values[row];
            }
        }
        return out;
    }
}
