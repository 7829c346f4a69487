package turnalike.web.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.KeptJob;
import turnalike.job.set.ByHand;
import turnalike.web.Served;

/** What the page sends when a set is placed by hand, also without a script, and what it is told when that cannot be. */
class HandDeedsTest {
    private static final Pattern ROW = Pattern.compile("<tr data-piece=\"([^\"]+)\" data-place=");

    @TempDir
    private Path folder;

    private static KeptJob kept(Served served) {
        return served.store().find(served.demo()).orElseThrow();
    }

    private static ByHand hand(Served served) {
        return kept(served).text().job().byHand();
    }

    private static String match(Served served) {
        return "jobs/" + served.demo().text() + "/match";
    }

    private static List<String> order(Served served) throws Exception {
        List<String> out = List.of();
        while (out.isEmpty()) { // the first search may still go on; each look waits for it
            out = ROW.matcher(served.get("/" + match(served)).body())
                    .results()
                    .map(found -> found.group(1))
                    .toList();
        }
        return out;
    }

    private static int send(Served served, List<String> order, int version, String deed) throws Exception {
        String lines = URLEncoder.encode("\r\n" + String.join("\r\n", order), StandardCharsets.UTF_8);
        return served.post("/" + match(served) + "/hand", "order=%s&version=%d&%s".formatted(lines, version, deed))
                .statusCode();
    }

    private static int steps(Served served) {
        return kept(served).times().steps();
    }

    @Test
    void a_swap_with_a_left_over_piece_goes_without_a_script_and_what_is_held_keeps_its_place() throws Exception {
        try (Served served = Served.in(folder)) {
            List<String> order = order(served);
            String page = served.get("/" + match(served)).body();
            Matcher spare =
                    Pattern.compile("<option value=\"([^\"]+)\">[^<]*left over").matcher(page);
            assertThat(spare.find()).isTrue();
            assertThat(send(served, order, steps(served), "hold=" + order.get(3)))
                    .isEqualTo(303);
            assertThat(send(
                            served,
                            order,
                            steps(served),
                            "swap=true&one=%s&other=%s".formatted(order.get(0), spare.group(1))))
                    .isEqualTo(303);
            assertThat(hand(served).order().get(0)).isEqualTo(spare.group(1));
            assertThat(hand(served).held()).containsEntry(4, order.get(3)).hasSize(1);
            assertThat(order(served)).isEqualTo(hand(served).order());
            assertThat(send(served, hand(served).order(), steps(served), "release=" + order.get(3)))
                    .isEqualTo(303);
            assertThat(hand(served).held()).isEmpty();
        }
    }

    @Test
    void what_cannot_be_done_is_refused_and_nothing_is_kept() throws Exception {
        try (Served served = Served.in(folder)) {
            List<String> order = order(served);
            int steps = steps(served);
            assertThat(send(served, order, steps, "swap=true&one=%1$s&other=%1$s".formatted(order.get(0))))
                    .isEqualTo(422);
            assertThat(send(served, order, steps, "swap=true&one=nobody&other=none"))
                    .isEqualTo(422);
            assertThat(send(served, order, steps, "hold=nobody")).isEqualTo(422);
            assertThat(send(served, order.subList(1, order.size()), steps, "hold=" + order.get(2)))
                    .isEqualTo(422);
            assertThat(send(served, List.of(), steps, "hold=" + order.get(2))).isEqualTo(422);
            assertThat(served.post("/" + match(served) + "/take", "").statusCode())
                    .isEqualTo(409);
            assertThat(served.get("/" + match(served) + "/try?one=nobody&other=" + order.get(0))
                            .statusCode())
                    .isEqualTo(422);
            assertThat(steps(served)).isEqualTo(steps);
        }
    }

    @Test
    void who_placed_otherwise_meanwhile_is_not_overwritten() throws Exception {
        try (Served served = Served.in(folder)) {
            List<String> order = order(served);
            int seen = steps(served);
            assertThat(send(served, order, seen, "hold=" + order.get(0))).isEqualTo(303);
            assertThat(send(served, order, seen, "hold=" + order.get(1))).isEqualTo(409);
            assertThat(hand(served).held()).containsOnlyKeys(1);
        }
    }

    @Test
    void the_record_and_the_figures_follow_the_hand() throws Exception {
        try (Served served = Served.in(folder)) {
            List<String> order = order(served);
            String tried = served.get(
                            "/" + match(served) + "/try?one=%s&other=%s".formatted(order.get(0), order.get(4)))
                    .body();
            assertThat(tried).contains("Not better than as it stands");
            send(served, order, steps(served), "swap=true&one=%s&other=%s".formatted(order.get(0), order.get(4)));
            String page = served.get("/" + match(served)).body();
            Matcher then = Pattern.compile("then ([\\d.]+ g·mm)").matcher(tried);
            assertThat(then.find()).isTrue();
            assertThat(page).contains("<dd>" + then.group(1));
            assertThat(served.get("/" + match(served) + "/set-record-a4.pdf").statusCode())
                    .isEqualTo(200);
        }
    }

    @Test
    void a_held_piece_taken_out_of_the_log_is_told_with_a_way_to_let_go() throws Exception {
        try (Served served = Served.in(folder)) {
            List<String> order = order(served);
            send(served, order, steps(served), "hold=" + order.get(0));
            served.post("/jobs/" + served.demo().text() + "/pieces/remove", "piece=" + order.get(0));
            assertThat(served.get("/" + match(served)).body())
                    .contains("is not among the pieces")
                    .contains("name=\"free\"");
            assertThat(served.post("/" + match(served) + "/hand", "free=true").statusCode())
                    .isEqualTo(303);
            assertThat(hand(served).isAny()).isFalse();
        }
    }

    @Test
    void of_many_left_over_the_table_shows_a_part_and_each_part_can_be_reached_and_swapped_from() throws Exception {
        try (Served served = Served.in(folder)) {
            StringBuilder table = new StringBuilder("piece,mass_g\n");
            for (int i = 1; i <= 260; i++) {
                table.append("n%d,%.1f%n".formatted(i, 140 + i % 7 / 10.0));
            }
            served.post(
                    "/jobs/" + served.demo().text() + "/pieces/table",
                    "cells=" + URLEncoder.encode(table.toString(), StandardCharsets.UTF_8));
            List<String> order = order(served);
            List<String> spares = new ArrayList<>();
            for (int from = 1; from > 0; ) {
                String page = served.get("/" + match(served) + "?left=" + from).body();
                List<String> shown = found(page, "<tr data-piece=\"([^\"]+)\"><th scope=\"row\">left over");
                assertThat(shown).hasSizeBetween(1, 100);
                assertThat(found(page, "<option value=\"([^\"]+)\">[^<]*left over"))
                        .isEqualTo(shown);
                spares.addAll(shown);
                from = found(page, "\\?left=(\\d+)#left-over\" rel=\"next\"").stream()
                        .mapToInt(Integer::parseInt)
                        .findFirst()
                        .orElse(0);
            }
            assertThat(spares).doesNotHaveDuplicates().doesNotContainAnyElementsOf(order);
            assertThat(spares.size() + order.size())
                    .isEqualTo(kept(served).pieces().size());
            String last = spares.get(spares.size() - 1);
            assertThat(send(
                            served,
                            order,
                            steps(served),
                            "swap=true&left=201&one=%s&other=%s".formatted(order.get(0), last)))
                    .isEqualTo(303);
            assertThat(hand(served).order().get(0)).isEqualTo(last);
            served.speak("de");
            assertThat(served.get("/" + match(served)).body())
                    .contains(">1 bis 100 von " + spares.size() + "<", ">Weiter</a>", ">Ende</a>")
                    .contains("<span>Übrig:</span>", "<span>und " + (spares.size() - 100) + " weitere</span>");
        }
    }

    private static List<String> found(String page, String pattern) {
        return Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map(result -> result.group(1))
                .toList();
    }
}
