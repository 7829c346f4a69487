package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.outline.Outline;
import turnalike.units.Length;

/** Two versions of a piece laid over one another at their head ends, to one scale: one in wood with a full line, the other dashed. */
public final class TwoOutlines {
    private static final double SIDE_MM = 4;
    private static final double KEY_MM = 8;
    private static final double SAMPLE_MM = 12;

    private TwoOutlines() {}

    /**
     * One of the two.
     *
     * @param outline of the piece
     * @param words what it is, in a few words
     */
    public record Version(Outline outline, String words) {}

    /**
     * {@return the picture}
     *
     * @param full drawn in wood with a full line
     * @param dashed drawn over it with a dashed line
     * @param width of the picture, above 20 mm, else {@link IllegalArgumentException}
     * @param tallest the thicker of the two may be on paper
     */
    public static Svg svg(Version full, Version dashed, Length width, Length tallest) {
        if (width.mm() <= 20 || !tallest.isPositive()) {
            throw new IllegalArgumentException(
                    "no room for two pieces in %s × %s mm".formatted(width.mm(), tallest.mm()));
        }
        double length =
                Math.max(full.outline().length().mm(), dashed.outline().length().mm());
        double radius = Math.max(
                full.outline().largestRadius().mm(),
                dashed.outline().largestRadius().mm());
        double scale = Math.min((width.mm() - 2 * SIDE_MM) / length, tallest.mm() / (2 * radius));
        double axis = SIDE_MM + scale * radius;
        OutlinePath path = new OutlinePath(SIDE_MM, axis, scale);
        double foot = axis + scale * radius + KEY_MM;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(path.closed(Pen.WOOD, full.outline()));
        shapes.add(path.closed(Pen.OUTLINE, full.outline()));
        shapes.add(path.closed(Pen.CUT, dashed.outline()));
        shapes.add(Path.line(Pen.OUTLINE, SIDE_MM, foot - 1, SIDE_MM + SAMPLE_MM, foot - 1));
        shapes.add(TextLine.of(Lettering.SMALL, SIDE_MM + SAMPLE_MM + 2, foot, full.words()));
        double second = foot + 6;
        shapes.add(Path.line(Pen.CUT, SIDE_MM, second - 1, SIDE_MM + SAMPLE_MM, second - 1));
        shapes.add(TextLine.of(Lettering.SMALL, SIDE_MM + SAMPLE_MM + 2, second, dashed.words()));
        String title = "%s, full line; %s, dashed".formatted(full.words(), dashed.words());
        return new Svg(width, Length.ofMm(second + 3), title, shapes);
    }
}
