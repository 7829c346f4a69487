package turnalike.photo;

import java.util.List;
import java.util.Optional;

/** The whole contour in squared coordinates, cut at its two ends into the two edges. */
final class SquaredContour {
    private static final int BEYOND = 24;

    private final double[] along;

    private final double[] across;

    private final double[] doubts;

    private final int atStart;

    private final int atEnd;

    /** Whether the walk goes from start to end along the left edge. */
    private final boolean startsLeft;

    private final Sight sight;

    /** The same points in another view, if their edges were followed there. */
    private final Optional<SquaredContour> known;

    /** The left one and the right one, once they were followed. */
    private volatile List<EdgeChain> edges = List.of();

    /** The outline last taken from them: a view is asked for the same one again and again. */
    private volatile Optional<RoundOutline> outline = Optional.empty();

    /** Their points from start to end, once they were asked for: an end is read some dozens of times in one view. */
    private volatile List<double[][]> points = List.of();

    /**
     * Squares the points of a contour.
     *
     * @param sight where the axis lies
     * @param x of the contour's points, closed
     * @param y of them
     * @param doubts what each is uncertain by, pixels
     */
    SquaredContour(Sight sight, double[] x, double[] y, double[] doubts) {
        this.sight = sight;
        this.doubts = doubts;
        known = Optional.empty();
        int n = x.length;
        along = new double[n];
        across = new double[n];
        sight.square(x, y, along, across);
        int least = -1;
        int most = -1;
        for (int i = 0; i < n; i++) {
            boolean crosses = across[i] * across[i + 1 == n ? 0 : i + 1] <= 0;
            if (crosses && (least < 0 || along[i] < along[least])) {
                least = i;
            }
            if (crosses && (most < 0 || along[i] > along[most])) {
                most = i;
            }
        }
        atStart = least;
        atEnd = most;
        startsLeft = isWhole() && sum() > 0;
    }

    private SquaredContour(SquaredContour same, SquaredContour known) {
        sight = same.sight;
        along = same.along;
        across = same.across;
        doubts = same.doubts;
        atStart = same.atStart;
        atEnd = same.atEnd;
        startsLeft = same.startsLeft;
        this.known = Optional.of(known);
    }

    /** The same, its edges followed as those of another view of the same points were: only what the view itself changes then differs. */
    SquaredContour as(SquaredContour other) {
        return new SquaredContour(this, other);
    }

    /** Whether the axis runs through the piece from end to end. */
    boolean isWhole() {
        return atStart >= 0 && atEnd >= 0 && atStart != atEnd;
    }

    Sight sight() {
        return sight;
    }

    /** The edge on that side: the one whose points lie mostly above 0 across, or below. Both are followed when one is first asked for, and kept. */
    EdgeChain edge(boolean left) {
        if (edges.isEmpty()) {
            EdgeChain[] both = new EdgeChain[2];
            Cores.each(2, side -> both[side] = followed(side == 0));
            edges = List.of(both);
        }
        return edges.get(left ? 0 : 1);
    }

    /** The outline that was kept last, whatever ends and length it is of. */
    Optional<RoundOutline> outline() {
        return outline;
    }

    void keep(RoundOutline taken) {
        outline = Optional.of(taken);
    }

    private EdgeChain followed(boolean left) {
        double[][] points = points(left, BEYOND);
        int end = points[0].length - BEYOND;
        if (known.isEmpty()) {
            return new EdgeChain(points[0], points[1], BEYOND, end, sight.focal());
        }
        SquaredContour other = known.orElseThrow();
        int later = (startsLeft == left ? 1 : -1) * (atStart - other.atStart);
        int shift = Math.floorMod(later + along.length / 2, along.length) - along.length / 2;
        return new EdgeChain(points[0], points[1], BEYOND, end, sight.focal(), other.edge(left), shift);
    }

    /** Along and across of one edge from start to end, which nobody may change. */
    double[][] points(boolean left) {
        if (points.isEmpty()) {
            points = List.of(points(true, 0), points(false, 0));
        }
        return points.get(left ? 0 : 1);
    }

    /** The same with so many points more at each end. */
    private double[][] points(boolean left, int beyond) {
        int n = along.length;
        boolean forward = startsLeft == left;
        int steps = Math.floorMod(forward ? atEnd - atStart : atStart - atEnd, n);
        int way = forward ? 1 : -1;
        double[][] points = new double[2][steps + 1 + 2 * beyond];
        int i = Math.floorMod(atStart - way * beyond, n);
        for (int k = 0; k < points[0].length; k++) {
            points[0][k] = along[i];
            points[1][k] = across[i];
            i += way;
            i = i == n ? 0 : i < 0 ? n - 1 : i;
        }
        return points;
    }

    /** What each point of one edge is uncertain by, from start to end, in pixels. */
    double[] doubts(boolean left) {
        int n = along.length;
        int way = startsLeft == left ? 1 : -1;
        double[] values = new double[Math.floorMod(way * (atEnd - atStart), n) + 1];
        int i = atStart;
        for (int k = 0; k < values.length; k++) {
            values[k] = doubts[i];
            i += way;
            i = i == n ? 0 : i < 0 ? n - 1 : i;
        }
        return values;
    }

    /** Of the points from start to end in the order of the walk, what they sum to across. */
    private double sum() {
        int n = along.length;
        double sum = 0;
        for (int i = atStart; i != atEnd; i = i + 1 == n ? 0 : i + 1) {
            sum += across[i];
        }
        return sum;
    }
}
