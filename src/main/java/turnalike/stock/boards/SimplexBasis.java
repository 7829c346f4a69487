package turnalike.stock.boards;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import turnalike.stock.boards.MasterProgram.Column;

/**
 * Which columns of a {@link MasterProgram} are in use, one to a row, how much of each, and the dense inverse of their matrix. A column is
 * told by its number; {@code -1 - r} stands for what row r has too much, {@code -1 - rows - r} for what it lacks.
 */
final class SimplexBasis {
    static final int PIVOTS_TO_REFRESH = 150;

    private final int rows;
    private final List<Column> columns;
    private final BitSet basic = new BitSet();
    private final int[] numbers;
    private final double[][] inverse;
    private final double[] values;
    private double[] limits;
    private int pivots;

    SimplexBasis(int rows, List<Column> columns) {
        this.rows = rows;
        this.columns = columns;
        this.numbers = new int[rows];
        this.inverse = new double[rows][rows];
        this.values = new double[rows];
        this.limits = new double[rows];
    }

    /** No column at all: each row has too much or lacks what it is limited by. */
    void start(double[] rightSide) {
        limits = rightSide.clone();
        basic.clear();
        for (int row = 0; row < rows; row++) {
            boolean lacks = limits[row] > 0;
            numbers[row] = lacks ? -1 - rows - row : -1 - row;
            Arrays.fill(inverse[row], 0);
            inverse[row][row] = lacks ? 1 : -1;
            values[row] = Math.abs(limits[row]);
        }
    }

    /** The same columns for another right side; amounts may then be below zero. */
    void turnTo(double[] rightSide) {
        limits = rightSide.clone();
        refreshValues();
    }

    /** Which column stands in that row. */
    int number(int row) {
        return numbers[row];
    }

    /** How much of it there is. */
    double value(int row) {
        return values[row];
    }

    /** Its line of the inverse, not to be written to. */
    double[] line(int row) {
        return inverse[row];
    }

    boolean holds(int number) {
        if (number >= 0) {
            return basic.get(number);
        }
        for (int each : numbers) {
            if (each == number) {
                return true;
            }
        }
        return false;
    }

    /** Takes what rounding left below zero for zero. */
    void clip() {
        for (int row = 0; row < rows; row++) {
            values[row] = Math.max(0, values[row]);
        }
    }

    /** By how much each row's column becomes less for one more of that. */
    double[] direction(int entering) {
        double[] out = new double[rows];
        if (entering >= 0) {
            Column column = columns.get(entering);
            for (int row = 0; row < rows; row++) {
                out[row] = column.times(inverse[row]);
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

    /** Puts a column in the place of the row's, whose {@link #direction} it has. */
    void pivot(int row, int entering, double[] direction) {
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
        if (numbers[row] >= 0) {
            basic.clear(numbers[row]);
        }
        numbers[row] = entering;
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
            int own = numbers[at];
            if (own >= 0) {
                Column column = columns.get(own);
                for (int i = 0; i < column.rows().length; i++) {
                    whole[column.rows()[i]][at] = column.entries()[i];
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
}
