package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.answer.MatchJson;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.solid.Solid;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** Places held and orders told by hand. */
class ByHandTest {
    private static final String WHEEL = "{'kind': 'wheel', 'places': %d, 'hub_radius': 60}";
    private static final String ROW = "{'kind': 'row', 'places': 6}";
    private static final String LEGS = "{'kind': 'legs', 'places': 3, 'groups': 2}";

    private static Job.Read read(String frame, String byHand) {
        return read(frame, byHand, "0.1");
    }

    private static Job.Read read(String frame, String byHand, String scaleG) {
        return JobReader.read("""
                {'format': 'turnalike-job', 'version': 1, 'units': 'mm',
                 'pattern': {'stock': {'section': 'square', 'size': 40, 'length': 230},
                  'members': [{'kind': 'tenon', 'length': 20, 'diameter': 16}, {'kind': 'taper', 'length': 200, 'from': 30, 'to': 20}]},
                 'wood': {'density_kg_m3': 700}, 'tolerances': {'mass_pct': 50, 'scale_g': %s},
                 'frame': %s, 'by_hand': %s}
                """.formatted(scaleG, frame, byHand).replace('\'', '"'));
    }

    private static Job job(String frame, String byHand) {
        Job.Read read = read(frame, byHand);
        assertThat(read.problems()).isEmpty();
        return read.job().orElseThrow();
    }

    /** Invented weights and lengths that repeat in no simple way. */
    private static List<Piece> pieces(int count) {
        StringBuilder csv = new StringBuilder("piece,mass_g,length,d1\n");
        for (int i = 1; i <= count; i++) {
            csv.append(String.format(
                    Locale.ROOT,
                    "%d,%.1f,%.2f,%.2f%n",
                    i,
                    100 + i * 37 % 11 * 0.9,
                    220 + i * 7 % 5 * 0.1,
                    30 + i * 13 % 7 * 0.1));
        }
        return PiecesFile.parse(csv.toString(), UnitSystem.METRIC).pieces();
    }

    private static SetMatch match(Job job, List<Piece> pieces, boolean strict) {
        assertThat(MatchJob.problems(job, pieces)).isEmpty();
        return MatchJob.of(job, pieces, strict, Effort.usual());
    }

    private static List<String> order(SetMatch set) {
        return set.order();
    }

    private static String quoted(List<String> labels) {
        return "['" + String.join("', '", labels) + "']";
    }

    /** Whatever is held stays; what is told once the seats are bored is reckoned again from the pieces' own figures. */
    @Test
    void seats_are_bored_for_what_stands_by_hand_and_every_piece_stays() {
        String frame = "{'kind': 'wheel', 'places': 6, 'hub_radius': 60, 'run_out': 0.1}";
        List<String> told = List.of("4", "2", "8", "6", "1", "7");
        List<Piece> pieces = pieces(8);
        String byHand = "{'order': %s}".formatted(quoted(told));
        Job coarse = read(frame, byHand, "20").job().orElseThrow();
        WheelSet set = (WheelSet) match(coarse, pieces, false);
        assertThat(order(set)).isEqualTo(told);
        Roundness roundness = set.roundness().orElseThrow();
        assertThat(roundness.isBored()).isTrue();
        assertThat(roundness.placed().rim().runOut().mm()).isLessThanOrEqualTo(0.1 + 1e-6);
        double lowest = told.stream()
                .mapToDouble(
                        label -> piece(pieces, label).length().orElseThrow().mm())
                .min()
                .orElseThrow();
        double balance = Solid.of(coarse.pattern().outline(), coarse.wood().density())
                .balance()
                .mm();
        double x = 0;
        double y = 0;
        for (int place = 0; place < 6; place++) {
            Piece piece = piece(pieces, told.get(place));
            double deeper = Math.max(0, piece.length().orElseThrow().mm() - lowest - 0.1);
            assertThat(roundness.deepenings().get(place).mm()).isCloseTo(deeper, within(1e-9));
            double moment = piece.mass().orElseThrow().grams() * (60 + balance - 20 - deeper);
            x += moment * Math.cos(Math.PI / 3 * place);
            y += moment * Math.sin(Math.PI / 3 * place);
        }
        assertThat(set.placement().unbalance().gMm()).isCloseTo(Math.hypot(x, y), within(1e-6));
        assertThat(set.warnings())
                .anyMatch(note -> note.contains("these seats are to be bored deeper: ")
                        && note.contains(roundness.seats(roundness.placed())));
        assertThat(MatchJson.print(set, List.of())).contains("\"chosen_by\" : \"hand\"", "seat_deepen_mm");

        assertThat(((WheelSet) match(coarse, pieces, true))
                        .roundness()
                        .orElseThrow()
                        .isBored())
                .isFalse();
        // The best balanced order there is: boring takes something from it, and the scale would see that.
        List<String> best = order(match(read(frame, "{}", "0").job().orElseThrow(), pieces, true));
        Job exact =
                read(frame, "{'order': %s}".formatted(quoted(best)), "0").job().orElseThrow();
        WheelSet fine = (WheelSet) match(exact, pieces, false);
        assertThat(fine.roundness().orElseThrow().isBored()).isFalse();
        assertThat(fine.warnings())
                .anyMatch(note -> note.contains("no way of boring was found with as good a balance"));
    }

    @Test
    void seats_are_bored_for_the_rest_that_was_searched_round_what_is_held() {
        String frame = "{'kind': 'wheel', 'places': 6, 'hub_radius': 60, 'run_out': 0.01}";
        String byHand = "{'held': [{'place': 2, 'piece': '8'}, {'place': 5, 'piece': '4'}]}";
        WheelSet set = (WheelSet) match(read(frame, byHand, "20").job().orElseThrow(), pieces(8), false);
        assertThat(order(set).get(1)).isEqualTo("8");
        assertThat(order(set).get(4)).isEqualTo("4");
        assertThat(set.roundness().orElseThrow().isBored()).isTrue();
        assertThat(set.roundness().orElseThrow().placed().rim().runOut().mm()).isLessThanOrEqualTo(0.01 + 1e-6);
        assertThat(set.handWork().leastOfRest()).isFalse();
    }

    private static Piece piece(List<Piece> pieces, String label) {
        return pieces.stream()
                .filter(each -> each.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void an_order_told_by_hand_stands_as_it_is() {
        for (String frame : List.of(WHEEL.formatted(6), ROW, LEGS)) {
            List<String> told = List.of("4", "2", "8", "6", "1", "7");
            SetMatch set = match(job(frame, "{'order': %s}".formatted(quoted(told))), pieces(8), false);
            assertThat(order(set)).isEqualTo(told);
            assertThat(set.spareLabels()).containsExactly("3", "5");
            assertThat(set.verdict().sentences().get(0)).contains("as placed by hand");
        }
    }

    /** The least unbalance of all orders that keep the held, found by trying every order as one told by hand. */
    @Test
    void the_rest_round_held_pieces_is_the_best_of_all_that_keep_them() {
        List<Piece> pieces = pieces(6);
        double least = Double.POSITIVE_INFINITY;
        for (List<String> order : orders(List.of("1", "3", "4", "6"))) {
            List<String> all = new ArrayList<>(order);
            all.add(1, "5");
            SetMatch tried = match(job(WHEEL.formatted(5), "{'order': %s}".formatted(quoted(all))), pieces, true);
            least = Math.min(least, tried.leftOver());
            List<String> other = new ArrayList<>(all);
            for (int i = 0; i < all.size(); i++) {
                if (i != 1) {
                    other.set(i, "2");
                    SetMatch spare =
                            match(job(WHEEL.formatted(5), "{'order': %s}".formatted(quoted(other))), pieces, true);
                    least = Math.min(least, spare.leftOver());
                    other.set(i, all.get(i));
                }
            }
        }
        SetMatch set = match(job(WHEEL.formatted(5), "{'held': [{'place': 2, 'piece': '5'}]}"), pieces, true);
        assertThat(order(set).get(1)).isEqualTo("5");
        assertThat(set.leftOver()).isCloseTo(least, within(1e-6));
        assertThat(set.verdict().sentences().get(0)).contains("no other order that keeps what is held has less");
        assertThat(((WheelSet) set).chosenBy()).isEqualTo(WheelSet.ChosenBy.HAND);
    }

    private static List<List<String>> orders(List<String> labels) {
        if (labels.isEmpty()) {
            return List.of(List.of());
        }
        List<List<String>> out = new ArrayList<>();
        for (String first : labels) {
            List<String> rest = new ArrayList<>(labels);
            rest.remove(first);
            for (List<String> tail : orders(rest)) {
                List<String> one = new ArrayList<>(List.of(first));
                one.addAll(tail);
                out.add(one);
            }
        }
        return out;
    }

    /** Twenty places are too many to go through: the search shakes and exchanges, from the order told on. */
    @Test
    void a_search_of_the_rest_keeps_what_is_held_and_is_never_worse_than_what_stood() {
        List<Piece> pieces = pieces(22);
        for (String frame : List.of(
                WHEEL.formatted(20), "{'kind': 'row', 'places': 20}", "{'kind': 'legs', 'places': 4, 'groups': 5}")) {
            List<String> told =
                    new ArrayList<>(pieces.stream().limit(20).map(Piece::label).toList());
            Collections.swap(told, 0, 9);
            Job job = job(
                    frame,
                    "{'order': %s, 'held': [{'place': 1, 'piece': '10'}, {'place': 14, 'piece': '14'}]}"
                            .formatted(quoted(told)));
            SetMatch stood = match(job, pieces, false);
            SetMatch found = match(job.with(job.byHand().searched()), pieces, false);
            assertThat(order(found).get(0)).isEqualTo("10");
            assertThat(order(found).get(13)).isEqualTo("14");
            assertThat(order(found)).doesNotHaveDuplicates();
            assertThat(found.leftOver()).isLessThan(stood.leftOver());
        }
    }

    @Test
    void row_and_legs_with_held_pieces_are_no_better_than_without() {
        for (String frame : List.of(ROW, LEGS)) {
            SetMatch free = match(job(frame, "{}"), pieces(8), false);
            SetMatch held = match(job(frame, "{'held': [{'place': 6, 'piece': '2'}]}"), pieces(8), false);
            assertThat(order(held).get(5)).isEqualTo("2");
            assertThat(held.leftOver()).isGreaterThanOrEqualTo(free.leftOver() - 1e-9);
            assertThat(held.leftOver())
                    .isCloseTo(
                            held.unlike().stream().mapToDouble(each -> each).sum() / (frame.equals(ROW) ? 1 : 2),
                            within(1e-9));
        }
    }

    @Test
    void the_answer_names_what_is_held() {
        SetMatch set = match(job(ROW, "{'held': [{'place': 6, 'piece': '2'}]}"), pieces(8), false);
        assertThat(MatchJson.print(set, List.of()).replaceAll("\\s+", ""))
                .contains(
                        "\"by_hand\":{\"stands\":false,\"held\":[{\"place\":6,\"piece\":\"2\"}],\"best_of_rest_proven\":true}");
        assertThat(MatchJson.print(match(job(ROW, "{}"), pieces(8), false), List.of()))
                .doesNotContain("by_hand");
    }

    @Test
    void what_cannot_be_done_by_hand_is_told() {
        assertThat(told("{'order': ['1', '2']}"))
                .containsExactly("by_hand: order names 2 pieces, the frame has 6 places");
        assertThat(told("{'held': [{'place': 7, 'piece': '1'}, {'place': 2, 'piece': '99'}]}"))
                .containsExactly(
                        "by_hand: held piece 99 is not among the pieces",
                        "by_hand: held piece 1 is held at place 7 of 6");
        assertThat(told("{'order': ['1', '2', '3', '4', '5', '77'], 'held': [{'place': 1, 'piece': '2'}]}"))
                .containsExactly(
                        "by_hand: order piece 77 at place 6 is not among the pieces",
                        "by_hand: held piece 2 is held at place 1, where piece 1 stands");
    }

    private static List<String> told(String byHand) {
        return MatchJob.problems(job(ROW, byHand), pieces(8)).stream()
                .map(each -> each.where() + " " + each.what())
                .toList();
    }

    @Test
    void a_file_that_holds_a_piece_or_a_place_twice_is_refused() {
        assertThat(read(
                                ROW,
                                "{'order': ['1', '1', 3], 'held': [{'place': 1, 'piece': '2'}, {'place': 1, 'piece': '3'}, {'place': 0}, 5]}")
                        .problems())
                .extracting(Problem::where)
                .containsExactly(
                        "by_hand: order",
                        "by_hand: order",
                        "by_hand: held 2",
                        "by_hand: held 3: place",
                        "by_hand: held 3: piece",
                        "by_hand: held 4");
    }
}
