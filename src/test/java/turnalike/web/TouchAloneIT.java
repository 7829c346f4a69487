package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The main job by a finger alone on a telephone of 360 pixels: from a starter to pieces logged at the bench, the set placed by hand and the sheets.
 */
class TouchAloneIT {
    /** As wide and high as a fingertip needs, in the browser's pixels. */
    private static final double FINGERTIP = 44;

    private static final double SEARCH_MS = 60_000;

    @TempDir
    private Path folder;

    private Served served;
    private Browser browser;
    private Page page;

    @BeforeEach
    void open() throws Site.PortTaken {
        served = Served.in(folder);
        browser = Browser.open();
        page = Finger.telephone(browser);
    }

    @AfterEach
    void close() {
        browser.close();
        served.close();
    }

    @Test
    void from_a_starter_to_the_sheets() {
        page.navigate(served.address());
        begin();
        describe();
        turn();
        log();
        place();
        print();
        assertThat(browser.complaints()).isEmpty();
    }

    /** Touches it: what is smaller than a fingertip, or beside a screen that does not move sideways, a finger does not reach. */
    private void tap(Locator part) {
        part.scrollIntoViewIfNeeded();
        BoundingBox box = part.boundingBox();
        assertThat(box.height).as("height of " + part).isGreaterThanOrEqualTo(FINGERTIP - 0.5);
        part.tap();
    }

    private void tap(String selector) {
        tap(page.locator(selector).first());
    }

    /** Touches what leads to another page, which is no wider than the screen. */
    private void follow(String selector, String to) {
        tap(selector);
        page.waitForURL(Pattern.compile(".*" + to + ".*"));
        fits();
    }

    private void fits() {
        Object wide = page.evaluate("document.documentElement.scrollWidth");
        assertThat(((Number) wide).intValue()).as("width of " + page.url()).isLessThanOrEqualTo(360);
    }

    private void type(String field, String value) {
        tap(field);
        page.keyboard().press("Control+A");
        page.keyboard().type(value);
    }

    private void begin() {
        fits();
        follow("a:has-text('From a starter pattern')", "/starters");
        page.locator("#units").selectOption("mm");
        follow("button:has-text('Draw them so')", "units=mm");
        follow("li:has-text('luster') button:has-text('Start from it')", "/jobs/");
        page.waitForSelector("#work");
    }

    private void describe() {
        if (!page.locator("#f-count").isVisible()) {
            tap("#panel-order > summary");
        }
        type("#f-count", "3");
        page.locator("h1").tap(); // the field is left
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("good pieces wanted: .*"));
        tap("#panel-frame > summary");
        page.locator("#f-frame-kind").selectOption("row");
        assertThat(page.locator("#f-frame-places")).isVisible();
    }

    /** A member is chosen by touching it; its handle is taken hold of and let go. */
    private void turn() {
        Locator member = page.locator("#drawing .member[data-member='2']");
        member.scrollIntoViewIfNeeded();
        page.waitForTimeout(500); // the page scrolls smoothly
        BoundingBox lies = member.boundingBox();
        page.touchscreen()
                .tap(lies.x + lies.width / 2, lies.y + lies.height / 2); // a handle of its neighbour may lie over it
        assertThat(page.locator("#member-h")).containsText("2 ");
        Locator handle = page.locator("#drawing .handle").first();
        handle.scrollIntoViewIfNeeded();
        page.waitForTimeout(500);
        BoundingBox box = handle.boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        boolean along = handle.getAttribute("class").contains("along");
        Finger finger = new Finger(page);
        finger.down(x, y);
        finger.move(x, y, along ? x + 6 : x, along ? y : y - 6);
        assertThat(page.locator("#finger")).isVisible();
        finger.up();
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile(".* 2.*(moved|thicker|thinner).*"));
        tap("#undo");
        assertThat(page.locator("#redo")).isEnabled();
        tap("#redo");
        assertThat(page.locator("#redo")).isDisabled();
    }

    private void log() {
        follow("a:has-text('At the bench')", "/bench");
        for (int piece = 1; piece <= 3; piece++) {
            while (!page.locator("#entry").isVisible()) {
                tap("#next");
            }
            String mass = String.valueOf(500 + piece);
            type("[name=mass_g]", mass);
            tap("#entry button");
            assertThat(page.locator("#state")).containsText("all kept");
        }
        follow("a:has-text('Office')", "/jobs/[^/]*$");
        follow("nav.tabs a:has-text('Pieces')", "/pieces");
        assertThat(page.locator("table.pieces tbody tr")).hasCount(3);
    }

    private void place() {
        follow("nav.tabs a:has-text('Match')", "/match");
        assertThat(page.locator("#hold-1")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(SEARCH_MS));
        String first = page.locator("#hand tr[data-place='1']").getAttribute("data-piece");
        tap("#hold-1");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hold piece " + first + " at place 1"));
        String second = page.locator("#hand tr[data-place='2']").getAttribute("data-piece");
        String third = page.locator("#hand tr[data-place='3']").getAttribute("data-piece");
        tap("#swap-2");
        assertThat(page.locator("#notice")).containsText("Piece " + second + " is picked up");
        tap("#swap-3");
        assertThat(page.locator("#undo")).hasAttribute("title", "swap pieces %s and %s".formatted(second, third));
        assertThat(page.locator("#hand tr[data-place='3']")).hasAttribute("data-piece", second);
    }

    private void print() {
        follow("nav.tabs a:has-text('Sheets')", "/sheets");
        // Opened to be printed; kept as a file where that is asked for.
        String print = "a:text-is('Print')";
        assertThat(page.locator(print).first()).hasAttribute("target", "_blank");
        assertThat(page.locator(print).first())
                .hasAttribute("href", Pattern.compile("bench-card-a4\\.pdf\\?show=yes$"));
        tap("summary[aria-label='Files: Bench card']");
        Download sheet = page.waitForDownload(() -> tap("details[open] a[href$='.pdf']"));
        assertThat(sheet.suggestedFilename()).isEqualTo("bench-card-a4.pdf");
    }
}
