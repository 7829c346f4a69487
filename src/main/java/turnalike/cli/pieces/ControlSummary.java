package turnalike.cli.pieces;

import java.util.List;
import java.util.Locale;
import turnalike.job.pieces.ControlReport;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Signal;
import turnalike.units.Article;

/** A control chart in words. */
final class ControlSummary {
    private ControlSummary() {}

    static String text(String column, ControlReport report) {
        ControlChart chart = report.shown();
        StringBuilder out = new StringBuilder();
        line(
                out,
                "%s%s of %s%s%n  centre  %s%n  limits  %s to %s%n  moving range  mean %s, limit %s",
                column,
                report.shownUnit().isEmpty() ? "" : ", " + report.shownUnit() + ",",
                Article.count(chart.points().size(), "piece"),
                chart.isTrial() ? " (too few for more than trial limits)" : "",
                report.told(chart.centre()),
                report.told(chart.lower()),
                report.told(chart.upper()),
                report.told(chart.meanMovingRange()),
                report.told(chart.rangeUpper()));
        List<Signal> signals = chart.signals();
        line(out, "%s", chart.verdict().orElse("Look at these"));
        signals.forEach(signal -> line(out, "  %s", signal.words()));
        report.findings().forEach(finding -> line(out, "Finding  %s", finding));
        line(out, "How sure  %s", report.howSure());
        chart.memory().ifPresent(words -> line(out, "  note: %s", words));
        return out.toString();
    }

    private static void line(StringBuilder out, String text, Object... values) {
        out.append(String.format(Locale.ROOT, text, values)).append('\n');
    }
}
