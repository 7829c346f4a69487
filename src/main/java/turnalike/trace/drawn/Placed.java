package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;

/**
 * An outline laid along x with its axis at y = 0, and how it was found.
 *
 * @param spots in millimetres, y upwards
 * @param isHalf whether it is one side only, closed along the axis
 */
record Placed(List<Spot> spots, boolean isHalf) {
    /** An edge this much of the whole length long may be the axis of a half. */
    private static final double WHOLE = 0.97;

    private static final double STRAIGHT = 2e-4;
    private static final double ROUND = 1e-6;
    /** Of the length: a shorter edge is a bit of a curve and no flat end. */
    private static final double FLAT_END = 0.01;
    /** Of the length; drawings are a little off where a curve was flattened. */
    private static final double EVEN = 5e-3;

    /** A piece drawn nearly level or upright was meant so. */
    private static final double SQUARE_ON_RAD = Math.toRadians(1);

    Placed {
        spots = List.copyOf(spots);
    }

    /**
     * Lays an outline along x: a half by its longest straight edge where that is as long as the piece, else by the axis of its greatest
     * extent (the axis of least second moment of its area). The left end comes first, of a piece that stands the upper one.
     */
    static Placed of(Stroke outline) {
        List<Spot> edge = longest(outline.spots());
        Placed byEdge = turned(outline.spots(), angle(edge.get(0), edge.get(1)), edge.get(0), true);
        double length = byEdge.length();
        double edgeLength = edge.get(0).distance(edge.get(1));
        if (byEdge.height() > edgeLength && edgeLength > FLAT_END * byEdge.height()) {
            // Thicker to one side than it is long, and alike about the edge's middle: that edge is the flat end of a
            // whole piece.
            Placed standing =
                    turned(outline.spots(), angle(edge.get(0), edge.get(1)) + Math.PI / 2, middle(edge), false);
            if (standing.isEven()) {
                return standing;
            }
        }
        if (edge.get(0).distance(edge.get(1)) > WHOLE * length && byEdge.isOnOneSide() && !byEdge.isMirrored()) {
            return byEdge.upright();
        }
        double[] moments = moments(outline);
        double slender = Math.hypot(2 * moments[4], moments[2] - moments[3]);
        // A ball is as long whichever way it is turned: as it was drawn.
        double angle = slender < ROUND * (moments[2] + moments[3])
                ? 0
                : 0.5 * Math.atan2(2 * moments[4], moments[2] - moments[3]);
        return turned(outline.spots(), angle, Spot.knot(moments[0], moments[1]), false);
    }

    private static double angle(Spot a, Spot b) {
        return Math.atan2(b.y() - a.y(), b.x() - a.x());
    }

    /** The outline turned back by an angle about a place that becomes the origin, left or upper end first. */
    private static Placed turned(List<Spot> spots, double angle, Spot about, boolean isHalf) {
        double quarter = Math.rint(angle / (Math.PI / 2)) * Math.PI / 2;
        double turn = Math.abs(angle - quarter) < SQUARE_ON_RAD ? quarter : angle;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        boolean stands = Math.abs(sin) > Math.abs(cos);
        // Along the piece to the right, or down.
        boolean forward = stands ? sin < 0 : cos > 0;
        double sign = forward ? 1 : -1;
        List<Spot> out = new ArrayList<>();
        for (Spot each : spots) {
            double dx = each.x() - about.x();
            double dy = each.y() - about.y();
            out.add(new Spot(sign * (cos * dx + sin * dy), sign * (-sin * dx + cos * dy), each.isKnot()));
        }
        return new Placed(out, isHalf);
    }

    private double length() {
        return spots.stream().mapToDouble(Spot::x).max().orElse(0)
                - spots.stream().mapToDouble(Spot::x).min().orElse(0);
    }

    private double height() {
        return spots.stream().mapToDouble(Spot::y).max().orElse(0)
                - spots.stream().mapToDouble(Spot::y).min().orElse(0);
    }

    private static Spot middle(List<Spot> edge) {
        return Spot.knot(
                (edge.get(0).x() + edge.get(1).x()) / 2,
                (edge.get(0).y() + edge.get(1).y()) / 2);
    }

    /** Whether both sides of it are alike. */
    private boolean isEven() {
        return new Sides(spots).all().stream().allMatch(each -> Math.abs(each.middle()) < EVEN * length());
    }

    private boolean isOnOneSide() {
        double low = spots.stream().mapToDouble(Spot::y).min().orElse(0);
        double high = spots.stream().mapToDouble(Spot::y).max().orElse(0);
        return Math.min(Math.abs(low), Math.abs(high)) < STRAIGHT * length();
    }

    /** Whether the other side is straight as well: then it is a whole cylinder and no half. */
    private boolean isMirrored() {
        List<Sides.Across> across = new Sides(spots).all();
        double least = across.stream().mapToDouble(Sides.Across::half).min().orElse(0);
        double most = across.stream().mapToDouble(Sides.Across::half).max().orElse(0);
        return most - least < STRAIGHT * length();
    }

    /** With the axis below the outline. */
    private Placed upright() {
        double middle = spots.stream().mapToDouble(Spot::y).average().orElse(0);
        return middle >= 0
                ? this
                : new Placed(
                        spots.stream()
                                .map(each -> new Spot(each.x(), -each.y(), each.isKnot()))
                                .toList(),
                        isHalf);
    }

    /** The longest run of edges in one direction, as its two ends. */
    private static List<Spot> longest(List<Spot> spots) {
        int n = spots.size();
        double best = -1;
        List<Spot> out = List.of(spots.get(0), spots.get(1));
        for (int i = 0; i < n; i++) {
            Spot start = spots.get(i);
            double direction = angle(start, spots.get((i + 1) % n));
            if (i > 0 && Math.abs(turn(direction - angle(spots.get(i - 1), start))) < 1e-6) {
                continue;
            }
            int k = 1;
            while (k < n - 1
                    && Math.abs(turn(angle(spots.get((i + k) % n), spots.get((i + k + 1) % n)) - direction)) < 1e-5) {
                k++;
            }
            double length = start.distance(spots.get((i + k) % n));
            if (length > best) {
                best = length;
                out = List.of(start, spots.get((i + k) % n));
            }
        }
        return out;
    }

    private static double turn(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }

    /** The area's centre (x, y) and its second moments about that centre: along x, along y, mixed. By Green's theorem over the edges. */
    private static double[] moments(Stroke outline) {
        List<Spot> spots = outline.spots();
        Spot o = spots.get(0);
        double a = 0;
        double mx = 0;
        double my = 0;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < spots.size(); i++) {
            double x0 = spots.get(i).x() - o.x();
            double y0 = spots.get(i).y() - o.y();
            double x1 = spots.get((i + 1) % spots.size()).x() - o.x();
            double y1 = spots.get((i + 1) % spots.size()).y() - o.y();
            double cross = x0 * y1 - x1 * y0;
            a += cross / 2;
            mx += (x0 + x1) * cross / 6;
            my += (y0 + y1) * cross / 6;
            xx += (x0 * x0 + x0 * x1 + x1 * x1) * cross / 12;
            yy += (y0 * y0 + y0 * y1 + y1 * y1) * cross / 12;
            xy += (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) * cross / 24;
        }
        double cx = mx / a;
        double cy = my / a;
        return new double[] {cx + o.x(), cy + o.y(), xx / a - cx * cx, yy / a - cy * cy, xy / a - cx * cy};
    }
}
