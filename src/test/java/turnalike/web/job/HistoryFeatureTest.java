package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.KeptJob;
import turnalike.web.Served;
import turnalike.web.Site;

/** What was done is read, looked into, laid over how the job stands, and gone back to. */
class HistoryFeatureTest {
    private Served served;
    private String job = "";

    @BeforeEach
    void serve(@TempDir Path folder) throws Site.PortTaken {
        served = Served.in(folder);
        job = "/jobs/" + served.demo().text();
    }

    @AfterEach
    void close() {
        served.close();
    }

    private KeptJob kept() {
        return served.store().find(served.demo()).orElseThrow();
    }

    @Test
    void every_edit_is_listed_with_its_words_and_what_was_taken_back_says_so() throws Exception {
        served.post(job + "/member/3", "crown=1+3%2F8");
        served.post(job + "/undo", "version=" + kept().times().steps());
        String list = served.get(job + "/history").body();
        assertThat(list)
                .contains(
                        "took back: hub bead 3 thinner at the crown: 1 1/2 → 1 3/8 in",
                        "taken back since",
                        "as it stands now");
        assertThat(list.indexOf("took back")).isLessThan(list.indexOf("keep the job"));
    }

    @Test
    void an_earlier_moment_shows_its_sizes_and_what_differs_from_now() throws Exception {
        int before = kept().times().steps();
        served.post(job + "/member/3", "crown=1+3%2F8");
        served.post(job + "/fields", "count=12");
        String moment = served.get(job + "/history/" + before).body();
        assertThat(served.get(job + "/history/" + before + "/settings").body())
                .contains("divider openings reach")
                .doesNotContain("hx-get");
        assertThat(moment)
                .contains(
                        ">Member 3 (hub bead)<",
                        ">Diameter at its crown<",
                        ">1 1/2 in<",
                        ">1 3/8 in<",
                        ">Good pieces wanted<")
                .contains("divider openings reach")
                .contains("as it stands now, dashed");
        String same = served.get(job + "/history/" + before + "?with=" + before).body();
        assertThat(same).contains("Both are the same");
    }

    @Test
    void going_back_is_an_edit_that_can_be_undone() throws Exception {
        int before = kept().times().steps();
        String then = kept().text().text();
        served.post(job + "/member/3", "crown=1+3%2F8");
        String changed = kept().text().text();
        int pieces = kept().pieces().size();
        assertThat(served.post(job + "/history/" + before + "/back", "version=" + (before + 1))
                        .statusCode())
                .isEqualTo(303);
        assertThat(kept().text().text()).isEqualTo(then);
        assertThat(kept().pieces()).hasSize(pieces);
        assertThat(kept().undo()).contains("go back to how it stood after step " + before);
        served.post(job + "/undo", "");
        assertThat(kept().text().text()).isEqualTo(changed);
    }

    @Test
    void nobody_goes_back_over_what_was_done_meanwhile() throws Exception {
        int before = kept().times().steps();
        served.post(job + "/member/3", "crown=1+3%2F8");
        served.post(job + "/fields", "count=12");
        HttpResponse<String> refused = served.post(job + "/history/" + before + "/back", "version=" + (before + 1));
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("was changed meanwhile");
        assertThat(kept().text().job().count()).isEqualTo(12);
    }

    @Test
    void a_step_that_was_not_taken_leads_nowhere() throws Exception {
        assertThat(served.get(job + "/history/999").statusCode()).isEqualTo(404);
        assertThat(served.post(job + "/history/999/back", "").statusCode()).isEqualTo(404);
    }

    @Test
    void a_field_is_kept_by_itself_and_only_what_is_wrong_is_not() throws Exception {
        HttpResponse<String> kept =
                served.post(job + "/fields", "title=Harrowmead+two&wood.species=Wishwood&field=title");
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(kept().text().job().title()).isEqualTo("Harrowmead two");
        assertThat(kept().undo().orElseThrow()).startsWith("title: Harrow").endsWith("→ Harrowmead two");
        HttpResponse<String> refused =
                served.post(job + "/fields", "title=Third&wood.species=Wishwood&field=wood.species");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(kept().text().job().title()).isEqualTo("Harrowmead two");
    }
}
