package turnalike.web.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.Served;

/** The first walk: begun on the demo, gone on with, left and taken up. */
class TourFeatureTest {
    @TempDir
    private Path folder;

    private static String cookie(HttpResponse<String> answer) {
        return answer.headers().firstValue("Set-Cookie").orElseThrow().replaceAll(";.*", "");
    }

    private static String page(Served served, String path, String cookie) throws Exception {
        return HttpClient.newHttpClient()
                .send(served.request(path).header("Cookie", cookie).GET().build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    @Test
    void a_walk_has_five_steps_and_can_be_left_and_taken_up() throws Exception {
        try (Served served = Served.in(folder)) {
            String demo = "/jobs/" + served.demo().text();
            assertThat(served.get("/").body()).contains("Begin the walk").doesNotContain("Go on at step");
            HttpResponse<String> begun = served.post("/tour", "");
            assertThat(begun.headers().firstValue("Location")).contains(demo + "?member=3");
            assertThat(page(served, demo, cookie(begun))).contains("1 of 5: Look and choose", "Next");
            HttpResponse<String> fourth = served.post(demo + "/tour", "step=4");
            assertThat(fourth.headers().firstValue("Location")).contains(demo + "/match");
            HttpResponse<String> left = served.post(demo + "/tour", "step=4&leave=true");
            assertThat(left.headers().firstValue("Location")).contains("/");
            assertThat(page(served, demo, cookie(left))).doesNotContain("4 of 5");
            assertThat(page(served, "/", cookie(left))).contains("Go on at step 4");
            assertThat(page(served, demo, cookie(served.post(demo + "/tour", "step=5"))))
                    .contains("5 of 5", "Done");
        }
    }

    @Test
    void a_step_that_is_none_and_a_cookie_that_is_none_do_no_harm() throws Exception {
        try (Served served = Served.in(folder)) {
            String demo = "/jobs/" + served.demo().text();
            assertThat(served.post(demo + "/tour", "step=9").statusCode()).isEqualTo(422);
            assertThat(page(served, "/", "turnalike-tour=on-7-<script>")).doesNotContain("of 5:");
        }
    }
}
