package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import turnalike.units.SentenceCase;

/**
 * Parts set one below another on as many pages as they need, each page with its number at the foot.
 *
 * @param kind what the sheet is, in words: {@code set record}
 * @param title of the job
 */
record PageFlow(String kind, String title, Paper paper, Paper.Format format) {
    private static final double FOOT_MM = 7;
    private static final double TITLE_LINE_MM = 6;

    /** The width between the margins. */
    double widthMm() {
        return format.width().minus(Paper.MARGIN.times(2)).mm();
    }

    /** The height between the margins, above the foot. */
    double heightMm() {
        return format.height().minus(Paper.MARGIN.times(2)).mm() - FOOT_MM;
    }

    Sheet sheet(List<Flowing> parts) {
        List<List<Shape>> bodies = bodies(parts);
        List<Svg> drawings = new ArrayList<>();
        List<PdfPages.Page> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String pageOf = "page %d of %d".formatted(i + 1, bodies.size());
            List<Shape> shapes = new ArrayList<>(bodies.get(i));
            shapes.addAll(foot(pageOf));
            String name = "%s: %s, %s".formatted(kind, title, pageOf);
            Svg drawing = new Svg(format.width(), format.height(), name, shapes);
            drawings.add(drawing);
            pages.add(new PdfPages.Page(format, List.of(PlacedDrawing.whole(drawing, Length.ZERO, Length.ZERO))));
        }
        String file = (kind + " " + paper.label()).toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Sheet(file, SentenceCase.capital(kind) + ": " + title, drawings, pages);
    }

    private List<List<Shape>> bodies(List<Flowing> parts) {
        double margin = Paper.MARGIN.mm();
        List<List<Shape>> out = new ArrayList<>();
        out.add(new ArrayList<>());
        double top = 0;
        for (Flowing part : parts) {
            Optional<Flowing> left = Optional.of(part);
            while (left.isPresent()) {
                Optional<Flowing.Laid> laid = left.get().lay(heightMm() - top, top == 0);
                if (laid.isPresent()) {
                    out.get(out.size() - 1)
                            .add(Group.at(margin, margin + top, laid.get().shapes()));
                    top += laid.get().heightMm();
                    left = laid.get().rest();
                }
                if (left.isPresent()) {
                    out.add(new ArrayList<>());
                    top = 0;
                }
            }
        }
        return out;
    }

    private List<Shape> foot(String pageOf) {
        double left = Paper.MARGIN.mm();
        double right = left + widthMm();
        double base = format.height().minus(Paper.MARGIN).mm() - 1;
        double room = widthMm() - Lettering.SMALL.widthMm(pageOf) - 6;
        return List.of(
                Path.line(Pen.LINE, left, base - 4.5, right, base - 4.5),
                TextLine.of(Lettering.SMALL, left, base, TextWrap.cut(title, Lettering.SMALL, room)),
                TextLine.ending(Lettering.SMALL, right, base, pageOf));
    }

    /** Title, date and a heavy rule; a title too long for one line goes on below. */
    Flowing head(String heading, String date) {
        String shortDate = TextWrap.cut(date, Lettering.BODY, widthMm() / 3);
        double room = widthMm() - Lettering.BODY.widthMm(shortDate) - 5;
        List<Shape> out = new ArrayList<>();
        double y = title(out, heading, room);
        out.add(TextLine.ending(Lettering.BODY, widthMm(), 6, shortDate));
        out.add(Path.line(Pen.HEAVY, 0, y + 3, widthMm(), y + 3));
        return Flowing.whole(out, y + 5);
    }

    /** Sets a title as large as one line takes, else smaller on several; returns the last line's place. */
    static double title(List<Shape> out, String text, double roomMm) {
        Lettering lettering = Lettering.TITLE.widthMm(text) <= roomMm ? Lettering.TITLE : Lettering.HEADING;
        double y = 6;
        for (String line : TextWrap.wrap(text, lettering, roomMm)) {
            out.add(TextLine.of(lettering, 0, y, line));
            y += TITLE_LINE_MM;
        }
        return y - TITLE_LINE_MM;
    }

    /** A heading over sentences, broken to the width and, when a page ends, to the next page. */
    Flowing sentences(String heading, List<String> sentences) {
        List<String> lines = new ArrayList<>();
        for (String sentence : sentences) {
            lines.addAll(TextWrap.wrap(sentence, Lettering.BODY, widthMm()));
        }
        return new FlowingLines(heading, lines, false);
    }

    /** Cautions, with a bar beside them. */
    Flowing cautions(List<String> cautions) {
        return FlowingCautions.of(cautions, widthMm());
    }
}
