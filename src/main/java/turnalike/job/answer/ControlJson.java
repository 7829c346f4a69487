package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Json;
import turnalike.job.pieces.ControlReport;
import turnalike.job.pieces.QuestionsJson;
import turnalike.pieces.Slip;
import turnalike.pieces.control.Capability;
import turnalike.pieces.control.ChartPoint;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Drift;
import turnalike.pieces.control.Signal;

/** An individuals chart as the one JSON object that {@code control --json} prints, in the column's own unit. */
public final class ControlJson {
    private ControlJson() {}

    /**
     * The chart as JSON: limits, signals, points, and drift and capability where they are known. A mass stands in the unit its column was
     * given in, everything else as the column has it.
     *
     * @param column the column's name, as it was asked for
     * @param report what watching it found
     * @param questions figures of the pieces file that read like slips
     * @return the object's text, ended by a line end
     */
    public static String print(String column, ControlReport report, List<Slip> questions) {
        ControlChart chart = report.chart();
        ObjectNode root = Json.object();
        root.put("column", column);
        root.put("centre", chart.centre());
        root.put("mean_moving_range", chart.meanMovingRange());
        root.put("lower", chart.lower());
        root.put("upper", chart.upper());
        root.put("range_upper", chart.rangeUpper());
        root.put("trial", chart.isTrial());
        ArrayNode signals = root.putArray("signals");
        for (Signal signal : chart.signals()) {
            signals.addObject()
                    .put("piece", signal.piece())
                    .put("rule", signal.rule().words())
                    .put("words", signal.words());
        }
        report.drift().ifPresent(each -> drift(root.putObject("drift"), each));
        report.limits().ifPresent(limits -> capability(root.putObject("capability"), report, limits));
        ArrayNode points = root.putArray("points");
        for (ChartPoint point : chart.points()) {
            points.addObject().put("piece", point.piece()).put("value", point.value());
        }
        ArrayNode warnings = root.putArray("warnings");
        chart.memory().ifPresent(warnings::add);
        QuestionsJson.put(root, questions);
        PlanJson.workings(root.putArray("workings"), report.workings());
        return Json.print(root);
    }

    private static void drift(ObjectNode node, ControlReport.Drifting drifting) {
        Drift drift = drifting.drift();
        node.put("from_piece", drift.first())
                .put("to_piece", drift.last())
                .put("pieces", drift.pieces())
                .put("change", drift.change())
                .put("words", drifting.words());
    }

    private static void capability(ObjectNode node, ControlReport report, Capability.Limits limits) {
        limits.lower().ifPresent(lower -> node.put("lower_limit", lower));
        limits.upper().ifPresent(upper -> node.put("upper_limit", upper));
        report.fromPieceToPiece().ifPresent(each -> {
            each.potential().ifPresent(cp -> node.put("cp", cp));
            node.put("cpk", each.worst());
        });
        report.overall().ifPresent(each -> {
            each.potential().ifPresent(pp -> node.put("pp", pp));
            node.put("ppk", each.worst());
        });
    }
}
