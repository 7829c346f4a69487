package turnalike.web.pieces;

import java.util.List;
import java.util.Optional;
import turnalike.drawing.chart.ControlChartDrawing;
import turnalike.job.Job;
import turnalike.job.pieces.ControlReport;
import turnalike.pieces.Piece;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.RuleChoice;
import turnalike.pieces.control.Signal;
import turnalike.units.Length;
import turnalike.units.SentenceCase;
import turnalike.units.Working;

/** The control chart of one column, drawn and in words. */
public final class PieceChart {
    private static final int MOST_CHARTED = 200;
    private static final int MOST_SIGNALS = 20;

    /** As wide as the room beside the table of pieces. */
    private static final Length CHART_WIDTH = Length.ofMm(125);

    private static final Length NARROW_CHART_WIDTH = Length.ofMm(84);

    private final Optional<ControlReport> report;
    private final Optional<ControlChart> charted;
    private final String none;

    PieceChart(Job job, List<Piece> pieces, String column) {
        var parsed =
                ControlReport.of(Optional.of(job), pieces, column, ChartConstants.PRINTED, RuleChoice.SELF_STARTING);
        this.report = parsed.fold(Optional::of, (what, mend) -> Optional.empty());
        this.charted = report.map(made -> made.shown().last(MOST_CHARTED));
        this.none = parsed.fold(made -> "", (what, mend) -> what + "; " + mend);
    }

    /** The chart and what it says, to be printed. */
    Optional<ControlReport> report() {
        return report;
    }

    /** The picture, or nothing. */
    public String wide() {
        return drawn(CHART_WIDTH);
    }

    /** The same for a telephone. */
    public String narrow() {
        return drawn(NARROW_CHART_WIDTH);
    }

    /** The page says whose it is: the title says only of what. */
    private String drawn(Length width) {
        return report.map(made -> ControlChartDrawing.svg(
                                charted.orElseThrow(),
                                SentenceCase.capital(made.things()),
                                made.shownUnit(),
                                width,
                                Length.ofMm(110))
                        .inline())
                .orElse("");
    }

    /** Why there is no chart. */
    public String none() {
        return none;
    }

    /** Where the last pieces look like a change in the work; of more than are listed the first. */
    public List<Signal> signals() {
        return allSignals().stream().limit(MOST_SIGNALS).toList();
    }

    /** How many are not listed. */
    public int moreSignals() {
        return Math.max(0, allSignals().size() - MOST_SIGNALS);
    }

    private List<Signal> allSignals() {
        return charted.map(ControlChart::signals).orElse(List.of());
    }

    /** That the chart shows the last pieces only, or nothing. */
    public String part() {
        int all = report.map(made -> made.chart().points().size()).orElse(0);
        return all <= MOST_CHARTED
                ? ""
                : "The chart and what follows show the last %d of %d; the limits are those of all."
                        .formatted(MOST_CHARTED, all);
    }

    /** What to say where there are no signals. */
    public String verdict() {
        return report.map(ControlReport::chart).flatMap(ControlChart::verdict).orElse("");
    }

    /** How often the rules speak of steady work, and how often they see a change. */
    public String howSure() {
        return report.map(ControlReport::howSure).orElse("");
    }

    /** What the values say beyond the signals: drift, and whether the work holds its tolerance. */
    public List<String> findings() {
        return report.map(ControlReport::findings).orElse(List.of());
    }

    public boolean isTrial() {
        return report.map(ControlReport::chart).map(ControlChart::isTrial).orElse(false);
    }

    public List<Working> workings() {
        return report.map(ControlReport::workings).orElse(List.of());
    }
}
