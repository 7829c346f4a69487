package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;
import turnalike.pattern.Mark;
import turnalike.pattern.Tool;
import turnalike.turning.Cut;
import turnalike.units.Length;
import turnalike.units.Problem;

/** What squares and the size of the dividers make of a whole job, read as an outsider reads it. */
class SquaresAndDividersTest {
    /** An invented baluster in inches, square at both ends; marks 0, 6, 7, 8, 20, 21 1/2, 23, 24, 32. */
    private static final String BALUSTER = """
            {"format": "turnalike-job", "version": 1, "title": "Invented baluster", "units": "in", %s
             "pattern": {"stock": {"section": "square", "size": "1 3/4", "length": 32},
              "members": [
               {"kind": "square", "length": 6},
               {"kind": "bead", "length": 2, "root": 1, "crown": "1 1/2"},
               {"kind": "taper", "length": 12, "from": 1, "to": "7/8"},
               {"kind": "cove", "length": 3, "rim": 1, "bottom": "3/4"},
               {"kind": "fillet", "length": 1, "diameter": "1 1/4"},
               {"kind": "square", "length": 8}]},
             "wood": {"density_kg_m3": 700}}
            """;

    private static Plan plan(String more) {
        Job.Read read = JobReader.read(BALUSTER.formatted(more));
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.unlimited());
    }

    private static JsonNode settings(Plan plan) throws IOException {
        return new ObjectMapper().readTree(PlanJson.print(plan)).path("settings");
    }

    private static List<Double> legs(JsonNode settings) {
        List<Double> out = new ArrayList<>();
        for (JsonNode step : settings.findValues("steps")) {
            for (JsonNode each : step) {
                if (each.has("from_mm")) {
                    out.add(each.path("from_mm").asDouble() / 25.4);
                    out.add(each.path("to_mm").asDouble() / 25.4);
                }
            }
        }
        return out;
    }

    @Test
    void a_baluster_is_laid_out_from_its_shoulders() throws IOException {
        Plan plan = plan("");
        JsonNode settings = settings(plan);
        assertThat(plan.marks().get(1).kind()).isEqualTo(Mark.Kind.SHOULDER);
        assertThat(settings.path("shoulders")).extracting(JsonNode::asInt).containsExactly(1, 7);
        assertThat(legs(settings)).isNotEmpty().allMatch(leg -> leg > 6 - 1e-9 && leg < 24 + 1e-9);
        assertThat(settings.path("dividers")).allMatch(each -> each.path("mm").asDouble() <= 203.2);
        assertThat(settings.path("largest_mm").asDouble()).isEqualTo(203.2);
        // From the shoulders at 6 and 24: 1 gives 7, 8 and 23; 1 1/2 then 21 1/2; 20 is four from the right shoulder.
        assertThat(settings.path("on_the_stick")).isEmpty();
        assertThat(settings.path("fewest_proven").asBoolean()).isTrue();
        assertThat(settings.at("/mark_errors/1/worst_mm").asDouble()).isZero();
    }

    @Test
    void shoulders_are_never_struck_by_a_cut_of_the_layout() {
        Plan plan = plan("");
        List<Length> shoulders = plan.settings().dividers().given().shoulders().stream()
                .map(mark -> plan.marks().get(mark).place())
                .toList();
        assertThat(shoulders).hasSize(2);
        List<Cut> layout = plan.turning().cuts().stream()
                .filter(cut -> cut.tool() == Tool.DIVIDERS || cut.tool() == Tool.STICK)
                .toList();
        assertThat(layout).isNotEmpty().allSatisfy(cut -> assertThat(cut.places())
                .doesNotContainAnyElementsOf(shoulders));
    }

    @Test
    void what_shorter_dividers_do_not_reach_comes_from_the_stick_and_says_why() throws IOException {
        // With 1 1/2 in, from the right shoulder 23, 21 1/2 and 20 are three steps; from the left 7 and 8 are two:
        // with 1 in alone 21 1/2 and 20 lie off the inch.
        JsonNode settings = settings(plan("\"settings\": {\"largest\": 1},"));
        assertThat(settings.path("out_of_reach")).extracting(JsonNode::asInt).containsExactly(4, 5);
        assertThat(settings.path("on_the_stick")).extracting(JsonNode::asInt).containsExactly(4, 5);
        assertThat(settings.path("out_of_reach_at_least").asInt()).isEqualTo(2);
        assertThat(settings.path("out_of_reach_why").asText())
                .isEqualTo("no chain of openings from 1/16 in (1.6 mm) to 1 in (25.4 mm) reaches them in 3 steps");
        assertThat(settings(plan("\"settings\": {\"largest\": \"1 1/2\"},")).path("out_of_reach"))
                .isEmpty();
    }

    @Test
    void sentences_for_page_and_sheets_name_shoulders_wishes_and_what_is_out_of_reach() {
        assertThat(GivenWords.list(plan("\"settings\": {\"largest\": 1, \"stick\": [2, 1]},")))
                .containsExactly(
                        "Shoulder lines, marks 1, 7: struck with square and knife from the stick before mounting. No leg stands on a"
                                + " square.",
                        "From the stick, as you wish: mark 2.",
                        "From the stick: marks 4, 5; no chain of openings from 1/16 in (1.6 mm) to 1 in (25.4 mm) reaches them in 3 steps.");
        assertThat(GivenWords.list(InventedLeg.plan("", ""))).isEmpty();
    }

    @Test
    void in_millimetres_two_hundred_is_usual_and_the_turner_may_say_otherwise() {
        assertThat(InventedLeg.plan("", "").largestOpening()).isEqualTo(Length.ofMm(200));
        assertThat(InventedLeg.plan("\"settings\": {\"largest\": \"12 in\"},", "")
                        .largestOpening())
                .isEqualTo(Length.ofInches(12));
    }

    @Test
    void a_pin_wider_than_the_largest_opening_that_the_turner_gives_is_a_contradiction() {
        assertThat(InventedLeg.read("\"settings\": {\"pin\": [30, 150], \"largest\": 100},")
                        .problems())
                .extracting(Problem::line)
                .containsExactly(
                        "settings: pin 2: 150 mm is wider than the largest opening, 100 mm; raise `largest` or take the opening back");
        assertThat(InventedLeg.read("\"settings\": {\"pin\": [205]},").problems())
                .isEmpty();
        assertThat(InventedLeg.read("\"settings\": {\"largest\": 0},").problems())
                .hasSize(1);
    }
}
