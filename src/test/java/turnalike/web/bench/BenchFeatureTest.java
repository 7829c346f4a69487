package turnalike.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Step;
import turnalike.web.Served;
import turnalike.web.Site;

/** What the bench view sends, whatever a browser makes of it. */
class BenchFeatureTest {
    private static final String ENTRY = "0123456789abcdef01234567";

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

    private HttpResponse<String> post(String deed, String form) throws IOException, InterruptedException {
        return served.post("/jobs/" + served.demo().text() + "/bench/" + deed, form);
    }

    private List<Step> steps() {
        return served.store().give(served.demo()).orElseThrow().history();
    }

    private KeptPiece piece(String label) {
        return served.store().find(served.demo()).orElseThrow().find(label).orElseThrow();
    }

    @Test
    void an_entry_is_kept_with_its_figures_and_its_time() throws Exception {
        HttpResponse<String> answer =
                post("log", "entry=" + ENTRY + "&piece=41&mass_g=142.5&length=15&d1=1.001&minutes=12.5");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("Piece 41 is kept.");
        assertThat(piece("41").piece().mass().orElseThrow().grams()).isEqualTo(142.5);
        assertThat(piece("41").piece().length().orElseThrow().mm()).isEqualTo(381);
        assertThat(piece("41").turning()).contains(Duration.ofSeconds(750));
    }

    @Test
    void an_entry_sent_twice_is_kept_once_and_never_over_a_later_correction() throws Exception {
        post("log", "entry=" + ENTRY + "&piece=41&mass_g=142.5");
        post("log", "entry=ffffffffffffffffffffffff&piece=41&mass_g=140.5");
        int before = steps().size();
        HttpResponse<String> again = post("log", "entry=" + ENTRY + "&piece=41&mass_g=142.5");
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(again.body()).contains("kept already");
        assertThat(steps()).hasSize(before);
        assertThat(piece("41").piece().mass().orElseThrow().grams()).isEqualTo(140.5);
    }

    @Test
    void a_likely_slip_is_kept_and_asked_about() throws Exception {
        HttpResponse<String> answer = post("log", "entry=" + ENTRY + "&piece=41&mass_g=1409");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("Piece 41 is kept.", "140.9 g meant?");
    }

    @Test
    void what_cannot_be_read_is_refused_in_words_and_changes_nothing() throws Exception {
        int before = steps().size();
        HttpResponse<String> answer = post("log", "entry=" + ENTRY + "&piece=41&mass_g=heavy&d1=1/0");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("weight: 'heavy' is not a mass", "middle of the long taper: ");
        assertThat(post("log", "entry=" + ENTRY + "&piece=41").body()).contains("nothing is entered");
        assertThat(post("log", "entry=" + ENTRY + "&piece=&mass_g=140").statusCode())
                .isEqualTo(422);
        assertThat(post("log", "entry=x&piece=41&mass_g=140").statusCode()).isEqualTo(422);
        assertThat(post("log", "piece=41&mass_g=140").statusCode()).isEqualTo(422);
        assertThat(steps()).hasSize(before);
    }

    @Test
    void the_last_entry_is_taken_back_unless_something_else_was_done_since() throws Exception {
        post("log", "entry=" + ENTRY + "&piece=41&mass_g=142.5");
        HttpResponse<String> undone = post("undo", "entry=" + ENTRY);
        assertThat(undone.statusCode()).isEqualTo(200);
        assertThat(served.store().find(served.demo()).orElseThrow().find("41")).isEmpty();
        assertThat(post("undo", "entry=" + ENTRY).statusCode()).isEqualTo(409);
    }

    @Test
    void a_job_that_is_not_here_has_no_bench() throws Exception {
        assertThat(served.get("/jobs/0000-0000-0000/bench").statusCode()).isEqualTo(404);
        assertThat(served.post("/jobs/0000-0000-0000/bench/log", "entry=" + ENTRY + "&piece=1&mass_g=1")
                        .statusCode())
                .isEqualTo(404);
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
