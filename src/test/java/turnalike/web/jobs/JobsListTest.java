package turnalike.web.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.Served;

/** The list of jobs: rename, delete, put back, empty the bin; and the light page of starter patterns. */
class JobsListTest {
    @TempDir
    private Path folder;

    private static String title(Served served) {
        return served.store().find(served.demo()).orElseThrow().text().job().title();
    }

    @Test
    void a_deleted_job_waits_in_the_bin_until_it_is_put_back() throws Exception {
        try (Served served = Served.in(folder)) {
            String id = served.demo().text();
            var gone = served.post("/jobs/" + id + "/bin", "");
            assertThat(gone.statusCode()).isEqualTo(303);
            String after = gone.headers().firstValue("Location").orElseThrow();
            assertThat(served.get("/").body())
                    .doesNotContain("/jobs/" + id + "\"")
                    .contains("The bin: 1 job");
            assertThat(served.get(after).body()).contains("is in the bin", "id=\"put-back\"");
            assertThat(served.get("/bin").body()).contains("/jobs/" + id + "/restore");
            assertThat(served.post("/jobs/" + id + "/restore", "").statusCode()).isEqualTo(303);
            assertThat(served.get("/").body()).contains("/jobs/" + id + "\"").doesNotContain("The bin:");
            served.post("/jobs/" + id + "/bin", "");
            assertThat(served.post("/bin/empty", "").statusCode()).isEqualTo(303);
            assertThat(served.get("/bin").body()).contains("The bin is empty");
            assertThat(served.get("/").body()).doesNotContain("/jobs/" + id + "\"");
        }
    }

    @Test
    void a_job_is_renamed_from_the_list_as_an_edit_that_can_be_taken_back() throws Exception {
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.demo().text();
            assertThat(served.post(job + "/rename", "title=Harrowmead+second+wheel")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(title(served)).isEqualTo("Harrowmead second wheel");
            assertThat(served.post(job + "/rename", "title=+").statusCode()).isEqualTo(422);
            served.store().undo(served.demo());
            assertThat(title(served)).startsWith("Harrowmead fair wheel");
        }
    }

    @Test
    void the_starters_are_a_light_page_whose_pictures_are_files() throws Exception {
        try (Served served = Served.in(folder)) {
            String page = served.get("/starters?length=16&size=2&units=in").body();
            assertThat(page.length()).isLessThan(30_000);
            var picture = java.util.regex.Pattern.compile("src=\"(/starters/[^\"]+)\"")
                    .matcher(page);
            assertThat(picture.find()).isTrue();
            var answer = served.get(picture.group(1).replace("&amp;", "&"));
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body()).contains("<svg");
            assertThat(served.get("/starters/none.svg").statusCode()).isEqualTo(404);
            assertThat(served.get("/starters/plain-spoke.svg?length=oak").statusCode())
                    .isEqualTo(422);
        }
    }

    /** Undo of somebody else's step: it is told and not taken back. */
    @Test
    void an_undo_meant_for_another_step_is_refused() throws Exception {
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.demo().text();
            int seen = served.store().find(served.demo()).orElseThrow().times().steps();
            served.post(job + "/rename", "title=Harrowmead+theirs");
            var refused = served.post(job + "/steps/undo", "tab=/match&version=" + seen);
            assertThat(refused.statusCode()).isEqualTo(409);
            assertThat(refused.body()).contains("this was done meanwhile");
            assertThat(title(served)).isEqualTo("Harrowmead theirs");
        }
    }
}
