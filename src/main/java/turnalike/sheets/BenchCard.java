package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import turnalike.drawing.gauge.CheckBars;
import turnalike.drawing.gauge.SettingBars;
import turnalike.drawing.piece.SpindleDrawing;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.Table;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.pattern.Mark;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The card that hangs by the lathe: the piece drawn to scale, what to set the dividers and calipers to, where every mark lies. The openings
 * are bars of true length, so the tools are set on the paper itself. Set to be read at arm's length, on as many pages as it needs.
 */
final class BenchCard {
    private static final double FOOT_MM = 20;
    private static final Length TALLEST_BODY = Length.ofMm(60);

    private final BenchCardContent content;
    private final Paper paper;
    private final double widthMm;

    private BenchCard(BenchCardContent content, Paper paper) {
        this.content = content;
        this.paper = paper;
        this.widthMm = paper.portrait().width().minus(Paper.MARGIN.times(2)).mm();
    }

    /** The card on portrait pages. Its SVGs are the pages. */
    public static Sheet of(BenchCardContent content, Paper paper) {
        return new BenchCard(content, paper).sheet();
    }

    private Sheet sheet() {
        Paper.Format format = paper.portrait();
        List<List<Shape>> bodies = bodies();
        List<Svg> drawings = new ArrayList<>();
        List<PdfPages.Page> pages = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            String pageOf = "page %d of %d".formatted(i + 1, bodies.size());
            List<Shape> shapes = new ArrayList<>(bodies.get(i));
            shapes.addAll(foot(pageOf));
            Svg drawing = new Svg(
                    format.width(), format.height(), "bench card: %s, %s".formatted(content.title(), pageOf), shapes);
            drawings.add(drawing);
            pages.add(new PdfPages.Page(format, List.of(PlacedDrawing.whole(drawing, Length.ZERO, Length.ZERO))));
        }
        String name = "bench-card-" + paper.label().toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Sheet(name, "Bench card: " + content.title(), drawings, pages);
    }

    private List<List<Shape>> bodies() {
        double margin = Paper.MARGIN.mm();
        double bottom = paper.portrait().height().minus(Paper.MARGIN).mm() - FOOT_MM;
        List<List<Shape>> out = new ArrayList<>();
        out.add(new ArrayList<>());
        double top = margin;
        for (Flowing part : parts()) {
            Optional<Flowing> left = Optional.of(part);
            while (left.isPresent()) {
                boolean fresh = top == margin;
                Optional<Flowing.Laid> laid = left.get().lay(bottom - top, fresh);
                if (laid.isPresent()) {
                    out.get(out.size() - 1).add(Group.at(margin, top, laid.get().shapes()));
                    top += laid.get().heightMm();
                    left = laid.get().rest();
                }
                if (left.isPresent()) {
                    out.add(new ArrayList<>());
                    top = margin;
                }
            }
        }
        return out;
    }

    private List<Flowing> parts() {
        List<Flowing> out = new ArrayList<>();
        out.add(head());
        out.add(piece());
        if (!content.given().isEmpty()) {
            out.add(sentences(content.given()));
        }
        if (!content.dividers().isEmpty()) {
            out.add(dividers());
        }
        if (!content.calipers().isEmpty()) {
            out.add(calipers());
        }
        content.byEye().ifPresent(text -> out.add(sentences(List.of(text))));
        if (!content.cautions().isEmpty()) {
            out.add(cautions());
        }
        out.add(marks());
        return out;
    }

    private Flowing head() {
        List<Shape> out = new ArrayList<>();
        double line = PageFlow.title(out, content.title(), widthMm) + 1;
        for (String words : TextWrap.wrap(content.subtitle(), Lettering.BODY, widthMm)) {
            line += 5;
            out.add(TextLine.of(Lettering.BODY, 0, line, words));
        }
        out.add(Path.line(Pen.HEAVY, 0, line + 3, widthMm, line + 3));
        double top = line + 4;
        int inRow = Math.max(1, Math.min(4, content.facts().size()));
        double each = widthMm / inRow;
        for (int i = 0; i < content.facts().size(); i++) {
            BenchCardContent.Fact fact = content.facts().get(i);
            double x = i % inRow * each;
            double y = top + i / inRow * 16;
            out.add(TextLine.of(Lettering.SMALL, x, y + 4, TextWrap.cut(fact.name(), Lettering.SMALL, each - 2)));
            out.add(fitted(x, y + 9.6, fact.figure(), each - 2, Lettering.SETTING, Lettering.HEADING));
            out.add(TextLine.of(Lettering.SMALL, x, y + 13.6, TextWrap.cut(fact.beside(), Lettering.SMALL, each - 2)));
        }
        int rows = (content.facts().size() + inRow - 1) / inRow;
        return Flowing.whole(out, top + rows * 16 + 1);
    }

    /** In the first lettering that fits, else in the last and cut short. */
    private static TextLine fitted(double xMm, double yMm, String text, double roomMm, Lettering... letterings) {
        Lettering last = letterings[letterings.length - 1];
        for (Lettering lettering : letterings) {
            if (lettering.widthMm(text) <= roomMm) {
                return TextLine.of(lettering, xMm, yMm, text);
            }
        }
        return TextLine.of(last, xMm, yMm, TextWrap.cut(text, last, roomMm));
    }

    private Flowing piece() {
        SpindleDrawing drawing =
                SpindleDrawing.toScale(content.pattern(), content.units(), Length.ofMm(widthMm), TALLEST_BODY);
        Svg svg = drawing.svg();
        List<Shape> out = new ArrayList<>(svg.shapes());
        String caption =
                "Scale %s. Figures in %s: diameters above, marks below with their distance from the datum end (left)."
                        .formatted(
                                drawing.scale().text(), content.units() == UnitSystem.INCH ? "inches" : "millimetres");
        double y = svg.height().mm() + 4;
        for (String line : TextWrap.wrap(caption, Lettering.SMALL, widthMm)) {
            out.add(TextLine.of(Lettering.SMALL, 0, y, line));
            y += 4.2;
        }
        return Flowing.whole(out, y + 1);
    }

    private Flowing sentences(List<String> each) {
        List<Shape> out = new ArrayList<>();
        double y = 5;
        for (String sentence : each) {
            for (String line : TextWrap.wrap(sentence, Lettering.BODY, widthMm)) {
                out.add(TextLine.of(Lettering.BODY, 0, y, line));
                y += 5.2;
            }
        }
        return Flowing.whole(out, y);
    }

    private Flowing dividers() {
        List<SettingBars.Bar> bars = content.dividers().stream()
                .map(each -> new SettingBars.Bar(each.opening(), steps(each)))
                .toList();
        return new FlowingBars(
                "Dividers: set on the bar; strike all of a round before the next",
                bars,
                content.units(),
                Length.ofMm(widthMm),
                false);
    }

    /** {@code round 1: 0 → 2, 17 → 15;  round 3: 14 → 12}. */
    private static String steps(BenchCardContent.Divider divider) {
        Map<Integer, List<String>> rounds = new TreeMap<>();
        for (BenchCardContent.Step step : divider.steps()) {
            rounds.computeIfAbsent(step.round(), round -> new ArrayList<>()).add(step.from() + " → " + step.to());
        }
        return rounds.entrySet().stream()
                .map(each -> "round " + each.getKey() + ": " + String.join(", ", each.getValue()))
                .collect(Collectors.joining(";  "));
    }

    private Flowing calipers() {
        // From one size to another in sixty-fourths takes more room than in tenths.
        double finished = content.units() == UnitSystem.INCH ? 38 : 30;
        List<Table.Column> columns = List.of(
                new Table.Column("set to", 32, Lettering.HEADING, true, false),
                new Table.Column("", 24, Lettering.BODY, true, false),
                new Table.Column("finished", finished, Lettering.BODY, true, false),
                new Table.Column("", 4, Lettering.BODY, false, false),
                new Table.Column("members", widthMm - 60 - finished, Lettering.BODY, false, true));
        List<List<String>> rows = new ArrayList<>();
        UnitSystem units = content.units();
        for (BenchCardContent.Caliper each : content.calipers()) {
            rows.add(List.of(
                    each.opening().format(units),
                    each.opening().format(units.other()),
                    each.finished(),
                    "",
                    each.use()));
        }
        return new FlowingRows("Calipers", new Table(columns, rows), 0, 1, widthMm);
    }

    private Flowing marks() {
        double column = (widthMm - 6) / 2;
        List<Table.Column> columns = List.of(
                new Table.Column("mark", 10, Lettering.STRONG, true, false),
                new Table.Column("from datum", 24, Lettering.STRONG, true, false),
                new Table.Column("", 20, Lettering.SMALL, true, false),
                new Table.Column("what", column - 54, Lettering.SMALL, false, true));
        List<List<String>> rows = new ArrayList<>();
        List<Mark> marks = content.pattern().marks();
        UnitSystem units = content.units();
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            rows.add(List.of(
                    Integer.toString(i),
                    mark.place().format(units),
                    mark.place().format(units.other()),
                    mark.label()));
        }
        return new FlowingRows("Marks", new Table(columns, rows), 0, 2, column + 6);
    }

    private Flowing cautions() {
        return FlowingCautions.of(content.cautions(), widthMm);
    }

    private List<Shape> foot(String pageOf) {
        Svg check = CheckBars.svg();
        double right = paper.portrait().width().minus(Paper.MARGIN).mm();
        double top = paper.portrait().height().minus(Paper.MARGIN).mm() - FOOT_MM + 3;
        return List.of(
                Path.line(Pen.LINE, Paper.MARGIN.mm(), top - 1.5, right, top - 1.5),
                Group.at(Paper.MARGIN.mm(), top, check.shapes()),
                TextLine.ending(Lettering.SMALL, right, top + 4.5, pageOf));
    }
}
