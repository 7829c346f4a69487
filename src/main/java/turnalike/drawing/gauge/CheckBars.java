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

/** Two bars of known length, to lay a rule on: whoever prints at another size than 100 % finds it here before it costs a piece. */
public final class CheckBars {
    /** The metric bar's length. */
    public static final Length METRIC = Length.ofMm(100);

    /** The inch bar's length. */
    public static final Length INCH = Length.ofInches(4);

    private CheckBars() {}

    /** The two bars one above the other with what to do with them; 180 × 17 mm. */
    public static Svg svg() {
        List<Shape> shapes = new ArrayList<>(bar(1, METRIC, 10, "100 mm"));
        shapes.addAll(bar(10, INCH, 4, "4 in"));
        double x = 1 + INCH.mm() + 22;
        shapes.add(TextLine.of(Lettering.STRONG, x, 5, "Print at 100 %"));
        shapes.add(TextLine.of(Lettering.SMALL, x, 10, "“actual size”, not “fit to page”."));
        shapes.add(TextLine.of(Lettering.SMALL, x, 15, "Lay a rule on both bars first."));
        return new Svg(Length.ofMm(180), Length.ofMm(17), "check bars of 100 mm and 4 in", shapes);
    }

    private static List<Shape> bar(double topMm, Length length, int parts, String label) {
        List<Shape> out = new ArrayList<>();
        double part = length.mm() / parts;
        for (int i = 0; i < parts; i += 2) {
            out.add(Path.rectangle(Pen.INK_FILL, 1 + i * part, topMm + 1.5, part, 2.5));
        }
        out.add(Path.line(Pen.FINE, 1, topMm + 1.5, 1 + length.mm(), topMm + 1.5));
        out.add(Path.line(Pen.FINE, 1, topMm + 4, 1 + length.mm(), topMm + 4));
        out.add(Path.line(Pen.LINE, 1, topMm, 1, topMm + 5.5));
        out.add(Path.line(Pen.LINE, 1 + length.mm(), topMm, 1 + length.mm(), topMm + 5.5));
        out.add(TextLine.of(Lettering.STRONG, 3 + length.mm(), topMm + 4.2, label));
        return out;
    }
}
