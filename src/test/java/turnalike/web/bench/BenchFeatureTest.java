package turnalike.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobText;
import turnalike.turning.Cut;
import turnalike.turning.Phase;
import turnalike.turning.SpeedAdvice;
import turnalike.turning.Turning;
import turnalike.web.Served;
import turnalike.web.Site;

/** The bench view as it comes, whatever a browser makes of it. */
class BenchFeatureTest {
    @TempDir
    private Path folder;

    private Served served;

    @BeforeEach
    void serve() throws Site.PortTaken {
        served = Served.in(folder);
    }

    @AfterEach
    void close() {
        served.close();
    }

    @Test
    void a_job_that_is_not_here_has_no_bench() throws Exception {
        assertThat(served.get("/jobs/0000-0000-0000/bench").statusCode()).isEqualTo(404);
    }

    /** Its script takes 403 for: load the page again; what waits to be sent stays. */
    @Test
    void a_view_that_stands_open_since_an_older_release_is_told_to_load_again() throws Exception {
        int before = served.store().done(served.demo()).size();
        for (String deed : List.of("log", "undo")) {
            HttpResponse<String> answer = served.post(
                    "/jobs/" + served.demo().text() + "/bench/" + deed,
                    "entry=0123456789abcdef01234567&piece=41&mass_g=142.5");
            assertThat(answer.statusCode()).isEqualTo(403);
            assertThat(answer.body()).contains("load the page again");
        }
        assertThat(served.store().done(served.demo())).hasSize(before);
    }

    /** On the phone beside the lathe, where nothing else is at hand: for each cut how fast, and what to beware of. */
    @Test
    void every_step_tells_its_speed_and_its_caution() throws Exception {
        var id = served.demo();
        String knob = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Knob", "stock": {"section": "square", "size": 30, "length": 60},
                  "members": [{"kind": "bead", "length": 20, "root": 16, "crown": 24}, {"kind": "cylinder", "length": 20, "diameter": 24}]},
                 "wood": {"density_kg_m3": 650}, "turning": {"held": "chuck", "speeds": [700, 1200, 2400]}}
                """;
        JobText text = JobText.read(knob).text().orElseThrow();
        served.store().edit(id, kept -> Edit.of("a knob", Change.of(text)));
        Turning turning = Plan.of(text.job(), Effort.ofAsks(200)).turning();
        String page = served.get("/jobs/" + id.text() + "/bench").body();
        List<String> steps = List.of(page.split("<li class=\"step\">", -1));
        assertThat(steps).hasSizeGreaterThan(turning.cuts().size());
        SpeedAdvice speeds = turning.speeds();
        assertThat(speeds.roughing().to().rpm())
                .isLessThan(0.7 * speeds.turning().to().rpm());
        for (Cut cut : turning.cuts()) {
            String step = steps.get(cut.order());
            if (!cut.caution().isEmpty()) {
                assertThat(step).contains("class=\"caution\"", cut.caution().substring(0, 12));
            }
            String rough = "no faster than %s rpm; lathe step 1200"
                    .formatted(speeds.roughing().to().noFaster());
            String round = "no faster than %s rpm; lathe step 2400"
                    .formatted(speeds.turning().to().noFaster());
            switch (cut.phase()) {
                case HOLDING -> assertThat(step).doesNotContain("no faster than");
                case SHOULDERS, ROUND -> assertThat(step).contains(rough);
                default -> assertThat(step).contains(round);
            }
        }
        assertThat(turning.cuts())
                .anyMatch(cut -> !cut.caution().isEmpty())
                .anyMatch(cut -> cut.phase() == Phase.ROUND);
    }

    @Test
    void the_page_reads_without_a_script_every_cut_and_the_entry() throws Exception {
        String page = served.get("/jobs/" + served.demo().text() + "/bench").body();
        assertThat(page)
                .contains("1 · square to round", "roughing gouge", "1 17/32 in", "Weigh and measure", "Belly, in");
        assertThat(page).doesNotContain("style=\"", "onclick", "<script>");
        HttpResponse<String> worker = served.get("/jobs/" + served.demo().text() + "/bench/worker.js");
        assertThat(worker.headers().firstValue("Service-Worker-Allowed")).contains("/jobs/");
        assertThat(worker.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/javascript");
    }
}
