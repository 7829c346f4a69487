package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.InventedLeg;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.turning.SpeedAdvice;

/** What a plan says of stock and whip, in the job's own units and a turner's words. */
class PlanSummaryTest {
    private static String text(String units, String size) {
        String job = """
                {"format": "turnalike-job", "version": 1, "units": "%s",
                 "pattern": {"name": "Spoke", "stock": {"section": "square", "size": "%s", "length": "240 mm"},
                  "members": [{"kind": "cylinder", "length": "220 mm", "diameter": "38 mm"}]},
                 "wood": {"species": "White ash"}, "count": 4}
                """.formatted(units, size);
        return PlanSummary.text(Plan.of(JobReader.read(job).job().orElseThrow(), Effort.ofAsks(1000)));
    }

    @Test
    void wood_is_told_in_the_jobs_own_units_first() {
        assertThat(text("mm", "45")).containsPattern("rough .* 0\\.\\d{4} m3 \\(\\d\\.\\d board feet\\) in all");
        assertThat(text("in", "1 3/4")).containsPattern("rough .* \\d\\.\\d board feet \\(0\\.\\d{4} m3\\) in all");
    }

    /** Inches end in "in": nothing that follows begins with another. */
    @Test
    void the_octagon_is_told_where_there_are_corners_to_take_off() {
        assertThat(text("in", "1 3/4"))
                .contains("  octagon  mark each face 33/64 in (13 mm) from both its edges\n")
                .doesNotContain(") in from");
        String square = InventedLeg.text("", "").replace("\"section\": \"round\"", "\"section\": \"square\"");
        String pommel = square.replace(
                "\"kind\": \"tenon\", \"length\": 30, \"diameter\": 20", "\"kind\": \"square\", \"length\": 30");
        assertThat(summary(square)).contains("from both its edges\n");
        assertThat(summary(pommel)).contains("from both its edges, between the squares only\n");
        assertThat(summary(square.replace("\"section\": \"square\"", "\"section\": \"round\"")))
                .doesNotContain("octagon");
    }

    private static String summary(String job) {
        return PlanSummary.text(Plan.of(JobReader.read(job).job().orElseThrow(), Effort.ofAsks(1000)));
    }

    @Test
    void roughing_is_told_with_its_own_speeds() {
        String knob = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Knob", "stock": {"section": "square", "size": 30, "length": 60},
                  "members": [{"kind": "cylinder", "length": 40, "diameter": 24}]},
                 "wood": {"density_kg_m3": 650}, "turning": {"held": "chuck"}}
                """;
        Plan plan = Plan.of(JobReader.read(knob).job().orElseThrow(), Effort.ofAsks(200));
        SpeedAdvice speeds = plan.turning().speeds();
        assertThat(speeds.roughing().to().rpm())
                .isLessThan(0.7 * speeds.turning().to().rpm());
        assertThat(PlanSummary.text(plan))
                .contains("  rough    %s to %s rpm ("
                        .formatted(
                                speeds.roughing().from().about(),
                                speeds.roughing().to().noFaster()))
                .contains("Turning    %s to %s rpm ("
                        .formatted(
                                speeds.turning().from().about(),
                                speeds.turning().to().noFaster()));
    }

    @Test
    void a_stout_spoke_is_told_that_nothing_whips_or_bows_it() {
        assertThat(text("mm", "45"))
                .containsPattern("whip {5}no lathe comes near the speed it whips at; under 20 N")
                .contains("no tailstock presses hard enough to bow it");
        // What whips within a lathe's reach is told by both speeds.
        String slender = InventedLeg.text("", "")
                .replace("\"length\": 100, \"from\": 36, \"to\": 26", "\"length\": 900, \"from\": 30, \"to\": 12")
                .replace("\"length\": 220", "\"length\": 1020")
                .replace("\"density_kg_m3\": 700", "\"species\": \"White ash\"");
        assertThat(PlanSummary.text(Plan.of(JobReader.read(slender).job().orElseThrow(), Effort.ofAsks(1000))))
                .containsPattern("whip {5}at about \\d+00 rpm, and again at \\d+00; under 20 N");
        // Of a spoke that whips at 11,000 no lathe comes near the second speed, 45,000.
        String spoke = InventedLeg.text("", "")
                .replace("\"length\": 100, \"from\": 36, \"to\": 26", "\"length\": 400, \"from\": 33, \"to\": 24")
                .replace("\"length\": 220", "\"length\": 520")
                .replace("\"density_kg_m3\": 700", "\"species\": \"White ash\"");
        assertThat(PlanSummary.text(Plan.of(JobReader.read(spoke).job().orElseThrow(), Effort.ofAsks(1000))))
                .containsPattern("whip {5}at about \\d+000 rpm; under 20 N");
    }

    @Test
    void a_square_has_a_side_and_no_diameter() {
        String leg = InventedLeg.text("", "")
                .replace(
                        "\"kind\": \"tenon\", \"length\": 30, \"diameter\": 20", "\"kind\": \"square\", \"length\": 30")
                .replace("\"section\": \"round\"", "\"section\": \"square\"");
        assertThat(PlanSummary.text(Plan.of(JobReader.read(leg).job().orElseThrow(), Effort.ofAsks(1000))))
                .contains(
                        "where the weight sits, per 0.4 mm of diameter or of a square's side: 4 taper 1.37 g, 1 square");
        assertThat(PlanSummary.text(InventedLeg.plan("", ""))).contains("per 0.4 mm of diameter: ");
    }

    @Test
    void one_piece_alone_has_no_spare() {
        assertThat(PlanSummary.text(InventedLeg.plan("", ""))).contains("1 blank for 1 piece (no spare, 95.0 % sure");
        assertThat(PlanSummary.text(InventedLeg.plan("\"count\": 12,", "")))
                .contains(" blanks for 12 pieces (2 spare, ");
    }
}
