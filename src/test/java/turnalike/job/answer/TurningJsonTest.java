package turnalike.job.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;

/** What {@code plan --json} says of turning, by the file format's own words. */
class TurningJsonTest {
    /** The wood rod of the published cases: 30 mm by 1 m, 700 kg/m³, 10 GPa. */
    private static final String ROD = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"stock": {"section": "square", "size": 35, "length": 1000},
              "members": [{"kind": "cylinder", "length": 400, "diameter": 30}, {"kind": "cylinder", "length": 600, "diameter": 30}]},
             "wood": {%s}%s}
            """;

    private static JsonNode turning(String wood, String rest) throws java.io.IOException {
        Job.Read read = JobReader.read(ROD.formatted(wood, rest));
        assertThat(read.problems()).isEmpty();
        Plan plan = Plan.of(read.job().orElseThrow(), Effort.ofAsks(1000));
        return new ObjectMapper().readTree(PlanJson.print(plan)).get("turning");
    }

    @Test
    void the_published_rod_comes_out_as_published() throws java.io.IOException {
        JsonNode turning = turning("\"density_kg_m3\": 700, \"moe_mpa\": 10000", ", \"turning\": {\"force_n\": 100}");
        assertThat(turning.get("moe_mpa").doubleValue()).isEqualTo(10_000);
        assertThat(turning.get("force_n").doubleValue()).isEqualTo(100);
        // The published rod and what shear takes: ω²ρA/EIk⁴ = 1 − k²(I/A)(1 + E/0.9G) to first order; P/(1 + P/0.9GA);
        // FL/4·0.9GA more.
        double shearN = 0.9 * 800 * Math.PI * 225;
        double slow = Math.pow(Math.PI / 1000, 2) * 56.25 * (1 + 12.5 / 0.9);
        assertThat(turning.at("/natural_speeds_rpm/0").doubleValue())
                .isCloseTo(2671.7 / Math.sqrt(1 + slow), withinPercentage(0.01));
        assertThat(turning.at("/natural_speeds_rpm/1").doubleValue())
                .isCloseTo(4 * 2671.7 / Math.sqrt(1 + 4 * slow), withinPercentage(0.05));
        assertThat(turning.get("buckling_n").doubleValue()).isCloseTo(3924.2 / (1 + 3924.2 / shearN), within(0.1));
        assertThat(turning.get("thrust_n").doubleValue()).isZero();
        assertThat(turning.get("moe_over_shear").doubleValue()).isEqualTo(12.5);
        assertThat(turning.get("speed_offered").booleanValue()).isTrue();
        assertThat(turning.get("steady_at_mm").doubleValue()).isCloseTo(500, within(1e-6));
        double last = -1;
        boolean mid = false;
        for (JsonNode each : turning.get("sag_mm")) {
            double mm = each.get("mm").doubleValue();
            assertThat(mm).isGreaterThan(last);
            last = mm;
            if (Math.abs(mm - 500) < 1e-9) {
                mid = true;
                assertThat(each.get("sag_mm").doubleValue())
                        .isCloseTo(5.2397 + 100 * 1000 / (4 * shearN), within(0.00006));
            }
        }
        assertThat(mid).isTrue();
        assertThat(last).isEqualTo(1000);
        assertThat(turning.get("halving_changes_pct").doubleValue()).isLessThan(0.1);
    }

    @Test
    void a_tailstock_that_is_not_borne_leaves_no_speed() throws java.io.IOException {
        JsonNode turning =
                turning("\"density_kg_m3\": 700, \"moe_mpa\": 10000", ", \"turning\": {\"tailstock_force_n\": 4000}");
        assertThat(turning.get("speed_offered").booleanValue()).isFalse();
        assertThat(turning.has("speed_rpm")).isFalse();
        assertThat(turning.has("roughing_rpm")).isFalse();
        assertThat(turning.at("/cautions/0/where").textValue()).isEqualTo("tailstock");
    }

    @Test
    void the_strength_is_told_with_its_margin_and_a_jobs_own_ratio_of_moduli_counts() throws java.io.IOException {
        JsonNode turning = turning(
                "\"species\": \"White ash\", \"moisture_pct\": 12, \"moe_over_shear\": 10",
                ", \"turning\": {\"rules\": {\"strength_margin\": 20}}");
        assertThat(turning.get("moe_over_shear").doubleValue()).isEqualTo(10);
        assertThat(turning.at("/strength/rupture_mpa").doubleValue()).isEqualTo(106);
        assertThat(turning.at("/strength/allowed_mpa").doubleValue()).isCloseTo(5.3, within(1e-9));
        assertThat(turning.at("/strength/strains/0/stress_mpa").doubleValue()).isPositive();
    }

    @Test
    void the_handbooks_stiffness_is_raised_by_a_tenth_and_a_jobs_own_wins() throws java.io.IOException {
        assertThat(turning("\"species\": \"White ash\", \"moisture_pct\": 12", "")
                        .get("moe_mpa")
                        .doubleValue())
                .isCloseTo(13_200, within(1e-9));
        assertThat(turning("\"species\": \"White ash\", \"moe_mpa\": 9000", "")
                        .get("moe_mpa")
                        .doubleValue())
                .isEqualTo(9000);
        JsonNode unknown = turning("\"density_kg_m3\": 650", "");
        assertThat(unknown.has("moe_mpa")).isFalse();
        assertThat(unknown.has("natural_speeds_rpm")).isFalse();
        assertThat(unknown.get("cuts")).isNotEmpty();
        assertThat(unknown.at("/speed_rpm/to").doubleValue()).isPositive();
    }

    @Test
    void every_cut_has_the_formats_keys() throws java.io.IOException {
        JsonNode turning = turning("\"density_kg_m3\": 700, \"moe_mpa\": 10000", "");
        assertThat(turning.get("force_n").doubleValue()).isEqualTo(20);
        int order = 0;
        for (JsonNode cut : turning.get("cuts")) {
            assertThat(cut.get("order").intValue()).isEqualTo(++order);
            for (String key : List.of("tool", "what", "phase")) {
                assertThat(cut.get(key).textValue()).isNotBlank();
            }
            assertThat(cut.get("setting_mm").isNull() || cut.get("setting_mm").isNumber())
                    .isTrue();
            assertThat(cut.get("from_mm").doubleValue())
                    .isBetween(0.0, cut.get("to_mm").doubleValue());
            assertThat(cut.get("to_mm").doubleValue()).isLessThanOrEqualTo(1000);
        }
        assertThat(order).isGreaterThan(4);
    }

    @Test
    void the_lathes_steps_in_range_are_listed() throws java.io.IOException {
        JsonNode turning = turning(
                "\"density_kg_m3\": 700, \"moe_mpa\": 10000",
                ", \"turning\": {\"speeds\": [400, 700, 1100, 2500], \"max_rpm\": 2500}");
        double from = turning.at("/speed_rpm/from").doubleValue();
        double to = turning.at("/speed_rpm/to").doubleValue();
        assertThat(to).isLessThanOrEqualTo(2671.7 / 2);
        assertThat(turning.at("/speed_rpm/lathe_steps")).isNotEmpty().allSatisfy(step -> assertThat(step.doubleValue())
                .isBetween(from, to));
    }
}
