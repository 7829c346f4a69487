package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the axe-core rules find serious or worse on any view, wide and narrow, by day and by night. */
class AccessibilityIT {
    private static final int SMALL = 360;

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
    private static List<String> views(String job) {
        return List.of(
                "",
                job + "?member=3",
                job + "/nudges",
                job + "/copy",
                job + "/check",
                job + "/turning",
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

    /** Each view is loaded once for all that is asked of it: by day all rules, by night, when only the colours are others, those for colours. */
    @Test
    void axe_finds_nothing_serious_on_any_view_by_day_or_by_night_and_a_small_phone_has_room_for_it() {
        String job = "jobs/" + served.demo().text();
        for (int width : new int[] {1280, SMALL}) {
            Page page = browser.page(width, 800);
            for (String view : views(job)) {
                page.navigate(served.address() + view);
                page.waitForTimeout(150);
                if (width == SMALL && view.startsWith(job)) {
                    hasRoom(page);
                }
                assertThat(Layout.found(page)).as("%d %s", width, view).isEmpty();
                asked(page);
            }
            refused(page, served.address() + job + "?member=3");
            asked(page);
            page.context().close();
        }
    }

    @Test
    void a_picture_without_words_is_found() {
        Page page = browser.page(SMALL, 400);
        page.setContent("<main><img src='data:image/gif;base64,R0lGODlhAQABAAAAACw='></main>");
        assertThat(Axe.found(page)).anyMatch(each -> each.contains(": image-alt: "));
        page.context().close();
    }

    /** German words are the longer ones; a tablet in between is a screen of its own; the walk above has both ends in English. */
    @Test
    void nothing_is_cut_off_or_lies_over_something_else_on_a_small_phone_in_german_or_on_a_tablet() {
        String job = "jobs/" + served.demo().text();
        List<String> badly = new ArrayList<>();
        for (int width : new int[] {SMALL, 768}) {
            Page page = browser.page(
                    new NewContextOptions().setViewportSize(width, 800).setLocale(width == SMALL ? "de" : "en"));
            for (String view : Stream.concat(views(job).stream(), Stream.of(job + "/bench", job + "/file"))
                    .toList()) {
                page.navigate(served.address() + view);
                if (view.endsWith("/match")) {
                    page.waitForSelector("#hold-1");
                }
                Layout.found(page).forEach(each -> badly.add(width + " " + view + ": " + each));
                if (width == SMALL) {
                    Layout.lettersBelow(page, 11).forEach(each -> badly.add(view + ": " + each));
                }
            }
            page.context().close();
        }
        assertThat(badly).isEmpty();
    }

    private static void asked(Page page) {
        assertThat(Axe.found(page)).isEmpty();
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        page.waitForTimeout(150);
        assertThat(Axe.found(page, "color-contrast")).as("by night").isEmpty();
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    }

    /** Nothing is wider than it, and every target is large enough. */
    private static void hasRoom(Page page) {
        assertThat(page.evaluate("document.documentElement.scrollWidth"))
                .as(page.url())
                .isEqualTo(SMALL);
        Object small = page.evaluate(
                "[...document.querySelectorAll('button, a.button, nav a, select, summary, input:not([type=hidden])"
                        + ":not([type=checkbox])')].filter(e => e.offsetParent && !e.classList.contains('plainly')"
                        + " && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90))");
        assertThat((List<?>) small).as(page.url()).isEmpty();
    }

    /** A view with a problem beside a field. */
    private static void refused(Page page, String address) {
        page.navigate(address);
        page.locator("#f-crown").fill("1");
        page.locator("#f-crown").press("Tab");
        page.waitForSelector("[aria-invalid=true]");
    }
}
