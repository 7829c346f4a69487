package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Openings of dividers or calipers as bars of their true length, in the order given: set the tool on the bar. */
public final class SettingBars {
    private static final double LEFT_MM = 3;
    private static final double LINE_MM = 4.6;
    private static final double BAR_MM = 8;
    private static final Lettering USE = Lettering.SMALL;

    private SettingBars() {}

    /**
     * One opening.
     *
     * @param opening above zero
     * @param use what it steps or sizes: {@code 0 → 3, 3 → 5}
     */
    public record Bar(Length opening, String use) {}

    /**
     * The bars one above another, two short ones side by side. One longer than the paper is broken, says so, and is set by its figure
     * instead.
     *
     * @param width of the picture
     */
    public static Svg svg(String title, List<Bar> bars, UnitSystem units, Length width) {
        List<Shape> out = new ArrayList<>();
        double half = width.mm() / 2;
        double top = 0;
        int i = 0;
        while (i < bars.size()) {
            boolean pair =
                    i + 1 < bars.size() && isShort(bars.get(i), units, half) && isShort(bars.get(i + 1), units, half);
            Drawn first = drawn(bars.get(i), units, pair ? half : width.mm());
            out.add(group(first, 0, top, i + 1));
            double height = first.heightMm();
            if (pair) {
                Drawn second = drawn(bars.get(i + 1), units, half);
                out.add(group(second, half, top, i + 2));
                height = Math.max(height, second.heightMm());
            }
            top += height;
            i += pair ? 2 : 1;
        }
        return new Svg(width, Length.ofMm(top + 1), title, out);
    }

    private record Drawn(List<Shape> shapes, double heightMm, String tip) {}

    private static Group group(Drawn drawn, double rightMm, double downMm, int number) {
        Map<String, String> attributes = Map.of("class", "setting", "data-setting", Integer.toString(number));
        return new Group(rightMm, downMm, attributes, Optional.of(drawn.tip()), drawn.shapes());
    }

    private static boolean isShort(Bar bar, UnitSystem units, double halfMm) {
        return LEFT_MM
                        + Math.max(
                                useAt(bar, units) + USE.widthMm(bar.use()),
                                bar.opening().mm())
                < halfMm - 3;
    }

    private static double useAt(Bar bar, UnitSystem units) {
        return LEFT_MM + Lettering.STRONG.widthMm(bar.opening().format(units)) + 3;
    }

    private static Drawn drawn(Bar bar, UnitSystem units, double widthMm) {
        List<Shape> out = new ArrayList<>();
        out.add(TextLine.of(Lettering.STRONG, LEFT_MM, 4, bar.opening().format(units)));
        double useAt = useAt(bar, units);
        boolean broken = LEFT_MM + bar.opening().mm() > widthMm - 1;
        String use = (broken ? "bar broken, set by the figure; " : "") + bar.use();
        double y = 4 - LINE_MM;
        for (String line : TextWrap.wrap(use, USE, widthMm - useAt - 1)) {
            y += LINE_MM;
            out.add(TextLine.of(USE, useAt, y, line));
        }
        double barAt = y + 4;
        double end = broken ? widthMm - 1 : LEFT_MM + bar.opening().mm();
        out.add(Path.line(Pen.FINE, LEFT_MM, barAt, end, barAt));
        out.add(tip(LEFT_MM, barAt));
        if (broken) {
            double up = barAt - 2;
            double down = barAt + 2;
            out.add(Path.through(Pen.LINE, end - 6, up, end - 4, down, end - 4, up, end - 2, down));
        } else {
            out.add(tip(end, barAt));
        }
        return new Drawn(out, y + BAR_MM + 1, bar.opening().formatBoth(units));
    }

    /** A point of the dividers: the middle of the line stands at the end of the opening. */
    private static Path tip(double xMm, double barAtMm) {
        return Path.line(Pen.ACCENT, xMm, barAtMm - 2.4, xMm, barAtMm + 2.4);
    }
}
