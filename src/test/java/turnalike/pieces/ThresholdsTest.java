package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** Both sides of the thresholds at which a question is asked, a part is told, or a figure is refused. */
class ThresholdsTest {
    private static final LikenessTolerances TOLERANCES = new LikenessTolerances(Length.ofMm(0.5), Length.ofMm(0.25), 2);
    private static final KeyedFigure METRIC = new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM);
    private static final Slips SLIPS = new Slips(Measures.NONE, TOLERANCES, METRIC);

    private static Measures length(double mm) {
        return Measures.NONE.with(Column.LENGTH, Length.ofMm(mm));
    }

    private static List<Measures> lengths(double... mm) {
        List<Measures> out = new ArrayList<>();
        for (double each : mm) {
            out.add(length(each));
        }
        return out;
    }

    private static UsualRange usual(Measures wanted, double... mm) {
        return UsualRange.of(Column.LENGTH, lengths(mm), wanted, TOLERANCES).orElseThrow();
    }

    @Test
    void from_five_pieces_on_their_own_spread_says_what_is_usual() {
        // Median 500, deviations 2 2 1 1 0, their median 1: six of 1.4826.
        UsualRange five = usual(length(600), 498, 499, 500, 501, 502);
        assertThat(five.centre()).isEqualTo(500);
        assertThat(five.width()).isCloseTo(6 * 1.4826, within(1e-9));
        // No less than four tolerances, no more than a twenty-fifth of the length.
        assertThat(usual(Measures.NONE, 500, 500, 500, 500, 500.1).width()).isCloseTo(2, within(1e-12));
        assertThat(usual(Measures.NONE, 400, 450, 500, 550, 600).width()).isCloseTo(20, within(1e-12));
        // Where that is less than four tolerances, the tolerances count.
        assertThat(usual(Measures.NONE, 10, 20, 30, 40, 50).width()).isCloseTo(2, within(1e-12));
    }

    @Test
    void with_fewer_the_pattern_says_it_or_the_median_of_three() {
        assertThat(usual(length(600), 498, 499, 500, 501)).isEqualTo(new UsualRange(600, 24));
        assertThat(usual(Measures.NONE, 500, 400, 510)).isEqualTo(new UsualRange(500, 20));
        assertThat(usual(Measures.NONE, 400, 500, 520, 600).centre()).isEqualTo(510);
        assertThat(UsualRange.of(Column.LENGTH, lengths(500, 501), Measures.NONE, TOLERANCES))
                .isEmpty();
        assertThat(UsualRange.roughly(Column.MASS, 100).width()).isCloseTo(30, within(1e-12));
        assertThat(UsualRange.roughly(Column.diameter(1), 100).width()).isCloseTo(10, within(1e-12));
    }

    @Test
    void the_ends_of_the_usual_are_usual() {
        UsualRange range = new UsualRange(500, 20);
        assertThat(List.of(range.fits(480), range.fits(520), range.fitsWell(490), range.fitsWell(510)))
                .containsOnly(true);
        assertThat(List.of(range.fits(479.9), range.fits(520.1), range.fitsWell(489.9), range.fitsWell(510.1)))
                .containsOnly(false);
    }

    private static List<Slip.Kind> kinds(Piece entered, Piece... before) {
        return SLIPS.ask(entered, List.of(before)).stream().map(Slip::kind).toList();
    }

    @Test
    void a_mark_may_lie_past_the_end_by_its_tolerance_and_no_more() {
        Measures piece = length(500).with(Column.mark(2), Length.ofMm(500.5));
        assertThat(kinds(Piece.of("1", piece))).isEmpty();
        assertThat(kinds(Piece.of("1", piece.with(Column.mark(2), Length.ofMm(500.51)))))
                .containsExactly(Slip.Kind.PAST_THE_END);
        assertThat(kinds(Piece.of("1", length(500).with(Column.BALANCE, Length.ofMm(501)))))
                .containsExactly(Slip.Kind.PAST_THE_END);
        assertThat(kinds(Piece.of("1", length(20).with(Column.diameter(1), Length.ofMm(40)))))
                .as("a diameter lies along nothing")
                .isEmpty();
    }

    @Test
    void three_equal_figures_are_a_piece_entered_twice_and_two_are_not() {
        Measures two = length(500).with(Column.diameter(1), Length.ofMm(20));
        Measures three = two.with(Mass.ofGrams(100));
        assertThat(kinds(Piece.of("2", two), Piece.of("1", two))).isEmpty();
        assertThat(kinds(Piece.of("2", three), Piece.of("1", three))).containsExactly(Slip.Kind.TWICE);
        assertThat(kinds(Piece.of("2", three), Piece.of("1", three.with(Mass.ofGrams(101)))))
                .isEmpty();
        assertThat(kinds(Piece.of("3", three), Piece.of("1", three), Piece.of("2", two)))
                .as("only the piece just before")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"007, 7, true", "7, 007, true", "A7, a7, true", "70, 7, false", "0, 00, true", "7a, 7b, false"})
    void labels_alike_but_for_zeros_and_case_are_asked_about(String label, String before, boolean asked) {
        assertThat(kinds(Piece.of(label, length(500)), Piece.of(before, length(501))))
                .hasSize(asked ? 1 : 0);
    }

    private static Likeness.Part part(Column column, double off, double counts) {
        return new Likeness.Part(column.format(), Optional.of(column), off, counts);
    }

    private static String words(Likeness.Part... parts) {
        LikenessWords words = new LikenessWords(Map.of(Column.mark(3), "upper bead"), METRIC);
        return words.of(new Likeness.Figure("7", 1, List.of(parts)), 3);
    }

    @Test
    void a_part_is_told_from_a_fifth_of_the_largest_on_and_above_a_two_hundredth() {
        Likeness.Part large = part(Column.LENGTH, 1, 5);
        assertThat(words(large, part(Column.mark(3), 1.2, 1)))
                .isEqualTo("piece 7: it is 1 mm long; its upper bead stands 1.2 mm high");
        assertThat(words(large, part(Column.mark(3), 1.2, 0.99))).isEqualTo("piece 7: it is 1 mm long");
        assertThat(words(part(Column.LENGTH, 1, 0.005))).isEqualTo("piece 7: just as asked for");
        assertThat(words(part(Column.LENGTH, 1, 0.0051))).isEqualTo("piece 7: it is 1 mm long");
        assertThat(words()).isEqualTo("piece 7: nothing measured to compare");
        assertThat(words(large, large, large, large))
                .hasSize("piece 7: it is 1 mm long; it is 1 mm long; it is 1 mm long".length());
    }

    @Test
    void each_side_has_its_own_word() {
        assertThat(words(part(Column.MASS, 2.5, 1), part(Column.MASS, -2.5, 1)))
                .isEqualTo("piece 7: it is 2.5 g heavy; it is 2.5 g light");
        assertThat(words(part(Column.LENGTH, -1, 1), part(Column.BALANCE, 1, 1), part(Column.BALANCE, -1, 1)))
                .isEqualTo(
                        "piece 7: it is 1 mm short; its balance point lies 1 mm high; its balance point lies 1 mm low");
        assertThat(words(part(Column.mark(4), -1, 1), part(Column.diameter(2), 1, 1), part(Column.diameter(2), -1, 1)))
                .isEqualTo("piece 7: its mark 4 stands 1 mm low; its check place 2 is 1 mm too thick;"
                        + " its check place 2 is 1 mm too thin");
        assertThat(words(new Likeness.Part("grain", Optional.empty(), 1, 1))).endsWith("its grain is noted otherwise");
    }

    @Test
    void places_are_numbered_from_1_to_999_and_only_where_there_are_many() {
        assertThat(Column.find("d1")).contains(Column.diameter(1));
        assertThat(Column.find(" M999 ")).contains(Column.mark(999));
        assertThat(Column.find("d0")).isEmpty();
        assertThat(Column.find("d1000")).isEmpty();
        for (int place : new int[] {0, 1000}) {
            assertThatThrownBy(() -> Column.mark(place)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Column.diameter(place)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new Column(Column.Kind.MASS, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Column(Column.Kind.BALANCE, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_differences_are_counted_in_is_above_zero() {
        Length some = Length.ofMm(0.4);
        assertThatThrownBy(() -> new LikenessTolerances(Length.ZERO, some, 2)).isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> new LikenessTolerances(some, Length.ZERO, 2)).isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> new LikenessTolerances(some, some, 0)).isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> new LikenessTolerances(some, some, Double.POSITIVE_INFINITY))
                .isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> new LikenessWeights(-1, 1, 1, Map.of())).hasMessageContaining("length");
        assertThatThrownBy(() -> new LikenessWeights(1, -1, 1, Map.of())).hasMessageContaining("diameter");
        assertThatThrownBy(() -> new LikenessWeights(1, 1, -1, Map.of())).hasMessageContaining("mass");
        assertThatThrownBy(() -> new LikenessWeights(1, 1, 1, Map.of("grain", Double.NaN)))
                .hasMessageContaining("grain");
        assertThat(new LikenessWeights(0, 0, 0, Map.of("grain", 0.0)).length()).isZero();
        assertThatThrownBy(() -> length(500).with(Column.MASS, some)).isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> length(500).length(Column.MASS)).isInstanceOf(RuntimeException.class);
        assertThat(LikenessWeights.USUAL.working().toString())
                .contains("weights 3.0 for lengths and marks, 2.0 for diameters, 1.0 for mass");
    }

    @Test
    void masses_are_compared_once_one_was_weighed_and_noted_words_by_their_letters() {
        Likeness none = Likeness.among(List.of(Piece.of("1", length(500))), TOLERANCES, LikenessWeights.USUAL);
        assertThat(none.meanMass()).isEmpty();
        Piece light = Piece.of("1", Measures.ofMass(Mass.ofGrams(99)));
        Piece heavy = Piece.of("2", Measures.ofMass(Mass.ofGrams(101)));
        assertThat(none.findDifference(light, heavy)).isEmpty();
        Likeness some = Likeness.among(List.of(light, heavy), TOLERANCES, LikenessWeights.USUAL);
        assertThat(some.meanMass()).contains(Mass.ofGrams(100));
        // 2 g in a tolerance of 2 % of 100 g.
        assertThat(some.findDifference(light, heavy).getAsDouble()).isCloseTo(1, within(1e-12));
    }
}
