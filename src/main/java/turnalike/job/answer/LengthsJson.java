package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.CommonMarks;
import turnalike.job.LengthPlan;
import turnalike.job.Plan;
import turnalike.pattern.Mark;
import turnalike.stock.StockPlan;

/** What follows for each length that a job's pieces are made in, as part of a plan's JSON; nothing where all are as drawn. */
final class LengthsJson {
    private LengthsJson() {}

    static void write(ObjectNode root, List<LengthPlan> lengths) {
        if (lengths.isEmpty()) {
            return;
        }
        CommonMarks common = CommonMarks.of(lengths);
        ArrayNode list = root.putArray("lengths");
        lengths.forEach(each -> length(list.addObject(), each, common));
        ArrayNode marks = root.putArray("common_marks");
        Plan first = lengths.get(0).plan();
        for (int mark : common.fromStart()) {
            Mark each = first.marks().get(mark);
            marks.addObject()
                    .put("mark", mark)
                    .put("label", each.label())
                    .put("from", "start")
                    .put("mm", each.place().mm());
        }
        for (int mark : common.fromEnd()) {
            Mark each = first.marks().get(mark);
            marks.addObject()
                    .put("mark", mark)
                    .put("label", each.label())
                    .put("from", "end")
                    .put("mm", CommonMarks.toEnd(first, each).mm());
        }
        total(root.putObject("lengths_total"), lengths);
    }

    private static void length(ObjectNode node, LengthPlan each, CommonMarks common) {
        Plan plan = each.plan();
        node.put("letter", each.length().letter());
        node.put("stretch", each.length().told().stretch());
        node.put("length_mm", each.length().told().length().mm());
        node.put("count", each.length().told().count());
        node.put("overall_mm", plan.job().pattern().length().mm());
        PlanJson.solid(node.putObject("solid"), plan.solid(), plan.job().wood());
        PlanJson.stock(node.putObject("stock"), plan.stock());
        ArrayNode marks = node.putArray("marks");
        for (int i = 0; i < plan.marks().size(); i++) {
            Mark mark = plan.marks().get(i);
            marks.addObject()
                    .put("mm", mark.place().mm())
                    .put("label", mark.label())
                    .put("common", !common.own().contains(i));
        }
        SettingsJson.write(node.putObject("settings"), plan);
        node.put("ended_by", plan.endedBy().word());
        TurningJson.write(node.putObject("turning"), plan.turning());
        PlanJson.warnings(node, plan);
    }

    /** The wood for all lengths together: what stands under stock is of the drawn one. */
    private static void total(ObjectNode node, List<LengthPlan> lengths) {
        List<StockPlan> stocks =
                lengths.stream().map(each -> each.plan().stock()).toList();
        node.put("count", stocks.stream().mapToInt(each -> each.spares().good()).sum());
        node.put(
                "blanks",
                stocks.stream().mapToInt(each -> each.spares().blanks()).sum());
        node.put(
                "spares",
                stocks.stream().mapToInt(each -> each.spares().spares()).sum());
        node.put(
                "board_feet",
                stocks.stream().mapToDouble(each -> each.timber().boardFeet()).sum());
        node.put(
                "cubic_metres",
                stocks.stream().mapToDouble(each -> each.timber().cubicMetres()).sum());
    }
}
