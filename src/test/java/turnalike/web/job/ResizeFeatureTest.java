package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.Job;
import turnalike.web.Served;

/** The page on which a whole pattern is scaled, stretched and compared. */
class ResizeFeatureTest {
    @TempDir
    private Path folder;

    private static Job job(Served served) {
        return served.store().find(served.demo()).orElseThrow().text().job();
    }

    @Test
    void a_pattern_is_scaled_and_stretched_compared_with_the_one_before_and_taken_back() throws Exception {
        try (Served served = Served.in(folder)) {
            String page = "/jobs/" + served.demo().text() + "/resize";
            assertThat(served.get(page).body()).contains("nothing to compare it with");
            Job was = job(served);
            var scaled = served.post(page + "/scale", "what=lengths&pct=110&tenons=true");
            assertThat(scaled.statusCode()).as(scaled.body()).isEqualTo(303);
            assertThat(job(served).pattern().length())
                    .isGreaterThan(was.pattern().length());
            assertThat(served.get(page).body()).contains("scale its lengths to 110 %", "<svg", "hub bead");
            assertThat(served.post(page + "/stretch", "length=15&member=6&member=8")
                            .statusCode())
                    .isEqualTo(303);
            assertThat(job(served).pattern().length().inches()).isCloseTo(15, within(1e-9));
            int version =
                    served.store().find(served.demo()).orElseThrow().times().steps();
            served.post("/jobs/" + served.demo().text() + "/steps/undo", "tab=/resize&version=" + version);
            served.post("/jobs/" + served.demo().text() + "/steps/undo", "tab=/resize&version=" + (version + 1));
            assertThat(job(served).pattern()).isEqualTo(was.pattern());
        }
    }

    @Test
    void what_cannot_be_is_refused_with_its_reason() throws Exception {
        try (Served served = Served.in(folder)) {
            String page = "/jobs/" + served.demo().text() + "/resize";
            Job was = job(served);
            assertThat(served.post(page + "/scale", "what=all&pct=5").body()).contains("give 10 to 1000");
            assertThat(served.post(page + "/scale", "what=colour&pct=110").statusCode())
                    .isEqualTo(422);
            assertThat(served.post(page + "/scale", "what=all&pct=100").body()).contains("comes out as it was");
            assertThat(served.post(page + "/stretch", "length=long&member=3").statusCode())
                    .isEqualTo(422);
            assertThat(served.post(page + "/stretch", "length=20").body()).contains("choose those that may grow");
            assertThat(job(served)).isEqualTo(was);
        }
    }
}
