package turnalike.drawing.dxf;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.dxf.DxfFile.Vertex;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Polynomial;
import turnalike.outline.Segment;

/**
 * An outline as the vertices of a DXF polyline, x along the piece and y the radius. Lines and circle arcs are exact; ellipse arcs and cubic
 * curves, which Release 12 does not know, are chords that stray by {@link #CHORD_MM} at most.
 */
final class DxfOutline implements Curve.Cases<List<Vertex>> {
    /** Far below what a laser or router holds. */
    static final double CHORD_MM = 0.005;

    private static final double CIRCLE_MM = 1e-9;

    private final double startMm;

    private DxfOutline(double startMm) {
        this.startMm = startMm;
    }

    /** From the datum end to the far end, each shoulder a step; the last vertex is the far end's. */
    static List<Vertex> of(Outline outline) {
        List<Vertex> out = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            Curve curve = segment.curve();
            List<Vertex> run = curve.match(new DxfOutline(segment.start().mm()));
            if (!out.isEmpty() && near(out.get(out.size() - 1), run.get(0))) {
                out.remove(out.size() - 1);
            }
            out.addAll(run);
            out.add(Vertex.straight(segment.end().mm(), curve.endRadiusMm()));
        }
        return out;
    }

    private static boolean near(Vertex a, Vertex b) {
        return Math.abs(a.xMm() - b.xMm()) < 1e-7 && Math.abs(a.yMm() - b.yMm()) < 1e-7;
    }

    @Override
    public List<Vertex> line(Line line) {
        return List.of(Vertex.straight(startMm, line.startRadiusMm()));
    }

    /** With t = sin φ the arc is (centre + w sin φ, level + rise cos φ), a circle stretched: a chord of Δφ strays by the circle's own. */
    @Override
    public List<Vertex> ellipseArc(EllipseArc arc) {
        double halfWidth = arc.halfWidth().mm();
        double rise = arc.rise().mm();
        double from = Math.asin(clamp(-arc.centre().mm() / halfWidth));
        double to = Math.asin(clamp((arc.length().mm() - arc.centre().mm()) / halfWidth));
        if (Math.abs(Math.abs(rise) - halfWidth) < CIRCLE_MM) {
            // A bead runs over its top clockwise, a cove anticlockwise.
            double bulge = -Math.signum(rise) * Math.tan((to - from) / 4);
            return List.of(new Vertex(startMm, arc.startRadiusMm(), bulge));
        }
        List<Vertex> out = new ArrayList<>();
        boolean crestInside = from < 0 && to > 0;
        out.addAll(chords(arc, from, crestInside ? 0 : to));
        if (crestInside) {
            out.addAll(chords(arc, 0, to));
        }
        return out;
    }

    /** Cut at the crest by the caller, so that the greatest and the least diameter are true. */
    private List<Vertex> chords(EllipseArc arc, double from, double to) {
        double halfWidth = arc.halfWidth().mm();
        double rise = arc.rise().mm();
        double largest = Math.max(halfWidth, Math.abs(rise));
        double step = 2 * Math.acos(Math.max(0, 1 - CHORD_MM / largest));
        int chords = (int) Math.ceil((to - from) / step);
        List<Vertex> out = new ArrayList<>();
        for (int i = 0; i < chords; i++) {
            double phi = from + (to - from) * i / chords;
            out.add(Vertex.straight(
                    startMm + arc.centre().mm() + halfWidth * Math.sin(phi),
                    arc.level().mm() + rise * Math.cos(phi)));
        }
        return out;
    }

    private static double clamp(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }

    /**
     * A chord of width h strays by h²·max|r″|/8 at most, and r″ of a cubic is greatest at an end. Cut where the curve is level, so that
     * the greatest and the least diameter are true.
     */
    @Override
    public List<Vertex> polynomial(Polynomial polynomial) {
        double length = polynomial.length().mm();
        List<Double> c = polynomial.coefficientsMm();
        double c2 = c.size() > 2 ? c.get(2) : 0;
        double c3 = c.size() > 3 ? c.get(3) : 0;
        double bend = Math.max(Math.abs(2 * c2), Math.abs(2 * c2 + 6 * c3)) / (length * length);
        List<Double> stops = new ArrayList<>(polynomial.levelPlacesMm());
        stops.add(length);
        List<Vertex> out = new ArrayList<>();
        double from = 0;
        for (double to : stops) {
            int chords = Math.max(1, (int) Math.ceil((to - from) * Math.sqrt(bend / (8 * CHORD_MM))));
            for (int i = 0; i < chords; i++) {
                double x = from + (to - from) * i / chords;
                out.add(Vertex.straight(startMm + x, polynomial.radiusMm(x)));
            }
            from = to;
        }
        return out;
    }
}
