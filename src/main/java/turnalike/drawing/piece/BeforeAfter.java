package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/** A pattern laid over the one before, both at one scale, head ends on one line: the new one as wood, the old one as a dashed line. */
public final class BeforeAfter {
    private static final double SIDE_MM = 3;

    private BeforeAfter() {}

    /**
     * {@return the picture}
     *
     * @param before the pattern that was
     * @param after the one that is
     * @param width of the picture, above 20 mm
     * @param tallest the thicker body may be on paper
     */
    public static Svg svg(Pattern before, Pattern after, Length width, Length tallest) {
        double longest = Math.max(before.length().mm(), after.length().mm());
        double widest = Math.max(
                before.outline().largestRadius().mm(),
                after.outline().largestRadius().mm());
        double scale = Math.min((width.mm() - 2 * SIDE_MM) / longest, tallest.mm() / (2 * widest));
        double axis = SIDE_MM + scale * widest;
        OutlinePath path = new OutlinePath(SIDE_MM, axis, scale);
        List<Shape> out = new ArrayList<>();
        out.add(path.closed(Pen.WOOD, after.outline()));
        out.add(path.closed(Pen.LINE, after.outline()));
        out.add(path.closed(Pen.DASHED, before.outline()));
        return new Svg(width, Length.ofMm(2 * axis), "the pattern now, and the one before as a dashed line", out);
    }
}
