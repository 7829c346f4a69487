package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptPiece;

/** What is done to a job elsewhere comes to the pages that stand open. */
class ChangesIT {
    @TempDir
    private Path folder = Path.of("");

    private static void logElsewhere(Served served, JobId job, String label) {
        served.store().edit(job, kept -> Edit.of("log piece " + label, Change.of(KeptPiece.unmeasured(label))));
    }

    @Test
    void a_page_that_asks_is_answered_with_the_next_step() throws Exception {
        try (Served served = Served.in(folder)) {
            String address = "/api/jobs/" + served.demo() + "/changes?seen=";
            int steps = served.store().find(served.demo()).orElseThrow().times().steps();
            CompletableFuture<HttpResponse<String>> asked = CompletableFuture.supplyAsync(() -> {
                try {
                    return served.get(address + steps);
                } catch (Exception wrong) {
                    throw new AssertionError(wrong);
                }
            });
            logElsewhere(served, served.demo(), "at another bench");
            String told = asked.get().body();
            assertThat(told)
                    .contains(
                            "\"version\" : " + (steps + 1),
                            "\"changed\" : true",
                            "\"what\" : \"log piece at another bench\"");
            assertThat(served.get(address + steps).body()).as("come already").isEqualTo(told);
            assertThat(served.get("/api/jobs/" + served.demo() + "/changes").body())
                    .as("at once, where nothing is waited for")
                    .isEqualTo(told.replace("true", "false"));
            assertThat(served.get(address + "soon").statusCode()).isEqualTo(400);
        }
    }

    @Test
    void another_benchs_step_is_shown_and_where_something_is_typed_told() throws Exception {
        try (Browser browser = Browser.open();
                Served served = Served.in(folder)) {
            Page page = browser.page(1280, 900);
            JobId job = served.demo();
            page.navigate(served.address() + "jobs/" + job);
            page.waitForSelector("#work");
            logElsewhere(served, job, "71");
            assertThat(page.locator("#undo")).hasAttribute("title", "log piece 71");
            page.locator("#f-title, #settings-form input[type=text], form.each input[type=text]")
                    .first()
                    .fill("half ty");
            logElsewhere(served, job, "72");
            assertThat(page.locator("#notice")).containsText("Changed elsewhere: log piece 72.");
            assertThat(page.locator("#undo")).hasAttribute("title", "log piece 71");
            assertThat(page.locator("#notice button")).hasText("Show it");
            page.navigate(served.address() + "jobs/" + job + "/pieces");
            logElsewhere(served, job, "73");
            assertThat(page.locator("main")).containsText("log piece 73");
            assertThat(browser.complaints()).isEmpty();
            page.context().close();
        }
    }
}
