package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** SVG's shapes other than paths, as strokes. */
final class SvgShapes {
    private static final double FARTHEST = 1e9;

    private SvgShapes() {}

    static Optional<Stroke> polygon(double[] n, boolean closed) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i + 1 < n.length; i += 2) {
            if (!(Math.abs(n[i]) < FARTHEST && Math.abs(n[i + 1]) < FARTHEST)) {
                return Optional.empty();
            }
            spots.add(Spot.knot(n[i], n[i + 1]));
        }
        boolean meets = spots.size() > 3 && spots.get(0).distance(spots.get(spots.size() - 1)) == 0;
        if (meets) {
            spots.remove(spots.size() - 1);
        }
        return spots.size() > 1 ? Optional.of(new Stroke(spots, closed || meets, "")) : Optional.empty();
    }

    static Optional<Stroke> line(SvgNode node) {
        double[] ends = {node.number("x1", 0), node.number("y1", 0), node.number("x2", 0), node.number("y2", 0)};
        return polygon(ends, false);
    }

    /** With its corners rounded where it says so. */
    static Optional<Stroke> rectangle(SvgNode node) {
        double x = node.number("x", 0);
        double y = node.number("y", 0);
        double width = node.number("width", 0);
        double height = node.number("height", 0);
        if (!(width > 0 && height > 0 && Math.abs(x) + Math.abs(y) + width + height < FARTHEST)) {
            return Optional.empty();
        }
        double rx = Math.min(node.number("rx", node.number("ry", 0)), width / 2);
        double ry = Math.min(node.number("ry", node.number("rx", 0)), height / 2);
        if (!(rx > 0 && ry > 0)) {
            return polygon(new double[] {x, y, x + width, y, x + width, y + height, x, y + height}, true);
        }
        List<Spot> spots = new ArrayList<>(List.of(Spot.knot(x + rx, y)));
        double[][] corners = {
            {x + width - rx, y + ry, -90},
            {x + width - rx, y + height - ry, 0},
            {x + rx, y + height - ry, 90},
            {x + rx, y + ry, 180}
        };
        for (double[] each : corners) {
            double from = Math.toRadians(each[2]);
            spots.add(Spot.knot(each[0] + rx * Math.cos(from), each[1] + ry * Math.sin(from)));
            Curves.arc(spots, each[0], each[1], rx, 0, 0, ry, from, from + Math.PI / 2);
        }
        spots.remove(spots.size() - 1);
        return Optional.of(new Stroke(spots, true, ""));
    }

    static Optional<Stroke> ellipse(SvgNode node, double rx, double ry) {
        double cx = node.number("cx", 0);
        double cy = node.number("cy", 0);
        if (!(rx > 0 && ry > 0 && Math.abs(cx) + Math.abs(cy) + rx + ry < FARTHEST)) {
            return Optional.empty();
        }
        List<Spot> spots = new ArrayList<>(List.of(Spot.knot(cx + rx, cy)));
        for (int quarter = 0; quarter < 4; quarter++) {
            // By quarters, so that its ends and its greatest breadth are points of the drawing.
            Curves.arc(spots, cx, cy, rx, 0, 0, ry, quarter * Math.PI / 2, (quarter + 1) * Math.PI / 2);
        }
        spots.remove(spots.size() - 1);
        return Optional.of(new Stroke(spots, true, ""));
    }
}
