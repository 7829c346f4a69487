package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.job.YearOfJoints;
import turnalike.job.YearWords;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.wood.Moisture;
import turnalike.year.Joint;
import turnalike.year.JointYear;

/**
 * One joint through the year: the tenon's end in the hole's mouth when dry and when damp, its rings along the hole's grain, where both
 * extremes meet, the differences enlarged; and every diameter over the range of moisture.
 *
 * @param stand the joint
 * @param units in which sizes are lettered
 */
public record JointDrawing(YearOfJoints.Stand stand, UnitSystem units) {
    private static final double WIDTH_MM = 170;
    private static final double HEIGHT_MM = 66;
    private static final double PANEL_MM = 42;
    private static final double RADIUS_MM = 13;
    private static final double TOP_MM = 6;

    private static final double APART_MM = 1;
    private static final double KEY_MM = 42;
    private static final double KEY_LINE_MM = 9.5;

    /** The largest difference from the made size is drawn so many millimetres on the radius. */
    private static final double SHOWN_MM = 3;

    /** As many places of each curve are drawn as stretches. */
    private static final int STEPS = 48;

    /** One diameter over the moisture. */
    private record Curve(String name, Pen pen, Function<Joint.Sizes, Length> size) {}

    private static final List<Curve> CURVES = List.of(
            new Curve("tenon along its rings", Pen.OUTLINE, Joint.Sizes::tangential),
            new Curve("tenon across its rings", Pen.FINE, Joint.Sizes::radial),
            new Curve("hole across its grain", Pen.ACCENT, Joint.Sizes::holeAcross),
            new Curve("hole along its grain", Pen.CUT, Joint.Sizes::holeAlong));

    /** {@return the picture, 170 mm wide} */
    public Svg svg() {
        JointYear year = stand.year();
        List<Shape> out = new ArrayList<>();
        double times = enlarged(year);
        mouth(out, PANEL_MM / 2, year.dry(), "dry", times);
        mouth(out, PANEL_MM * 1.5 + 3, year.damp(), "damp", times);
        out.add(TextLine.of(
                Lettering.TINY,
                0,
                HEIGHT_MM - 1,
                String.format(Locale.ROOT, "differences drawn %.0f times their size; rings along the grain", times)));
        range(out, year);
        String title = "%s in the %s, dry and damp, and its sizes from %s to %s"
                .formatted(
                        stand.tenon().caption(),
                        stand.hole(),
                        year.home().dry().moisture().text(),
                        year.home().damp().moisture().text());
        return new Svg(Length.ofMm(WIDTH_MM), Length.ofMm(HEIGHT_MM), title, out);
    }

    /** How many times a difference of diameters is enlarged, beyond the scale of the drawing: a whole number with one figure. */
    private static double enlarged(JointYear year) {
        double madeMm = year.joint().hole().mm();
        double most = 0;
        for (Joint.Sizes sizes : List.of(year.dry(), year.damp())) {
            for (Curve curve : CURVES) {
                most = Math.max(most, Math.abs(curve.size().apply(sizes).mm() - madeMm));
            }
        }
        double scale = RADIUS_MM / (madeMm / 2);
        double wanted = most > 0 ? Math.min(1000, SHOWN_MM / (most / 2 * scale)) : 1;
        double unit = Math.pow(10, Math.floor(Math.log10(wanted)));
        return Math.max(1, Math.floor(wanted / unit) * unit);
    }

    private double radius(Length diameter, double times) {
        double madeMm = stand.year().joint().hole().mm();
        return RADIUS_MM * (1 + times * (diameter.mm() / madeMm - 1));
    }

    private void mouth(List<Shape> out, double x, Joint.Sizes sizes, String season, double times) {
        double y = TOP_MM + PANEL_MM / 2;
        double left = x - PANEL_MM / 2 + 0.5;
        double side = PANEL_MM - 1;
        out.add(Path.rectangle(Pen.WOOD_FLAT, left, y - side / 2, side, side));
        List<Path> grain = new ArrayList<>();
        for (double up = -side / 2 + 2; up < side / 2; up += 2.6) {
            grain.add(Path.line(Pen.FINE, left, y + up, left + side, y + up));
        }
        out.addAll(Path.together(Pen.FINE, grain));
        out.add(ellipse(Pen.PAPER, x, y, radius(sizes.holeAlong(), times), radius(sizes.holeAcross(), times)));
        double wide = radius(sizes.tangential(), times);
        double high = radius(sizes.radial(), times);
        out.add(ellipse(Pen.WOOD, x, y, wide, high));
        rings(out, x, y, wide, high);
        out.add(ellipse(Pen.OUTLINE, x, y, wide, high));
        out.add(ellipse(Pen.ACCENT, x, y, radius(sizes.holeAlong(), times), radius(sizes.holeAcross(), times)));
        out.add(TextLine.centred(
                Lettering.NUMBER, x, TOP_MM - 2, "%s, %s".formatted(season, percent(sizes.moisture()))));
        double base = TOP_MM + PANEL_MM + 4;
        out.add(TextLine.centred(
                Lettering.TINY,
                x,
                base,
                "along: " + YearWords.briefFit(sizes.tangential().minus(sizes.holeAlong()), units)));
        out.add(TextLine.centred(
                Lettering.TINY,
                x,
                base + 3.6,
                "across: " + YearWords.briefFit(sizes.radial().minus(sizes.holeAcross()), units)));
    }

    /** Year rings as they cross the tenon's end, level in the middle and bent like those of a large trunk. */
    private static void rings(List<Shape> out, double x, double y, double wide, double high) {
        List<Path> rings = new ArrayList<>();
        for (double share = -0.8; share < 0.9; share += 0.2) {
            double half = wide * Math.sqrt(1 - share * share) * 0.97;
            double up = y + share * high;
            rings.add(new Path(
                    Pen.FINE,
                    List.of(
                            new Path.Move(x - half, up),
                            new Path.Cubic(x - half / 3, up - 0.7, x + half / 3, up - 0.7, x + half, up))));
        }
        out.addAll(Path.together(Pen.FINE, rings));
    }

    private static Path ellipse(Pen pen, double x, double y, double rx, double ry) {
        return new Path(
                pen,
                List.of(
                        new Path.Move(x - rx, y),
                        new Path.Arc(rx, ry, true, x + rx, y),
                        new Path.Arc(rx, ry, true, x - rx, y),
                        new Path.Close()));
    }

    /** Every diameter from the driest to the dampest, and where the tenon was made. */
    private void range(List<Shape> out, JointYear year) {
        double made = Math.min(
                Moisture.FIBRE_SATURATION.pct(), year.joint().tenonWood().made().pct());
        double dry = year.home().dry().moisture().pct();
        double damp = year.home().damp().moisture().pct();
        Plot.Span x = Plot.Span.around(Math.min(made, dry), Math.max(made, damp), 0.04);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<List<Double>> curves = new ArrayList<>();
        for (Curve curve : CURVES) {
            List<Double> values = new ArrayList<>();
            for (int i = 0; i <= STEPS; i++) {
                double value = in(curve.size().apply(year.joint().at(Moisture.ofPct(dry + (damp - dry) * i / STEPS))));
                values.add(value);
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
            curves.add(values);
        }
        Plot.Span y = Plot.Span.around(least, most, 0.06);
        Ticks up = Ticks.between(y.least(), y.most(), 5);
        double left = 2 * PANEL_MM + 8 + Plot.ticksWidthMm(up);
        Plot plot = new Plot(new Box(left, TOP_MM, WIDTH_MM - 1, TOP_MM + 37), x, y);
        out.add(plot.frame());
        out.addAll(plot.upTicks(up));
        out.addAll(plot.alongTicks(Ticks.between(x.least(), x.most(), 6)));
        String unit = units == UnitSystem.INCH ? "in" : "mm";
        TextLine axis = TextLine.of(Lettering.TINY, left - 6, TOP_MM - 2, "diameter, " + unit);
        out.add(axis);
        out.add(TextLine.ending(Lettering.TINY, WIDTH_MM - 1, TOP_MM + 37 + 8.2, "wood's moisture, %"));
        double at = plot.xMm(made);
        out.add(Path.line(Pen.DASHED, at, TOP_MM, at, TOP_MM + 37));
        TextLine turned = TextLine.centred(Lettering.TINY, at, TOP_MM - 2, "turned");
        double clear = Box.of(axis).right() + APART_MM;
        out.add(
                Box.of(turned).left() >= clear
                        ? turned
                        : TextLine.of(Lettering.TINY, clear, turned.yMm(), turned.text()));
        for (int c = 0; c < CURVES.size(); c++) {
            double[] line = new double[2 * (STEPS + 1)];
            for (int i = 0; i <= STEPS; i++) {
                line[2 * i] = plot.xMm(dry + (damp - dry) * i / STEPS);
                line[2 * i + 1] = plot.yMm(curves.get(c).get(i));
            }
            out.add(Path.through(CURVES.get(c).pen(), line));
        }
        key(out, left - 4);
    }

    /** Two beside two, or one below the other where their names are too long for that. */
    private static void key(List<Shape> out, double left) {
        double widest = CURVES.stream()
                .mapToDouble(curve -> Lettering.TINY.widthMm(curve.name()))
                .max()
                .orElse(0);
        boolean two = KEY_LINE_MM + widest <= Math.min(KEY_MM - APART_MM, WIDTH_MM - left - KEY_MM);
        int columns = two ? 2 : 1;
        for (int c = 0; c < CURVES.size(); c++) {
            double x = left + c % columns * KEY_MM;
            double y = TOP_MM + 37 + 13 + 4 * Math.floorDiv(c, columns);
            out.add(Path.line(CURVES.get(c).pen(), x, y - 0.9, x + 8, y - 0.9));
            out.add(TextLine.of(
                    Lettering.TINY, x + KEY_LINE_MM, y, CURVES.get(c).name()));
        }
    }

    private double in(Length length) {
        return units == UnitSystem.INCH ? length.inches() : length.mm();
    }

    private static String percent(Moisture moisture) {
        return String.format(Locale.ROOT, "%.1f %%", moisture.pct());
    }
}
