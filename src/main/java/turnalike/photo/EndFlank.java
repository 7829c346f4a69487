package turnalike.photo;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * How wide a piece is right behind an end's rim, seen from its flank a little farther in: near the rim itself the end's own outline is seen. A flank that
 * tapers or bows, as a handle's does, is followed out to the rim, for a radius that is off by a twentieth makes an end bulge by as much more or less than it
 * should.
 */
final class EndFlank {
    /** So long a stretch is asked, of the depth at which it begins, and at least so many pixels. */
    private static final double LONG = 0.8;

    private static final double LEAST_LONG = 12;

    private static final int LEAST_POINTS = 10;

    /** A flank that strays from a straight line or a bow by more, in pixels, or that is steeper, is no taper: a bead may stand there. */
    private static final double STRAIGHT = 0.35;

    private static final double STEEPEST = 0.3;

    /** A bow must fit so much better than a straight line, and may be a little steeper at the rim. */
    private static final double BOWED = 0.6;

    private static final double STEEPEST_BOW = 0.5;

    /** So far behind the rim's side the flank is asked first, as a share of what a sharp end bulges by: the picture is soft there. */
    private static final double CLEAR = 0.3;

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
     * A flank, followed out to the rim as the straight line or the bow that it is, or level where it is none; or as a quadric that runs steeply.
     *
     * @param rim half the width of the rim, Y; of an edge that is rounded over, where the rounding begins
     * @param joint Y where the outline turns from the rim into the flank: before it is widest, where the flank is steep
     * @param from X there, where it hangs on the flank; else it is where the rim is widest
     * @param across Y by how far it is in from there
     * @param upTo so far in from there it was followed
     */
    record Seen(double rim, double joint, OptionalDouble from, DoubleUnaryOperator across, double upTo) {
        /** One that is so much wider for each unit farther in. */
        static Seen straight(double rim, double slope) {
            return new Seen(rim, rim, OptionalDouble.empty(), inward -> rim + slope * inward, Double.POSITIVE_INFINITY);
        }

        boolean isSteep() {
            return from.isPresent();
        }
    }

    /** The flank behind such an edge. */
    Seen seen(EndEdge edge) {
        double rim = 0;
        double side = 0;
        double depth = 6 / focal;
        for (int round = 0; round < 4; round++) {
            rim = acrossAt(depth);
            side = side(edge, rim / Math.sqrt(1 + rim * rim));
            depth = side + CLEAR * Math.abs(apex) * rim + 3 / focal;
        }
        Seen seen = followed(depth, rim, side);
        return edge.steep() ? new SteepFlank(sides, start, focal).seen(depth).orElse(seen) : seen;
    }

    /**
     * How deep behind the apex the rim's side is seen, where the chamfer or the rounding begins: the ray that touches a flank at a place has X of that place
     * over 1 − r².
     */
    private double side(EndEdge edge, double radius) {
        double broken = (edge.chamfer() + edge.round()) * radius;
        return Math.abs(apex) - (Math.abs(edge.place(apex, radius)) - broken) / (1 - radius * radius);
    }

    /** A flank that is straight or bowed from so deep on, followed out to its side's end. */
    private Seen followed(double depth, double rim, double side) {
        double end = depth + Math.max(LONG * depth, LEAST_LONG / focal);
        FittedLine line = new FittedLine();
        FittedBow bow = new FittedBow(depth, end - depth);
        for (double[][] edge : sides) {
            int n = edge[0].length;
            for (int k = 0; k < n; k++) {
                int i = start ? k : n - 1 - k;
                double deep = (apex - edge[0][i]) * outward;
                if (deep > end) {
                    break;
                }
                if (deep >= depth) {
                    line.add(deep, Math.abs(edge[1][i]) - rim);
                    bow.add(deep, Math.abs(edge[1][i]) - rim);
                }
            }
        }
        if (line.count() < LEAST_POINTS) {
            return Seen.straight(rim, 0);
        }
        FittedBow.Bow bowed = bow.bow();
        boolean bows = bowed.strays() < BOWED * line.strays()
                && bowed.strays() * focal < STRAIGHT
                && Math.abs(bowed.slopeAt(side)) < STEEPEST_BOW;
        if (bows) {
            return Seen.straight(rim + bowed.at(side), bowed.slopeAt(side));
        }
        boolean tapers = line.strays() * focal < STRAIGHT && Math.abs(line.slope()) < STEEPEST;
        return tapers ? Seen.straight(rim + line.at(side), line.slope()) : Seen.straight(rim, 0);
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
