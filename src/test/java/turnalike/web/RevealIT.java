package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a button or a link points at within the job is open and on the screen when one arrives there. */
class RevealIT {
    @TempDir
    private Path folder;

    private static void shows(Page page, String panel) {
        assertThat(page.locator(panel)).hasAttribute("open", "");
        assertThat(page.locator(panel + " > summary")).isFocused();
        assertThat(page.locator(panel + " > summary")).isInViewport();
        page.waitForTimeout(300);
        assertThat(page.evaluate("""
                panel => {
                  const box = document.querySelector(panel + " > summary").getBoundingClientRect();
                  return document.elementFromPoint(box.x + 20, box.y + box.height / 2).closest("details")?.id;
                }""", panel)).isEqualTo(panel.substring(1));
    }

    @Test
    void a_panel_that_is_pointed_at_is_opened_and_in_sight() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = Finger.telephone(browser);
            page.navigate(served.address() + "jobs/" + served.job("New job").text() + "/match");
            page.locator("a:text-is('Describe the frame')").tap();
            shows(page, "#panel-frame");
            page.navigate(served.address() + "jobs/" + served.job("New job").text() + "/wood");
            page.locator("#main a:text-is('the job')").tap();
            shows(page, "#panel-home");
        }
    }
}
