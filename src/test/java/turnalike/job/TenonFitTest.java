package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;
import turnalike.pattern.Warning;
import turnalike.units.Problem;

class TenonFitTest {
    @Test
    void a_tenon_is_sized_by_a_wrench_of_its_hole_s_size() throws IOException {
        Plan plan = InventedLeg.plan("", ", \"hole\": \"13/16 in\"");
        JsonNode wrenches = new ObjectMapper().readTree(PlanJson.print(plan)).at("/settings/wrenches");
        JsonNode first = wrenches.get(0);
        assertThat(first.path("member").asInt(-1)).isZero();
        assertThat(first.path("nominal").asText()).isEqualTo("13/16 in");
        assertThat(first.path("hole_given").asBoolean()).isTrue();
        // Machinery's Handbook, 31st edition: 0.818 to 0.826 in.
        assertThat(first.path("opening_from_mm").asDouble()).isEqualTo(0.818 * 25.4);
        assertThat(first.path("opening_to_mm").asDouble()).isEqualTo(0.826 * 25.4);
        assertThat(first.path("what").asText()).contains("scrap");
    }

    @Test
    void without_a_hole_the_tenon_s_own_size_is_taken_and_said() {
        TenonFit foot = InventedLeg.plan("", "").settings().tenons().get(1);
        assertThat(foot.member()).isEqualTo(5);
        assertThat(foot.hole().mm()).isEqualTo(19);
        assertThat(foot.holeGiven()).isFalse();
        assertThat(foot.wrenches()).extracting(wrench -> wrench.name()).containsExactly("19 mm", "3/4 in");
    }

    @Test
    void a_tenon_left_without_a_hole_beside_one_that_has_it_is_told() {
        assertThat(InventedLeg.plan("", ", \"hole\": 20.1").warnings())
                .filteredOn(warning -> warning.what().contains("no hole given"))
                .extracting(Warning::where)
                .containsExactly("member 6 (foot)");
        assertThat(InventedLeg.plan("", "").warnings())
                .noneMatch(warning -> warning.what().contains("no hole given"));
    }

    @Test
    void a_tenon_snug_in_its_hole_is_taken_and_one_far_larger_or_smaller_is_told() {
        assertThat(InventedLeg.plan("", ", \"hole\": 19.9").warnings())
                .noneMatch(warning -> warning.where().equals("member 1 (tenon)"));
        assertThat(InventedLeg.plan("", ", \"hole\": 19.7").warnings()).anyMatch(warning -> warning.what()
                .contains("0.3 mm (0.012 in) thicker than its hole; is that meant?"));
        assertThat(JobReader.read(InventedLeg.text("", ", \"hole\": 0")).problems())
                .extracting(Problem::where)
                .containsExactly("member 1 (tenon): hole");
        assertThat(InventedLeg.plan("", ", \"hole\": 20.6").warnings())
                .anyMatch(warning -> warning.what().contains("thinner than its hole"));
    }

    @Test
    void diameters_within_the_tolerance_share_one_opening() {
        // The fillet's 30.3 and the bead's root of 30: apart by less than the tolerance of 0.4.
        assertThat(InventedLeg.plan("", "").settings().calipers()).anySatisfy(caliper -> {
            assertThat(caliper.members()).contains(1, 4);
            assertThat(caliper.opening().mm()).isEqualTo(30.3);
        });
        assertThat(InventedLeg.plan("\"tolerances\": {\"diameter\": 0.05},", "")
                        .settings()
                        .calipers())
                .noneMatch(caliper ->
                        caliper.members().contains(1) && caliper.members().contains(4));
    }
}
