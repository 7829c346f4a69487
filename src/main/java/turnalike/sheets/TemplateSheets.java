package turnalike.sheets;

import java.util.List;
import java.util.Locale;
import turnalike.drawing.gauge.ProfileTemplate;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.UnitSystem;

/** The full-size checking template, in strips that fit the paper. */
final class TemplateSheets {
    private static final String FILE = "checking-template";

    private TemplateSheets() {}

    /** The template on as few pages as it takes; when it is too deep for them, one page that says so. Its SVG is the whole of it in one piece. */
    public static Sheet of(Pattern pattern, UnitSystem units, Paper paper) {
        return of(pattern, units, StickSheets.WITHIN, paper);
    }

    /**
     * The same.
     *
     * @param within how far the joined strips may be out from end to end
     */
    public static Sheet of(Pattern pattern, UnitSystem units, Length within, Paper paper) {
        ProfileTemplate template = ProfileTemplate.of(pattern, units);
        Svg drawing = template.svg();
        String title = "Checking template: " + pattern.name();
        if (!LongSheets.fits(drawing.height(), paper)) {
            return tooDeep(title, drawing, paper);
        }
        return LongSheets.of(
                new LongSheets.Subject(
                        FILE,
                        title,
                        List.of(
                                "Full size. Glue to card, cut along the thick line, hold the curved edge to the piece with the"
                                        + " lathe stopped; on a square member hold it to a flat. Lines to the edge are marks, short ticks"
                                        + " diameters (Ø)."),
                        drawing,
                        drawing,
                        template.datum(),
                        template.edge(),
                        template.listPlaces(),
                        List.of(),
                        Length.ZERO,
                        pattern.length(),
                        within),
                units,
                paper);
    }

    private static Sheet tooDeep(String title, Svg drawing, Paper paper) {
        Paper.Format format = paper.landscape();
        double margin = Paper.MARGIN.mm();
        List<Shape> words = List.of(
                TextLine.of(Lettering.HEADING, margin, margin + 4, title),
                TextLine.of(
                        Lettering.BODY,
                        margin,
                        margin + 14,
                        "The template is %s high, more than this paper takes. Print its SVG on a larger sheet, or cut it from the DXF."
                                .formatted(
                                        LengthText.printMm(drawing.height(), 0).text())));
        Svg page = new Svg(format.width(), format.height(), title, words);
        String name = FILE + "-" + paper.label().toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Sheet(
                name,
                title,
                List.of(drawing),
                List.of(new PdfPages.Page(format, List.of(PlacedDrawing.whole(page, Length.ZERO, Length.ZERO)))));
    }
}
