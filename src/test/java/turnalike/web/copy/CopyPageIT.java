package turnalike.web.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.WaitForSelectorOptions;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.Axe;
import turnalike.web.Browser;
import turnalike.web.Served;

/** The way of somebody with a photograph: chosen, traced, its ends pointed at, taken, and shown behind the drawing. */
class CopyPageIT {
    /** One after another three pictures are traced, on a machine that may have much else to do. */
    private static final WaitForSelectorOptions PATIENT = new WaitForSelectorOptions().setTimeout(240_000);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_photograph_becomes_a_pattern_and_lies_behind_its_drawing() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            // Without a smooth scroll, in the middle of which a mouse would miss.
            Page page = browser.page(
                    new NewContextOptions().setViewportSize(1280, 900).setReducedMotion(ReducedMotion.REDUCE));
            page.navigate(served.address());
            page.locator("a[href='/copy']").click();
            assertThat(Axe.found(page)).isEmpty();
            page.locator("#file").setInputFiles(new FilePayload("piece7.jpg", "image/jpeg", Originals.photograph()));
            page.locator("#span").fill("400 mm");
            // Others' originals come first, so that this one is waited for.
            List<CompletableFuture<Integer>> others = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                others.add(CompletableFuture.supplyAsync(() -> sent(served)));
            }
            page.locator("#trace").click();
            page.waitForSelector("#take-it", PATIENT);
            others.forEach(each -> assertThat(each.join()).isEqualTo(303));
            page.waitForSelector(".endhandle");
            assertThat(Axe.found(page)).isEmpty();

            handles(page);
            page.locator("#trace-again").click();
            page.waitForSelector("#traced[data-running=no]", PATIENT);
            page.waitForSelector(".endhandle");

            page.locator("#take-it").click();
            page.waitForSelector("#work image.backdrop");
            behind(page);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static int sent(Served served) {
        try {
            return served.upload("/copy", Map.of("units", "mm", "span", "400"), "other.jpg", Originals.photograph())
                    .statusCode();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    /** By keys, by hand and typed, the handle and the field say the same. */
    private static void handles(Page page) {
        double before = number(page, "#start_x");
        page.locator(".endhandle").first().focus();
        page.keyboard().press("ArrowLeft");
        page.keyboard().press("Shift+ArrowRight");
        assertThat(number(page, "#start_x")).isCloseTo(before + 9, within(0.11));
        BoundingBox box = page.locator(".endhandle").first().boundingBox();
        assertThat(box.width).isGreaterThanOrEqualTo(44);
        double perPixel = ((Number)
                        page.evaluate("document.querySelector('#overlay svg').getScreenCTM().a * 240 / 480"))
                .doubleValue();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + box.width / 2 - 9 * perPixel, box.y + box.height / 2);
        page.mouse().up();
        assertThat(number(page, "#start_x")).isCloseTo(before, within(1.5));
        page.locator("#end_x").fill("400");
        double left = page.locator(".endhandle").last().boundingBox().x;
        page.locator("#end_x").fill("440");
        assertThat(page.locator(".endhandle").last().boundingBox().x - left).isCloseTo(40 * perPixel, within(1.0));
    }

    private static double number(Page page, String field) {
        return Double.parseDouble(page.locator(field).inputValue());
    }

    /** Its middle lies on the drawing's; the switch hides it and is remembered. */
    private static void behind(Page page) {
        double photo = middle(page, "#work image.backdrop");
        double wood = middle(page, "#work .drawing [data-member=\"1\"]");
        assertThat(photo).isCloseTo(wood, within(6.0));
        page.locator("#behind").uncheck();
        assertThat(page.locator("#work image.backdrop").isVisible()).isFalse();
        page.reload();
        assertThat(page.locator("#behind").isChecked()).isFalse();
        assertThat(page.locator("#work image.backdrop").isVisible()).isFalse();
        page.locator("#behind").check();
        assertThat(page.locator("#work image.backdrop").isVisible()).isTrue();
    }

    private static double middle(Page page, String what) {
        return ((Number) page.evaluate(
                        "what => { const box = document.querySelector(what).getBoundingClientRect(); return box.top + box.height / 2; }",
                        what))
                .doubleValue();
    }
}
