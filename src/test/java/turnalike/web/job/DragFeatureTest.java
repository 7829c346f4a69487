package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.Served;

class DragFeatureTest {
    @TempDir
    private Path folder;

    @Test
    void a_size_on_the_way_is_drawn_and_never_kept() throws Exception {
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.demo().text();
            int steps = served.store().find(served.demo()).orElseThrow().times().steps();
            HttpResponse<String> thicker = served.get(job + "/member/3/drag?key=crown&value=1%201%2F4&scale=0.5");
            assertThat(thicker.statusCode()).isEqualTo(200);
            assertThat(thicker.body())
                    .contains(
                            "class=\"lathe\"",
                            "data-mm=\"31.75\"",
                            "data-scale=\"0.5\"",
                            "id=\"misfits\"",
                            "id=\"figures\"")
                    .doesNotContain("<main");
            HttpResponse<String> none = served.get(job + "/member/3/drag?key=crown&value=1");
            assertThat(none.statusCode()).isEqualTo(422);
            assertThat(none.body()).contains("must exceed the root").doesNotContain("<");
            assertThat(served.get(job + "/member/3/drag?key=colour&value=1").statusCode())
                    .isEqualTo(422);
            assertThat(served.get(job + "/member/99/drag?key=crown&value=1").statusCode())
                    .isEqualTo(422);
            assertThat(served.get(job + "/member/3/drag?key=length&value=40").statusCode())
                    .isEqualTo(422);
            assertThat(served.get("/jobs/0000-0000-0000/member/3/drag?key=crown&value=1")
                            .statusCode())
                    .isEqualTo(404);
            assertThat(served.store().find(served.demo()).orElseThrow().times().steps())
                    .isEqualTo(steps);
        }
    }
}
