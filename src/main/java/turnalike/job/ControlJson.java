package turnalike.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Point;
import turnalike.pieces.control.Signal;

/** An individuals chart as the one JSON object that {@code control --json} prints, in the column's own unit. */
public final class ControlJson {
    private ControlJson() {}

    public static String print(String column, ControlChart chart) {
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
        ArrayNode points = root.putArray("points");
        for (Point point : chart.points()) {
            points.addObject().put("piece", point.piece()).put("value", point.value());
        }
        ArrayNode warnings = root.putArray("warnings");
        chart.memory().ifPresent(warnings::add);
        PlanJson.workings(root.putArray("workings"), List.of(chart.working()));
        return Json.print(root);
    }
}
