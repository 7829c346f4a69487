package turnalike.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.pattern.Mark;
import turnalike.settings.CaliperSetting;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.settings.MarkError;
import turnalike.settings.OtherUses;

/** The {@code settings} of a plan as JSON. */
final class SettingsJson {
    private SettingsJson() {}

    static void write(ObjectNode node, JobSettings settings, List<Mark> marks) {
        DividerPlan plan = settings.dividers();
        ArrayNode dividers = node.putArray("dividers");
        for (int i = 0; i < plan.settings().size(); i++) {
            divider(
                    dividers.addObject(),
                    plan.settings().get(i),
                    settings.otherUses().get(i),
                    marks);
        }
        ArrayNode calipers = node.putArray("calipers");
        for (CaliperSetting each : settings.calipers()) {
            ObjectNode caliper = calipers.addObject().put("mm", each.opening().mm());
            caliper.put("finished_mm", each.finished().mm());
            numbers(caliper.putArray("members"), each.members());
        }
        node.put("worst_mark_error_mm", plan.worst().mm());
        node.put("fewest_proven", plan.fewestProven());
        node.put("fewest_at_least", plan.lowerBound());
        node.put("gap", plan.gap());
        numbers(node.putArray("on_the_stick"), plan.listOnTheStick());
        errors(node.putArray("mark_errors"), plan.errors());
    }

    private static void divider(ObjectNode node, DividerSetting setting, OtherUses uses, List<Mark> marks) {
        node.put("mm", setting.opening().mm());
        node.put("pinned", setting.pinned());
        ArrayNode steps = node.putArray("steps");
        for (DividerStep step : setting.steps()) {
            steps.addObject()
                    .put("from", step.from())
                    .put("to", step.to())
                    .put("from_mm", marks.get(step.from()).place().mm())
                    .put("to_mm", marks.get(step.to()).place().mm());
        }
        numbers(node.putArray("width_of_members"), uses.widths());
        numbers(node.putArray("same_as_calipers"), uses.calipers());
    }

    private static void errors(ArrayNode list, List<MarkError> errors) {
        for (MarkError each : errors) {
            list.addObject()
                    .put("mark", each.mark())
                    .put("steps", each.steps())
                    .put("worst_mm", each.worst().mm())
                    .put("root_sum_square_mm", each.rootSumSquare().mm())
                    .put("from_the_stick", each.fromTheStick());
        }
    }

    private static void numbers(ArrayNode list, List<Integer> numbers) {
        numbers.forEach(list::add);
    }
}
