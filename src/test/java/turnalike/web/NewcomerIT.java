package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody who has never seen the page, from an empty job to a placed set and printed sheets. */
class NewcomerIT {
    @TempDir
    private Path folder;

    @Test
    void a_whole_job_from_an_empty_page_to_printed_sheets() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.whole()) {
            Page page = browser.page(1280, 900);
            page.navigate(served.address());
            page.locator("button:has-text('New job in millimetres')").click();
            describe(page);
            turn(page);
            log(page);
            match(page);
            print(page);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void type(Page page, String field, String value) {
        page.locator(field).fill(value);
        page.locator(field).press("Tab");
        assertThat(page.locator(field)).not().hasAttribute("aria-invalid", "true");
    }

    private static void describe(Page page) {
        type(page, "#f-title", "Four table legs");
        assertThat(page.locator("h1")).hasText("Four table legs");
        type(page, "#f-count", "4");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("good pieces wanted: .*"));
        page.locator("#panel-frame > summary").click();
        page.locator("#f-frame-kind").selectOption("wheel");
        assertThat(page.locator("#f-frame-places")).hasValue("4");
    }

    private static void turn(Page page) {
        page.locator("#insert").selectOption("tenon");
        page.locator("#before").click();
        assertThat(page.locator("#member-h")).hasText("1 tenon");
        type(page, "#f-diameter", "20");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("tenon 1.*: .*"));
        page.locator("#m-2").click();
        assertThat(page.locator("#member-h")).hasText("2 blank");
        page.locator("#kind").selectOption("taper");
        page.locator("#turn-kind").click();
        assertThat(page.locator("#f-from")).isVisible();
        type(page, "#f-from", "40");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("blank 2.*start: .*"));
        type(page, "#f-to", "25");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("blank 2.*end: .*"));
        page.locator("#insert").selectOption("bead");
        page.locator("#before").click();
        assertThat(page.locator("#member-h")).hasText("2 bead");
        assertThat(page.locator(".lathe .member")).hasCount(3);
        assertThat(page.locator("#settings")).containsText("every mark");
    }

    private static void log(Page page) {
        page.locator("nav.tabs >> text=Pieces").click();
        for (String mass : new String[] {"301.2", "303.8", "299.9"}) {
            page.locator("#c-mass_g").fill(mass);
            page.locator("#c-mass_g").press("Enter");
            // The drawing says less: this wood is heavier, and the first three are asked about.
            page.waitForCondition(() -> page.locator("#sure").isVisible()
                    || !page.locator("#c-mass_g").inputValue().equals(mass));
            if (page.locator("#sure").isVisible()) {
                page.locator("#sure").click();
            }
            assertThat(page.locator("#c-mass_g")).hasValue("");
        }
        page.locator("#cells").fill("piece\tmass_g\n4\t302.2\n5\t300.6");
        page.locator("#paste button").click();
        if (page.locator("#sure").isVisible()) {
            page.locator("#sure").click();
        }
        assertThat(page.locator("table.pieces tbody tr")).hasCount(5);
        page.locator("#c-mass_g").fill("30.12");
        page.locator("#c-mass_g").press("Enter");
        assertThat(page.locator(".ask")).containsText("piece 6");
        assertThat(page.locator("table.pieces tbody tr")).hasCount(5);
    }

    private static void match(Page page) {
        page.locator("nav.tabs >> text=Match").click();
        assertThat(page.locator("#good + ul")).containsText("Balance: ");
        assertThat(page.locator("tbody tr[data-place]")).hasCount(4);
        assertThat(page.locator("tbody tr:not([data-place])")).containsText("left over");
        page.locator("#seconds").selectOption("10");
        page.locator("#longer").click();
        assertThat(page.locator("#good + ul")).containsText("no other choice or order has less");
    }

    private void print(Page page) throws IOException {
        page.locator("nav.tabs >> text=Sheets").click();
        page.locator("summary[aria-label='Files: Bench card']").click();
        Download download = page.waitForDownload(
                () -> page.locator("a[href$='bench-card-a4.pdf']").click());
        Path file = folder.resolve("card.pdf");
        download.saveAs(file);
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Four table legs")
                    .contains("bead");
        }
    }
}
