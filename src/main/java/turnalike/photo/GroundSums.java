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

    /**
     * Adds pixels of the row at hand; the farther one is from the surface so far, the less it counts. Its sums stand by themselves meanwhile: in arrays each
     * would be written anew for every pixel.
     *
     * @param planes the colours
     * @param shows 1 where a pixel counts; empty where all do
     * @param first the row's first pixel
     * @param x the places along it
     * @param step of how many pixels one is taken
     * @param surface along the row, by the power of x, of each colour
     * @param trust what an offset squared counts for doubt, of each colour
     */
    void addRow(float[][] planes, byte[] shows, int first, double[] x, int step, double[][] surface, double[] trust) {
        Along red = new Along(surface[0], squares[0]);
        Along green = new Along(surface[1], squares[1]);
        Along blue = new Along(surface[2], squares[2]);
        double w0 = 0;
        double w1 = 0;
        double w2 = 0;
        double w3 = 0;
        double w4 = 0;
        for (int k = 0; k < x.length; k += step) {
            if (shows.length > 0 && shows[first + k] == 0) {
                continue;
            }
            double right = x[k];
            double redOff = planes[0][first + k] - red.at(right);
            double greenOff = planes[1][first + k] - green.at(right);
            double blueOff = planes[2][first + k] - blue.at(right);
            double doubt =
                    1 + redOff * redOff * trust[0] + greenOff * greenOff * trust[1] + blueOff * blueOff * trust[2];
            double weight = 1 / (doubt * doubt);
            double once = weight * right;
            double twice = once * right;
            w0 += weight;
            w1 += once;
            w2 += twice;
            w3 += twice * right;
            w4 += twice * right * right;
            red.add(planes[0][first + k], weight, once, twice, redOff);
            green.add(planes[1][first + k], weight, once, twice, greenOff);
            blue.add(planes[2][first + k], weight, once, twice, blueOff);
        }
        rowMoments[0] += w0;
        rowMoments[1] += w1;
        rowMoments[2] += w2;
        rowMoments[3] += w3;
        rowMoments[4] += w4;
        squares[0] = red.endedIn(rowColours[0]);
        squares[1] = green.endedIn(rowColours[1]);
        squares[2] = blue.endedIn(rowColours[2]);
    }

    /** One colour along a row: the surface so far, and the row's sums. */
    private static final class Along {
        private final double level;

        private final double slope;

        private final double bend;

        private double even;

        private double once;

        private double twice;

        private double squares;

        Along(double[] surface, double squares) {
            level = surface[0];
            slope = surface[1];
            bend = surface[2];
            this.squares = squares;
        }

        double at(double x) {
            return level + x * (slope + x * bend);
        }

        void add(double colour, double weight, double byX, double bySquare, double off) {
            even += weight * colour;
            once += byX * colour;
            twice += bySquare * colour;
            squares += weight * off * off;
        }

        /** Puts the row's sums; the squares of all rows so far. */
        double endedIn(double[] sums) {
            sums[0] += even;
            sums[1] += once;
            sums[2] += twice;
            return squares;
        }
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
