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
    private static final int MOST_IDLE = 3_000;

    /** One column: its rows with their entries, and what one of it costs. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Column(int[] rows, double[] entries, double cost) {
        /** The sum of its entries, each by what that line has for its row. */
        double times(double[] line) {
            double sum = 0;
            for (int i = 0; i < rows.length; i++) {
                sum += line[rows[i]] * entries[i];
            }
            return sum;
        }
    }

    private final int rows;
    private final double penalty;
    private final List<Column> columns = new ArrayList<>();
    private final BitSet closed = new BitSet();
    private final SimplexBasis basis;
    private final double[] duals;

    MasterProgram(int rows, double penalty) {
        this.rows = rows;
        this.penalty = penalty;
        this.basis = new SimplexBasis(rows, columns);
        this.duals = new double[rows];
    }

    /** What one pivot costs, its share of the next refreshing of the inverse included, in units of some hundred steps. */
    int asks() {
        return 1 + (int) ((double) rows * rows / 10_000 * (1 + rows / (double) SimplexBasis.PIVOTS_TO_REFRESH));
    }

    void add(Column column) {
        columns.add(column);
    }

    /** Takes a column out of the choice; {@link #start} must follow. */
    void close(int column, boolean isClosed) {
        closed.set(column, isClosed);
    }

    /** Begins anew from no column at all. */
    void start(double[] rightSide) {
        basis.start(rightSide);
        price();
    }

    /** Goes on from the last answer with another right side; false when rounding forbids it and it must {@link #start}. */
    boolean restart(double[] rightSide) {
        basis.turnTo(rightSide);
        for (int steps = 0; steps < 4 * rows + 200; steps++) {
            int row = mostNegative();
            if (row < 0) {
                basis.clip();
                price();
                return true;
            }
            if (!dualStep(row)) {
                return false;
            }
        }
        return false;
    }

    private int mostNegative() {
        int out = -1;
        double least = -1e-8;
        for (int row = 0; row < rows; row++) {
            if (basis.value(row) < least) {
                least = basis.value(row);
                out = row;
            }
        }
        return out;
    }

    private boolean dualStep(int row) {
        price();
        double[] line = basis.line(row);
        int entering = Integer.MIN_VALUE;
        double leastRatio = Double.POSITIVE_INFINITY;
        double size = 0;
        for (int column = 0; column < columns.size(); column++) {
            if (closed.get(column) || basis.holds(column)) {
                continue;
            }
            double entry = columns.get(column).times(line);
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
                if (entry < -1e-7 && !basis.holds(own)) {
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
        basis.pivot(row, entering, basis.direction(entering));
        return true;
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
            double[] direction = basis.direction(entering);
            int row = leaving(direction);
            if (row < 0) {
                return false;
            }
            basis.pivot(row, entering, direction);
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
            if (!closed.get(column) && !basis.holds(column)) {
                double reduced = reduced(column);
                if (reduced < least) {
                    least = reduced;
                    out = column;
                }
            }
        }
        for (int row = 0; row < rows; row++) {
            if (duals[row] < least && !basis.holds(-1 - row)) {
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
                double ratio = basis.value(row) / direction[row];
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
        return columns.get(column).cost() - columns.get(column).times(duals);
    }

    private double cost(int own) {
        return own >= 0 ? columns.get(own).cost : own >= -rows ? 0 : penalty;
    }

    private void price() {
        Arrays.fill(duals, 0);
        for (int row = 0; row < rows; row++) {
            double cost = cost(basis.number(row));
            if (cost != 0) {
                double[] line = basis.line(row);
                for (int i = 0; i < rows; i++) {
                    duals[i] += cost * line[i];
                }
            }
        }
    }

    double value() {
        double sum = 0;
        for (int row = 0; row < rows; row++) {
            sum += cost(basis.number(row)) * basis.value(row);
        }
        return sum;
    }

    /** What rows lack in all: zero when the rows can be kept. */
    double lack() {
        double sum = 0;
        for (int row = 0; row < rows; row++) {
            sum += basis.number(row) < -rows ? basis.value(row) : 0;
        }
        return sum;
    }

    /** How much of each column there is. */
    double[] found() {
        double[] out = new double[columns.size()];
        for (int row = 0; row < rows; row++) {
            if (basis.number(row) >= 0) {
                out[basis.number(row)] = basis.value(row);
            }
        }
        return out;
    }
}
