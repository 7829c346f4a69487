package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;

/**
 * The heading of a part of a sheet. One too wide for its line, as another language may make it, is set smaller, and on several lines where
 * it must be.
 *
 * @param shapes its top left at the origin
 * @param heightMm down to where the part begins
 */
record PartHeading(List<Shape> shapes, double heightMm) {
    private static final double BASE_MM = 5;
    private static final double LINE_MM = 5;
    private static final double AFTER_MM = 3;

    PartHeading {
        shapes = List.copyOf(shapes);
    }

    static PartHeading of(String text, double roomMm) {
        Lettering lettering = Lettering.HEADING.widthMm(text) <= roomMm ? Lettering.HEADING : Lettering.STRONG;
        List<Shape> out = new ArrayList<>();
        double y = BASE_MM - LINE_MM;
        for (String line : TextWrap.wrap(text, lettering, roomMm)) {
            y += LINE_MM;
            out.add(TextLine.of(lettering, 0, y, line));
        }
        return new PartHeading(out, y + AFTER_MM);
    }
}
