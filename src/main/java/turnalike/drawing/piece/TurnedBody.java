package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.ShadedArea;
import turnalike.drawing.svg.Shape;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;

/**
 * A turned piece as it looks in light from the upper left, lying at any angle. Bands along the body have the tone of their slope across
 * it: for a round body at distance t·r from its axis the surface looks t across and √(1 - t²) towards the eye (derived here); the slope along
 * it is left out, since edges and shoulders are drawn as lines.
 *
 * @param outline the piece; its place 0 lies at the origin
 * @param origin where that is on the paper
 * @param alongX cosine of the direction in which the piece runs
 * @param alongY sine of it, y down the paper
 * @param scale paper over wood
 * @param bands how many tones, 2 or more
 */
public record TurnedBody(Outline outline, Spot origin, double alongX, double alongY, double scale, int bands) {
    /** Towards the light: up, a little left, and mostly towards the eye; of length 1. */
    private static final double LIGHT_X = -0.30;

    private static final double LIGHT_Y = -0.52;
    private static final double LIGHT_OUT = 0.80;

    private static final double AMBIENT = 0.18;
    private static final double FLAT_LIGHT = 0.78;

    /** So fine that a curve's corners vanish at the size of a screen. */
    private static final int PARTS_OF_A_CURVE = 18;

    private static final double SMOOTH_MM = 0.02;
    private static final double SMOOTH_SLOPE = 0.05;

    /** Near enough to an end to feel its slope there. */
    private static final double NEAR = 1e-4;

    /** A place on the paper. */
    public record Spot(double x, double y) {}

    private record Station(double placeMm, double radiusMm) {}

    public List<Shape> shapes() {
        List<Shape> out = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            if (!run.isEmpty() && run.get(0).section() != segment.section()) {
                out.addAll(lit(run));
                run.clear();
            }
            run.add(segment);
        }
        out.addAll(lit(run));
        out.addAll(edges());
        return out;
    }

    private List<Shape> lit(List<Segment> run) {
        List<Station> stations = stations(run);
        if (run.get(0).section() == Section.SQUARE) {
            return List.of(new ShadedArea(FLAT_LIGHT, band(stations, -1)));
        }
        List<Shape> out = new ArrayList<>();
        for (int i = 0; i < bands; i++) {
            double from = -1 + 2.0 * i / bands;
            // Each band reaches to the far side and the next lies over it: no seam can show between them.
            out.add(new ShadedArea(light(from + 1.0 / bands), band(stations, from)));
        }
        return out;
    }

    private double light(double across) {
        // Across the piece, a quarter turn clockwise on the paper from the way it runs.
        double lightAcross = -alongY * LIGHT_X + alongX * LIGHT_Y;
        double lambert = across * lightAcross + Math.sqrt(1 - across * across) * LIGHT_OUT;
        return Math.min(1, AMBIENT + (1 - AMBIENT) * Math.max(0, lambert));
    }

    private static List<Station> stations(List<Segment> run) {
        List<Station> out = new ArrayList<>();
        for (Segment segment : run) {
            int parts = segment.curve() instanceof Line ? 1 : PARTS_OF_A_CURVE;
            double length = segment.curve().length().mm();
            for (int i = 0; i <= parts; i++) {
                // Closer together at the ends, where an ellipse is steep.
                double at = length * (1 - Math.cos(Math.PI * i / parts)) / 2;
                out.add(new Station(segment.start().mm() + at, segment.curve().radiusMm(at)));
            }
        }
        return out;
    }

    private List<Path.Step> band(List<Station> stations, double from) {
        List<Path.Step> out = new ArrayList<>();
        for (Station station : stations) {
            Spot spot = spot(station.placeMm(), from * station.radiusMm());
            out.add(out.isEmpty() ? new Path.Move(spot.x(), spot.y()) : new Path.Straight(spot.x(), spot.y()));
        }
        for (int i = stations.size() - 1; i >= 0; i--) {
            Spot spot = spot(stations.get(i).placeMm(), stations.get(i).radiusMm());
            out.add(new Path.Straight(spot.x(), spot.y()));
        }
        out.add(new Path.Close());
        return out;
    }

    private Spot spot(double placeMm, double acrossMm) {
        double x = origin.x() + scale * (placeMm * alongX - acrossMm * alongY);
        double y = origin.y() + scale * (placeMm * alongY + acrossMm * alongX);
        return new Spot(x, y);
    }

    /** Both sides, and a line across wherever the radius jumps or a rim is sharp. */
    private List<Shape> edges() {
        List<Shape> out = new ArrayList<>();
        List<Station> stations = stations(outline.segments());
        for (int side : new int[] {-1, 1}) {
            List<Path.Step> steps = new ArrayList<>();
            for (Station station : stations) {
                Spot spot = spot(station.placeMm(), side * station.radiusMm());
                steps.add(steps.isEmpty() ? new Path.Move(spot.x(), spot.y()) : new Path.Straight(spot.x(), spot.y()));
            }
            out.add(new Path(Pen.FINE, steps));
        }
        List<Segment> segments = outline.segments();
        out.add(across(segments.get(0).start().mm(), segments.get(0).curve().startRadiusMm()));
        for (int i = 0; i < segments.size(); i++) {
            double end = segments.get(i).curve().endRadiusMm();
            boolean last = i + 1 == segments.size();
            double next = last ? end : segments.get(i + 1).curve().startRadiusMm();
            if (last || isEdge(segments.get(i).curve(), segments.get(i + 1).curve())) {
                out.add(across(segments.get(i).end().mm(), Math.max(end, next)));
            }
        }
        return out;
    }

    /** Whether the eye sees a line where one curve goes over into the next: a step, or a change of slope. */
    private static boolean isEdge(Curve before, Curve after) {
        double step = after.startRadiusMm() - before.endRadiusMm();
        return Math.abs(step) > SMOOTH_MM || Math.abs(endSlope(before) - startSlope(after)) > SMOOTH_SLOPE;
    }

    private static double endSlope(Curve curve) {
        double length = curve.length().mm();
        return (curve.endRadiusMm() - curve.radiusMm(length * (1 - NEAR))) / (length * NEAR);
    }

    private static double startSlope(Curve curve) {
        double length = curve.length().mm();
        return (curve.radiusMm(length * NEAR) - curve.startRadiusMm()) / (length * NEAR);
    }

    private Path across(double placeMm, double radiusMm) {
        Spot a = spot(placeMm, -radiusMm);
        Spot b = spot(placeMm, radiusMm);
        return Path.line(Pen.FINE, a.x(), a.y(), b.x(), b.y());
    }
}
