package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two edits sent before either is answered: the page then asks for what it cannot piece together, and for no more. */
class CrossedAnswersIT {
    @TempDir
    private Path folder;

    private static final String BOTH_AT_ONCE = """
            () => {
              for (const [id, value] of [["f-crown", "1 3/8"], ["f-pattern-stock-size", "2"]]) {
                const field = document.getElementById(id);
                field.value = value;
                field.dispatchEvent(new Event("change", {bubbles: true}));
              }
            }""";

    private static final String DRAWN = "() => document.querySelector('.lathe svg').innerHTML";

    @Test
    void only_what_is_unsound_is_asked_for_again_and_hand_and_eye_stay_where_they_are() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = browser.page(1280, 700);
            page.navigate(served.address() + "jobs/" + served.demo().text() + "?member=3");
            page.waitForSelector("#f-crown");
            // Once answered, the page knows its parts by their digests.
            page.waitForResponse(
                    each -> each.url().contains("?member="), () -> page.evaluate("void turnalikePage.select('3')"));
            page.waitForCondition(() ->
                    !String.valueOf(page.evaluate("turnalikePage.partsShown()")).isEmpty());
            page.locator("#panel-turning > summary").click();
            page.locator("#f-turning-lathe-speed, #panel-turning input").first().focus();
            page.evaluate(
                    "() => { window.held = document.activeElement; window.wasAt = held.getBoundingClientRect().top; }");

            Request again = page.waitForRequest(
                    each -> each.method().equals("GET") && each.url().contains("?member="),
                    () -> page.evaluate(BOTH_AT_ONCE));
            String parts = again.allHeaders().getOrDefault("x-turnalike-parts", "");
            assertThat(parts).as("what is asked for anew").doesNotContain("drawing=");
            assertThat(parts).as("what is left as it is").contains("order=", "run=", "stock=", "wanted=");

            assertThat(page.locator("#f-crown")).hasValue("1 3/8");
            assertThat(page.locator("#f-pattern-stock-size")).hasValue("2");
            page.waitForCondition(() ->
                    String.valueOf(page.evaluate("turnalikePage.partsShown()")).contains("drawing="));
            assertThat(page.evaluate("() => document.activeElement === held")).isEqualTo(true);
            double moved = ((Number) page.evaluate("() => held.getBoundingClientRect().top - wasAt")).doubleValue();
            assertThat(moved)
                    .as("the field under the hand, moved on the screen by px")
                    .isBetween(-2.0, 2.0);
            Object drawn = page.evaluate(DRAWN);
            page.reload();
            page.waitForSelector(".lathe svg");
            assertThat(page.evaluate(DRAWN)).isEqualTo(drawn);
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
