package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.frame.LegAngles;
import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * The angles to bore for a leg, at their true angle: on the left the seat from below with the sight line through a hole, on the right the drill
 * as it leans along that line, to set a bevel by or to cut out and stand beside the bit.
 *
 * @param angles of the leg
 * @param ownLine whether each leg leans along its own line from the seat's middle, so that no sight line is drawn to front and back
 */
public record LegGuide(LegAngles angles, boolean ownLine) {
    private static final double SIDE_MM = 80;
    private static final double APART_MM = 12;
    private static final double FOOT_MM = 14;
    private static final double REACH_MM = 68;

    /** {@return both angles side by side, lines {@value #REACH_MM} mm long} */
    public Svg svg() {
        List<Shape> out = new ArrayList<>();
        sight(out, 6, SIDE_MM);
        lean(out, SIDE_MM + APART_MM + 6, SIDE_MM);
        String title = String.format(
                Locale.ROOT,
                "boring guide at true angles: sight line %s, lean %s",
                angles.sight().format(),
                angles.lean().format());
        return new Svg(Length.ofMm(2 * SIDE_MM + APART_MM), Length.ofMm(SIDE_MM + FOOT_MM), title, out);
    }

    /** From the hole: the front-back line upward, the sight line to its right. */
    private void sight(List<Shape> out, double x, double y) {
        double angle = ownLine ? 0 : angles.sight().radians();
        out.add(Path.line(Pen.LINE, x, y, x, y - REACH_MM));
        if (angle > 0) {
            out.add(Path.line(Pen.ACCENT, x, y, x + REACH_MM * Math.sin(angle), y - REACH_MM * Math.cos(angle)));
            arc(out, x, y, 0, angle);
        }
        out.add(Path.circle(Pen.INK_FILL, x, y, 0.8));
        String name = ownLine ? "the leg's own line from the middle" : "sight line off front to back";
        String figure = ownLine ? name : "%s, %s".formatted(name, degrees(angles.sight()));
        out.add(TextLine.of(Lettering.SMALL, x - 4, y + 8, figure));
    }

    /** From the hole: upright, and the drill's lean to its right. */
    private void lean(List<Shape> out, double x, double y) {
        double lean = angles.lean().radians();
        out.add(Path.line(Pen.HEAVY, x - 4, y, x + REACH_MM, y));
        out.add(Path.line(Pen.DASHED, x, y, x, y - REACH_MM));
        out.add(Path.line(Pen.ACCENT, x, y, x + REACH_MM * Math.sin(lean), y - REACH_MM * Math.cos(lean)));
        arc(out, x, y, 0, lean);
        out.add(TextLine.of(Lettering.SMALL, x - 4, y + 8, "lean from upright along it, " + degrees(angles.lean())));
    }

    private static void arc(List<Shape> out, double x, double y, double from, double to) {
        double radius = REACH_MM * 0.45;
        if (to - from < 1e-3) {
            return;
        }
        out.add(new Path(
                Pen.FINE,
                List.of(
                        new Path.Move(x + radius * Math.sin(from), y - radius * Math.cos(from)),
                        new Path.Arc(radius, radius, true, x + radius * Math.sin(to), y - radius * Math.cos(to)))));
    }

    private static String degrees(Angle angle) {
        return angle.format();
    }
}
