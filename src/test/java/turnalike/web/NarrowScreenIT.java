package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a telephone of 360 pixels, what is done next lies under the thumb: on the screen, whole, and not below something else. */
class NarrowScreenIT {
    private static final int WIDE = 360;

    @TempDir
    private Path folder;

    private Served served;
    private Browser browser;
    private Page page;

    @BeforeEach
    void open() throws Site.PortTaken {
        served = Served.in(folder);
        browser = Browser.open();
        page = Finger.telephone(browser);
    }

    @AfterEach
    void close() {
        browser.close();
        served.close();
    }

    private void visit(String tab) {
        page.navigate(served.address() + "jobs/" + served.demo().text() + tab);
    }

    private static BoundingBox whole(Locator part) {
        BoundingBox box = part.boundingBox();
        assertThat(box.x).isGreaterThanOrEqualTo(0);
        assertThat(box.x + box.width).isLessThanOrEqualTo(WIDE);
        assertThat(part.evaluate("""
                e => {
                  const box = e.getBoundingClientRect();
                  const hit = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
                  return hit === e || e.contains(hit);
                }""")).as("nothing lies over it").isEqualTo(true);
        return box;
    }

    @Test
    void at_the_bench_next_is_the_wide_one_on_the_right() {
        visit("/bench");
        BoundingBox next = whole(page.locator("#next"));
        BoundingBox back = page.locator("#back").boundingBox();
        assertThat(next.width).isGreaterThan(back.width * 1.3);
        assertThat(next.x).isGreaterThan(back.x + back.width);
    }

    @Test
    void a_piece_keeps_its_number_and_its_button_while_the_columns_pass() {
        visit("/pieces");
        Locator keep = page.locator("#log button");
        Locator number = page.locator("table.pieces tbody th a").first();
        whole(keep);
        whole(number);
        page.locator(".wide:has(> table.pieces)").evaluate("e => e.scrollLeft = 10000");
        whole(keep);
        whole(number);
        // A field that is reached by keyboard is not left behind what stays.
        page.locator(".wide:has(> table.pieces)").evaluate("e => e.scrollLeft = 0");
        page.locator("#c-mass_g").focus();
        for (String field : new String[] {"#c-length", "#c-balance"}) {
            page.keyboard().press("Tab");
            assertThat(page.locator(":focus").getAttribute("id")).isEqualTo(field.substring(1));
            whole(page.locator(field));
        }
    }

    @Test
    void hold_and_swap_stand_side_by_side() {
        visit("/match");
        page.waitForSelector("#hold-1");
        BoundingBox hold = page.locator("#hold-1").boundingBox();
        BoundingBox swap = page.locator("#swap-1").boundingBox();
        assertThat(swap.y).isEqualTo(hold.y);
        assertThat(swap.x + swap.width).isLessThanOrEqualTo(WIDE);
    }

    @Test
    void a_new_job_is_begun_from_the_first_screen() {
        page.navigate(served.address());
        whole(page.locator("a:text-is('Begin a job')"));
        page.locator("a:text-is('Begin a job')").tap();
        page.waitForCondition(
                () -> page.locator("a:text-is('From a starter pattern')").boundingBox().y < 700);
        whole(page.locator("a:text-is('From a starter pattern')"));
    }
}
