package turnalike.pieces.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.WeighingScale;

/** Both sides of what mending takes for near enough, gentle, possible; and what cannot be asked of it. */
class MendBoundsTest {
    private static final Length TOLERANCE = Length.ofMm(0.5);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static final WeighingScale TENTHS = new WeighingScale(Mass.ofGrams(0.1));

    private static Mendable member(int index, CutRange room) {
        return new Mendable(index, "m" + index, mm(100 - 10 * index), mm(105 - 10 * index), new Removal(4, 0), room, 2);
    }

    private static MendPlan plan(double massG, double nearG, Mendable... members) {
        return Mend.plan(new MendOrder(
                "7",
                Mass.ofGrams(massG),
                Mass.ofGrams(100),
                Mass.ofGrams(nearG),
                TOLERANCE,
                Length.ZERO,
                List.of(members)));
    }

    @Test
    void just_near_enough_is_left() {
        assertThat(plan(100.5, 0.5)).isEqualTo(new MendPlan.Leave(Mass.ofGrams(0.5), true));
        // One step of a tenth: 100.1 less 100 is a little over a tenth in doubles.
        assertThat(plan(100.1, 0.1)).isInstanceOf(MendPlan.Leave.class);
        assertThat(plan(99.9, 0.1)).isInstanceOf(MendPlan.Leave.class);
        assertThat(plan(99.5, 0.5)).isInstanceOf(MendPlan.Leave.class);
        assertThat(plan(99.25, 0.5)).isEqualTo(new MendPlan.Light(Mass.ofGrams(0.75)));
        assertThat(plan(100.75, 0.5)).isInstanceOf(MendPlan.MakeAnother.class);
    }

    @Test
    void cuts_of_half_the_tolerance_are_gentle_and_stand_in_the_runs_order() {
        // Two members of 4 g each millimetre: 0.25 mm off both is 2 g.
        MendPlan.Cuts gentle = (MendPlan.Cuts)
                plan(102, 0, member(1, CutRange.within(TOLERANCE)), member(2, CutRange.within(TOLERANCE)));
        assertThat(gentle.gentle()).isTrue();
        assertThat(gentle.cuts()).extracting(MendCut::member).containsExactly(2, 1);
        assertThat(gentle.cuts())
                .allSatisfy(cut -> assertThat(cut.takeOff().mm()).isCloseTo(0.25, within(1e-9)));
        assertThat(gentle.massAfter().grams()).isCloseTo(100, within(1e-9));
        assertThat(gentle.likenessCost()).isCloseTo(2, within(1e-9));
        MendPlan.Cuts deep = (MendPlan.Cuts)
                plan(102.1, 0, member(1, CutRange.within(TOLERANCE)), member(2, CutRange.within(TOLERANCE)));
        assertThat(deep.gentle()).isFalse();
        assertThat(plan(104, 0, member(1, CutRange.within(TOLERANCE)), member(2, CutRange.within(TOLERANCE))))
                .isInstanceOf(MendPlan.Cuts.class);
        assertThat(plan(104.1, 0, member(1, CutRange.within(TOLERANCE)), member(2, CutRange.within(TOLERANCE))))
                .isEqualTo(new MendPlan.MakeAnother(Mass.ofGrams(104.1).minus(Mass.ofGrams(100)), Mass.ofGrams(4)));
    }

    @Test
    void what_may_not_be_cut_is_not() {
        assertThat(CutRange.NONE).isEqualTo(new CutRange(Length.ZERO, Length.ZERO, Length.ZERO));
        MendPlan.Cuts cuts =
                (MendPlan.Cuts) plan(101, 0, member(1, CutRange.NONE), member(2, CutRange.within(TOLERANCE)));
        assertThat(cuts.cuts()).extracting(MendCut::member).containsExactly(2);
        assertThat(plan(101, 0, member(1, CutRange.NONE)))
                .isEqualTo(new MendPlan.MakeAnother(Mass.ofGrams(1), Mass.ofGrams(0)));
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0, 1", "0, -0.1, 1", "0, 1, 0.9"})
    void room_that_is_none_is_a_fault(double thick, double gentle, double most) {
        assertThatThrownBy(() -> new CutRange(mm(thick), mm(gentle), mm(most)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, 0, 1, 0",
        "1, 0, 0, 1, 0",
        "1, 1, -0.1, 1, 0",
        "1, 1, 0, 0, 0",
        "1, 1, 0, 1, -0.1",
    })
    void an_order_without_masses_or_tolerance_is_a_fault(
            double mass, double target, double near, double tolerance, double smallest) {
        assertThatThrownBy(() -> new MendOrder(
                        "7",
                        Mass.ofGrams(mass),
                        Mass.ofGrams(target),
                        Mass.ofGrams(near),
                        mm(tolerance),
                        mm(smallest),
                        List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, 0", "1, -0.1", "NaN, 0", "1, NaN", "Infinity, 0", "1, Infinity"})
    void a_cut_that_takes_nothing_off_is_a_fault(double a, double b) {
        assertThatThrownBy(() -> new Removal(a, b)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_member_is_cut_as_long_as_mass_still_falls() {
        Removal removal = new Removal(1, 1);
        assertThatThrownBy(() -> new Mendable(1, "m", mm(0), mm(5), removal, new CutRange(mm(0), mm(0.5), mm(0.5)), 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatCode(() -> new Mendable(1, "m", mm(0), mm(5), removal, new CutRange(mm(0), mm(0.4), mm(0.4)), 0))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> new Mendable(1, "m", mm(5), mm(5), removal, CutRange.NONE, 1))
                .isInstanceOf(IllegalArgumentException.class);
        for (double weight : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Mendable(1, "m", mm(0), mm(5), removal, CutRange.NONE, weight))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static Piece weighed(String label, double grams) {
        return Piece.of(label, Measures.ofMass(Mass.ofGrams(grams)));
    }

    @Test
    void a_light_pieces_set_is_of_two_at_least_and_within_some_tolerance() {
        Piece light = weighed("x", 98);
        List<Piece> others = List.of(weighed("a", 100), weighed("x", 98), Piece.of("b", Measures.NONE));
        Mass target = Mass.ofGrams(100);
        for (double pct : new double[] {0, -1, 100, Double.NaN}) {
            assertThatThrownBy(() -> LightPieceOptions.of(light, others, 2, pct, target))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> LightPieceOptions.of(light, others, 1, 2, target))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LightPieceOptions.of(Piece.of("b", Measures.NONE), others, 2, 2, target))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("b");
        // (h - 98) / ((98 + h) / 2) = 0.01 gives h = 98 · 1.005 / 0.995.
        LightPieceOptions ways = LightPieceOptions.of(light, others, 2, 1, target);
        assertThat(ways.ceiling().grams()).isCloseTo(98 * 1.005 / 0.995, within(1e-9));
        assertThat(ways.over()).extracting(LightPieceOptions.Over::piece).containsExactly("a");
        assertThat(ways.words(TENTHS))
                .containsExactly(
                        // 1.015 g, and 1.0 g would not do on a scale of tenths.
                        "bring the others down to it, each by so much: a (1.1 g)",
                        "keep it as a spare and turn another from a blank 2.0 % heavier",
                        "nothing can be put back on a turned piece: no cut mends it");
    }

    @Test
    void only_as_many_others_count_as_there_are_places_the_lightest_of_them() {
        List<Piece> others = List.of(weighed("c", 130), weighed("a", 100), weighed("b", 101));
        LightPieceOptions ways = LightPieceOptions.of(weighed("x", 99), others, 3, 3, Mass.ofGrams(100));
        assertThat(ways.over()).isEmpty();
        assertThat(ways.ceiling().grams()).isEqualTo(101);
        assertThat(ways.words(TENTHS).get(0)).startsWith("piece x passes with the set as it is");
    }
}
