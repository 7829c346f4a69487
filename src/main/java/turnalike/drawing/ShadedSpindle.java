package turnalike.drawing;

import java.util.List;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/** The turned piece as it will look, lying with its head end left. */
public final class ShadedSpindle {
    private static final double SIDE_MM = 3;
    private static final int BANDS = 16;

    private ShadedSpindle() {}

    /**
     * The piece, as large as the room lets it be.
     *
     * @param width of the picture, above 20 mm, else {@link IllegalArgumentException}
     * @param tallest the body may be on paper
     */
    public static Svg svg(Pattern pattern, Length width, Length tallest) {
        if (width.mm() <= 20 || !tallest.isPositive()) {
            throw new IllegalArgumentException("no room for a piece in %s × %s mm".formatted(width.mm(), tallest.mm()));
        }
        double radius = pattern.outline().largestRadius().mm();
        double scale = Math.min((width.mm() - 2 * SIDE_MM) / pattern.length().mm(), tallest.mm() / (2 * radius));
        double height = 2 * scale * radius + 2 * SIDE_MM;
        double left = (width.mm() - scale * pattern.length().mm()) / 2;
        List<Shape> body =
                new TurnedBody(pattern.outline(), new TurnedBody.Spot(left, height / 2), 1, 0, scale, BANDS).shapes();
        return new Svg(width, Length.ofMm(height), "%s as turned".formatted(pattern.name()), body);
    }
}
