package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the axe-core rules find serious or worse on any view, wide and narrow. */
class AccessibilityIT {
    @TempDir
    private static Path folder;

    private static Served served;
    private static Browser browser;

    /** One site and one browser for all: nothing is edited here that another view would show. */
    @BeforeAll
    static void serve() throws Site.PortTaken {
        served = Served.in(folder);
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
        served.close();
    }

    /** Every kind of view, each by its address. */
    static List<String> views(String job) {
        return List.of(
                "",
                job + "?member=3",
                job + "/nudges",
                job + "/copy",
                job + "/check",
                job + "/pieces?column=mass_g",
                job + "/wood",
                job + "/price",
                job + "/match",
                job + "/sheets",
                job + "/look",
                job + "/history",
                job + "/history/1",
                "starters",
                "copy",
                "bin",
                job + "/resize",
                "help",
                "changes",
                "licences",
                "nowhere");
    }

    @Test
    void axe_finds_nothing_serious_on_any_view() {
        String job = "jobs/" + served.demo().text();
        for (int width : new int[] {1280, 360}) {
            Page page = browser.page(width, 800);
            for (String view : views(job)) {
                page.navigate(served.address() + view);
                page.waitForTimeout(150);
                assertThat(Axe.found(page)).isEmpty();
            }
            refused(page, served.address() + job + "?member=3");
            assertThat(Axe.found(page)).isEmpty();
            page.context().close();
        }
    }

    /** A view with a problem beside a field. */
    static void refused(Page page, String address) {
        page.navigate(address);
        page.locator("#f-crown").fill("1");
        page.locator("#f-crown").press("Tab");
        page.waitForSelector("[aria-invalid=true]");
    }

    @Test
    void nothing_is_wider_than_a_small_phone_and_every_target_is_large_enough() {
        Page page = browser.page(360, 740);
        String job = "jobs/" + served.demo().text();
        for (String view : List.of(
                "",
                job,
                job + "/nudges",
                job + "/copy",
                job + "/check",
                job + "/turning",
                job + "/pieces",
                job + "/wood",
                job + "/price",
                job + "/match",
                job + "/sheets",
                job + "/history",
                job + "/history/1")) {
            page.navigate(served.address() + view);
            page.waitForTimeout(150);
            assertThat(page.evaluate("document.documentElement.scrollWidth"))
                    .as(view)
                    .isEqualTo(360);
            Object small = page.evaluate(
                    "[...document.querySelectorAll('button, a.button, nav a, select, summary, input:not([type=hidden])"
                            + ":not([type=checkbox])')].filter(e => e.offsetParent && !e.classList.contains('plainly')"
                            + " && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90))");
            assertThat((List<?>) small).as(view).isEmpty();
        }
    }
}
