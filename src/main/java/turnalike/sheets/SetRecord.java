package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.Table;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.units.Length;

/**
 * The record of a set, to hang in the shop or hand over: the wheel or the row as a picture, which piece stands where, the spares, how far
 * it is balanced. One page for the sets most people make; a large one goes on.
 */
final class SetRecord {
    /** So many places go in a table beside the picture; more go below it. */
    private static final int MOST_BESIDE = 24;
    /** A longer list of what is left over is read by nobody. */
    private static final int MOST_SPARES = 60;

    private static final double BESIDE_MM = 66;

    /** A taller table goes below too: long labels make tall rows. */
    private static final double MOST_BESIDE_MM = 150;

    /** Place, angle and mass of a small table, with the air about the piece. */
    private static final double FIGURES_MM = 42;

    private static final double GAP_MM = 6;
    private static final double FACT_MM = 17;
    private static final double BETWEEN_FACTS_MM = 6;

    private final SetRecordContent content;
    private final Optional<Svg> frame;
    private final PageFlow flow;

    private SetRecord(SetRecordContent content, Optional<Svg> frame, PageFlow flow) {
        this.content = content;
        this.frame = frame;
        this.flow = flow;
    }

    /** The record on portrait pages. Its SVGs are the pages. */
    public static Sheet of(SetRecordContent content, Paper paper) {
        return of(content, Optional.empty(), paper);
    }

    /**
     * The same.
     *
     * @param frame the pieces in their places with their own outline, as wide as the page between its margins; in place of a row of pieces
     *     that stand for any
     */
    public static Sheet of(SetRecordContent content, Optional<Svg> frame, Paper paper) {
        PageFlow flow = new PageFlow("set record", content.title(), paper, paper.portrait());
        return flow.sheet(new SetRecord(content, frame, flow).parts());
    }

    private List<Flowing> parts() {
        List<Flowing> out = new ArrayList<>();
        out.add(flow.head(content.title(), content.date()));
        if (!content.first().isEmpty()) {
            out.add(flow.sentences("Cannot be built as drawn", content.first()));
        }
        if (!content.facts().isEmpty()) {
            out.add(facts());
        }
        boolean beside = isBeside();
        if (beside) {
            out.add(pictureAndTable());
        } else {
            picture().ifPresent(out::add);
        }
        if (!content.cautions().isEmpty()) {
            out.add(flow.cautions(content.cautions()));
        }
        if (!beside) {
            out.add(columns());
        }
        if (!content.spares().isEmpty()) {
            List<String> spares = content.spares();
            String more = spares.size() > MOST_SPARES ? ", and %d more".formatted(spares.size() - MOST_SPARES) : "";
            out.add(flow.sentences(
                    "Spares",
                    List.of(String.join(", ", spares.subList(0, Math.min(MOST_SPARES, spares.size()))) + more)));
        }
        if (!content.notes().isEmpty()) {
            out.add(flow.sentences("Notes", content.notes()));
        }
        return out;
    }

    /** In one row, each as wide as its own words, where that holds them all; else in columns alike. */
    private Flowing facts() {
        List<BenchCardContent.Fact> facts = content.facts();
        double left =
                flow.widthMm() - facts.stream().mapToDouble(SetRecord::widthMm).sum();
        double between = facts.size() > 3 ? left / (facts.size() - 1) : 0;
        return between >= BETWEEN_FACTS_MM ? inOneRow(between) : inColumns();
    }

    private Flowing inOneRow(double betweenMm) {
        List<Shape> out = new ArrayList<>();
        double x = 0;
        for (BenchCardContent.Fact fact : content.facts()) {
            double width = widthMm(fact);
            out.addAll(fact(fact, x, 0, width));
            x += width + betweenMm;
        }
        return Flowing.whole(out, FACT_MM + 1);
    }

    private Flowing inColumns() {
        List<Shape> out = new ArrayList<>();
        int count = content.facts().size();
        int inRow = count == 4 ? 2 : Math.min(3, count);
        double each = flow.widthMm() / inRow;
        for (int i = 0; i < count; i++) {
            int row = i / inRow;
            out.addAll(fact(content.facts().get(i), i % inRow * each, row * FACT_MM, each - 2));
        }
        int rows = (count + inRow - 1) / inRow;
        return Flowing.whole(out, rows * FACT_MM + 1);
    }

    private static List<Shape> fact(BenchCardContent.Fact fact, double x, double y, double widthMm) {
        double room = widthMm + 1e-6; // of its own width it is not cut for a rounding
        return List.of(
                TextLine.of(Lettering.SMALL, x, y + 4, TextWrap.cut(fact.name(), Lettering.SMALL, room)),
                TextLine.of(Lettering.SETTING, x, y + 10, TextWrap.cut(fact.figure(), Lettering.SETTING, room)),
                TextLine.of(Lettering.SMALL, x, y + 14.6, TextWrap.cut(fact.beside(), Lettering.SMALL, room)));
    }

    private static double widthMm(BenchCardContent.Fact fact) {
        double words = Math.max(Lettering.SMALL.widthMm(fact.name()), Lettering.SMALL.widthMm(fact.beside()));
        return Math.max(words, Lettering.SETTING.widthMm(fact.figure()));
    }

    /** The picture by itself, if a page holds it; a row too long for that is in the table alone. */
    private Optional<Flowing> picture() {
        Svg svg = frame.orElseGet(() -> content.drawing().svg(Length.ofMm(flow.widthMm())));
        double height = svg.height().mm() + 3;
        return height <= flow.heightMm() ? Optional.of(Flowing.whole(svg.shapes(), height)) : Optional.empty();
    }

    private boolean isBeside() {
        return content.isRound()
                && content.drawing().places().size() <= MOST_BESIDE
                && heightMm(besideTable()) <= MOST_BESIDE_MM;
    }

    private Table besideTable() {
        return table(BESIDE_MM, Lettering.STRONG, Lettering.BODY);
    }

    private static double heightMm(Table table) {
        double height = Table.HEAD_MM;
        for (int row = 0; row < table.rows().size(); row++) {
            height += table.rowMm(row);
        }
        return height;
    }

    private Flowing pictureAndTable() {
        double left = flow.widthMm() - BESIDE_MM - GAP_MM;
        Svg svg = content.drawing().svg(Length.ofMm(left));
        Table table = besideTable();
        List<Shape> out = new ArrayList<>(svg.shapes());
        out.add(Group.at(left + GAP_MM, 0, table.shapes(0, table.rows().size())));
        return Flowing.whole(out, Math.max(svg.height().mm(), heightMm(table)) + 3);
    }

    /** The table below the picture, in as many columns as the labels leave room for. */
    private Flowing columns() {
        double gap = 4;
        double widest = content.drawing().places().stream()
                .mapToDouble(place -> Lettering.NUMBER.widthMm(place.piece()))
                .max()
                .orElse(0);
        int columns = 3;
        while (columns > 1 && (flow.widthMm() - (columns - 1) * gap) / columns < widest + FIGURES_MM) {
            columns--;
        }
        double each = (flow.widthMm() - (columns - 1) * gap) / columns;
        return new FlowingRows(
                "Which piece stands where", table(each, Lettering.NUMBER, Lettering.SMALL), 0, columns, each + gap);
    }

    private Table table(double widthMm, Lettering strong, Lettering plain) {
        double scale = plain.sizeMm() / Lettering.BODY.sizeMm();
        double place = 11 * scale;
        double angle = content.isRound() ? 16 * scale : 0;
        double mass = content.isWeighed() ? 20 * scale : 0;
        List<Table.Column> columns = new ArrayList<>();
        columns.add(new Table.Column("place", place, plain, true, false));
        if (content.isRound()) {
            columns.add(new Table.Column("at", angle, plain, true, false));
        }
        columns.add(new Table.Column("piece", widthMm - place - angle - mass, strong, false, true));
        if (content.isWeighed()) {
            columns.add(new Table.Column("mass", mass, plain, true, false));
        }
        return new Table(
                columns, content.drawing().places().stream().map(this::row).toList());
    }

    private List<String> row(PlacesDrawing.Place place) {
        List<String> out = new ArrayList<>();
        out.add(content.drawing().numberText(place));
        if (content.isRound()) {
            out.add(place.angleText());
        }
        out.add(place.piece());
        if (content.isWeighed()) {
            out.add(place.massText());
        }
        return out;
    }
}
