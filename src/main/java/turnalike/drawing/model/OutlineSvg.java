package turnalike.drawing.model;

import java.util.List;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * The piece seen from the side and nothing else, full size: one closed outline to go on with in a drawing program. Lines, arcs and cubic
 * curves are those of the pattern.
 */
public final class OutlineSvg {
    private static final double EDGE_MM = 1;

    private OutlineSvg() {}

    public static Svg of(Pattern pattern) {
        double widest = pattern.outline().largestRadius().mm();
        double width = pattern.length().mm() + 2 * EDGE_MM;
        double height = 2 * (widest + EDGE_MM);
        OutlinePath path = new OutlinePath(EDGE_MM, height / 2, 1);
        return new Svg(
                Length.ofMm(width),
                Length.ofMm(height),
                "outline of %s, full size".formatted(pattern.name()),
                List.of(path.closed(Pen.OUTLINE, pattern.outline())));
    }
}
