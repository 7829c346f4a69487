package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What can be pressed keeps its words legible while it is, by day and by night; words that nobody presses are read in {@link AccessibilityIT}.
 * By night no drawing lies on a light sheet.
 */
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

    /** Brings one of {@link #KINDS} into view; the place of its middle on the screen. */
    private static final String MIDDLE = """
            look => {
              const e = document.querySelector(`[data-look='${look}']`);
              e.scrollIntoView({block: 'center', behavior: 'instant'});
              const box = e.getClientRects()[0];
              return [box.x + box.width / 2, box.y + box.height / 2];
            }""";

    /** The contrasts of an element's words with the ground it stands on, pointed at and focused (WCAG 2.2, relative luminance; from memory). */
    private static final String CONTRASTS = """
            look => {
              const e = document.querySelector(`[data-look='${look}']`);
              const rgb = text => (text.match(/[\\d.]+/g) || [0, 0, 0, 0]).map(Number);
              const light = ([r, g, b]) => [r, g, b].map(v => v / 255)
                  .map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)
                  .reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
              const contrast = () => {
                let ground = e;
                while (ground && (rgb(getComputedStyle(ground).backgroundColor)[3] ?? 1) === 0) ground = ground.parentElement;
                const one = light(rgb(getComputedStyle(e).color));
                const two = light(ground ? rgb(getComputedStyle(ground).backgroundColor) : [255, 255, 255]);
                return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
              };
              const hovers = e.matches(':hover');
              const pointed = contrast();
              e.focus();
              return {words: e.textContent.trim(), hovers, pointed, focused: contrast()};
            }""";

    private static double contrast(Map<?, ?> seen, String how) {
        return seen.get(how) instanceof Number number ? number.doubleValue() : 0;
    }

    /** One of each kind that can be pressed, by its look: tag, classes, whether it is current. */
    private static final String KINDS = """
            () => {
              const seen = new Set();
              const shown = e => e.offsetParent && e.getBoundingClientRect().right > 0;
              return [...document.querySelectorAll('button:not(:disabled), a, summary')].filter(shown).filter(e => {
                const look = [e.tagName, e.className, e.getAttribute('aria-current'), e.closest('nav, section, form, main')?.className].join();
                return !seen.has(look) && seen.add(look);
              }).map((e, i) => { e.dataset.look = i; return i; });
            }""";

    @Test
    void what_can_be_pressed_is_legible_under_the_pointer_and_in_focus() {
        String job = "jobs/" + served.demo().text();
        int all = 0;
        int pointed = 0;
        Page page = browser.page(new NewContextOptions().setViewportSize(1280, 900));
        for (String view : List.of("", job, job + "/pieces", job + "/wood", job + "/match", job + "/sheets", "help")) {
            page.navigate(served.address() + view);
            // A search that goes on takes its button away when it ends.
            page.waitForCondition(() -> page.locator("#stop").count() == 0);
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                for (Object look : (List<?>) page.evaluate(KINDS)) {
                    List<?> middle = (List<?>) page.evaluate(MIDDLE, look);
                    page.mouse().move(((Number) middle.get(0)).doubleValue(), ((Number) middle.get(1)).doubleValue());
                    Map<?, ?> seen = (Map<?, ?>) page.evaluate(CONTRASTS, look);
                    assertThat(contrast(seen, "pointed"))
                            .as("%s, %s, under the pointer: %s", scheme, view, seen.get("words"))
                            .isGreaterThanOrEqualTo(4.5);
                    assertThat(contrast(seen, "focused"))
                            .as("%s, %s, in focus: %s", scheme, view, seen.get("words"))
                            .isGreaterThanOrEqualTo(4.5);
                    pointed += Boolean.TRUE.equals(seen.get("hovers")) ? 1 : 0;
                    all++;
                }
            }
        }
        page.context().close();
        // Something else may lie over a few of them; were the pointer elsewhere altogether, nothing would be shown.
        assertThat(pointed).isGreaterThan(all * 9 / 10);
    }

    /** The edge of a square that no letter and no line fills, in pixels. */
    private static final int PANEL_PX = 32;

    /** How many squares of a picture of the page are paper by day: light, and of no colour. Wood is light too, but of a colour. */
    private static int lightSquares(Page page) throws IOException {
        BufferedImage seen =
                ImageIO.read(new ByteArrayInputStream(page.screenshot(new Page.ScreenshotOptions().setFullPage(true))));
        int light = 0;
        for (int x = 0; x + PANEL_PX <= seen.getWidth(); x += PANEL_PX) {
            for (int y = 0; y + PANEL_PX <= seen.getHeight(); y += PANEL_PX) {
                int[] square = seen.getRGB(x, y, PANEL_PX, PANEL_PX, null, 0, PANEL_PX);
                light += Arrays.stream(square).allMatch(ColoursByNightIT::isPaper) ? 1 : 0;
            }
        }
        return light;
    }

    private static boolean isPaper(int rgb) {
        int red = rgb >> 16 & 0xFF;
        int green = rgb >> 8 & 0xFF;
        int blue = rgb & 0xFF;
        int least = Math.min(red, Math.min(green, blue));
        return least > 0xB0 && Math.max(red, Math.max(green, blue)) - least < 0x24;
    }

    @Test
    void no_panel_stays_as_light_as_paper_where_the_page_is_dark() throws IOException {
        String job = "jobs/" + served.demo().text();
        for (int width : new int[] {360, 1440}) {
            Page page = browser.page(
                    new NewContextOptions().setViewportSize(width, 900).setColorScheme(ColorScheme.DARK));
            for (String view : List.of(
                    "",
                    "starters",
                    "copy",
                    "help",
                    job,
                    job + "/turning",
                    job + "/bench",
                    job + "/pieces",
                    job + "/wood",
                    job + "/price",
                    job + "/match",
                    job + "/sheets",
                    job + "/history/1",
                    job + "/look",
                    job + "/resize")) {
                page.navigate(served.address() + view);
                page.waitForCondition(() -> page.locator("#stop").count() == 0);
                // A picture of a sheet of paper is one by night too.
                page.evaluate("() => document.querySelectorAll('.sheets .thumb img').forEach(e => e.remove())");
                assertThat(lightSquares(page))
                        .as("%s at %d px, by night", view, width)
                        .isZero();
            }
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
            assertThat(lightSquares(page)).as("by day").isGreaterThan(50);
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
