package turnalike.photo;

import java.util.Arrays;

/**
 * Normal equations of colours that change smoothly over a picture, by the terms 1, x, y, x², xy, y². Added up row by row, in which only powers of x
 * change, and multiplied by those of y at a row's end.
 */
final class GroundSums {
    private static final int TERMS = 6;

    /** Which power of x each term is, and which of y. */
    private static final int[] X = {0, 1, 0, 2, 1, 0};

    private static final int[] Y = {0, 0, 1, 0, 1, 2};

    /** Weights times powers of x and y, then each colour so weighed. */
    private final double[][] moments = new double[5][5];

    private final double[][][] colours = new double[3][3][3];

    private final double[] squares = new double[3];

    /** The same along the row at hand, by powers of x. */
    private final double[] rowMoments = new double[5];

    private final double[][] rowColours = new double[3][3];

    /**
     * Adds a pixel of the row at hand.
     *
     * @param x its place along the row
     * @param weight what it counts
     * @param off how far each colour is from the surface so far
     */
    void add(double x, double weight, double red, double green, double blue, double[] off) {
        double once = weight * x;
        double twice = once * x;
        rowMoments[0] += weight;
        rowMoments[1] += once;
        rowMoments[2] += twice;
        rowMoments[3] += twice * x;
        rowMoments[4] += twice * x * x;
        add(rowColours[0], red, weight, once, twice);
        add(rowColours[1], green, weight, once, twice);
        add(rowColours[2], blue, weight, once, twice);
        squares[0] += weight * off[0] * off[0];
        squares[1] += weight * off[1] * off[1];
        squares[2] += weight * off[2] * off[2];
    }

    private static void add(double[] sums, double colour, double weight, double once, double twice) {
        sums[0] += weight * colour;
        sums[1] += once * colour;
        sums[2] += twice * colour;
    }

    /** Ends a row that stands there. */
    void endRow(double y) {
        double power = 1;
        for (int b = 0; b < 5; b++) {
            for (int a = 0; a + b < 5; a++) {
                moments[a][b] += power * rowMoments[a];
            }
            for (int c = 0; c < 3; c++) {
                for (int a = 0; a + b < 3; a++) {
                    colours[c][a][b] += power * rowColours[c][a];
                }
            }
            power *= y;
        }
        Arrays.fill(rowMoments, 0);
        for (double[] sums : rowColours) {
            Arrays.fill(sums, 0);
        }
    }

    double weights() {
        return moments[0][0];
    }

    /** The mean square by which a colour is off, weighed. */
    double meanSquare(int c) {
        return squares[c] / moments[0][0];
    }

    /** The equations of one colour's terms, the right side last. */
    double[][] rows(int c) {
        double[][] rows = new double[TERMS][TERMS + 1];
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                rows[i][j] = moments[X[i] + X[j]][Y[i] + Y[j]];
            }
            rows[i][TERMS] = colours[c][X[i]][Y[i]];
        }
        return rows;
    }
}
