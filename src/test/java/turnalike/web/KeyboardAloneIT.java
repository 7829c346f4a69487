package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job with the keyboard alone: from an empty job to pieces, the set in its frame and the sheets, without once touching a mouse. */
class KeyboardAloneIT {
    private static final int FURTHEST = 160;

    @TempDir
    private Path folder;

    private Served served;
    private Browser browser;
    private Page page;

    @BeforeEach
    void open() throws Site.PortTaken {
        served = Served.in(folder);
        browser = Browser.open();
        page = browser.page(1280, 900);
    }

    @AfterEach
    void close() {
        browser.close();
        served.close();
    }

    @Test
    void from_an_empty_job_to_the_sheets() {
        page.navigate(served.address());
        follow("a:has-text('New job')");
        page.waitForSelector("#work");
        describe();
        turn();
        log();
        placed();
        assertThat(browser.complaints()).isEmpty();
    }

    /** Goes on with Tab until it stands there: what Tab does not reach, a person without a mouse does not either. */
    private void to(String selector) {
        String here = "selector => document.activeElement !== null && document.activeElement.matches(selector)";
        boolean text = selector.contains(":has-text");
        String plain = text ? selector.substring(0, selector.indexOf(":has-text")) : selector;
        String words = text ? selector.replaceAll(".*:has-text\\('(.*)'\\).*", "$1") : "";
        for (int i = 0; i < FURTHEST; i++) {
            boolean there = (Boolean) page.evaluate(here, plain)
                    && ((String) page.evaluate("document.activeElement.textContent")).contains(words);
            if (there) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("Tab does not reach " + selector);
    }

    private void follow(String link) {
        to(link);
        page.keyboard().press("Enter");
    }

    private void write(String field, String value) {
        to(field);
        page.keyboard().press("Control+A");
        page.keyboard().type(value);
        page.keyboard().press("Enter");
    }

    private void describe() {
        write("#f-title", "Four rungs");
        assertThat(page.locator("h1")).hasText("Four rungs");
        assertThat(page.locator("#f-title")).isFocused();
        write("#f-count", "4");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("good pieces wanted: .*"));
        follow("#panel-frame > summary");
        to("#f-frame-kind");
        page.keyboard().type("row");
        page.keyboard().press("Enter");
        assertThat(page.locator("#f-frame-places")).isVisible();
    }

    private void turn() {
        to("#insert");
        page.keyboard().type("tenon");
        follow("#before");
        assertThat(page.locator("#member-h")).hasText("1 tenon");
        to("#grip-diameter");
        String before = page.locator("#grip-diameter").getAttribute("aria-valuetext");
        page.keyboard().press("ArrowDown");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("tenon 1.*: .*"));
        assertThat(page.locator("#grip-diameter")).not().hasAttribute("aria-valuetext", before);
        to(".run a[aria-current]");
        page.keyboard().press("ArrowRight");
        assertThat(page.locator("#member-h")).hasText("2 blank");
        to("#kind");
        page.keyboard().type("taper");
        assertThat(page.locator("#member-h")).hasText("2 blank");
        follow("#turn-kind");
        assertThat(page.locator("#f-from")).isVisible();
        follow("#undo");
        assertThat(page.locator("#f-from")).hasCount(0);
        follow("#redo");
        assertThat(page.locator("#f-from")).isVisible();
    }

    private void log() {
        follow("nav.tabs a:has-text('Pieces')");
        page.waitForSelector("#c-mass_g");
        for (String mass : new String[] {"401.2", "403.8", "399.9", "402.5"}) {
            write("#c-mass_g", mass);
            page.waitForCondition(() -> page.locator("#sure").isVisible()
                    || !page.locator("#c-mass_g").inputValue().equals(mass));
            if (page.locator("#sure").isVisible()) {
                follow("#sure");
            }
            assertThat(page.locator("#c-mass_g")).hasValue("");
        }
        assertThat(page.locator("table.pieces tbody tr")).hasCount(4);
    }

    private void placed() {
        follow("nav.tabs a:has-text('Match')");
        assertThat(page.locator("h1")).containsText("Four rungs");
        page.waitForSelector("#set");
        follow("nav.tabs a:has-text('Sheets')");
        page.waitForSelector("a[href$='.pdf?show=yes']");
        to("a[href$='.pdf?show=yes']");
        follow("nav.tabs a:has-text('Piece and settings')");
        page.waitForSelector("#next");
        assertThat(page.locator("#next")).containsText("choose the set");
    }
}
