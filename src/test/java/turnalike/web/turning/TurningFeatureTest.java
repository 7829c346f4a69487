package turnalike.web.turning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobText;
import turnalike.turning.Cut;
import turnalike.turning.SpeedAdvice;
import turnalike.turning.Turning;
import turnalike.units.PlainNumber;
import turnalike.web.Served;

class TurningFeatureTest {
    @TempDir
    private Path folder;

    @Test
    void every_cut_caution_and_figure_of_the_plan_is_on_the_page() throws Exception {
        try (Served served = Served.in(folder)) {
            String page =
                    served.get("/jobs/" + served.demo().text() + "/turning").body();
            Turning turning = Plan.of(
                            served.store()
                                    .find(served.demo())
                                    .orElseThrow()
                                    .text()
                                    .job(),
                            Effort.ofAsks(100_000_000))
                    .turning();
            for (Cut cut : turning.cuts()) {
                assertThat(page).contains("<strong>" + cut.order() + " · ");
            }
            assertThat(page.split("class=\"sheet fit place\"", -1))
                    .hasSize(turning.cuts().size() + 1);
            assertThat(page)
                    .contains(
                            turning.isFarFromWhip()
                                    ? "above any lathe's speed"
                                    : PlainNumber.toFigures(
                                                    turning.whip()
                                                            .orElseThrow()
                                                            .first()
                                                            .rpm(),
                                                    2) + " rpm")
                    .contains("How stiff it stays", "face shield", "common practice, no source")
                    .doesNotContainIgnoringCase("complies", "is safe", "Optional[", "style=\"");
        }
    }

    @Test
    void a_stout_foot_is_not_told_at_what_speeds_no_lathe_has_it_whips() throws Exception {
        try (Served served = Served.in(folder)) {
            String foot = """
                    {"format": "turnalike-job", "version": 1, "units": "mm",
                     "pattern": {"name": "Bun foot", "stock": {"section": "square", "size": 95, "length": 85},
                      "members": [{"kind": "cylinder", "length": 18, "diameter": 60},
                       {"kind": "bead", "length": 50, "root": 50, "crown": 90}]},
                     "wood": {"species": "White oak"}, "turning": {"held": "screw"}}
                    """;
            JobText stout = JobText.read(foot).text().orElseThrow();
            var id = served.demo();
            served.store().edit(id, kept -> Edit.of("a foot", Change.of(stout)));
            String page = served.get("/jobs/" + id.text() + "/turning").body();
            assertThat(page).contains("How stiff it stays", "above any lathe's speed");
            String stages = page.substring(page.indexOf("id=\"stages\""));
            assertThat(stages.substring(0, stages.indexOf("</table>"))).doesNotContain(" rpm");
        }
    }

    /** The page that stands beside the lathe: each speed under its own name. */
    @Test
    void roughing_is_told_with_its_own_speeds() throws Exception {
        try (Served served = Served.in(folder)) {
            String knob = """
                    {"format": "turnalike-job", "version": 1, "units": "mm",
                     "pattern": {"name": "Knob", "stock": {"section": "square", "size": 30, "length": 60},
                      "members": [{"kind": "cylinder", "length": 40, "diameter": 24}]},
                     "wood": {"density_kg_m3": 650}, "turning": {"held": "chuck"}}
                    """;
            JobText slower = JobText.read(knob).text().orElseThrow();
            var id = served.demo();
            served.store().edit(id, kept -> Edit.of("a knob", Change.of(slower)));
            SpeedAdvice speeds =
                    Plan.of(slower.job(), Effort.ofAsks(100_000_000)).turning().speeds();
            assertThat(speeds.roughing().to().rpm())
                    .isLessThan(speeds.turning().to().rpm());
            String page = served.get("/jobs/" + id.text() + "/turning").body();
            int rough = page.indexOf("Roughing, while out of round");
            assertThat(page.substring(rough, page.indexOf("rpm", rough)))
                    .contains(speeds.roughing().from().about() + " to "
                            + speeds.roughing().to().noFaster());
            int turn = page.indexOf(">Turning</span>");
            assertThat(page.substring(turn, page.indexOf("rpm", turn)))
                    .contains(speeds.turning().from().about() + " to "
                            + speeds.turning().to().noFaster());
        }
    }

    @Test
    void what_is_not_known_of_the_wood_is_left_out() throws Exception {
        try (Served served = Served.in(folder)) {
            String text = served.store()
                    .find(served.demo())
                    .orElseThrow()
                    .text()
                    .text()
                    .replace("{\"species\": \"White ash\", \"moisture_pct\": 8}", "{\"density_kg_m3\": 650}");
            served.store()
                    .edit(
                            served.demo(),
                            kept -> Edit.of(
                                    "wood", Change.of(JobText.read(text).text().orElseThrow())));
            String page =
                    served.get("/jobs/" + served.demo().text() + "/turning").body();
            assertThat(page).contains("Order of cuts", "Turning").doesNotContain("Whips at", "How stiff it stays");
            assertThat(served.get("/jobs/0000-0000-0000/turning").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void a_home_typed_on_the_page_shows_the_joints_through_the_year_until_it_is_taken_out() throws Exception {
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.demo().text();
            assertThat(served.get(job + "/wood").body()).contains("Say where the pieces will live");
            String air =
                    "home.dry.temperature_c=21&home.dry.humidity_pct=30&home.damp.temperature_c=24&home.damp.humidity_pct=65";
            assertThat(served.post(job + "/fields", air).statusCode()).isEqualTo(303);
            assertThat(served.get(job + "/wood").body())
                    .contains("1 hub tenon in the hub", "tightest when damp")
                    .contains("differences drawn", "Trust a trial joint before these figures")
                    .doesNotContain("Optional[", "style=\"");
            assertThat(served.post(job + "/fields", "home.damp.humidity_pct=100")
                            .body())
                    .contains("give 5 to 95 percent; Wood Handbook Table 4-2 ends there");
            String none = air.replaceAll("=[0-9]+", "=");
            assertThat(served.post(job + "/fields", none).statusCode()).isEqualTo(303);
            assertThat(served.get(job + "/wood").body()).contains("Say where the pieces will live");
        }
    }

    @Test
    void a_frame_is_drawn_with_its_figures_and_what_is_wrong_with_it_first() throws Exception {
        try (Served served = Served.in(folder)) {
            String text = served.store()
                    .find(served.demo())
                    .orElseThrow()
                    .text()
                    .text()
                    .replaceFirst(
                            "(?s)\"frame\": \\{.*?\\}",
                            "\"frame\": {\"kind\": \"row\", \"places\": 30, \"clear\": \"30\"}");
            served.store()
                    .edit(
                            served.demo(),
                            kept -> Edit.of(
                                    "row", Change.of(JobText.read(text).text().orElseThrow())));
            String page =
                    served.get("/jobs/" + served.demo().text() + "/turning").body();
            assertThat(page)
                    .contains(
                            "The frame as it will stand",
                            "Row: cannot be built",
                            "a row of 30 between posts 30 in",
                            "data-place=\"30\"",
                            "check with your local authority")
                    .doesNotContainIgnoringCase("complies", "Optional[", "style=\"");
        }
    }
}
