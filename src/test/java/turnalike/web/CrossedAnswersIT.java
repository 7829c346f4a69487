package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where two answers crossed, what one left out is not what stands there: the page asks for that, and for no more. */
class CrossedAnswersIT {
    @TempDir
    private Path folder;

    private static final String WHILE_ON_ITS_WAY = """
            () => {
              const field = document.getElementById("f-crown");
              field.value = "1 3/8";
              field.dispatchEvent(new Event("change", {bubbles: true}));
              turnalikePage.forget("wanted"); // as if another answer had put another part there
            }""";

    private static final String DRAWN = "() => document.querySelector('.lathe svg').innerHTML";

    @Test
    void only_what_is_unsound_is_asked_for_again_and_hand_and_eye_stay_where_they_are() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = browser.page(1280, 700);
            // What it would ask for because the job was changed, by itself here, comes without.
            page.route(Pattern.compile("/changes\\?seen="), unanswered -> {});
            page.navigate(served.address() + "jobs/" + served.demo().text() + "?member=3");
            page.waitForSelector("#f-crown");
            // Once answered, the page knows its parts by their digests.
            page.waitForResponse(
                    each -> each.url().contains("?member="), () -> page.evaluate("void turnalikePage.select('3')"));
            page.waitForCondition(() ->
                    !String.valueOf(page.evaluate("turnalikePage.partsShown()")).isEmpty());
            page.locator("#panel-turning > summary").click();
            page.locator("#f-turning-lathe-speed, #panel-turning input").first().focus();
            page.evaluate("() => { window.held = document.activeElement; }");

            Request again = page.waitForRequest(
                    each -> each.method().equals("GET") && each.url().contains("?member="),
                    () -> page.evaluate(WHILE_ON_ITS_WAY));
            String parts = again.allHeaders().getOrDefault("x-turnalike-parts", "");
            assertThat(parts).as("what is asked for anew").doesNotContain("wanted=");
            assertThat(parts).as("what is left as it is").contains("order=", "stock=", "drawing=", "run=");

            assertThat(page.locator("#f-crown")).hasValue("1 3/8");
            page.waitForCondition(() ->
                    String.valueOf(page.evaluate("turnalikePage.partsShown()")).contains("wanted="));
            assertThat(page.evaluate("() => document.activeElement === held")).isEqualTo(true);
            assertThat(page.locator(":focus")).isInViewport();
            Object drawn = page.evaluate(DRAWN);
            page.reload();
            page.waitForSelector(".lathe svg");
            assertThat(page.evaluate(DRAWN)).isEqualTo(drawn);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** What a longer search finds takes the place of the first settings; what tells how they were found must tell of the same. */
    @Test
    void settings_and_their_workings_tell_of_the_same_plan() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = browser.page(1280, 900);
            page.navigate(served.address() + "jobs/" + served.demo().text());
            page.waitForSelector("#settings[data-final=true]");
            String told = page.locator("#settings p").first().textContent();
            Matcher openings = Pattern.compile("(\\d+) divider openings").matcher(told);
            assertThat(openings.find()).as(told).isTrue();
            page.locator("#found > summary").click();
            assertThat(page.locator("#found")).containsText(openings.group(1) + " settings");
            assertThat(page.locator("#found")).not().containsText("is not decided");
        }
    }
}
