package turnalike.web.match;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.set.ByHand;
import turnalike.web.Browser;
import turnalike.web.Served;

/** The demo's wheel placed by hand, by buttons, by keys and by dragging in the picture. */
class HandByDragIT {
    @TempDir
    private Path folder;

    @Test
    void pieces_are_held_swapped_by_keys_and_by_dragging_taken_back_and_searched_round() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            Page page = browser.page(1440, 900);
            page.navigate(served.address() + "jobs/" + served.demo().text() + "/match");
            // The first search may still go on, and takes its seconds on a busy machine.
            assertThat(page.locator("#hold-1")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(30_000));
            List<String> found = shown(page);
            hold(page, served, found);
            List<String> swapped = keys(page, served, found);
            drag(page, served, swapped);
            rest(page, served, found.get(0));
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static ByHand hand(Served served) {
        return served.store().find(served.demo()).orElseThrow().text().job().byHand();
    }

    private static List<String> shown(Page page) {
        List<String> out = new ArrayList<>();
        page.locator("#hand tr[data-place]").all().forEach(row -> out.add(row.getAttribute("data-piece")));
        return out;
    }

    private static void hold(Page page, Served served, List<String> found) {
        page.locator("#hold-1").click();
        assertThat(page.locator("#hold-1")).hasText("Held");
        assertThat(page.locator("#hold-1")).isFocused();
        assertThat(hand(served).order()).isEqualTo(found);
        assertThat(hand(served).held()).containsExactly(java.util.Map.entry(1, found.get(0)));
        assertThat(page.locator("#good ~ ul")).containsText("Placed by hand, as it stands");
    }

    private static List<String> keys(Page page, Served served, List<String> found) {
        page.locator("#swap-2").focus();
        page.keyboard().press("s");
        for (int i = 0; i < 3; i++) {
            page.keyboard().press("ArrowDown");
        }
        assertThat(page.locator("#swap-5")).isFocused();
        assertThat(page.locator("#figures .then").first()).containsText("g·mm");
        assertThat(hand(served).order()).isEqualTo(found); // tried only
        page.keyboard().press("Escape");
        assertThat(page.locator("#figures .then")).hasCount(0);
        page.locator("#swap-2").focus();
        page.keyboard().press("s");
        page.locator("#swap-5").focus();
        page.keyboard().press("s");
        assertThat(page.locator("#undo")).containsText("swap pieces %s and %s".formatted(found.get(1), found.get(4)));
        List<String> swapped = new ArrayList<>(found);
        Collections.swap(swapped, 1, 4);
        assertThat(hand(served).order()).isEqualTo(swapped);
        return swapped;
    }

    private static void drag(Page page, Served served, List<String> before) {
        BoundingBox from = label(page, 3);
        BoundingBox to = label(page, 8);
        page.mouse().move(from.x + from.width / 2, from.y + from.height / 2);
        page.mouse().down();
        page.mouse().move(to.x, to.y - 30);
        page.mouse().move(to.x + to.width / 2, to.y + to.height / 2);
        assertThat(page.locator("#carried")).hasText("Piece " + before.get(2));
        assertThat(page.locator("#figures .then").first()).isVisible();
        page.mouse().up();
        assertThat(page.locator("#undo")).containsText("swap pieces %s and %s".formatted(before.get(2), before.get(7)));
        List<String> swapped = new ArrayList<>(before);
        Collections.swap(swapped, 2, 7);
        assertThat(hand(served).order()).isEqualTo(swapped);
        page.keyboard().press("Control+z");
        assertThat(page.locator("#redo")).containsText("swap pieces");
        assertThat(shown(page)).isEqualTo(before);
    }

    private static BoundingBox label(Page page, int place) {
        return page.locator(".for-wide .place[data-place='%d'] text".formatted(place))
                .first()
                .boundingBox();
    }

    /** A swap that spoils the balance is mended round what is held, and only when it is taken. */
    private static void rest(Page page, Served served, String held) {
        List<String> stood = hand(served).order();
        page.locator("#rest").click();
        assertThat(page.locator("#found")).containsText("found a better set");
        // What was found, and what takes it, stand where one looks after the search.
        assertThat(page.locator("#take")).isInViewport();
        assertThat(hand(served).order()).isEqualTo(stood);
        page.locator("#take").click();
        assertThat(page.locator("#undo")).containsText("take the set found round 1 held");
        assertThat(hand(served).order().get(0)).isEqualTo(held);
        assertThat(hand(served).order()).isNotEqualTo(stood);
        page.locator("#free").click();
        assertThat(page.locator("#free")).hasCount(0);
        assertThat(hand(served).isAny()).isFalse();
    }
}
