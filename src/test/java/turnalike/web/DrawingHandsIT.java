package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.Job;

/** Members are put in, moved and taken out on the drawing, by hand and by the keyboard. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DrawingHandsIT {
    private final Browser browser = Browser.open();
    private Served served;
    private Page page;

    @BeforeEach
    void serve(@TempDir Path folder) throws Site.PortTaken {
        served = Served.in(folder);
        page = browser.page(1280, 900);
    }

    @AfterEach
    void close() {
        page.context().close();
        served.close();
        assertThat(browser.complaints()).isEmpty();
    }

    @AfterAll
    void end() {
        browser.close();
    }

    private void open(String title, int member) {
        page.navigate(served.address() + "jobs/" + served.job(title).text() + "?member=" + member);
        assertThat(page.locator(".lathe .member.selected")).hasAttribute("data-member", Integer.toString(member));
    }

    private List<String> kinds(String title) {
        return served.store().find(served.job(title)).orElseThrow().text().job().pattern().members().stream()
                .map(member -> member.kind().word())
                .toList();
    }

    private String root(String title, int member) {
        Job job = served.store().find(served.job(title)).orElseThrow().text().job();
        return job.pattern().members().get(member - 1).diameters().stream()
                .filter(each -> each.key().equals("root"))
                .findFirst()
                .orElseThrow()
                .size()
                .format(job.units());
    }

    @Test
    void a_member_is_put_in_where_the_drawing_is_touched_and_dragged_to_its_place() {
        open("New job", 1);
        page.locator("#insert").selectOption("bead");
        page.locator("#touch").click();
        assertThat(page.locator("#notice")).containsText("Touch the piece");
        BoundingBox blank = page.locator(".lathe .member").first().boundingBox();
        page.mouse().click(blank.x + blank.width * 0.4, blank.y + blank.height / 2);
        assertThat(page.locator("#member-h")).hasText("2 bead");
        assertThat(kinds("New job")).containsExactly("square", "bead", "square");
        assertThat(page.locator("#touch")).hasAttribute("aria-pressed", "false");

        Locator bead = page.locator(".lathe .member.selected");
        BoundingBox from = bead.boundingBox();
        BoundingBox last = page.locator(".lathe .member[data-member='3']").boundingBox();
        page.mouse().move(from.x + from.width / 2, from.y + from.height * 0.7);
        page.mouse().down();
        page.mouse().move(from.x + from.width / 2 + 40, from.y + from.height * 0.7);
        page.mouse().move(last.x + last.width / 2, from.y + from.height * 0.7);
        assertThat(page.locator("#finger")).hasText("Move after 3 blank");
        page.mouse().up();
        assertThat(page.locator("#member-h")).hasText("3 bead");
        assertThat(kinds("New job")).containsExactly("square", "square", "bead");
    }

    @Test
    void an_edit_that_waits_for_an_answer_is_not_dropped_for_a_look_that_comes_after_it() {
        open("New job", 1);
        page.evaluate("""
                () => {
                  window.turnalikePage.select(1);
                  window.turnalikePage.send("/member/1/insert-at", { kind: "bead", mm: "100" });
                  window.turnalikePage.select(1);
                }""");
        assertThat(page.locator(".run li")).hasCount(3);
        assertThat(kinds("New job")).containsExactly("square", "bead", "square");
    }

    @Test
    void an_edit_of_ones_own_that_is_heard_of_before_its_answer_keeps_the_member_that_it_chose() {
        open("New job", 1);
        page.evaluate("""
                async () => {
                  const edit = window.turnalikePage.send("/member/1/insert-at", { kind: "bead", mm: "100" });
                  await Promise.all([edit, window.turnalikePage.catchUp(Number(document.getElementById("work").dataset.version) + 1)]);
                }""");
        assertThat(page.locator("#member-h")).hasText("2 bead");
    }

    @Test
    void a_drawing_that_comes_while_a_member_is_to_be_placed_leaves_that_told() {
        open("New job", 1);
        page.locator("#touch").click();
        page.evaluate("() => window.turnalikePage.select(1)");
        assertThat(page.locator("#notice")).containsText("Touch the piece");
        assertThat(page.locator("#touch")).hasAttribute("aria-pressed", "true");
    }

    @Test
    void a_size_is_stepped_at_its_handle_by_the_keyboard_and_told() {
        open("Harrowmead", 3);
        Locator crown = page.locator("#grip-crown");
        assertThat(crown).hasAttribute("aria-valuetext", "1 1/2 in");
        crown.focus();
        page.keyboard().press("ArrowDown");
        page.keyboard().press("ArrowDown");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        assertThat(page.locator("#f-crown")).hasValue("1 15/32");
        assertThat(crown).isFocused();
        assertThat(crown).hasAttribute("aria-valuetext", "1 15/32 in");
        // Where it cannot go on, the reason is told and the handle stands where the job does: at the last step that
        // was kept by itself, where the machine was too busy to take all six for one.
        page.locator("#grip-root").focus();
        for (int i = 0; i < 6; i++) {
            page.keyboard().press("Shift+ArrowUp");
        }
        assertThat(page.locator("#said")).containsText("exceed");
        assertThat(page.locator("#grip-root")).hasAttribute("aria-valuetext", root("Harrowmead", 3));
    }

    @Test
    void the_run_is_walked_moved_and_emptied_by_the_keyboard_and_a_reload_finds_the_member() {
        open("Harrowmead", 3);
        page.locator("#m-3").focus();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator("#member-h")).hasText("4 cove");
        assertThat(page.locator("#m-4")).isFocused();
        page.reload();
        assertThat(page.locator("#member-h")).hasText("4 cove");
        page.locator("#m-4").focus();
        page.keyboard().press("Shift+ArrowRight");
        assertThat(page.locator("#member-h")).hasText("5 cove");
        assertThat(page.locator("#m-5")).isFocused();
        assertThat(page.locator("#m-5"))
                .hasAttribute("aria-label", java.util.regex.Pattern.compile("5 cove, from .* to .*, .*"));
        page.keyboard().press("Delete");
        assertThat(page.locator(".run li")).hasCount(12);
    }

    @Test
    void a_drawing_is_made_larger_and_the_chosen_member_stays_in_sight() {
        open("Harrowmead", 12);
        double before = page.locator(".lathe .member.selected").boundingBox().width;
        page.locator("#larger").click();
        page.waitForCondition(() -> page.locator(".lathe .member.selected").boundingBox().width > before * 1.3);
        page.waitForCondition(() -> {
            BoundingBox lathe = page.locator("#drawing .lathe").boundingBox();
            BoundingBox member = page.locator(".lathe .member.selected").boundingBox();
            return member.x >= lathe.x - 1 && member.x + member.width <= lathe.x + lathe.width + 1;
        });
        page.locator("#smaller").click();
        page.waitForCondition(() -> page.locator(".lathe .member.selected").boundingBox().width < before * 1.1);
    }
}
