package turnalike.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.chart.ControlChartDrawing;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.Table;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Signal;
import turnalike.units.Length;

/** A control chart on a landscape page, to hang by the lathe, with what it signals in words. */
public final class ControlSheet {
    private static final double HEAD_MM = 12;

    /** What is left for words below the chart on its page. */
    private static final double WORDS_MM = 42;

    private static final double FINDINGS_MM = 8;
    private static final double LINE_MM = 5.5;

    private ControlSheet() {}

    /**
     * What the sheet says besides the chart.
     *
     * @param title what is charted: {@code Weight of the spokes}
     * @param date as it is to be printed; may be empty
     * @param unit of the values; may be empty
     * @param column whose values they are, for the file's name; may be empty
     */
    public record Heading(String title, String date, String unit, String column) {
        String kind() {
            String plain = column.replaceAll("[^A-Za-z0-9_]+", "-");
            return plain.isEmpty() ? "control chart" : "control chart of " + plain;
        }
    }

    /** The chart by itself on landscape pages. Its SVGs are the pages. */
    public static Sheet of(ControlChart chart, Heading heading, Paper paper) {
        return of(chart, heading, List.of(), paper);
    }

    /**
     * The chart on landscape pages. Its SVGs are the pages.
     *
     * @param findings what else the values say, a sentence each
     */
    public static Sheet of(ControlChart chart, Heading heading, List<String> findings, Paper paper) {
        PageFlow flow = new PageFlow(heading.kind(), heading.title(), paper, paper.landscape());
        double findingsMm = findings.isEmpty() ? 0 : FINDINGS_MM + LINE_MM * findings.size();
        double height = flow.heightMm() - HEAD_MM - WORDS_MM - findingsMm;
        Svg svg = ControlChartDrawing.svg(chart, "", heading.unit(), Length.ofMm(flow.widthMm()), Length.ofMm(height));
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head(heading.title(), heading.date()));
        parts.add(Flowing.whole(svg.shapes(), height + 1));
        parts.add(words(chart, flow));
        if (!findings.isEmpty()) {
            parts.add(flow.sentences("Findings", findings));
        }
        List<String> notes = notes(chart);
        if (!notes.isEmpty()) {
            parts.add(flow.sentences("Notes", notes));
        }
        return flow.sheet(parts);
    }

    private static Flowing words(ControlChart chart, PageFlow flow) {
        Optional<String> verdict = chart.verdict();
        if (verdict.isPresent()) {
            return flow.sentences("Signals", List.of(verdict.get()));
        }
        Map<String, List<String>> seen = new LinkedHashMap<>();
        for (Signal signal : chart.signals()) {
            seen.computeIfAbsent(signal.piece(), piece -> new ArrayList<>()).add(signal.words());
        }
        List<List<String>> rows = new ArrayList<>();
        seen.forEach((piece, words) -> rows.add(List.of(piece, String.join("; ", words))));
        double gap = 6;
        double each = (flow.widthMm() - gap) / 2;
        List<Table.Column> columns = List.of(
                new Table.Column("piece", 28, Lettering.NUMBER, false, true),
                new Table.Column("what is seen", each - 28, Lettering.SMALL, false, true));
        String heading = "Signals: find the cause before the next piece";
        return new FlowingRows(heading, new Table(columns, rows), 0, 2, each + gap);
    }

    private static List<String> notes(ControlChart chart) {
        List<String> out = new ArrayList<>();
        if (chart.isTrial()) {
            out.add("Fewer than %d pieces give trial limits only.".formatted(ControlChart.ENOUGH));
        }
        chart.memory().ifPresent(words -> out.add("Note that " + words + "."));
        return out;
    }
}
