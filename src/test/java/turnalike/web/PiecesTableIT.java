package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptPiece;

/** The table that is typed into, by keyboard alone. */
class PiecesTableIT {
    @TempDir
    private Path folder;

    @Test
    void weights_are_typed_mended_pasted_taken_out_and_put_back() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = browser.page(1440, 900);
            JobId job = served.job("New job");
            page.navigate(served.address() + "jobs/" + job.text() + "/pieces");
            weigh(page, served, job);
            mend(page, served, job);
            paste(page, served, job);
            takeOut(page, served, job);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** "14 57/64" whose last digit is cut off reads as 14 57/6. */
    @Test
    void no_figure_is_cut_off_in_its_field() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            JobId job = served.demo();
            String own = "jobs/" + job.text();
            served.post("/" + own + "/pieces", "piece=1&sure=yes&length=14+57/64&balance=107+57/64&d1=1+35/64");
            served.post("/" + own + "/wood/blanks/row", "c_blank=A&c_mass_g=412.375&c_length=24+57/64&c_size=1+49/64");
            for (int width : new int[] {1280, 360}) {
                Page page = browser.page(width, 900);
                for (String tab : List.of("/pieces", "/wood")) {
                    page.navigate(served.address() + own + tab);
                    Object cut = page.evaluate(
                            "() => [...document.querySelectorAll('.pieces input:not([type=hidden])')]"
                                    + ".filter(each => each.scrollWidth > each.clientWidth).map(each => each.value).join('; ')");
                    assertThat(cut).as("%s at %d px", tab, width).isEqualTo("");
                }
                page.close();
            }
        }
    }

    private static List<String> labels(Served served, JobId job) {
        return served.store().find(job).orElseThrow().pieces().stream()
                .map(KeptPiece::label)
                .toList();
    }

    private static double grams(Served served, JobId job, String label) {
        return served.store()
                .find(job)
                .orElseThrow()
                .piece(label)
                .piece()
                .mass()
                .orElseThrow()
                .grams();
    }

    /** Weight, Enter, next weight: no hand leaves the keys, and the chart is there with the third. */
    private static void weigh(Page page, Served served, JobId job) {
        page.locator("#c-mass_g").focus();
        int count = 0;
        for (String weight : List.of("601.2", "603.8", "599.9")) {
            page.keyboard().type(weight);
            page.keyboard().press("Enter");
            // The drawing says less: this wood is heavier, and the first ones are asked about.
            page.waitForCondition(() -> page.locator("#sure").isVisible()
                    || page.locator("#c-mass_g").inputValue().isEmpty());
            if (page.locator("#sure").isVisible()) {
                page.locator("#sure").click();
            }
            assertThat(page.locator("table.pieces tbody tr")).hasCount(++count);
            assertThat(page.locator("#c-mass_g")).isFocused();
            assertThat(page.locator("#c-mass_g")).hasValue("");
            assertThat(page.locator("#piece")).hasValue(String.valueOf(count + 1));
        }
        assertThat(page.locator("#chart-h ~ .sheet svg").first()).isVisible();
        assertThat(labels(served, job)).containsExactly("1", "2", "3");
    }

    /** A cell of a row that is there: what is wrong stands at it, with the hand still on it, and Enter goes down the column. */
    private static void mend(Page page, Served served, JobId job) {
        page.locator("#r0-mass_g").fill("heavy");
        page.locator("#r0-mass_g").press("Tab");
        assertThat(page.locator("#r0-mass_g")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#r0-mass_g")).isFocused();
        assertThat(page.locator("#r0-mass_g-also")).containsText("not a mass");
        assertThat(grams(served, job, "1")).isEqualTo(601.2);
        page.locator("#r0-mass_g").fill("602.2");
        page.locator("#r0-mass_g").press("Enter");
        assertThat(page.locator("#r1-mass_g")).isFocused();
        assertThat(page.locator("#notice")).hasText("Piece 1 is kept.");
        assertThat(page.locator("#undo")).hasText("Undo: log piece 1");
        assertThat(grams(served, job, "1")).isEqualTo(602.2);
        page.locator("#undo").click();
        assertThat(page.locator("#redo")).hasText("Redo: log piece 1");
        assertThat(page.locator("#r0-mass_g")).hasValue("601.2");
        page.locator("#redo").click();
        assertThat(page.locator("#r0-mass_g")).hasValue("602.2");
    }

    private static void paste(Page page, Served served, JobId job) {
        page.locator("#cells").fill("Weight, oz\tPiece\tNote\n21 1/4\tA\tpale\n600 g\tB\t\n");
        page.locator("#paste button").click();
        if (page.locator("#sure").isVisible()) {
            page.locator("#sure").click();
        }
        assertThat(page.locator("table.pieces tbody tr")).hasCount(5);
        assertThat(Math.abs(grams(served, job, "A") - 21.25 * 28.349523125)).isLessThan(1e-9);
        page.locator("thead a:has-text('Weight')").click();
        assertThat(page.locator("table.pieces tbody th").first()).hasText("3");
        assertThat(page.locator("th[aria-sort=ascending]")).containsText("Weight");
    }

    /** Taking out asks nothing; what is out is put back on the spot, and the order chosen stays. */
    private static void takeOut(Page page, Served served, JobId job) {
        page.locator("[aria-label='Take out piece 2']").click();
        assertThat(page.locator("table.pieces tbody tr")).hasCount(4);
        assertThat(page.locator("th[aria-sort=ascending]")).containsText("Weight");
        assertThat(page.locator(".back").first()).containsText("Piece 2 is out, as a slip.");
        assertThat(labels(served, job)).doesNotContain("2");
        page.locator("#put-back").click();
        assertThat(page.locator("table.pieces tbody tr")).hasCount(5);
        assertThat(page.locator(".back")).hasCount(0);
        assertThat(grams(served, job, "2")).isEqualTo(603.8);
    }

    /** All typed before the first answer can have come, the same figure twice: each is a piece of its own. */
    @Test
    void weights_typed_faster_than_they_are_answered_are_all_kept() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            JobId job = served.demo();
            Page page = browser.page(1280, 900);
            page.navigate(served.address() + "jobs/" + job.text() + "/pieces");
            type(page, "140.1", "140.1", "139.8", "141.2");
            assertThat(page.locator("table.pieces tbody tr")).hasCount(21);
            assertThat(page.locator("#c-mass_g")).hasValue("");
            assertThat(labels(served, job)).endsWith("17", "18", "19", "20", "21");
            assertThat(grams(served, job, "18")).isEqualTo(140.1);
            assertThat(grams(served, job, "21")).isEqualTo(141.2);
            // One that reads like a slip is asked about; what came after it is told.
            type(page, "1401", "139.9", "140.3");
            assertThat(page.locator("#sure")).isVisible();
            assertThat(page.locator("#c-mass_g")).hasValue("1401");
            assertThat(page.locator("#notice")).hasText("Typed meanwhile and not kept: 139.9, 140.3");
            assertThat(page.locator("table.pieces tbody tr")).hasCount(21);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void type(Page page, String... weights) {
        page.evaluate("""
                weights => {
                  for (const weight of weights) {
                    const field = document.getElementById("c-mass_g");
                    field.value = weight;
                    field.dispatchEvent(new Event("input", { bubbles: true }));
                    field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true }));
                  }
                }""", List.of(weights));
    }
}
