package turnalike.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
