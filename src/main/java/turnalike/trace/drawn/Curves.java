package turnalike.trace.drawn;

import java.util.List;

/** Arcs and Bézier curves cut into places so close together that the straight lines between stray by less than a thousandth of the size. */
final class Curves {
    private static final int PER_TURN = 720;
    private static final int PER_BEZIER = 96;

    private Curves() {}

    /** An arc of an ellipse about a centre, its half axes given as vectors; its first place is not added, its last is a knot. */
    static void arc(
            List<Spot> out, double cx, double cy, double ax, double ay, double bx, double by, double from, double to) {
        int parts = (int) Math.max(2, Math.ceil(Math.abs(to - from) / (2 * Math.PI) * PER_TURN));
        for (int i = 1; i <= parts; i++) {
            double t = from + (to - from) * i / parts;
            out.add(new Spot(
                    cx + ax * Math.cos(t) + bx * Math.sin(t), cy + ay * Math.cos(t) + by * Math.sin(t), i == parts));
        }
    }

    /** A cubic Bézier curve from the last place. */
    static void cubic(List<Spot> out, double x1, double y1, double x2, double y2, double x3, double y3) {
        Spot start = out.get(out.size() - 1);
        for (int i = 1; i <= PER_BEZIER; i++) {
            double t = (double) i / PER_BEZIER;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double c = 3 * s * t * t;
            double d = t * t * t;
            out.add(new Spot(
                    a * start.x() + b * x1 + c * x2 + d * x3,
                    a * start.y() + b * y1 + c * y2 + d * y3,
                    i == PER_BEZIER));
        }
    }

    /** A quadratic one, as the cubic that it is. */
    static void quadratic(List<Spot> out, double x1, double y1, double x2, double y2) {
        Spot start = out.get(out.size() - 1);
        cubic(
                out,
                start.x() + 2 * (x1 - start.x()) / 3,
                start.y() + 2 * (y1 - start.y()) / 3,
                x2 + 2 * (x1 - x2) / 3,
                y2 + 2 * (y1 - y2) / 3,
                x2,
                y2);
    }

    /** A circle's arc from the last place, bulging as DXF says: the tangent of a quarter of its angle, positive when anticlockwise. */
    static void bulge(List<Spot> out, double x, double y, double bulge) {
        Spot start = out.get(out.size() - 1);
        if (bulge == 0 || (start.x() == x && start.y() == y)) {
            out.add(Spot.knot(x, y));
            return;
        }
        double angle = 4 * Math.atan(bulge);
        double along = (1 / bulge - bulge) / 4;
        double cx = (start.x() + x) / 2 - along * (y - start.y());
        double cy = (start.y() + y) / 2 + along * (x - start.x());
        double dx = start.x() - cx;
        double dy = start.y() - cy;
        // From the start's own direction on, so that the arc begins where the stroke stands.
        arc(out, cx, cy, dx, dy, -dy, dx, 0, angle);
    }

    /**
     * The elliptical arc of SVG's path data, given by its end: centre and angles by the conversion of the SVG specification (appendix on
     * elliptical arcs, "from endpoint to center parameterization"; from memory).
     */
    static void svgArc(
            List<Spot> out, double rx0, double ry0, double turn, boolean large, boolean sweep, double x, double y) {
        Spot start = out.get(out.size() - 1);
        double rx = Math.abs(rx0);
        double ry = Math.abs(ry0);
        if (start.x() == x && start.y() == y) {
            return;
        }
        if (rx == 0 || ry == 0) {
            out.add(Spot.knot(x, y));
            return;
        }
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double hx = (start.x() - x) / 2;
        double hy = (start.y() - y) / 2;
        double px = cos * hx + sin * hy;
        double py = -sin * hx + cos * hy;
        double grow = px * px / (rx * rx) + py * py / (ry * ry);
        if (grow > 1) {
            rx *= Math.sqrt(grow);
            ry *= Math.sqrt(grow);
        }
        double under = rx * rx * py * py + ry * ry * px * px;
        double over = Math.max(0, rx * rx * ry * ry - under);
        double factor = (large == sweep ? -1 : 1) * Math.sqrt(over / under);
        double qx = factor * rx * py / ry;
        double qy = -factor * ry * px / rx;
        double from = Math.atan2((py - qy) / ry, (px - qx) / rx);
        double to = Math.atan2((-py - qy) / ry, (-px - qx) / rx);
        if (sweep && to < from) {
            to += 2 * Math.PI;
        } else if (!sweep && to > from) {
            to -= 2 * Math.PI;
        }
        double cx = cos * qx - sin * qy + (start.x() + x) / 2;
        double cy = sin * qx + cos * qy + (start.y() + y) / 2;
        arc(out, cx, cy, rx * cos, rx * sin, -ry * sin, ry * cos, from, to);
        out.set(out.size() - 1, Spot.knot(x, y));
    }
}
