package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A stick for the rails of a row, full size along the rail: a line and a cross to prick for every axis, a circle as large as the hole, and a heavy
 * line where each post's face meets the rail. The same strip serves both rails: mark them side by side.
 *
 * @param length of the rail from face to face, along it
 * @param axes each axis, along the rail from the first face, in order
 * @param holes diameter of the holes in each rail, where the pattern has a tenon; the larger is drawn
 */
public record RailStick(Length length, List<Length> axes, List<Length> holes) {
    private static final double PAD_MM = 14;
    private static final double TOP_MM = 8;
    private static final double LEAST_HALF_MM = 12;
    private static final double CROSS_MM = 3;
    private static final double NUMBER_MM = 7;

    public RailStick {
        axes = List.copyOf(axes);
        holes = List.copyOf(holes);
    }

    /** {@return where the first post's face lies in the drawing, from its left edge} */
    public Length datum() {
        return Length.ofMm(PAD_MM);
    }

    /** {@return where the strip's upper edge lies in the drawing, from its top} */
    public Length edge() {
        return Length.ofMm(TOP_MM);
    }

    /** {@return what is marked, along the rail from the first face: both faces and every axis} */
    public List<Length> listPlaces() {
        List<Length> out = new ArrayList<>();
        out.add(Length.ZERO);
        out.addAll(axes);
        out.add(length);
        return out;
    }

    private double largestHole() {
        return holes.stream().mapToDouble(Length::mm).max().orElse(0);
    }

    /**
     * {@return the whole stick}
     *
     * @param units in which its length is told
     */
    public Svg svg(UnitSystem units) {
        double half = Math.max(LEAST_HALF_MM, largestHole() / 2 + 3);
        double width = 2 * PAD_MM + length.mm();
        double middle = TOP_MM + half;
        double bottom = middle + half + NUMBER_MM;
        List<Shape> out = new ArrayList<>();
        out.add(Path.line(Pen.CUT, 0, TOP_MM, width, TOP_MM));
        out.add(Path.line(Pen.CUT, 0, bottom, width, bottom));
        out.add(Path.line(Pen.DASHED, PAD_MM, middle, PAD_MM + length.mm(), middle));
        for (double face : new double[] {PAD_MM, PAD_MM + length.mm()}) {
            out.add(Path.line(Pen.HEAVY, face, TOP_MM, face, bottom));
        }
        for (int i = 0; i < axes.size(); i++) {
            double x = PAD_MM + axes.get(i).mm();
            out.add(Path.line(Pen.FINE, x, TOP_MM, x, bottom));
            if (largestHole() > 0) {
                out.add(Path.circle(Pen.LINE, x, middle, largestHole() / 2));
            }
            out.add(Path.line(Pen.ACCENT, x - CROSS_MM, middle, x + CROSS_MM, middle));
            out.add(Path.line(Pen.ACCENT, x, middle - CROSS_MM, x, middle + CROSS_MM));
            out.add(TextLine.of(Lettering.NUMBER, x + 1, bottom - 1.5, Integer.toString(i + 1)));
        }
        String title = "stick for the rails, full size, %s from post to post, %d places"
                .formatted(length.format(units), axes.size());
        return new Svg(Length.ofMm(width), Length.ofMm(bottom + 2), title, out);
    }
}
