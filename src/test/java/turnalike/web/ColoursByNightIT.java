package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By night only the colours are others: the same elements stand there, and are asked for everything else by day. */
class ColoursByNightIT {
    @TempDir
    private Path folder;

    private static List<String> faint(Page page) {
        return Axe.found(page, "color-contrast");
    }

    @Test
    void every_word_stands_out_from_its_ground() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
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
    }

    @Test
    void words_too_faint_are_found() {
        try (Browser browser = Browser.open()) {
            Page page = browser.page(
                    new NewContextOptions().setViewportSize(400, 400).setColorScheme(ColorScheme.DARK));
            page.setContent("<body style='background:#111'><p style='color:#333'>hardly seen</p></body>");
            assertThat(faint(page)).isNotEmpty();
        }
    }
}
