package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.DrawingScale;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.outline.Section;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.turning.Cut;
import turnalike.units.Length;

/**
 * Where on the piece one cut is made: the finished piece small and pale, what is cut in full colour with a heavy outline, below it a bar from
 * line to line with the marks' numbers, and a line across wherever a setting is used. Told apart by width and fill, so also in black and
 * white.
 */
public final class CutDrawing {
    private static final double SIDE_MM = 3;
    private static final double BAR_MM = 3;
    private static final double OVER_MM = 1.8;

    private final Pattern pattern;
    private final List<PlacedMember> run;
    private final List<Mark> marks;
    private final Length width;
    private final DrawingScale scale;

    /**
     * The piece drawn as large as the room lets it be.
     *
     * @param width of the whole picture, above 20 mm
     * @param tallest the body may be
     */
    public CutDrawing(Pattern pattern, Length width, Length tallest) {
        this.pattern = pattern;
        this.run = pattern.placed();
        this.marks = pattern.marks();
        this.width = width;
        double along = (width.mm() - 2 * SIDE_MM) / pattern.length().mm();
        double across = tallest.mm() / (2 * pattern.outline().largestRadius().mm());
        this.scale = DrawingScale.of(Math.min(along, across));
    }

    /**
     * One cut's picture.
     *
     * @param title what it shows, in words
     * @param cut indices of the members that are cut, none for a cut that only marks or sizes
     * @param from the line it begins at
     * @param to the line it reaches; the same for a cut on one line
     * @param places where a setting is used
     */
    public Svg svg(String title, Collection<Integer> cut, Length from, Length to, List<Length> places) {
        double reach = scale.times(pattern.outline().largestRadius());
        double axis = OVER_MM + reach;
        OutlinePath path = new OutlinePath(left(), axis, scale.paperOverWood());
        List<Shape> shapes = new ArrayList<>();
        shapes.addAll(body(path));
        for (int index : cut) {
            PlacedMember placed = run.get(index);
            shapes.add(new Group(
                    0,
                    0,
                    Map.of("class", "cut", "data-member", Integer.toString(placed.number())),
                    Optional.of(placed.where()),
                    List.of(path.closed(Pen.WOOD, placed.outline()), path.closed(Pen.ACCENT, placed.outline()))));
        }
        for (Length place : places) {
            double half = scale.times(pattern.outline().radiusAt(place)) + OVER_MM - 0.4;
            shapes.add(Path.line(Pen.ACCENT, x(place), axis - half, x(place), axis + half));
        }
        double barTop = axis + reach + OVER_MM + 0.6;
        shapes.addAll(bar(from, to, barTop));
        double height = barTop + BAR_MM + Lettering.NUMBER.capHeightMm() + 1.2;
        return new Svg(width, Length.ofMm(height), title, shapes);
    }

    /**
     * The steps of dividers, each its own bar with an arrow to the mark it strikes: from the first to the last in one would look like an opening as
     * long. Bars that lie over one another stand on lines of their own; a number that finds no room is left to the words beside.
     *
     * @param title what it shows, in words
     * @param strides the steps, at least one
     * @param places the marks that are struck
     */
    public Svg steps(String title, List<Cut.Stride> strides, List<Length> places) {
        double reach = scale.times(pattern.outline().largestRadius());
        double axis = OVER_MM + reach;
        List<Shape> shapes = new ArrayList<>(body(new OutlinePath(left(), axis, scale.paperOverWood())));
        for (Length place : places) {
            double half = scale.times(pattern.outline().radiusAt(place)) + OVER_MM - 0.4;
            shapes.add(Path.line(Pen.ACCENT, x(place), axis - half, x(place), axis + half));
        }
        StepBars bars = new StepBars(width.mm(), axis + reach + OVER_MM + 0.6);
        strides.forEach(each -> bars.add(x(each.from()), x(each.to()), numberOf(each.from()), numberOf(each.to())));
        shapes.addAll(bars.shapes());
        return new Svg(width, Length.ofMm(bars.bottomMm()), title, shapes);
    }

    private String numberOf(Length place) {
        return pattern.markAt(place).map(String::valueOf).orElse("");
    }

    /** The piece stands in the middle of the room. */
    private double left() {
        return (width.mm() - scale.times(pattern.length())) / 2;
    }

    private double x(Length place) {
        return left() + scale.times(place);
    }

    private List<Shape> body(OutlinePath path) {
        List<Shape> out = new ArrayList<>();
        out.add(path.closed(Pen.WOOD_FLAT, pattern.outline()));
        for (PlacedMember placed : run) {
            if (placed.member().section() == Section.SQUARE) {
                double half = scale.times(placed.outline().largestRadius());
                double from = x(placed.start());
                double to = x(placed.end());
                double top = path.axisMm() - half;
                double bottom = path.axisMm() + half;
                out.add(Path.line(Pen.FINE, from, top, to, bottom));
                out.add(Path.line(Pen.FINE, from, bottom, to, top));
            }
        }
        out.add(path.closed(Pen.LINE, pattern.outline()));
        return out;
    }

    private List<Shape> bar(Length from, Length to, double topMm) {
        List<Shape> out = new ArrayList<>();
        double start = x(from);
        double end = x(to);
        double base = topMm + BAR_MM + Lettering.NUMBER.capHeightMm() + 0.4;
        double middle = (start + end) / 2;
        boolean point = end - start < 0.5;
        if (point) {
            out.add(Path.polygon(
                    Pen.ACCENT_FILL, middle - 1.6, topMm + BAR_MM, middle + 1.6, topMm + BAR_MM, middle, topMm));
            out.addAll(number(from, middle, base, TextLine.Anchor.MIDDLE));
            return out;
        }
        out.add(Path.rectangle(Pen.ACCENT_FILL, start, topMm + 0.8, end - start, 1.2));
        out.add(Path.line(Pen.ACCENT, start, topMm - 0.2, start, topMm + BAR_MM));
        out.add(Path.line(Pen.ACCENT, end, topMm - 0.2, end, topMm + BAR_MM));
        // Under a short bar the numbers would run into one another: each keeps to its own side, and both inside the
        // picture.
        boolean close = end - start < 8;
        double aside = Lettering.NUMBER.widthMm("888") + 1;
        middle = Math.min(Math.max(middle, aside), width.mm() - aside);
        out.addAll(
                number(from, close ? middle - 0.7 : start, base, close ? TextLine.Anchor.END : TextLine.Anchor.MIDDLE));
        out.addAll(
                number(to, close ? middle + 0.7 : end, base, close ? TextLine.Anchor.START : TextLine.Anchor.MIDDLE));
        return out;
    }

    private List<Shape> number(Length place, double xMm, double baseMm, TextLine.Anchor anchor) {
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i).place().minus(place).abs().mm() < 1e-6) {
                TextLine words = new TextLine(Lettering.NUMBER, xMm, baseMm, anchor, false, Integer.toString(i));
                Box box = Box.of(words);
                double inside = Math.max(0, -box.left()) - Math.max(0, box.right() - width.mm());
                return List.of(
                        new TextLine(Lettering.NUMBER, xMm + inside, baseMm, anchor, false, Integer.toString(i)));
            }
        }
        return List.of();
    }
}
