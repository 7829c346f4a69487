package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import turnalike.job.fields.Json;
import turnalike.job.pieces.ControlReport;
import turnalike.job.pieces.QuestionsJson;
import turnalike.pieces.Slip;
import turnalike.pieces.control.Capability;
import turnalike.pieces.control.ChartPoint;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Power;
import turnalike.pieces.control.RuleChoice;
import turnalike.pieces.control.Signal;
import turnalike.pieces.control.WorkChange;

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
        chart.verdict().ifPresent(words -> root.put("verdict", words));
        ArrayNode changes = root.putArray("changes");
        chart.changes().forEach(each -> change(changes.addObject(), each));
        report.change()
                .filter(each -> each.change().kind() == WorkChange.Kind.DRIFT)
                .ifPresent(each -> drift(root.putObject("drift"), each));
        rules(root.putObject("rules"), report);
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

    private static void change(ObjectNode node, WorkChange change) {
        node.put("kind", change.kind().name().toLowerCase(Locale.ROOT))
                .put("from_piece", change.since())
                .put("to_piece", change.at())
                .put("pieces", change.pieces())
                .put("change", change.by())
                .put("stands", change.stands());
    }

    private static void drift(ObjectNode node, ControlReport.Changed changed) {
        WorkChange drift = changed.change();
        node.put("from_piece", drift.since())
                .put("to_piece", drift.at())
                .put("pieces", drift.pieces())
                .put("change", drift.by())
                .put("words", changed.words());
    }

    private static void rules(ObjectNode node, ControlReport report) {
        RuleChoice choice = report.rules();
        node.put("choice", choice.word())
                .put(
                        "false_alarms_pct",
                        choice.falseAlarmsPct(report.chart().points().size()))
                .put("false_alarms_pct_of_40", choice.falseAlarmsPct(40));
        if (choice == RuleChoice.SELF_STARTING) {
            node.put("jump_of_two_sigma_seen_pct", Power.jumpOfTwoSigmaPct())
                    .put("drift_sigmas", report.driftSigmas())
                    .put("drift_seen_pct", Power.driftPct(report.driftSigmas()));
        }
        node.put("words", report.howSure());
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
