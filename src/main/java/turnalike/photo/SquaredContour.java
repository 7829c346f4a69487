package turnalike.photo;

import java.util.HashMap;
import java.util.Map;

/** The whole contour in squared coordinates, cut at its two ends into the two edges. */
final class SquaredContour {
    private static final int BEYOND = 24;

    private final double[] along;

    private final double[] across;

    private final int atStart;

    private final int atEnd;

    private final Sight sight;

    private final Map<Boolean, EdgeChain> edges = new HashMap<>();

    /**
     * Squares the points of a contour.
     *
     * @param sight where the axis lies
     * @param x of the contour's points, closed
     * @param y of them
     */
    SquaredContour(Sight sight, double[] x, double[] y) {
        this.sight = sight;
        int n = x.length;
        along = new double[n];
        across = new double[n];
        for (int i = 0; i < n; i++) {
            along[i] = sight.alongOf(x[i], y[i]);
            across[i] = sight.acrossOf(x[i], y[i]);
        }
        int least = -1;
        int most = -1;
        for (int i = 0; i < n; i++) {
            boolean crosses = across[i] * across[(i + 1) % n] <= 0;
            if (crosses && (least < 0 || along[i] < along[least])) {
                least = i;
            }
            if (crosses && (most < 0 || along[i] > along[most])) {
                most = i;
            }
        }
        atStart = least;
        atEnd = most;
    }

    /** Whether the axis runs through the piece from end to end. */
    boolean isWhole() {
        return atStart >= 0 && atEnd >= 0 && atStart != atEnd;
    }

    Sight sight() {
        return sight;
    }

    /** The edge on that side: the one whose points lie mostly above 0 across, or below. Followed when first asked for, and kept. */
    EdgeChain edge(boolean left) {
        return edges.computeIfAbsent(left, this::followed);
    }

    private EdgeChain followed(boolean left) {
        double[][] points = points(left, BEYOND);
        return new EdgeChain(points[0], points[1], BEYOND, points[0].length - BEYOND, sight.focal());
    }

    /** Along and across of one edge from start to end, with so many points more at each end. */
    double[][] points(boolean left, int beyond) {
        int n = along.length;
        boolean forward = (sum(1) > 0) == left;
        int steps = Math.floorMod(forward ? atEnd - atStart : atStart - atEnd, n);
        int way = forward ? 1 : -1;
        double[][] points = new double[2][steps + 1 + 2 * beyond];
        for (int k = 0; k < points[0].length; k++) {
            int i = Math.floorMod(atStart + way * (k - beyond), n);
            points[0][k] = along[i];
            points[1][k] = across[i];
        }
        return points;
    }

    /** Of the points from start to end in the order of the walk, what they sum to across. */
    private double sum(int way) {
        int n = along.length;
        double sum = 0;
        for (int i = atStart; i != atEnd; i = Math.floorMod(i + way, n)) {
            sum += across[i];
        }
        return sum;
    }
}
