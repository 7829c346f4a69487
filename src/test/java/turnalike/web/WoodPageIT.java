package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.Shop;
import turnalike.job.kept.JobId;

/** Boards and blanks typed by keyboard, cut, and a stage timed, in a browser. */
class WoodPageIT {
    @TempDir
    private Path folder;

    @Test
    void boards_are_typed_and_cut_and_a_stage_is_timed() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = browser.page(1280, 900);
            JobId job = served.demo();
            page.navigate(served.address() + "jobs/" + job.text() + "/wood");
            type(page, served, job);
            cut(page);
            time(page, served, job);
            assertThat(Axe.found(page)).isEmpty();
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static Shop shop(Served served, JobId job) {
        return served.store().find(job).orElseThrow().text().job().shop();
    }

    /** Enter keeps the row and begins the next under its own name; a wrong cell is told and mended in its place. */
    private static void type(Page page, Served served, JobId job) {
        for (String width : List.of("8 1/2", "7")) {
            page.locator("#boards-next-thickness").fill("2 1/4");
            page.locator("#boards-next-width").fill(width);
            page.locator("#boards-next-length").fill("8 ft");
            page.keyboard().press("Enter");
            assertThat(page.locator("#boards-next-width")).hasValue("");
            assertThat(page.locator("#boards-next-thickness")).isFocused();
        }
        assertThat(page.locator("#boards-next-board")).hasValue("C");
        assertThat(shop(served, job).boards()).hasSize(2);
        page.locator("#boards-2-width").fill("-7");
        page.locator("#boards-2-width").press("Tab");
        assertThat(page.locator("#boards-2-width")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#boards-2-width")).isFocused();
        page.locator("#boards-2-width").fill("7 1/4");
        page.locator("#boards-2-width").press("Tab");
        page.waitForCondition(() -> shop(served, job).boards().get(1).width().mm() > 184);
        assertThat(page.locator("#boards-2-width")).not().hasAttribute("aria-invalid", "true");
    }

    private static void cut(Page page) {
        page.locator("#cut").click();
        assertThat(page.locator(".board svg").first()).isVisible();
        assertThat(page.locator("#set")).containsText("proven to be the fewest");
        assertThat(page.locator("#set")).containsText("Cut sheet, A4");
    }

    private static void time(Page page, Served served, JobId job) {
        page.locator("a.button", new Page.LocatorOptions().setHasText("Time and price"))
                .click();
        page.locator("#clock-stage").fill("milling");
        page.locator("#clock-go").click();
        assertThat(page.locator("#clock-go")).hasText("Stop and keep");
        page.reload();
        assertThat(page.locator("#clock-go")).hasText("Stop and keep");
        assertThat(page.locator("#clock-stage")).hasValue("milling");
        page.locator("#clock-go").click();
        assertThat(page.locator("#times-1-stage")).hasValue("milling");
        assertThat(page.locator("#clock-go")).hasText("Start");
        assertThat(shop(served, job).times()).containsKey("milling");
    }
}
