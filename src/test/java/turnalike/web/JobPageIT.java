package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.units.Length;

/** One job's page in a real browser. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JobPageIT {
    private final Browser browser = Browser.open();
    private Served served;
    private Page page;

    @BeforeEach
    void serve(@TempDir Path folder) throws Site.PortTaken {
        served = Served.in(folder);
        page = browser.page(1280, 900);
        page.navigate(served.address() + "jobs/" + served.demo().text());
        page.waitForSelector("#work");
    }

    @AfterEach
    void close() {
        page.context().close();
        served.close();
        assertThat(browser.complaints()).isEmpty();
    }

    @BeforeAll
    void quiet() {
        assertThat(browser.complaints()).isEmpty();
    }

    @AfterAll
    void end() {
        browser.close();
    }

    private List<Member> members() {
        return served.store()
                .find(served.demo())
                .orElseThrow()
                .text()
                .job()
                .pattern()
                .members();
    }

    @Test
    void what_is_clicked_in_the_list_and_in_the_drawing_is_edited() {
        page.navigate(served.address());
        page.locator("text=Harrowmead").click();
        page.locator(".lathe [data-member='3']").click();
        assertThat(page.locator("#member-h")).hasText("3 hub bead");
        assertThat(page.locator(".lathe .member.selected")).hasAttribute("data-member", "3");
        assertThat(page.locator("#f-crown")).hasValue("1 1/2");
    }

    @Test
    void a_typed_size_is_kept_drawn_and_undone() {
        select(3, "hub bead");
        page.locator("#f-crown").fill("1 3/8");
        page.locator("#f-crown").press("Tab");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        assertThat(page.locator(".lathe")).containsText("1 3/8");
        assertThat(members().get(2).diameters().stream().map(Member.Diameter::size))
                .contains(Length.ofInches(1.375));
        page.locator("#undo").click();
        assertThat(page.locator("#f-crown")).hasValue("1 1/2");
        page.locator("#redo").click();
        assertThat(page.locator("#f-crown")).hasValue("1 3/8");
    }

    @Test
    void a_size_that_cannot_be_is_told_beside_its_field_and_stays_typed() {
        select(3, "hub bead");
        page.locator("#f-crown").fill("1");
        page.locator("#f-crown").press("Tab");
        assertThat(page.locator("#f-crown-also")).containsText("must exceed the root");
        assertThat(page.locator("#f-crown")).hasValue("1");
        assertThat(page.locator("#f-crown")).hasAttribute("aria-invalid", "true");
        assertThat(members().get(2).diameters().stream().map(Member.Diameter::size))
                .contains(Length.ofInches(1.5));
    }

    @Test
    void members_are_inserted_moved_copied_and_removed() {
        select(5, "fillet");
        page.locator("#insert").selectOption("vee");
        page.locator("#after").click();
        assertThat(page.locator("#member-h")).hasText("6 vee");
        page.locator("#left").click();
        assertThat(page.locator("#member-h")).hasText("5 vee");
        page.locator("#copy").click();
        assertThat(page.locator("#member-h")).hasText("6 vee");
        page.locator("#remove").click();
        assertThat(page.locator(".run li")).hasCount(14);
        assertThat(members().get(4).kind().word()).isEqualTo("vee");
        page.locator("#kind").selectOption("groove");
        page.locator("#turn-kind").click();
        Locator selected = page.locator(".run a[aria-current]");
        assertThat(selected).hasText("6 groove");
    }

    @Test
    void the_kind_chosen_to_be_put_in_stays_chosen_when_the_fields_are_redrawn() {
        select(3, "hub bead");
        page.locator("#insert").selectOption("vee");
        page.locator("#kind").selectOption("groove");
        page.locator("#f-crown").fill("1 3/8");
        page.locator("#f-crown").press("Tab");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        assertThat(page.locator("#insert")).hasValue("vee");
        // What says what a member is says it of the one shown.
        assertThat(page.locator("#kind")).hasValue("bead");
        select(5, "fillet");
        assertThat(page.locator("#insert")).hasValue("vee");
        page.locator("#after").click();
        assertThat(page.locator("#member-h")).hasText("6 vee");
        assertThat(page.locator("#insert")).hasValue("vee");
    }

    @Test
    void what_an_edit_does_not_change_is_left_standing() {
        select(3, "hub bead");
        page.locator(".figure-box summary").first().click();
        page.locator("#found > summary").click();
        page.locator("#found details summary").first().click();
        page.evaluate("""
                () => {
                  for (const each of ["#work", "#m-5", ".lathe [data-member='1'] path", "#f-length"]) document.querySelector(each).stood = true;
                }
                """);
        page.locator("#f-title").fill("half a ti");
        page.evaluate("document.querySelector('#f-title').focus()");
        page.evaluate("""
                () => {
                  const field = document.querySelector("#f-crown");
                  field.value = "1 3/8";
                  field.dispatchEvent(new Event("change", { bubbles: true }));
                }
                """);
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        for (String each : List.of("#work", "#m-5", ".lathe [data-member='1'] path", "#f-length")) {
            assertThat(page.locator(each)).hasJSProperty("stood", true);
        }
        assertThat(page.locator(".figure-box").nth(1)).hasAttribute("open", "");
        assertThat(page.locator("#found details").first()).hasAttribute("open", "");
        assertThat(page.locator("#f-title")).hasValue("half a ti");
        assertThat(page.locator("#f-title")).isFocused();
        assertThat(page.locator(".lathe .member.selected")).hasAttribute("data-member", "3");
    }

    @Test
    void what_is_open_stays_open_below_a_warning_that_comes_and_goes() {
        select(5, "fillet");
        page.locator("#figures summary").first().click();
        page.locator("#found > summary").click();
        page.locator("#found details summary").first().click();
        page.evaluate(
                "() => document.querySelectorAll('#drawing .lathe, #figures, #m-5').forEach(each => each.stood = true)");
        // What no field is to blame for is told above all: the last member has nothing to change places with.
        page.evaluate("""
                () => htmx.ajax("POST", `${document.querySelector("#work").dataset.address}/member/14/right`,
                    { target: "#work", swap: "outerHTML", values: {} })
                """);
        assertThat(page.locator("#told")).containsText("member 14");
        assertOpenAndStanding();
        page.locator("#m-3").click();
        assertThat(page.locator("#told")).hasText("");
        assertOpenAndStanding();
    }

    private void assertOpenAndStanding() {
        assertThat(page.locator("#figures details").first()).hasAttribute("open", "");
        assertThat(page.locator("#found details").first()).hasAttribute("open", "");
        for (String each : List.of("#drawing .lathe", "#figures", "#m-5")) {
            assertThat(page.locator(each)).hasJSProperty("stood", true);
        }
    }

    @Test
    void a_field_typed_anew_shows_what_the_job_holds_after_it() {
        select(3, "hub bead");
        page.locator("#f-by_eye").check();
        assertThat(page.locator("#undo")).hasAttribute("title", "hub bead 3, cut by eye, not measured: yes");
        page.locator("#undo").click();
        assertThat(page.locator("#f-by_eye")).not().isChecked();
        page.locator("#kind").selectOption("cove");
        page.locator("#turn-kind").click();
        assertThat(page.locator("#member-h")).hasText("3 hub bead");
        assertThat(page.locator("#f-bottom")).isVisible();
        page.locator("#undo").click();
        assertThat(page.locator("#f-crown")).hasValue("1 1/2");
        assertThat(page.locator("#kind")).hasValue("bead");
    }

    @Test
    void a_field_is_kept_by_itself_beside_one_that_is_refused() {
        page.locator("#f-wood-species").fill("Wishwood");
        page.locator("#f-wood-species").press("Enter");
        assertThat(page.locator("#f-wood-species")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#f-wood-species")).isFocused();
        String reason = page.locator("#f-wood-species-also").textContent();
        page.locator("#f-pattern-stock-size").fill("2");
        page.locator("#f-pattern-stock-size").press("Tab");
        assertThat(page.locator("label[for='f-pattern-stock-size'] .kept")).isVisible();
        assertThat(page.locator("#undo")).hasAttribute("title", "stock, across: 1 3/4 → 2 in");
        page.locator("#f-title").fill("Another title");
        page.locator("#f-title").press("Tab");
        assertThat(page.locator("#said")).hasText("Title: kept");
        // Where two answers crossed, the page asks again for all of it, by itself.
        page.waitForResponse(
                each -> each.url().contains("?member=")
                        && each.request().method().equals("GET"),
                () -> page.evaluate("void turnalikePage.select(turnalikePage.work().dataset.selected)"));
        page.waitForTimeout(100);
        assertThat(page.locator("#said")).hasText("Title: kept");
        assertThat(page.locator("label[for='f-title'] .kept")).isVisible();
        assertThat(page.locator("#f-wood-species")).hasValue("Wishwood");
        assertThat(page.locator("#f-wood-species-also")).hasText(reason);
        // What the page asks by itself, here another member, stands in no form.
        page.locator(".lathe [data-member='4']").click();
        assertThat(page.locator("#member-h")).hasText("4 cove");
        assertThat(page.locator("#f-wood-species")).hasValue("Wishwood");
        assertThat(page.locator("#f-wood-species-also")).hasText(reason);
        assertThat(page.locator("#f-wood-species")).hasAttribute("aria-invalid", "true");
        page.locator("#f-wood-species").fill("White ash");
        page.locator("#f-wood-species").press("Tab");
        assertThat(page.locator("#f-wood-species")).not().hasAttribute("aria-invalid", "true");
        page.locator("#undo").click();
        assertThat(page.locator("#f-title")).not().hasValue("Another title");
        assertThat(page.locator("#f-pattern-stock-size")).hasValue("2");
    }

    @Test
    void a_choice_passed_by_with_the_arrow_keys_is_taken_when_the_list_is_left() {
        int steps = steps();
        page.locator("#panel-turning > summary").click();
        Locator held = page.locator("#f-turning-held");
        held.focus();
        page.keyboard().press("ArrowDown");
        page.keyboard().press("ArrowDown");
        String chosen = held.inputValue();
        page.keyboard().press("Tab");
        assertThat(page.locator("#undo")).hasAttribute("title", "held: chuck");
        assertThat(held).hasValue(chosen);
        assertThat(steps()).isEqualTo(steps + 1);
    }

    @Test
    void the_piece_in_light_and_shade_follows_an_edit() {
        page.locator("#looks summary").click();
        Locator shaded = page.locator("#looks svg");
        assertThat(shaded).isVisible();
        String before = shaded.innerHTML();
        select(3, "hub bead");
        page.locator("#f-crown").fill("1 1/4");
        page.locator("#f-crown").press("Tab");
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        page.waitForCondition(() -> !page.locator("#looks svg").innerHTML().equals(before));
        assertThat(page.locator("#looks")).hasAttribute("open", "");
    }

    /** Until its heading stands, the fields in sight are still those of the member before, some of the same name. */
    private void select(int member, String name) {
        page.locator("#m-" + member).click();
        assertThat(page.locator("#member-h")).hasText(member + " " + name);
    }

    private void drag(String handle, double right, double down) {
        pull(handle, right, down);
        page.mouse().up();
    }

    @Test
    void a_boundary_and_a_diameter_are_dragged_in_steps_and_each_is_one_edit() {
        select(3, "hub bead");
        int steps = served.store().find(served.demo()).orElseThrow().times().steps();
        drag("length", 15, 0);
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("end of hub bead 3 moved: .*"));
        double longer = members().get(2).length().inches();
        assertThat(longer).isGreaterThan(0.75).isLessThan(1.5);
        assertThat(longer * 16).isEqualTo(Math.rint(longer * 16));
        assertThat(members().get(2).length().plus(members().get(3).length()).mm())
                .isCloseTo(38.1, org.assertj.core.data.Offset.offset(1e-9));
        drag("crown", 0, 12);
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        assertThat(served.store().find(served.demo()).orElseThrow().times().steps())
                .isEqualTo(steps + 2);
    }

    /** Takes hold of a handle and pulls, without letting go. */
    private void pull(String handle, double right, double down) {
        var box = page.locator(".lathe .handle[data-key='" + handle + "']").boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + right / 2, y + down / 2);
        page.mouse().move(x + right, y + down);
    }

    private int steps() {
        return served.store().find(served.demo()).orElseThrow().times().steps();
    }

    private String member(int number) {
        return page.locator(".lathe .member[data-member='" + number + "'] path")
                .first()
                .getAttribute("d");
    }

    @Test
    void what_is_dragged_follows_the_finger_and_nothing_is_kept_until_it_is_let_go() {
        select(3, "hub bead");
        int steps = steps();
        String before = member(3);
        String weight = page.locator("#figures").textContent();
        pull("crown", 0, 12);
        page.waitForCondition(() -> !member(3).equals(before)
                && !page.locator("#figures").textContent().equals(weight));
        assertThat(page.locator("#finger")).containsText("crown 1 ");
        assertThat(steps()).isEqualTo(steps);
        page.keyboard().press("Escape");
        page.waitForCondition(() -> member(3).equals(before));
        assertThat(page.locator("#figures")).hasText(weight);
        assertThat(page.locator("#finger")).isHidden();
        page.mouse().up();
        assertThat(steps()).isEqualTo(steps);
    }

    @Test
    void a_drag_stops_at_what_is_possible() {
        select(3, "hub bead");
        pull("crown", 0, 10);
        assertThat(page.locator("#finger")).not().containsText("As far as it goes");
        var box = page.locator(".lathe .handle[data-key='crown']").boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + 160);
        assertThat(page.locator("#finger")).containsText("As far as it goes");
        page.mouse().up();
        assertThat(page.locator("#undo")).hasAttribute("title", Pattern.compile("hub bead 3.* at the crown: .*"));
        assertThat(members().get(2).diameters().stream()
                        .mapToDouble(each -> each.size().inches())
                        .max()
                        .orElseThrow())
                .isBetween(1.125, 1.5 - 1e-9);
    }

    @Test
    void where_spokes_run_into_one_another_shows_while_one_is_dragged() {
        served.store()
                .edit(
                        served.demo(),
                        kept -> Edit.of(
                                "hub",
                                Change.of(JobText.read(kept.text()
                                                .text()
                                                .replace("\"hub_radius\": \"3 3/4\"", "\"hub_radius\": \"2 7/8\""))
                                        .text()
                                        .orElseThrow())));
        page.reload();
        select(3, "hub bead");
        assertThat(page.locator("#misfits")).hasText("");
        assertThat(page.locator(".lathe .touching")).hasCount(0);
        pull("crown", 0, -8);
        assertThat(page.locator("#misfits")).containsText("cannot be built");
        assertThat(page.locator(".lathe .touching")).hasCount(1);
        page.keyboard().press("Escape");
        assertThat(page.locator("#misfits")).hasText("");
        page.mouse().up();
    }

    @Test
    void everything_works_without_a_script() {
        page.context().close();
        page = browser.page(new com.microsoft.playwright.Browser.NewContextOptions()
                .setJavaScriptEnabled(false)
                .setReducedMotion(ReducedMotion.REDUCE));
        page.navigate(served.address() + "jobs/" + served.demo().text() + "?member=3");
        page.locator("#f-crown").fill("1 3/8");
        pressed("#member button:has-text('Keep')");
        assertThat(page.locator("#f-crown")).hasValue("1 3/8");
        page.locator("#f-crown").fill("1");
        pressed("#member button:has-text('Keep')");
        assertThat(page.locator("#f-crown-also")).containsText("must exceed the root");
        pressed("#undo");
        assertThat(page.locator("#f-crown")).hasValue("1 1/2");
    }

    /** Presses a button whose form brings another page, and waits for that: until it comes, the old one still shows what was typed. */
    private void pressed(String button) {
        page.waitForResponse(
                response -> response.request().isNavigationRequest() && response.status() != 303,
                () -> page.locator(button).click());
        page.waitForLoadState(LoadState.LOAD);
    }
}
