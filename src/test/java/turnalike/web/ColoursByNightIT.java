package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By night only the colours are others: the same elements stand there, and are asked for everything else by day. */
class ColoursByNightIT {
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

    private static List<String> faint(Page page) {
        return Axe.found(page, "color-contrast");
    }

    @Test
    void every_word_stands_out_from_its_ground() {
        String job = "jobs/" + served.demo().text();
        for (int width : new int[] {1280, 360}) {
            Page page = browser.page(
                    new NewContextOptions().setViewportSize(width, 800).setColorScheme(ColorScheme.DARK));
            for (String view : AccessibilityIT.views(job)) {
                page.navigate(served.address() + view);
                page.waitForTimeout(150);
                assertThat(faint(page)).isEmpty();
            }
            AccessibilityIT.refused(page, served.address() + job + "?member=3");
            assertThat(faint(page)).isEmpty();
            page.context().close();
        }
    }

    /** The contrast of an element's words with the ground it stands on (WCAG 2.2, relative luminance; from memory). */
    private static final String CONTRAST = """
            e => {
              const rgb = text => (text.match(/[\\d.]+/g) || [0, 0, 0, 0]).map(Number);
              const light = ([r, g, b]) => [r, g, b].map(v => v / 255)
                  .map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)
                  .reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
              let ground = e;
              while (ground && (rgb(getComputedStyle(ground).backgroundColor)[3] ?? 1) === 0) ground = ground.parentElement;
              const one = light(rgb(getComputedStyle(e).color));
              const two = light(ground ? rgb(getComputedStyle(ground).backgroundColor) : [255, 255, 255]);
              return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
            }""";

    /** One of each kind that can be pressed, by its look: tag, classes, whether it is current. */
    private static final String KINDS = """
            () => {
              const seen = new Set();
              return [...document.querySelectorAll('button:not(:disabled), a, summary')].filter(e => e.offsetParent && e.getBoundingClientRect().right > 0).filter(e => {
                const look = [e.tagName, e.className, e.getAttribute('aria-current'), e.closest('nav, section, form, main')?.className].join();
                return !seen.has(look) && seen.add(look);
              }).map((e, i) => { e.dataset.look = i; return i; });
            }""";

    @Test
    void what_can_be_pressed_is_legible_under_the_pointer_and_in_focus() {
        String job = "jobs/" + served.demo().text();
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            Page page = browser.page(
                    new NewContextOptions().setViewportSize(1280, 900).setColorScheme(scheme));
            for (String view :
                    List.of("", job, job + "/pieces", job + "/wood", job + "/match", job + "/sheets", "help")) {
                page.navigate(served.address() + view);
                // A search that goes on takes its button away when it ends.
                page.waitForCondition(() -> page.locator("#stop").count() == 0);
                for (Object look : (List<?>) page.evaluate(KINDS)) {
                    Locator each = page.locator("[data-look='" + look + "']");
                    each.hover(new Locator.HoverOptions().setForce(true));
                    assertThat(((Number) each.evaluate(CONTRAST)).doubleValue())
                            .as("%s, %s, under the pointer: %s", scheme, view, each.textContent())
                            .isGreaterThanOrEqualTo(4.5);
                    each.focus();
                    assertThat(((Number) each.evaluate(CONTRAST)).doubleValue())
                            .as("%s, %s, in focus: %s", scheme, view, each.textContent())
                            .isGreaterThanOrEqualTo(4.5);
                }
            }
            page.context().close();
        }
    }

    @Test
    void words_too_faint_are_found() {
        Page page =
                browser.page(new NewContextOptions().setViewportSize(400, 400).setColorScheme(ColorScheme.DARK));
        page.setContent("<body style='background:#111'><p style='color:#333'>hardly seen</p></body>");
        assertThat(faint(page)).isNotEmpty();
        page.context().close();
    }
}
