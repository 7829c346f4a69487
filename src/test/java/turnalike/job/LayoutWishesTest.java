package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.job.answer.PlanJson;
import turnalike.units.Problem;

class LayoutWishesTest {
    @Test
    void a_pinned_opening_stands_in_the_plan_and_is_counted() throws IOException {
        JsonNode settings = settings("\"settings\": {\"pin\": [\"17 mm\"]},");
        JsonNode free = settings("");
        assertThat(openings(settings)).contains(17.0);
        assertThat(settings.at("/dividers")).hasSize(free.at("/dividers").size() + 1);
        JsonNode pinned = settings.at("/dividers").get(openings(settings).indexOf(17.0));
        assertThat(pinned.path("pinned").asBoolean()).isTrue();
        assertThat(pinned.path("steps")).isEmpty();
    }

    @Test
    void a_forbidden_opening_is_in_no_plan_within_the_match_tolerance() throws IOException {
        List<Double> free = openings(settings(""));
        for (double opening : free) {
            List<Double> left = openings(settings("\"settings\": {\"forbid\": [%s]},".formatted(opening)));
            assertThat(left).allMatch(each -> Math.abs(each - opening) > 0.1);
        }
    }

    @Test
    void marks_go_to_the_stick_by_number_or_by_label() throws IOException {
        JsonNode settings = settings("\"settings\": {\"stick\": [6, \"2 bead crest\"]},");
        assertThat(settings.at("/on_the_stick")).extracting(JsonNode::asInt).containsExactly(2, 6);
        JsonNode error = settings.at("/mark_errors/6");
        assertThat(error.path("from_the_stick").asBoolean()).isTrue();
        assertThat(error.path("worst_mm").asDouble()).isEqualTo(0.25);
        for (JsonNode divider : settings.at("/dividers")) {
            assertThat(divider.path("steps")).noneMatch(step -> step.path("to").asInt() == 6);
        }
    }

    @Test
    void a_tighter_limit_keeps_every_mark_within_it() throws IOException {
        JsonNode settings = settings("\"tolerances\": {\"mark\": 0.2, \"mark_limit\": 0.2},");
        assertThat(settings.at("/worst_mark_error_mm").asDouble()).isEqualTo(0.2);
        assertThat(settings.at("/mark_errors"))
                .allMatch(error -> error.path("steps").asInt() <= 1);
    }

    @Test
    void three_steps_are_the_rule_unless_a_limit_is_given() {
        Job rule = InventedLeg.read("\"tolerances\": {\"mark\": 0.2},").job().orElseThrow();
        assertThat(rule.tolerances().markLimit()).isEmpty();
        assertThat(JobSettings.problem(rule).mostSteps()).isEqualTo(3);
        Job given = InventedLeg.read("\"tolerances\": {\"mark\": 0.2, \"mark_limit\": 0.9},")
                .job()
                .orElseThrow();
        assertThat(JobSettings.problem(given).mostSteps()).isEqualTo(4);
    }

    @Test
    void a_width_that_serves_two_members_and_the_calipers_is_shown_as_such() throws IOException {
        // The bead and the cove are both 20 wide, and the tenon's calipers stand at 20.
        JsonNode settings = settings("\"settings\": {\"pin\": [20]},");
        JsonNode twenty = settings.at("/dividers").get(openings(settings).indexOf(20.0));
        assertThat(twenty.path("width_of_members")).extracting(JsonNode::asInt).containsExactly(1, 2);
        int caliper = twenty.path("same_as_calipers").path(0).asInt(-1);
        assertThat(settings.at("/calipers").path(caliper).path("mm").asDouble()).isEqualTo(20.0, Offset.offset(0.1));
    }

    @Test
    void contradictory_and_hopeless_wishes_are_refused_with_what_would_free_them() {
        assertThat(InventedLeg.read("\"settings\": {\"pin\": [30], \"forbid\": [30.08]},")
                        .problems())
                .extracting(Problem::line)
                .containsExactly(
                        "divider settings: the pinned opening 30 mm is also forbidden, as 30.1 mm; take back one of the two");
        List<Problem> hopeless = InventedLeg.read(
                        "\"settings\": {\"forbid\": [30, 180]}, \"tolerances\": {\"mark_limit\": 0.25},")
                .problems();
        assertThat(hopeless).extracting(Problem::where).allMatch(where -> where.startsWith("divider settings: mark "));
        assertThat(hopeless.get(0).mend()).contains("allow the opening 30 mm", "raise the limit to 0.5 mm");
    }

    private static List<Double> openings(JsonNode settings) {
        List<Double> out = new ArrayList<>();
        settings.at("/dividers").forEach(each -> out.add(each.path("mm").asDouble()));
        return out;
    }

    private static JsonNode settings(String moreKeys) throws IOException {
        return new ObjectMapper()
                .readTree(PlanJson.print(InventedLeg.plan(moreKeys, "")))
                .path("settings");
    }
}
