package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;
import turnalike.pattern.Warning;
import turnalike.units.UnitSystem;

class YearOfJointsTest {
    private static final String HOME = "\"home\": {\"dry_pct\": 6, \"damp_pct\": 12}";
    private static final String ASH = "{\"species\": \"White ash\", \"moisture_pct\": 8}";

    private static Plan plan(String keys, String wood) {
        String text = InventedLeg.text(keys + ",", ", \"hole\": 20").replace("{\"density_kg_m3\": 700}", wood);
        Job.Read read = JobReader.read(text);
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.unlimited());
    }

    private static List<String> holes(Plan plan) {
        return plan.year().orElseThrow().stands().stream()
                .map(each -> each.hole() + " of "
                        + each.year().joint().holeWood().species().name())
                .toList();
    }

    @Test
    void nothing_is_said_of_a_year_that_nobody_told() {
        assertThat(InventedLeg.plan("", "").year()).isEmpty();
        assertThat(PlanJson.print(InventedLeg.plan("", ""))).doesNotContain("joints");
    }

    @Test
    void each_tenon_goes_into_what_its_frame_has_there() {
        assertThat(holes(plan(HOME, ASH))).containsExactly("hole of White ash", "hole of White ash");
        String wheel = """
                , "frame": {"kind": "wheel", "places": 4, "hub_radius": 60, "tenon_at": "end",
                 "hub_wood": {"species": "American elm"}, "rim_wood": {"species": "Northern red oak"}}""";
        assertThat(holes(plan(HOME + wheel, ASH))).containsExactly("rim of Northern red oak", "hub of American elm");
        String row = """
                , "frame": {"kind": "row", "places": 3, "rail_wood": {"species": "White oak"}}""";
        assertThat(holes(plan(HOME + row, ASH))).containsExactly("lower rail of White oak", "upper rail of White oak");
        String legs = """
                , "frame": {"kind": "legs", "places": 4, "seat_wood": {"species": "American elm"}}""";
        assertThat(holes(plan(HOME + legs, ASH))).containsExactly("seat of American elm", "hole of White ash");
    }

    @Test
    void a_wood_of_which_only_the_density_is_told_is_told_to_be_so_and_the_rest_stands() {
        String wheel = """
                , "frame": {"kind": "wheel", "places": 4, "hub_radius": 60, "hub_wood": {"density_kg_m3": 650}}""";
        Plan plan = plan(HOME + wheel, ASH);
        assertThat(holes(plan)).containsExactly("rim of White ash");
        assertThat(plan.warnings())
                .contains(
                        new Warning(
                                "member 1 (tenon)",
                                "nothing is said of its year: of the wood of the hub only the density is told; name the species"));
    }

    @Test
    void the_air_of_the_seasons_gives_the_moisture_of_the_printed_table() {
        String air = """
                "home": {"dry": {"temperature_c": 21.1, "humidity_pct": 30}, "damp": {"temperature_c": 21.1, "humidity_pct": 65}}""";
        YearOfJoints year = plan(air, ASH).year().orElseThrow();
        // Wood Handbook Table 4-2, 70 °F: 6.2 % and 12.0 %; VERIFIED (S10).
        assertThat(year.home().dry().moisture().pct()).isEqualTo(6.2, within(0.06));
        assertThat(year.home().damp().moisture().pct()).isEqualTo(12.0, within(0.06));
    }

    @Test
    void a_joint_far_too_tight_when_damp_is_asked_about_and_wet_wood_is_told_where_the_formula_ends() {
        assertThat(plan("\"home\": {\"dry_pct\": 6, \"damp_pct\": 13}", ASH).warnings())
                .noneMatch(each -> each.what().contains("when damp; is that meant?"));
        // 20 mm x 0.00274 x 6 points is 0.329 mm.
        assertThat(plan("\"home\": {\"dry_pct\": 6, \"damp_pct\": 14}", ASH).warnings())
                .anyMatch(each -> each.what()
                        .startsWith("is 0.33 mm (0.013 in) thicker than its hole when damp; is that meant?"));
        assertThat(plan(HOME, "{\"species\": \"White ash\", \"moisture_pct\": 40}")
                        .warnings())
                .anyMatch(
                        each -> each.what().contains("at 40 %: above fibre saturation, 30 % here, wood does not move"));
    }

    /** Half a thousandth of an inch of swelling and less: a year that hardly changes. */
    @Test
    void what_no_caliper_tells_is_told_so_and_not_as_nothing() {
        Plan plan = plan("\"home\": {\"dry_pct\": 7.9, \"damp_pct\": 8.1}", ASH);
        for (UnitSystem units : UnitSystem.values()) {
            String lines = String.join("\n", YearWords.lines(plan.year().orElseThrow(), units));
            assertThat(lines).contains("under 0.001 in").doesNotContain("0.000 in", " 0.00 mm");
        }
    }

    @Test
    void the_words_say_each_season_and_what_keeps_the_tenon_tight() {
        Plan plan = plan(HOME, ASH);
        List<String> lines = YearWords.lines(plan.year().orElseThrow(), UnitSystem.METRIC);
        assertThat(lines)
                .anyMatch(
                        each -> each.contains(
                                "White ash at 8 % is turned to 20 mm, the hole in White ash at 8 % is bored 20 mm wide: size for size"));
        assertThat(lines).anyMatch(each -> each.contains("loosest when dry: 0.11 mm (0.004 in) of play"));
        assertThat(lines).anyMatch(each -> each.contains("tightest when damp: 0.22 mm (0.009 in) tight"));
        assertThat(lines).anyMatch(each -> each.contains("dry the tenon to "));
        assertThat(lines.get(lines.size() - 1)).contains("trial joint");
        // Dry wood in a damp house swells past its hole, but not across its rings where the hole swells along its own.
        String snug = InventedLeg.text(HOME + ",", ", \"hole\": 19.6").replace("{\"density_kg_m3\": 700}", ASH);
        Plan tight = Plan.of(JobReader.read(snug).job().orElseThrow(), Effort.unlimited());
        assertThat(YearWords.lines(tight.year().orElseThrow(), UnitSystem.METRIC))
                .anyMatch(each -> each.contains("as turned it stays tight all year"));
        List<String> hopeless = YearWords.lines(
                plan("\"home\": {\"dry_pct\": 3, \"damp_pct\": 12}", ASH).year().orElseThrow(), UnitSystem.METRIC);
        assertThat(hopeless).anyMatch(each -> each.contains("no drying keeps it tight all year"));
    }

    @Test
    void the_json_has_each_joint_by_its_member() throws Exception {
        JsonNode joints =
                new ObjectMapper().readTree(PlanJson.print(plan(HOME, ASH))).get("joints");
        assertThat(StreamSupport.stream(joints.spliterator(), false)
                        .map(each -> each.get("tenon").asInt()))
                .containsExactly(0, 5);
        JsonNode first = joints.get(0);
        assertThat(first.get("hole_mm").asDouble()).isEqualTo(20);
        assertThat(first.get("made_pct").asDouble()).isEqualTo(8);
        assertThat(first.get("dry").get("pct").asDouble()).isEqualTo(6);
        assertThat(first.get("dry").get("tangential_mm").asDouble()).isEqualTo(20 * (1 - 2 * 0.00274), within(1e-9));
        assertThat(first.get("damp").get("radial_mm").asDouble()).isEqualTo(20 * (1 + 4 * 0.00169), within(1e-9));
        assertThat(first.get("hole_dry_mm").asDouble()).isEqualTo(20 * (1 - 2 * 0.00274), within(1e-9));
        assertThat(first.get("tightest_mm").asDouble()).isEqualTo(20 * 4 * 0.00274, within(1e-9));
        assertThat(first.get("loosest_mm").asDouble()).isEqualTo(-20 * 2 * 0.00274, within(1e-9));
    }
}
