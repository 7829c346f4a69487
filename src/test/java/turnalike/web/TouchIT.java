package turnalike.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;

/** With a finger on a telephone of 360 pixels: members carried to another place, pieces swapped in the picture of the set. */
class TouchIT {
    @TempDir
    private Path folder;

    @Test
    void a_member_is_held_until_its_name_shows_and_carried_to_another_place() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = Finger.telephone(browser);
            page.navigate(served.address() + "jobs/" + served.demo().text() + "?member=3");
            page.locator("#drawing .member[data-member='7']").scrollIntoViewIfNeeded();
            page.waitForTimeout(500); // the page scrolls smoothly
            List<String> before = titles(served);
            BoundingBox from = page.locator("#drawing .member[data-member='7']").boundingBox();
            BoundingBox to = page.locator("#drawing .member[data-member='8']").boundingBox();
            double y = from.y + from.height / 2;
            Finger finger = new Finger(page);
            // Held: its name shows.
            finger.down(from.x + from.width / 2, y);
            assertThat(page.locator("#finger")).containsText("7 ");
            finger.move(from.x + from.width / 2, y, to.x + to.width - 2, y);
            assertThat(page.locator("#finger")).containsText("Move after 8 ");
            finger.up();
            assertThat(page.locator("#undo")).containsText("to place 8");
            List<String> after = new ArrayList<>(before);
            after.add(7, after.remove(6));
            assertThat(titles(served)).isEqualTo(after);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static List<String> titles(Served served) {
        return served.store().find(served.demo()).orElseThrow().text().job().pattern().members().stream()
                .map(member -> member.title())
                .toList();
    }

    @Test
    void a_handle_is_dragged_by_a_finger() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = Finger.telephone(browser);
            page.navigate(served.address() + "jobs/" + served.demo().text() + "?member=3");
            page.locator("#drawing .handle[data-key='length']").scrollIntoViewIfNeeded();
            page.waitForTimeout(500); // the page scrolls smoothly
            BoundingBox end =
                    page.locator("#drawing .handle[data-key='length']").boundingBox();
            double x = end.x + end.width / 2;
            double y = end.y + end.height / 2;
            Finger finger = new Finger(page);
            finger.down(x, y);
            finger.move(x, y, x + 7, y);
            assertThat(page.locator("#finger")).containsText("Length");
            finger.up();
            assertThat(page.locator("#undo")).containsText("end of hub bead 3 moved");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void two_pieces_change_places_by_a_finger_in_the_picture_of_the_set() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = Finger.telephone(browser);
            page.navigate(served.address() + "jobs/" + served.demo().text() + "/match");
            // The first search may still go on.
            assertThat(page.locator("#hold-1")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(30_000));
            String place = ".places-picture .for-narrow .place[data-place='%d'] text";
            page.locator(place.formatted(1)).first().scrollIntoViewIfNeeded();
            page.waitForTimeout(500); // the page scrolls smoothly
            String one = page.locator("#hand tr[data-place='1']").getAttribute("data-piece");
            String other = page.locator("#hand tr[data-place='2']").getAttribute("data-piece");
            BoundingBox from = page.locator(place.formatted(1)).first().boundingBox();
            BoundingBox to = page.locator(place.formatted(2)).first().boundingBox();
            Finger finger = new Finger(page);
            finger.down(from.x + from.width / 2, from.y + from.height / 2);
            finger.move(from.x + from.width / 2, from.y + from.height / 2, to.x + to.width / 2, to.y + to.height / 2);
            assertThat(page.locator("#carried")).containsText("Piece " + one);
            // Meanwhile the figures say what it would come to, which takes room above the picture, and another bench
            // keeps an edit.
            assertThat(page.locator("#figures .tried")).isVisible();
            served.store().edit(served.demo(), kept -> Edit.of("look again", Change.of(kept.text())));
            page.waitForTimeout(600); // what is not at hand is shown anew within it
            assertThat(page.locator("#carried")).isVisible();
            assertThat(page.locator(place.formatted(2)).first().boundingBox().y).isCloseTo(to.y, within(1.0));
            finger.up();
            // The set is weighed anew; on a machine at work elsewhere that takes its time.
            assertThat(page.locator("#undo"))
                    .containsText("swap pieces", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
            assertThat(page.locator("#hand tr[data-place='1']")).hasAttribute("data-piece", other);
            assertThat(page.locator("#hand tr[data-place='2']")).hasAttribute("data-piece", one);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void a_device_without_the_letters_takes_those_it_fetches() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = Finger.telephone(browser);
            page.navigate(served.address());
            for (String file : List.of("letters-regular.ttf", "letters-bold.ttf")) {
                String load =
                        "file => new FontFace('fetched', `url(/assets/${file})`).load().then(font => font.status)";
                assertThat(page.evaluate(load, file)).isEqualTo("loaded");
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
