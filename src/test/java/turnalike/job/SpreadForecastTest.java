package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import turnalike.job.answer.PlanJson;

class SpreadForecastTest {
    private static Plan plan(String keys) {
        return InventedLeg.plan(keys, "");
    }

    @Test
    void the_words_name_the_member_that_counts_and_the_spares_to_turn() {
        Plan plan = plan("\"count\": 8, \"tolerances\": {\"mass_pct\": 3},");
        assertThat(plan.spread().lines()).hasSize(3);
        assertThat(plan.spread().lines().get(0)).contains("most of it the 4 taper's");
        assertThat(plan.spread().lines().get(1)).contains("chance of less than 1 %, and 48 do not give 95 %");
        int blanks = plan.spread().byWeight().blanksFor(0.95, 0.05).orElseThrow();
        int planned = plan.stock().spares().spares();
        assertThat(blanks - 8).isGreaterThan(planned);
        assertThat(plan.spread().lines().get(2))
                .contains("turn %d spares rather than %d for 95 %%".formatted(blanks - 8, planned));
    }

    @Test
    void one_piece_has_no_set_and_a_wide_tolerance_asks_for_no_more_spares() {
        assertThat(plan("").spread().lines()).hasSize(1);
        Plan wide = plan("\"count\": 8, \"tolerances\": {\"mass_pct\": 90},");
        assertThat(wide.spread().lines()).noneMatch(each -> each.contains("rather than"));
        assertThat(wide.spread().lines().get(2)).doesNotContain("100 %");
    }

    @Test
    void the_json_has_both_ways_and_every_members_part() throws Exception {
        Plan plan = plan("\"count\": 8, \"loss_pct\": 0,");
        JsonNode spread = new ObjectMapper().readTree(PlanJson.print(plan)).get("spread");
        double squares = 0;
        for (JsonNode part : spread.get("by_member_g")) {
            squares += part.asDouble() * part.asDouble();
        }
        assertThat(spread.get("by_member_g")).hasSize(6);
        assertThat(spread.get("turned_g").asDouble()).isEqualTo(Math.sqrt(squares), within(1e-9));
        JsonNode way = spread.get("by_weight");
        assertThat(way.get("sd_pct").asDouble())
                .isEqualTo(Math.hypot(spread.get("turned_pct").asDouble(), 1), within(1e-9));
        assertThat(way.get("blanks").asInt()).isEqualTo(8);
        assertThat(way.get("chance").asDouble())
                .isEqualTo(way.get("good_spares").get(0).get("chance").asDouble());
        assertThat(spread.get("as_they_come").get("chance").asDouble())
                .isLessThanOrEqualTo(way.get("chance").asDouble());
    }
}
