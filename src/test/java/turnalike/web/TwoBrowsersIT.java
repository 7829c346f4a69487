package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.edit.TypedFields;
import turnalike.job.kept.JobText;

/** Two people, each with a browser, at one job: both look at the same state, then both change it. */
class TwoBrowsersIT {
    @TempDir
    private Path folder;

    private static void type(Page page, String field, String value) {
        page.locator(field).fill(value);
        page.locator(field).press("Tab");
    }

    private static void open(Page page, Served served, int member) {
        page.navigate(served.address() + "jobs/" + served.demo().text() + "?member=" + member);
        page.waitForSelector("#work");
    }

    @Test
    void both_edits_are_kept_or_the_second_is_told_of_the_first() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page one = browser.page(1280, 900);
            Page other = browser.page(1280, 900);
            // What is done elsewhere would reach it within a second, and then it has seen it.
            other.route(Pattern.compile("/changes\\?seen="), unanswered -> {});
            open(one, served, 3);
            open(other, served, 7);

            type(one, "#f-crown", "1 3/8");
            assertThat(one.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
            type(other, "#f-crown", "1 3/16");
            assertThat(other.locator("#undo")).hasAttribute("title", Pattern.compile("ring 7.* at the crown: .*"));
            JobText text = served.store().find(served.demo()).orElseThrow().text();
            assertThat(TypedFields.member(text, 3)).containsEntry("crown", "1 3/8");
            assertThat(TypedFields.member(text, 7)).containsEntry("crown", "1 3/16");

            // One has not seen the ring's new crown: typing another is told, the typed figure stays, and doing it
            // again counts.
            one.locator("#f-crown").fill("1 7/16");
            type(other, "#f-name", "collar");
            open(other, served, 3);
            type(other, "#f-crown", "1 5/16");
            assertThat(other.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
            one.locator("#f-crown").press("Tab");
            assertThat(one.locator("#f-crown-also")).containsText("was made '1 5/16' meanwhile");
            assertThat(one.locator("#f-crown")).hasValue("1 7/16");
            one.locator("#f-crown").press("Enter");
            assertThat(one.locator("#f-crown")).not().hasAttribute("aria-invalid", "true");
            text = served.store().find(served.demo()).orElseThrow().text();
            assertThat(TypedFields.member(text, 3)).containsEntry("crown", "1 7/16");

            // The other's undo would take back what the other has never seen.
            other.locator("#undo").click();
            assertThat(other.locator("[role=alert]")).containsText("this was done meanwhile");
            text = served.store().find(served.demo()).orElseThrow().text();
            assertThat(TypedFields.member(text, 3)).containsEntry("crown", "1 7/16");
            other.locator("#undo").click();
            assertThat(other.locator("#f-crown")).hasValue("1 5/16");

            // Coming back to the page shows it.
            one.evaluate("window.dispatchEvent(new Event('focus'))");
            assertThat(one.locator("#f-crown")).hasValue("1 5/16");
        }
    }
}
