package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.piece.CutDrawing;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.LengthLabels;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.turning.Cut;
import turnalike.turning.Phase;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/**
 * Bench card 2: the cuts in their order, each with its number, tool, setting, the lines it runs between, what to beware of, and beside it a
 * small drawing of the place. What to do is set in 14 pt and more, to be read from the lathe.
 */
final class CutCard {
    private static final double NUMBER_MM = 14;
    private static final double DRAWING_MM = 78;
    private static final double GAP_MM = 5;
    private static final double LINE_MM = 6.2;
    /** More lines than this make a row too tall beside its picture. */
    private static final int MOST_BESIDE = 10;

    private static final Length TALLEST_BODY = Length.ofMm(14);

    private final CutCardContent content;
    private final PageFlow flow;
    private final double widthMm;
    private final double textMm;
    private final CutDrawing drawing;

    private CutCard(CutCardContent content, Paper paper) {
        this.content = content;
        this.flow = new PageFlow("cut order", content.title(), paper, paper.portrait());
        this.widthMm = flow.widthMm();
        this.textMm = widthMm - NUMBER_MM - GAP_MM - DRAWING_MM;
        this.drawing = new CutDrawing(content.pattern(), Length.ofMm(DRAWING_MM), TALLEST_BODY);
    }

    /** The card on portrait pages. */
    public static Sheet of(CutCardContent content, Paper paper) {
        return new CutCard(content, paper).sheet();
    }

    private Sheet sheet() {
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head(content.title(), "order of cuts"));
        parts.add(facts());
        if (!content.cautions().isEmpty()) {
            parts.add(flow.cautions(content.cautions()));
        }
        List<String> cautions = Cut.cautions(content.cuts());
        Optional<Phase> before = Optional.empty();
        for (int i = 0; i < content.cuts().size(); i++) {
            Cut cut = content.cuts().get(i);
            parts.addAll(row(cut, cautions.get(i), before.equals(Optional.of(cut.phase()))));
            before = Optional.of(cut.phase());
        }
        return flow.sheet(parts);
    }

    private Flowing facts() {
        List<Shape> out = new ArrayList<>();
        double line = 0;
        for (String words : TextWrap.wrap(content.subtitle(), Lettering.BODY, widthMm)) {
            line += 5;
            out.add(TextLine.of(Lettering.BODY, 0, line, words));
        }
        int inRow = Math.max(1, Math.min(3, content.facts().size()));
        double each = widthMm / inRow;
        for (int i = 0; i < content.facts().size(); i++) {
            BenchCardContent.Fact fact = content.facts().get(i);
            double x = i % inRow * each;
            double y = line + 3 + i / inRow * 16;
            Lettering large =
                    Lettering.SETTING.widthMm(fact.figure()) <= each - 3 ? Lettering.SETTING : Lettering.HEADING;
            out.add(TextLine.of(Lettering.SMALL, x, y + 4, TextWrap.cut(fact.name(), Lettering.SMALL, each - 3)));
            out.add(TextLine.of(large, x, y + 9.8, TextWrap.cut(fact.figure(), large, each - 3)));
            out.add(TextLine.of(Lettering.SMALL, x, y + 13.8, TextWrap.cut(fact.beside(), Lettering.SMALL, each - 3)));
        }
        int rows = (content.facts().size() + inRow - 1) / inRow;
        return Flowing.whole(out, line + 3 + rows * 16 + 1);
    }

    /**
     * One cut. What to do stands beside its picture, or below it on as many pages as it needs where members with long names are many.
     *
     * @param caution what to beware of; empty where the phase has said it
     * @param goesOn whether the row above is of the same phase
     */
    private List<Flowing> row(Cut cut, String caution, boolean goesOn) {
        List<Shape> out = new ArrayList<>();
        double top = goesOn ? 2 : 9.5;
        if (goesOn) {
            out.add(Path.line(Pen.FINE, 0, 0.5, widthMm, 0.5));
        } else {
            String phase = SentenceCase.capital(cut.phase().text());
            out.add(Path.rectangle(Pen.TINT, 0, 1, widthMm, 7));
            out.add(TextLine.of(Lettering.HEADING, 1.5, 6.1, phase));
        }
        String what = SentenceCase.capital(cut.what());
        List<String> lines = TextWrap.wrap(what, Lettering.LATHE, textMm);
        double right = place(out, cut, top);
        double left = head(out, cut, top);
        if (lines.size() <= MOST_BESIDE) {
            left = beware(out, caution, textMm, words(out, lines, left));
            return List.of(Flowing.whole(out, why(out, cut, Math.max(left + 1.4, right)) + 2));
        }
        List<Shape> after = new ArrayList<>();
        double end = why(after, cut, beware(after, caution, widthMm - NUMBER_MM, 0));
        return List.of(
                Flowing.whole(out, Math.max(left, right)),
                new FlowingWords(
                        TextWrap.wrap(what, Lettering.LATHE, widthMm - NUMBER_MM), Lettering.LATHE, NUMBER_MM, LINE_MM),
                Flowing.whole(after, end + 2));
    }

    /** Number and tool; returns where they end. */
    private double head(List<Shape> out, Cut cut, double topMm) {
        double y = topMm + 6.4;
        String tool = TextWrap.cut(SentenceCase.capital(cut.tool().text()), Lettering.SETTING, textMm);
        out.add(TextLine.ending(Lettering.TITLE, NUMBER_MM - 4, y, Integer.toString(cut.order())));
        out.add(TextLine.of(Lettering.SETTING, NUMBER_MM, y, tool));
        return y + 0.6;
    }

    private static double words(List<Shape> out, List<String> lines, double fromMm) {
        double y = fromMm;
        for (String line : lines) {
            y += LINE_MM;
            out.add(TextLine.of(Lettering.LATHE, NUMBER_MM, y, line));
        }
        return y;
    }

    /** What to beware of, with a bar beside it; returns where it ends. */
    private static double beware(List<Shape> out, String caution, double widthMm, double fromMm) {
        if (caution.isEmpty()) {
            return fromMm;
        }
        double y = fromMm;
        for (String line : TextWrap.wrap(SentenceCase.capital(caution), Lettering.LATHE, widthMm - 3.5)) {
            y += LINE_MM;
            out.add(TextLine.of(Lettering.LATHE, NUMBER_MM + 3.5, y + 0.6, line));
        }
        out.add(Path.rectangle(Pen.ACCENT_FILL, NUMBER_MM, fromMm + 2, 1.4, y - fromMm - 0.4));
        return y + 0.6;
    }

    /** Setting, drawing and lines, on the right; returns where it ends. */
    private double place(List<Shape> out, Cut cut, double topMm) {
        double x = NUMBER_MM + textMm + GAP_MM;
        double y = topMm;
        UnitSystem units = content.units();
        if (cut.setting().isPresent()) {
            Length setting = cut.setting().get();
            String figure = setting.format(units);
            out.add(TextLine.of(Lettering.LATHE, x, y + 6.4, "set"));
            double after = x + Lettering.LATHE.widthMm("set ");
            out.add(TextLine.of(Lettering.SETTING, after, y + 6.4, figure));
            out.add(TextLine.of(
                    Lettering.BODY,
                    after + Lettering.SETTING.widthMm(figure + " "),
                    y + 6.4,
                    "(" + setting.format(units.other()) + ")"));
            y += 7.5;
        }
        String title = "cut %d: %s".formatted(cut.order(), cut.what());
        Svg picture = cut.strides().isEmpty()
                ? drawing.svg(title, shown(cut), cut.from(), cut.to(), sizedAt(cut))
                : drawing.steps(title, cut.strides(), cut.places());
        out.add(Group.at(x, y, picture.shapes()));
        y += picture.height().mm();
        for (String line : TextWrap.wrap(lines(cut), Lettering.LATHE, DRAWING_MM)) {
            y += LINE_MM;
            out.add(TextLine.of(Lettering.LATHE, x, y - 1, line));
        }
        return y + 0.6;
    }

    private double why(List<Shape> out, Cut cut, double topMm) {
        double y = topMm;
        if (cut.why().isPresent()) {
            y += 1;
            String text = "Why in this order: " + cut.why().get() + ".";
            for (String line : TextWrap.wrap(text, Lettering.BODY, widthMm - NUMBER_MM)) {
                y += 5;
                out.add(TextLine.of(Lettering.BODY, NUMBER_MM, y - 0.6, line));
            }
        }
        return y;
    }

    private List<Integer> shown(Cut cut) {
        if (cut.phase() == Phase.ROUND) {
            List<Integer> out = new ArrayList<>();
            content.pattern().placed().forEach(placed -> {
                boolean inside = placed.start().compareTo(cut.from()) >= 0
                        && placed.end().compareTo(cut.to()) <= 0;
                if (inside) {
                    out.add(placed.number() - 1);
                }
            });
            return out;
        }
        boolean whole = (cut.phase().cutsMembers() && !cut.sizes()) || cut.phase() == Phase.SANDING;
        return whole ? cut.members() : List.of();
    }

    /** Lines across the body only where they are struck or sized; on a member that is cut they would hide it. */
    private List<Length> sizedAt(Cut cut) {
        return shown(cut).isEmpty() ? cut.places() : List.of();
    }

    /** {@code mark 5 to 9: 3 to 8 in}. */
    private String lines(Cut cut) {
        UnitSystem units = content.units();
        if (cut.sizes() && cut.places().size() > 1) {
            // Each is named on the left; from the first to the last would look like one long cut.
            return Article.count(cut.places().size(), "place");
        }
        if (cut.strides().size() > 1) {
            List<String> struck = cut.places().stream()
                    .map(each -> LengthLabels.bare(each, units))
                    .toList();
            return "strikes " + String.join(", ", struck) + " " + units.symbol();
        }
        if (cut.from().equals(cut.to())) {
            return content.pattern()
                            .markAt(cut.from())
                            .map(m -> "at mark " + m + ": ")
                            .orElse("at ")
                    + cut.from().format(units);
        }
        String places = LengthLabels.bare(cut.from(), units) + " to " + cut.to().format(units);
        Optional<Integer> first = content.pattern().markAt(cut.from());
        Optional<Integer> last = content.pattern().markAt(cut.to());
        return first.isPresent() && last.isPresent()
                ? "mark %d to %d: %s".formatted(first.get(), last.get(), places)
                : places;
    }
}
