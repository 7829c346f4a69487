package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.effort.Progress;
import turnalike.frame.Wheel;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.Working;

/** The figures and cautions told with a match, at their bounds too. */
class MatchFiguresTest {
    @Test
    void a_seat_s_piece_is_named_with_its_spread_and_the_spares_in_their_order() {
        WheelPlacement placement = WheelMatch.solve(wheel(3, 5, 60, 101, 100, 104, 50), Effort.unlimited());
        assertThat(placement.massSpread().grams()).isEqualTo(4);
        assertThat(placement.spares()).extracting(Candidate::label).containsExactly("1", "5");
        assertThat(placement.seats()).extracting(Seat::place).containsExactly(1, 2, 3);
        assertThat(placement.bestProven()).isTrue();
        assertThat(placement.workings())
                .extracting(Working::sureness)
                .contains("no other choice or order that passes has a smaller one: all were gone through or ruled out");
    }

    @Test
    void an_unproven_placement_says_so_and_its_progress_tells_no_bound() {
        double[] masses = new double[23];
        for (int i = 0; i < masses.length; i++) {
            masses[i] = 100 + 0.1 * (i * i % 37);
        }
        List<Progress> told = new ArrayList<>();
        Effort few = Effort.ofAsks(3);
        WheelPlacement placement = WheelMatch.solve(wheel(23, 50, masses), new Effort() {
            @Override
            public boolean spent() {
                return few.spent();
            }

            @Override
            public void report(Progress progress) {
                told.add(progress);
            }
        });
        assertThat(placement.bestProven()).isFalse();
        assertThat(placement.workings().get(0).sureness()).isEqualTo("the best found; a smaller one may exist");
        assertThat(told).hasSize(1);
        assertThat(told.get(0).bound()).isZero();
        assertThat(told.get(0).best()).isCloseTo(placement.unbalance().gMm(), within(1e-6));
    }

    @Test
    void what_cannot_be_placed_says_why_and_how_many_are_lacking() {
        WheelProblem problem = new WheelProblem(
                List.of(piece("a", 80, 300), piece("a", 80, 0), piece("b", 0, 300), piece("c", 80, -2)),
                new Wheel(6, Length.ofMm(50)),
                2,
                Mass.ofGrams(0.1),
                List.of(),
                false);
        assertThat(problem.problems())
                .extracting(Problem::line)
                .containsExactly(
                        "pieces: 4 pieces for 6 places; log 2 more or give the wheel fewer places",
                        "piece a: is listed twice; give each piece its own label",
                        "piece b: mass is 0.0 g; weigh it again",
                        "piece c: balance point lies 2.0 mm beyond the axle; check the hub radius and the balance");
        assertThat(wheel(3, 0, 80, 80, 80).problems()).isEmpty();
        assertThatThrownBy(() -> wheel(3, -0.1, 80, 80, 80)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WheelProblem(
                        List.of(), new Wheel(3, Length.ofMm(50)), 2, Mass.ofGrams(-1), List.of(), false))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_row_s_bounds_are_taken_and_beyond_them_refused() {
        RowProblem four = row(4, 4);
        assertThat(four.problems()).isEmpty();
        assertThat(row(3, 5).problems())
                .extracting(Problem::line)
                .containsExactly("pieces: 3 pieces for 5 places; log 2 more or make the row shorter");
        assertThatThrownBy(() -> row(3, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RowProblem(List.of(), (a, b) -> 0, 1, -1))
                .isInstanceOf(IllegalArgumentException.class);
        RowPlacement one = RowMatch.solve(row(1, 1), Effort.unlimited());
        assertThat(one.order()).containsExactly(0);
        assertThat(one.totalDifference()).isZero();
        assertThat(one.bestProven()).isTrue();
        RowPlacement placed = RowMatch.solve(
                new RowProblem(Collections.nCopies(4, Mass.ofGrams(100)), (a, b) -> Math.abs(a - b), 3, 2),
                Effort.unlimited());
        RowPlacement back = placed.reversed();
        assertThat(back.order())
                .containsExactly(
                        placed.order().get(2),
                        placed.order().get(1),
                        placed.order().get(0));
        assertThat(back.reversed()).isEqualTo(placed);
        assertThat(placed.bound()).isEqualTo(placed.totalDifference()).isEqualTo(2);
        assertThat(placed.spares()).hasSize(1);
    }

    @Test
    void a_difference_must_be_a_number_that_is_not_negative() {
        assertThat(Unlikeness.table((a, b) -> a + b, 3))
                .isDeepEqualTo(new double[][] {{0, 1, 2}, {1, 0, 3}, {2, 3, 0}});
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Unlikeness.table((a, b) -> bad, 2)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void groups_that_cannot_be_are_refused_and_too_few_pieces_make_none() {
        assertThat(GroupMatch.groups(3, 4, (a, b) -> 1, Effort.unlimited()).groups())
                .isEmpty();
        assertThat(GroupMatch.groups(4, 4, (a, b) -> 1, Effort.unlimited()).groups())
                .hasSize(1);
        assertThat(GroupMatch.groups(9, 4, (a, b) -> 1, Effort.unlimited()).groups())
                .hasSize(2);
        assertThat(GroupMatch.one(9, 4, (a, b) -> 1, Effort.unlimited()).groups())
                .hasSize(1);
        assertThat(GroupMatch.one(3, 4, (a, b) -> 1, Effort.unlimited()).spares())
                .containsExactly(0, 1, 2);
        Grouping none = GroupMatch.groups(4, 2, 0, (a, b) -> 1, Effort.unlimited());
        assertThat(none.totalDifference()).isZero();
        assertThat(none.spares()).containsExactly(0, 1, 2, 3);
        assertThatThrownBy(() -> GroupMatch.groups(4, 1, 1, (a, b) -> 1, Effort.unlimited()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GroupMatch.groups(4, 2, -1, (a, b) -> 1, Effort.unlimited()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GroupMatch.groups(5, 2, 3, (a, b) -> 1, Effort.unlimited()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_rim_needs_three_places_with_a_spoke_and_a_seat_for_each() {
        Wheel three = new Wheel(3, Length.ofMm(60));
        List<Spoke> spokes = Collections.nCopies(3, new Spoke(piece("a", 100, 290), Length.ofMm(400)));
        List<Length> seats = List.of(Length.ofMm(1), Length.ZERO, Length.ofMm(-2));
        TradeOff.Rim rim = new TradeOff.Rim(three, spokes, seats, List.of());
        assertThat(rim.radius(0, 1).mm()).isCloseTo(459, within(1e-9));
        assertThat(rim.radius(2, 0).mm()).isCloseTo(462, within(1e-9));
        assertThat(rim.deepenings(List.of(0, 1, 2)))
                .extracting(length -> Math.round(length.mm() * 1e6) / 1e6)
                .containsExactly(0.0, 1.0, 3.0);
        assertThatThrownBy(() -> new TradeOff.Rim(three, spokes.subList(0, 2), seats, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TradeOff.Rim(three, spokes, seats.subList(0, 2), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TradeOff.Rim(
                        new Wheel(2, Length.ofMm(60)), spokes.subList(0, 2), seats.subList(0, 2), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static RowProblem row(int pieces, int places) {
        return new RowProblem(Collections.nCopies(pieces, Mass.ofGrams(100)), (a, b) -> 1, places, 0);
    }

    private static Candidate piece(String label, double massG, double reachMm) {
        return new Candidate(label, Mass.ofGrams(massG), Length.ofMm(reachMm));
    }

    private static WheelProblem wheel(int places, double tolerancePct, double... massesG) {
        List<Candidate> pieces = new ArrayList<>();
        for (double massG : massesG) {
            pieces.add(piece("" + (pieces.size() + 1), massG, 300));
        }
        return new WheelProblem(
                pieces, new Wheel(places, Length.ofMm(50)), tolerancePct, Mass.ofGrams(0.1), List.of(), true);
    }
}
