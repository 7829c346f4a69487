package turnalike.cli.pieces;

import java.util.Locale;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.PaperChoice;
import turnalike.cli.kit.Today;
import turnalike.drawing.chart.ControlChartDrawing;
import turnalike.job.pieces.ControlReport;
import turnalike.sheets.ControlSheet;
import turnalike.sheets.Paper;
import turnalike.units.Length;

/** A control chart's files. */
public final class ControlSheets {
    private static final Length WIDTH = Length.ofMm(240);
    private static final Length HEIGHT = Length.ofMm(130);

    private ControlSheets() {}

    public static void write(ControlReport report, String title, PaperChoice paper, OutputFolder folder) {
        String column = report.series().name();
        String unit = report.shownUnit();
        String name = column.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9_]+", "-");
        folder.write(
                "control-chart-of-" + name + ".svg",
                ControlChartDrawing.svg(report.shown(), title, unit, WIDTH, HEIGHT)
                        .file());
        ControlSheet.Heading heading = new ControlSheet.Heading(title, Today.text(), unit, column);
        for (Paper each : paper.papers()) {
            folder.write(ControlSheet.of(report.shown(), heading, report.sentences(), each));
        }
    }
}
