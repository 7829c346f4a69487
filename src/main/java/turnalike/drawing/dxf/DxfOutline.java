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

    /** With t = sin φ the arc is (centre + w sin φ, level + rise cos φ). */
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
        return chords(arc);
    }

    private static double clamp(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }

    @Override
    public List<Vertex> polynomial(Polynomial polynomial) {
        return chords(polynomial);
    }

    /** Without the last vertex, which the caller adds. */
    private List<Vertex> chords(Curve curve) {
        List<Double> places = curve.chordPlacesMm(CHORD_MM);
        return places.subList(0, places.size() - 1).stream()
                .map(x -> Vertex.straight(startMm + x, curve.radiusMm(x)))
                .toList();
    }
}
