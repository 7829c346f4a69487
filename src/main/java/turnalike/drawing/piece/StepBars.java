package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/** Bars with arrows below a piece, one for each step of the dividers, on as few lines as keep them apart, and the marks' numbers below them. */
final class StepBars {
    private static final double LINE_MM = 2.6;
    private static final double APART_MM = 0.6;
    private static final double ARROW_MM = 1.5;
    private static final double HALF_ARROW_MM = 0.9;

    private final double widthMm;
    private final double topMm;
    private final List<Bar> bars = new ArrayList<>();

    /** One bar on its line, from 0. */
    private record Bar(double from, double to, int line, String first, String last) {
        /** How far outward each number stands so that the two of a short bar are beside one another. */
        double asideMm() {
            double both = (Lettering.NUMBER.widthMm(first) + Lettering.NUMBER.widthMm(last)) / 2 + 2 * APART_MM;
            return Math.max(0, both - Math.abs(to - from)) / 2;
        }

        boolean meets(double left, double right) {
            return Math.min(from, to) - APART_MM < right && left < Math.max(from, to) + APART_MM;
        }
    }

    /**
     * @param widthMm of the picture
     * @param topMm where the bars begin, from its top
     */
    StepBars(double widthMm, double topMm) {
        this.widthMm = widthMm;
        this.topMm = topMm;
    }

    /** A step from a mark to another, in the picture, with their numbers. */
    void add(double from, double to, String first, String last) {
        int line = 0;
        while (isTaken(line, Math.min(from, to), Math.max(from, to))) {
            line++;
        }
        bars.add(new Bar(from, to, line, first, last));
    }

    private boolean isTaken(int line, double left, double right) {
        return bars.stream().anyMatch(each -> each.line() == line && each.meets(left, right));
    }

    private double numbersMm() {
        int lines = 1 + bars.stream().mapToInt(Bar::line).max().orElse(0);
        return topMm + lines * LINE_MM + Lettering.NUMBER.capHeightMm() + 0.6;
    }

    /** Where the picture ends. */
    double bottomMm() {
        return numbersMm() + 1;
    }

    List<Shape> shapes() {
        List<Shape> out = new ArrayList<>();
        List<TextLine> numbers = new ArrayList<>();
        for (Bar bar : bars) {
            double y = topMm + bar.line() * LINE_MM + LINE_MM / 2;
            double way = Math.signum(bar.to() - bar.from());
            double foot = bar.to() - way * Math.min(ARROW_MM, Math.abs(bar.to() - bar.from()));
            out.add(Path.line(Pen.ACCENT, bar.from(), y - LINE_MM / 2, bar.from(), y + LINE_MM / 2));
            out.add(Path.line(Pen.ACCENT, bar.from(), y, foot, y));
            out.add(Path.polygon(Pen.ACCENT_FILL, bar.to(), y, foot, y - HALF_ARROW_MM, foot, y + HALF_ARROW_MM));
            number(numbers, bar.last(), bar.to() + way * bar.asideMm());
        }
        bars.forEach(
                bar -> number(numbers, bar.first(), bar.from() - Math.signum(bar.to() - bar.from()) * bar.asideMm()));
        out.addAll(numbers);
        return out;
    }

    /** Left out where another stands; what is struck comes before what it is struck from. */
    private void number(List<TextLine> numbers, String text, double x) {
        double half = Lettering.NUMBER.widthMm(text) / 2;
        double inside = Math.min(Math.max(x, half), widthMm - half);
        TextLine line = TextLine.centred(Lettering.NUMBER, inside, numbersMm(), text);
        Box box = Box.of(line).grown(APART_MM / 2);
        if (!text.isEmpty() && numbers.stream().noneMatch(each -> Box.of(each).meets(box))) {
            numbers.add(line);
        }
    }
}
