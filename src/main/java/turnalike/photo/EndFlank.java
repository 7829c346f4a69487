package turnalike.photo;

/**
 * How wide a piece is right behind an end's rim, seen from its flank a little farther in: near the rim itself the end's own outline is seen. A flank that
 * tapers is followed out to the rim, for a radius that is off by a twentieth makes an end bulge by as much more or less than it should.
 */
final class EndFlank {
    /** So long a stretch is asked, of the depth at which it begins, and at least so many pixels. */
    private static final double LONG = 0.8;

    private static final double LEAST_LONG = 12;

    private static final int LEAST_POINTS = 10;

    /** A flank that strays from a straight line by more, in pixels, or that is steeper, is no taper: a bead may stand there. */
    private static final double STRAIGHT = 0.35;

    private static final double STEEPEST = 0.3;

    private final double[][][] sides;

    private final boolean start;

    private final double apex;

    private final double outward;

    private final double focal;

    /**
     * Takes an end.
     *
     * @param sides X and Y of the points of either edge
     * @param start whether the start end is meant
     * @param focal length, pixels
     */
    EndFlank(double[][][] sides, boolean start, double focal) {
        this.sides = sides;
        this.start = start;
        this.focal = focal;
        apex = sides[0][0][start ? 0 : sides[0][0].length - 1];
        outward = start ? -1 : 1;
    }

    /**
     * A flank, followed out to the rim as the straight line that it is, or level where it is none.
     *
     * @param rim half the width there, Y; of an edge that is rounded over, where the rounding begins
     * @param slope how much wider it is for each unit farther in
     */
    record Seen(double rim, double slope) {}

    /** The flank behind such an edge. */
    Seen seen(EndEdge edge) {
        double rim = 0;
        double depth = 6 / focal;
        for (int round = 0; round < 4; round++) {
            rim = acrossAt(depth);
            depth = (1.3 * Math.abs(apex) + edge.round()) * rim + 3 / focal;
        }
        // Where a sharp rim turns into the flank: it is seen at the place (1 − r)·|apex| in depth 1 − r².
        double radius = rim / Math.sqrt(1 + rim * rim);
        return followed(depth, rim, Math.abs(apex) * radius / (1 + radius) + edge.round() * rim);
    }

    /** A flank that is straight from so deep on, followed out to its side's end. */
    private Seen followed(double depth, double rim, double side) {
        double end = depth + Math.max(LONG * depth, LEAST_LONG / focal);
        FittedLine flank = new FittedLine();
        for (double[][] edge : sides) {
            int n = edge[0].length;
            for (int k = 0; k < n; k++) {
                int i = start ? k : n - 1 - k;
                double deep = (apex - edge[0][i]) * outward;
                if (deep > end) {
                    break;
                }
                if (deep >= depth) {
                    flank.add(deep, Math.abs(edge[1][i]) - rim);
                }
            }
        }
        boolean taper = flank.count() >= LEAST_POINTS
                && flank.strays() * focal < STRAIGHT
                && Math.abs(flank.slope()) < STEEPEST;
        return taper ? new Seen(rim + flank.at(side), flank.slope()) : new Seen(rim, 0);
    }

    /** Half the width where the edges first pass a place so deep. */
    private double acrossAt(double depth) {
        double beyond = apex - outward * depth;
        return (acrossAt(sides[0], beyond) + acrossAt(sides[1], beyond)) / 2;
    }

    private double acrossAt(double[][] edge, double beyond) {
        int n = edge[0].length;
        for (int k = 0; k < n; k++) {
            int i = start ? k : n - 1 - k;
            if (start ? edge[0][i] >= beyond : edge[0][i] <= beyond) {
                return Math.abs(edge[1][i]);
            }
        }
        return 0;
    }
}
