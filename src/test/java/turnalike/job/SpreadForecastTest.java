package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;
import turnalike.language.Language;

class SpreadForecastTest {
    private static Plan plan(String keys) {
        return InventedLeg.plan(keys, "");
    }

    @Test
    void the_words_name_the_member_that_counts_and_the_spares_to_turn() {
        Plan plan = plan("\"count\": 8, \"tolerances\": {\"mass_pct\": 3},");
        String sentence = plan.spread().sentence();
        assertThat(sentence)
                .contains("most of it the 4 taper's", "once in 100 times or less when they are taken as they come");
        int blanks = plan.spread()
                .chances()
                .orElseThrow()
                .byWeight()
                .blanksFor(0.95, 0.05)
                .orElseThrow();
        int planned = plan.stock().spares().spares();
        assertThat(blanks - 8).isGreaterThan(planned);
        assertThat(sentence)
                .endsWith(": turn %d spares rather than %d to have it 95 times in 100".formatted(blanks - 8, planned));
    }

    @Test
    void small_work_scatters_by_more_than_nought() {
        Plan plan = Plan.of(JobReader.read("""
                                {"format": "turnalike-job", "version": 1, "units": "mm",
                                 "pattern": {"name": "Pin", "stock": {"section": "square", "size": 14, "length": 80},
                                  "members": [{"kind": "cylinder", "length": 80, "diameter": 6}]},
                                 "wood": {"density_kg_m3": 600}, "tolerances": {"diameter": 0.2}, "count": 4}
                                """).job().orElseThrow(), Effort.ofAsks(100));
        // A diameter off by up to 0.2 mm has a deviation of 0.2/√3 mm; of 1.36 g that is 2·0.115/6.
        assertThat(plan.spread().sentence()).contains("scatters them by 0.05 g (3.8 %)", "the 1 cylinder's 0.05 g");
    }

    /** Nobody turns a pommel: it is as true as the blank was milled. */
    @Test
    void a_piece_with_squares_is_milled_and_turned() {
        String leg = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Leg", "stock": {"section": "square", "size": 60, "length": 430},
                  "members": [{"kind": "square", "name": "pommel", "length": 110}, {"kind": "taper", "length": 320, "from": 56, "to": 30}]},
                 "wood": {"density_kg_m3": 600}}
                """;
        Plan plan = Plan.of(JobReader.read(leg).job().orElseThrow(), Effort.ofAsks(100));
        String sentence = plan.spread().sentence();
        assertThat(sentence).startsWith("milling and turning within 0.4 mm scatters them by");
        assertThat(Language.GERMAN.say("Milling" + sentence.substring(7)))
                .startsWith("Hobeln und Drechseln auf 0,4 mm genau");
        assertThat(plan("").spread().sentence()).startsWith("turning within");
    }

    @Test
    void a_tolerance_that_no_spares_reach_is_told() {
        assertThat(plan("\"count\": 30, \"tolerances\": {\"mass_pct\": 0.5},")
                        .spread()
                        .sentence())
                .endsWith(": even 40 spares do not give it 95 times in 100");
    }

    @Test
    void as_many_spares_as_are_planned_are_looked_at_and_of_thousands_of_pieces_nothing_is_simulated() {
        assertThat(plan("\"count\": 30, \"loss_pct\": 60, \"tolerances\": {\"mass_pct\": 0.5},")
                        .spread()
                        .sentence())
                .endsWith(": even 64 spares do not give it 95 times in 100");
        String legs = "\"count\": %d, \"frame\": {\"kind\": \"legs\", \"places\": 4},";
        assertThat(plan(legs.formatted(8)).spread().sentence()).doesNotContain("a set within");
        assertThat(plan(legs.formatted(4)).spread().sentence()).contains("a set within");
        assertThat(plan("\"count\": 1001,").spread().sentence()).doesNotContain("a set within");
        assertThat(PlanJson.print(plan("\"count\": 1001,"))).contains("sd_g").doesNotContain("good_spares");
    }

    @Test
    void one_piece_has_no_set_and_a_wide_tolerance_asks_for_no_more_spares() {
        assertThat(plan("").spread().sentence()).doesNotContain("a set within");
        String wide = plan("\"count\": 8, \"tolerances\": {\"mass_pct\": 90},")
                .spread()
                .sentence();
        assertThat(wide).doesNotContain("rather than", "100 times in 100").contains("comes of these blanks 9");
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
