package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.JobSettings;
import turnalike.job.Plan;
import turnalike.job.TenonFit;
import turnalike.pattern.Mark;
import turnalike.settings.CaliperSetting;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.settings.GivenMarks;
import turnalike.settings.MarkError;
import turnalike.settings.OtherUses;
import turnalike.settings.Wrench;

/** The {@code settings} of a plan as JSON. */
final class SettingsJson {
    private SettingsJson() {}

    static void write(ObjectNode node, Plan from) {
        JobSettings settings = from.settings();
        List<Mark> marks = from.marks();
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
            caliper.put("least_left_mm", each.leastLeft().mm());
            numbers(caliper.putArray("members"), each.members());
        }
        ArrayNode tooThin = node.putArray("too_thin_for_calipers");
        settings.tooThin().forEach(each -> tooThin.addObject()
                .put("member", each.member())
                .put("mm", each.finished().mm()));
        wrenches(node.putArray("wrenches"), settings.tenons());
        node.put("worst_mark_error_mm", plan.worst().mm());
        node.put("fewest_proven", plan.fewestProven());
        node.put("fewest_at_least", plan.lowerBound());
        node.put("gap", plan.gap());
        node.put("smallest_mm", from.smallestOpening().mm());
        node.put("largest_mm", from.largestOpening().mm());
        given(node, from, plan.given());
        errors(node.putArray("mark_errors"), plan.errors());
    }

    /** What stands before any step: shoulder lines, and what the stick gives with its reason. */
    private static void given(ObjectNode node, Plan from, GivenMarks given) {
        numbers(node.putArray("shoulders"), given.shoulders());
        numbers(node.putArray("on_the_stick"), from.settings().dividers().listOnTheStick());
        numbers(node.putArray("on_the_stick_by_wish"), given.wished());
        numbers(node.putArray("out_of_reach"), given.outOfReach());
        if (!given.outOfReach().isEmpty()) {
            node.put("out_of_reach_why", from.whyOutOfReach());
        }
        node.put("out_of_reach_at_least", given.leastOutOfReach());
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
                    .put("to_mm", marks.get(step.to()).place().mm())
                    .put(
                            "miss_mm",
                            setting.miss(
                                            marks.get(step.from()).place(),
                                            marks.get(step.to()).place())
                                    .mm());
        }
        numbers(node.putArray("width_of_members"), uses.widths());
        numbers(node.putArray("same_as_calipers"), uses.calipers());
    }

    private static void wrenches(ArrayNode list, List<TenonFit> tenons) {
        for (TenonFit tenon : tenons) {
            for (Wrench wrench : tenon.wrenches()) {
                ObjectNode node = list.addObject()
                        .put("member", tenon.member())
                        .put("hole_mm", tenon.hole().mm())
                        .put("hole_given", tenon.holeGiven())
                        .put("nominal", wrench.name())
                        .put("nominal_mm", wrench.nominal().mm());
                wrench.opening().ifPresent(opening -> node.put(
                                "opening_from_mm", opening.least().mm())
                        .put("opening_to_mm", opening.most().mm()));
                node.put("what", TenonFit.CAUTION);
            }
        }
    }

    private static void errors(ArrayNode list, List<MarkError> errors) {
        for (MarkError each : errors) {
            list.addObject()
                    .put("mark", each.mark())
                    .put("steps", each.steps())
                    .put("miss_mm", each.miss().mm())
                    .put("worst_mm", each.worst().mm())
                    .put("root_sum_square_mm", each.rootSumSquare().mm())
                    .put("scatter_mm", each.scatter().mm())
                    .put("from_the_stick", each.fromTheStick());
        }
    }

    private static void numbers(ArrayNode list, List<Integer> numbers) {
        numbers.forEach(list::add);
    }
}
