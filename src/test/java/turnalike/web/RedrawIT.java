package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;

/**
 * From an edit to the whole page redrawn and laid out, in a real browser, with a pattern of 40 members. The aim is 95 of 100 edits within
 * 50 ms on an idle machine; what else a machine does can only make it slower, so the test asks for five times that, and a failure shows all
 * that was measured.
 */
class RedrawIT {
    private static final int EDITS = 60;
    private static final double AIM_MS = 50;

    @TempDir
    private Path folder;

    /** Forty members of several kinds, each a little different, so that their marks are no pattern of their own. */
    private static JobText forty() {
        StringBuilder members = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            double length = 8 + (i * 7 % 11) * 0.7;
            String member =
                    switch (i % 4) {
                        case 0 -> "{\"kind\": \"bead\", \"length\": %s, \"root\": 24, \"crown\": 32}";
                        case 1 -> "{\"kind\": \"fillet\", \"length\": %s, \"diameter\": 26}";
                        case 2 -> "{\"kind\": \"cove\", \"length\": %s, \"rim\": 28, \"bottom\": 20}";
                        default -> "{\"kind\": \"taper\", \"length\": %s, \"from\": 28, \"to\": 24}";
                    };
            members.append(i == 0 ? "" : ",\n").append(member.formatted(length));
        }
        String json = """
                {"format": "turnalike-job", "version": 1, "title": "Forty", "units": "mm",
                 "pattern": {"stock": {"section": "square", "size": 40, "length": 700}, "members": [%s]},
                 "wood": {"species": "White ash"}, "count": 12}
                """.formatted(members);
        return JobText.read(json).text().orElseThrow();
    }

    @Test
    void an_edit_is_redrawn_within_the_time_a_person_takes_for_at_once() throws Exception {
        try (Served served = Served.in(folder);
                Browser browser = Browser.open()) {
            JobId job = served.store().keep(forty());
            Page page = browser.page(1280, 900);
            page.navigate(served.address() + "jobs/" + job.text() + "?member=5");
            page.waitForSelector("#f-crown");
            page.evaluate("""
                    window.turnalikeTimed = (crown) => new Promise((done) => {
                      const field = document.getElementById("f-crown");
                      field.value = crown;
                      const began = performance.now();
                      document.addEventListener("turnalike:redrawn", () => {
                        document.querySelector(".lathe").getBoundingClientRect();
                        done(performance.now() - began);
                      }, { once: true });
                      field.dispatchEvent(new Event("change", { bubbles: true }));
                    })
                    """);
            for (int i = 0; i < 20; i++) {
                timed(page, i); // lets the server's compiler see the way first
            }
            List<Double> times = IntStream.range(20, 20 + EDITS)
                    .mapToObj(i -> timed(page, i))
                    .sorted()
                    .toList();
            double p95 = times.get((int) Math.ceil(0.95 * EDITS) - 1);
            System.getLogger("redraw")
                    .log(System.Logger.Level.DEBUG, "p50 {0} ms, p95 {1} ms", times.get(EDITS / 2), p95);
            assertThat(p95)
                    .as("median %.1f ms, all %s", times.get(EDITS / 2), times)
                    .isLessThan(5 * AIM_MS);
        }
    }

    private static double timed(Page page, int i) {
        page.waitForTimeout(i < 20 ? 0 : 150); // a person does not type while the last picture is still being painted
        Object ms = page.evaluate("turnalikeTimed('%s')".formatted(30 + i * 0.05));
        return ((Number) ms).doubleValue();
    }
}
