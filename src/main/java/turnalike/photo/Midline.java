package turnalike.photo;

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
        Follower onLeft = Follower.of(contour, true);
        Follower onRight = Follower.of(contour, false);
        Follower ahead = onLeft.again();
        Follower behind = onLeft.again();
        double from = Math.max(onLeft.from(), onRight.from());
        double to = Math.min(onLeft.to(), onRight.to());
        int count = Math.max(20, (int) ((to - from) * contour.sight().focal()));
        double[][] middle = new double[4][count];
        double step = 1 / contour.sight().focal();
        for (int k = 0; k < count; k++) {
            double at = from + (to - from) * (0.03 + 0.94 * k / (count - 1));
            onLeft.goTo(at);
            onRight.goTo(at);
            ahead.goTo(at + step);
            behind.goTo(at - step);
            middle[0][k] = at;
            middle[1][k] = (onLeft.across() + onRight.across()) / 2;
            middle[2][k] = Math.abs(ahead.across() - behind.across()) / (2 * step);
            double one = onLeft.doubt();
            double other = onRight.doubt();
            middle[3][k] = squares.holds(contour.sight(), at)
                    ? 0
                    : LEAST_DOUBT * LEAST_DOUBT / (LEAST_DOUBT * LEAST_DOUBT + one * one + other * other);
        }
        return middle;
    }

    /** Reads an edge at places that rise, straight between its points; only of those that go on: where it runs back, the outer of the two. */
    private static final class Follower {
        private final double[] along;

        private final double[] across;

        private final double[] doubts;

        private final int count;

        private int low;

        private double share;

        private Follower(double[] along, double[] across, double[] doubts, int count) {
            this.along = along;
            this.across = across;
            this.doubts = doubts;
            this.count = count;
        }

        static Follower of(SquaredContour contour, boolean left) {
            double[][] points = contour.points(left);
            double[] seen = contour.doubts(left);
            double[] along = new double[seen.length];
            double[] across = new double[seen.length];
            double[] doubts = new double[seen.length];
            int count = 0;
            for (int i = 0; i < seen.length; i++) {
                if (count == 0 || points[0][i] > along[count - 1]) {
                    along[count] = points[0][i];
                    across[count] = points[1][i];
                    doubts[count++] = seen[i];
                }
            }
            return new Follower(along, across, doubts, count);
        }

        /** Another one on the same edge. */
        Follower again() {
            return new Follower(along, across, doubts, count);
        }

        double from() {
            return along[0];
        }

        double to() {
            return along[count - 1];
        }

        void goTo(double at) {
            if (count < 2) {
                return;
            }
            while (low < count - 2 && along[low + 1] <= at) {
                low++;
            }
            share = Math.max(0, Math.min(1, (at - along[low]) / (along[low + 1] - along[low])));
        }

        double across() {
            return between(across);
        }

        double doubt() {
            return between(doubts);
        }

        private double between(double[] values) {
            return count < 2 ? values[0] : values[low] + share * (values[low + 1] - values[low]);
        }
    }

    /** Of places that {@link #middle} gives. */
    private static double[] robust(double[][] middle, double noise) {
        double[] at = middle[0];
        double[] value = middle[1];
        double[] steep = new double[at.length];
        double[] counts = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            steep[k] = 1 + 2 * middle[2][k];
            counts[k] = middle[3][k] / square(steep[k]);
        }
        double[] line = {0, 0};
        for (int round = 0; round < 8; round++) {
            double scale = round < 2 ? 8 * noise : 2 * noise;
            double level = line[0];
            double slope = line[1];
            double w = 0;
            double wx = 0;
            double wxx = 0;
            double wy = 0;
            double wyx = 0;
            for (int k = 0; k < at.length; k++) {
                double off = round == 0 ? 0 : (value[k] - level - slope * at[k]) / steep[k];
                double weight = counts[k] / square(1 + square(off / scale));
                w += weight;
                wx += weight * at[k];
                wxx += weight * at[k] * at[k];
                wy += weight * value[k];
                wyx += weight * value[k] * at[k];
            }
            line = LeastSquares.solve(new double[][] {{w, wx, wy}, {wx, wxx, wyx}});
        }
        return line;
    }

    private static double square(double value) {
        return value * value;
    }
}
