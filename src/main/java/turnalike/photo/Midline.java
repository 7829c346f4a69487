package turnalike.photo;

import java.util.Arrays;

/**
 * The straight line that runs midway between the two edges, where they are a round's: squares' edges are mirror images of one another only where a
 * flat or an arris faces the camera.
 *
 * @param from where it is told along the axis
 * @param to and up to where
 * @param level how far beside the axis it stands where X is 0
 * @param slope and how much farther for each X
 */
record Midline(double from, double to, double level, double slope) {
    /** Edges surer than this, pixels, count no more for the axis: wood and light stray by as much. */
    private static final double LEAST_DOUBT = 0.1;

    static Midline of(SquaredContour contour, KnownSquares squares) {
        double[][] middle = middle(contour, squares);
        double[] line = robust(middle, 0.5 / contour.sight().focal());
        return new Midline(middle[0][0], middle[0][middle[0].length - 1], line[0], line[1]);
    }

    double at(double along) {
        return level + slope * along;
    }

    /** Places along, how far the middle between the edges is from the axis there, how steep the edges are, and what a place counts. */
    private static double[][] middle(SquaredContour contour, KnownSquares squares) {
        double[][] left = rising(contour.points(true, 0), contour.doubts(true));
        double[][] right = rising(contour.points(false, 0), contour.doubts(false));
        double from = Math.max(left[0][0], right[0][0]);
        double to = Math.min(left[0][left[0].length - 1], right[0][right[0].length - 1]);
        int count = Math.max(20, (int) ((to - from) * contour.sight().focal()));
        double[][] middle = new double[4][count];
        double step = 1 / contour.sight().focal();
        Follower onLeft = new Follower(left);
        Follower onRight = new Follower(right);
        Follower ahead = new Follower(left);
        Follower behind = new Follower(left);
        Follower leftDoubts = new Follower(new double[][] {left[0], left[2]});
        Follower rightDoubts = new Follower(new double[][] {right[0], right[2]});
        for (int k = 0; k < count; k++) {
            double at = from + (to - from) * (0.03 + 0.94 * k / (count - 1));
            middle[0][k] = at;
            middle[1][k] = (onLeft.valueAt(at) + onRight.valueAt(at)) / 2;
            middle[2][k] = Math.abs(ahead.valueAt(at + step) - behind.valueAt(at - step)) / (2 * step);
            double one = leftDoubts.valueAt(at);
            double other = rightDoubts.valueAt(at);
            middle[3][k] = squares.holds(contour.sight(), at)
                    ? 0
                    : LEAST_DOUBT * LEAST_DOUBT / (LEAST_DOUBT * LEAST_DOUBT + one * one + other * other);
        }
        return middle;
    }

    /** Only points that go on: where an edge runs back, the outer of the two. */
    private static double[][] rising(double[][] points, double[] doubts) {
        int n = points[0].length;
        double[][] kept = new double[3][n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (count == 0 || points[0][i] > kept[0][count - 1]) {
                kept[0][count] = points[0][i];
                kept[1][count] = points[1][i];
                kept[2][count++] = doubts[i];
            }
        }
        return new double[][] {
            Arrays.copyOf(kept[0], count), Arrays.copyOf(kept[1], count), Arrays.copyOf(kept[2], count)
        };
    }

    /** Reads a rising chain at places that rise too, straight between its points. */
    private static final class Follower {
        private final double[] along;

        private final double[] across;

        private int low;

        Follower(double[][] chain) {
            along = chain[0];
            across = chain[1];
        }

        double valueAt(double at) {
            if (along.length < 2) {
                return across[0];
            }
            while (low < along.length - 2 && along[low + 1] <= at) {
                low++;
            }
            double share = Math.max(0, Math.min(1, (at - along[low]) / (along[low + 1] - along[low])));
            return across[low] + share * (across[low + 1] - across[low]);
        }
    }

    /** Of places that {@link #middle} gives. */
    private static double[] robust(double[][] middle, double noise) {
        double[] at = middle[0];
        double[] value = middle[1];
        double[] steep = middle[2];
        double[] line = {0, 0};
        for (int round = 0; round < 8; round++) {
            double[][] rows = new double[2][3];
            double scale = round < 2 ? 8 * noise : 2 * noise;
            for (int k = 0; k < at.length; k++) {
                double off = round == 0 ? 0 : (value[k] - line[0] - line[1] * at[k]) / (1 + 2 * steep[k]);
                double weight = middle[3][k] / square(1 + 2 * steep[k]) / square(1 + square(off / scale));
                rows[0][0] += weight;
                rows[0][1] += weight * at[k];
                rows[1][1] += weight * at[k] * at[k];
                rows[0][2] += weight * value[k];
                rows[1][2] += weight * value[k] * at[k];
            }
            rows[1][0] = rows[0][1];
            line = LeastSquares.solve(rows);
        }
        return line;
    }

    private static double square(double value) {
        return value * value;
    }
}
