package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.frame.SegmentedRim;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * One segment of a rim, full size, to saw out by: the outside's and the inside's arc, both ends at their mitre, the grain along the chord, and
 * the middle line of each mortise that the first segment has.
 *
 * @param rim its segments
 * @param inner from the axle to the inside
 * @param outer to the outside
 * @param places how many mortises the whole rim has
 */
public record SegmentTemplate(SegmentedRim rim, Length inner, Length outer, int places) {
    private static final double PAD_MM = 14;
    private static final double TOP_MM = 3;
    private static final double FOOT_MM = 3;
    private static final double HEAD_MM = 2.5;

    private double half() {
        return Math.PI / rim.segments();
    }

    /** {@return how long the outside's chord is} */
    public Length chord() {
        return outer.times(2 * Math.sin(half()));
    }

    /** {@return where the chord begins in the drawing, from its left edge} */
    public Length datum() {
        return Length.ofMm(PAD_MM);
    }

    /** {@return where the outside's highest place lies in the drawing, from its top} */
    public Length edge() {
        return Length.ofMm(TOP_MM);
    }

    private double x(double angle, double radius) {
        return PAD_MM + chord().mm() / 2 + radius * Math.sin(angle);
    }

    private double y(double angle, double radius) {
        return TOP_MM + outer.mm() - radius * Math.cos(angle);
    }

    /** {@return the mortises' directions from the segment's middle, for the segment after the first joint} */
    private List<Double> mortises() {
        List<Double> out = new ArrayList<>();
        double middle = rim.jointAt().radians() + half();
        for (int place = 0; place < places; place++) {
            // Places are counted anticlockwise; on the template, seen from the front, they run from right to left.
            double angle = Math.IEEEremainder(middle - 2 * Math.PI * place / places, 2 * Math.PI);
            if (Math.abs(angle) < half() - 1e-9) {
                out.add(angle);
            }
        }
        return out;
    }

    /** {@return where the mortises' middle lines meet the inside, along the chord from its start} */
    public List<Length> listPlaces() {
        List<Length> out = new ArrayList<>(List.of(Length.ZERO));
        mortises().stream()
                .map(angle -> Length.ofMm(x(angle, inner.mm()) - PAD_MM))
                .sorted()
                .forEach(out::add);
        out.add(chord());
        return out;
    }

    /**
     * {@return the template}
     *
     * @param units in which its sizes are told
     */
    public Svg svg(UnitSystem units) {
        double half = half();
        double in = inner.mm();
        double out = outer.mm();
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Path(
                Pen.LINE,
                List.of(
                        new Path.Move(x(-half, in), y(-half, in)),
                        new Path.Straight(x(-half, out), y(-half, out)),
                        new Path.Arc(out, out, true, x(half, out), y(half, out)),
                        new Path.Straight(x(half, in), y(half, in)),
                        new Path.Arc(in, in, false, x(-half, in), y(-half, in)),
                        new Path.Close())));
        for (double angle : mortises()) {
            shapes.add(Path.line(Pen.DASHED, x(angle, in), y(angle, in), x(angle, out), y(angle, out)));
        }
        double grainY = y(0, (in + out) / 2);
        double reach = Math.min(30, chord().mm() / 6);
        double middle = x(0, in);
        shapes.add(Path.line(Pen.ACCENT, middle - reach, grainY, middle + reach, grainY));
        shapes.add(arrow(middle + reach, grainY, 1));
        shapes.add(arrow(middle - reach, grainY, -1));
        shapes.add(TextLine.centred(Lettering.SMALL, middle, grainY - 1.5, "grain"));
        double height = y(half, in) + FOOT_MM;
        String title = "one of %d rim segments, full size, %s along the outside's chord"
                .formatted(rim.segments(), chord().format(units));
        return new Svg(Length.ofMm(2 * PAD_MM + chord().mm()), Length.ofMm(height), title, shapes);
    }

    private static Path arrow(double x, double y, int way) {
        return Path.polygon(Pen.ACCENT_FILL, x, y, x - way * HEAD_MM, y - 1.2, x - way * HEAD_MM, y + 1.2);
    }
}
