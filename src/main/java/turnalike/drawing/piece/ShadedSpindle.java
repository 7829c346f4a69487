package turnalike.drawing.piece;

import java.util.List;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/** The turned piece as it will look, lying with its head end left. */
public final class ShadedSpindle {
    private static final double SIDE_MM = 3;
    private static final int BANDS = 32;

    /** As many as are told apart in a picture a finger wide. */
    private static final int FEW_BANDS = 10;

    private ShadedSpindle() {}

    /** The whole piece of a pattern, see {@link #svg(Outline, String, Length, Length)}. */
    public static Svg svg(Pattern pattern, Length width, Length tallest) {
        return svg(pattern.outline(), "%s as turned".formatted(pattern.name()), width, tallest);
    }

    /** The same for one picture among many: shaded in fewer steps, so that it is a third as long. */
    public static Svg small(Pattern pattern, Length width, Length tallest) {
        return svg(pattern.outline(), "%s as turned".formatted(pattern.name()), width, tallest, FEW_BANDS);
    }

    /**
     * A piece or a part of one, as large as the room lets it be.
     *
     * @param title what it shows, read aloud in its place
     * @param width of the picture, above 20 mm, else {@link IllegalArgumentException}
     * @param tallest the body may be on paper
     */
    public static Svg svg(Outline outline, String title, Length width, Length tallest) {
        return svg(outline, title, width, tallest, BANDS);
    }

    private static Svg svg(Outline outline, String title, Length width, Length tallest, int bands) {
        if (width.mm() <= 20 || !tallest.isPositive()) {
            throw new IllegalArgumentException("no room for a piece in %s × %s mm".formatted(width.mm(), tallest.mm()));
        }
        double radius = outline.largestRadius().mm();
        double length = outline.length().mm();
        double scale = Math.min((width.mm() - 2 * SIDE_MM) / length, tallest.mm() / (2 * radius));
        double height = 2 * scale * radius + 2 * SIDE_MM;
        double left =
                (width.mm() - scale * length) / 2 - scale * outline.start().mm();
        List<Shape> body = new TurnedBody(outline, new TurnedBody.Spot(left, height / 2), 1, 0, scale, bands).shapes();
        return new Svg(width, Length.ofMm(height), title, body);
    }
}
