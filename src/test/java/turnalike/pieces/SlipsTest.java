package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.Seeds;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** Invented pieces of 182 g, 559 mm long, 22 mm at the first check place and 28 mm at the second. */
class SlipsTest {
    private static final LikenessTolerances TOLERANCES = new LikenessTolerances(Length.ofMm(0.4), Length.ofMm(0.4), 2);
    private static final Slips SLIPS =
            new Slips(Measures.NONE, TOLERANCES, new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM));

    private static Measures measures(double massG, double lengthMm, double firstMm, double secondMm) {
        return Measures.ofMass(Mass.ofGrams(massG))
                .with(Column.LENGTH, Length.ofMm(lengthMm))
                .with(Column.diameter(1), Length.ofMm(firstMm))
                .with(Column.diameter(2), Length.ofMm(secondMm));
    }

    private static List<Piece> sound(Random random, int count) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Measures measures = measures(
                    182 + 4 * random.nextGaussian(),
                    559 + 0.2 * random.nextGaussian(),
                    22 + 0.15 * random.nextGaussian(),
                    28 + 0.15 * random.nextGaussian());
            pieces.add(Piece.of("p" + i, measures));
        }
        return pieces;
    }

    private static List<Piece> sound() {
        return sound(new Random(7), 12);
    }

    @ParameterizedTest
    @CsvSource({
        "6.42, 559, 22, 28, WRONG_UNIT, mass_g, 182.0",
        "18.24, 559, 22, 28, DECIMAL_POINT, mass_g, 182.4",
        "1824, 559, 22, 28, DECIMAL_POINT, mass_g, 182.4",
        "281.4, 559, 22, 28, DIGIT, mass_g, 181.4",
        "128.4, 559, 22, 28, DIGIT, mass_g, 182.4",
        "1182.4, 559, 22, 28, DIGIT, mass_g, 182.4",
        "182.4, 22.01, 22, 28, WRONG_UNIT, length, 559.054",
        "182.4, 55.9, 22, 28, WRONG_UNIT, length, 559.0",
        "182.4, 595, 22, 28, DIGIT, length, 559.0",
        "182.4, 559, 0.866, 28, WRONG_UNIT, d1, 21.9964",
        "182.4, 559, 12, 28, DIGIT, d1, 22.0",
        "182.4, 559, 28, 22, SWAPPED_COLUMNS, d1, 22.0",
        "559, 182.4, 22, 28, SWAPPED_COLUMNS, mass_g, 182.4",
    })
    void the_likely_slip_is_named_with_what_was_meant(
            double mass, double length, double first, double second, Slip.Kind kind, String column, double meant) {
        List<Slip> slips = SLIPS.ask(Piece.of("new", measures(mass, length, first, second)), sound());
        assertThat(slips).hasSize(1);
        assertThat(slips.get(0).kind()).isEqualTo(kind);
        assertThat(slips.get(0).where()).contains(column);
        double suggested = slips.get(0)
                .instead()
                .orElseThrow()
                .measures()
                .figure(Column.find(column).orElseThrow())
                .orElseThrow();
        assertThat(Math.abs(suggested - meant)).isLessThan(0.01 + 0.0001 * meant);
    }

    @Test
    void a_swap_must_explain_both_columns() {
        assertThat(SLIPS.ask(Piece.of("new", measures(182, 559, 15, 22)), sound()))
                .extracting(Slip::kind)
                .hasSize(2)
                .doesNotContain(Slip.Kind.SWAPPED_COLUMNS);
    }

    @Test
    void far_off_without_an_explanation_is_asked_plainly() {
        List<Slip> slips = SLIPS.ask(Piece.of("new", measures(235, 559, 22, 28)), sound());
        assertThat(slips).hasSize(1);
        assertThat(slips.get(0).kind()).isEqualTo(Slip.Kind.FAR_OFF);
        assertThat(slips.get(0).question()).contains("235 g").endsWith("is it right?");
    }

    @Test
    void sound_files_raise_no_questions() {
        int[] asked = {0};
        Seeds.each(
                200,
                random -> asked[0] +=
                        SLIPS.askAll(sound(random, 5 + random.nextInt(40))).size());
        // Some 4500 pieces of four figures; six deviations of a median of few figures is not quite never.
        assertThat(asked[0]).isLessThan(20);
    }

    @Test
    void one_slip_in_a_file_is_found_however_it_stands() {
        Seeds.each(200, random -> {
            List<Piece> pieces = new ArrayList<>(sound(random, 8));
            int at = random.nextInt(8);
            Measures measures = pieces.get(at).measures();
            double mass = measures.mass().orElseThrow().grams();
            pieces.set(at, pieces.get(at).with(measures.with(Mass.ofGrams(mass * (random.nextBoolean() ? 10 : 0.1)))));
            assertThat(SLIPS.askAll(pieces))
                    .anyMatch(slip -> slip.where().equals("piece p%d, column mass_g".formatted(at))
                            && slip.kind() == Slip.Kind.DECIMAL_POINT);
        });
    }

    @Test
    void a_column_in_the_wrong_unit_throughout_is_asked_once() {
        Slips knowing = new Slips(measures(182, 559, 22, 28), TOLERANCES, SLIPS.keyed());
        List<Piece> pieces = sound().stream()
                .map(piece -> piece.with(piece.measures()
                        .with(Mass.ofGrams(piece.mass().orElseThrow().ounces()))))
                .toList();
        List<Slip> slips = knowing.askAll(pieces);
        assertThat(slips).hasSize(1);
        assertThat(slips.get(0).kind()).isEqualTo(Slip.Kind.WRONG_UNIT);
        assertThat(slips.get(0).question()).contains("ounces");
    }

    @Test
    void columns_under_each_other_s_names_are_asked_about_once() {
        Slips knowing = new Slips(measures(182, 559, 22, 28), TOLERANCES, SLIPS.keyed());
        List<Piece> pieces = sound().stream()
                .map(piece -> piece.with(measures(
                        piece.length().orElseThrow().mm(),
                        piece.mass().orElseThrow().grams(),
                        22,
                        28)))
                .toList();
        assertThat(knowing.askAll(pieces))
                .filteredOn(slip -> slip.kind() != Slip.Kind.TWICE)
                .singleElement()
                .satisfies(slip -> {
                    assertThat(slip.kind()).isEqualTo(Slip.Kind.SWAPPED_COLUMNS);
                    assertThat(slip.where()).isEqualTo("columns mass_g and length");
                });
    }

    @Test
    void a_column_far_from_the_pattern_throughout_is_asked_once() {
        Slips knowing = new Slips(measures(300, 559, 22, 28), TOLERANCES, SLIPS.keyed());
        assertThat(knowing.askAll(sound())).singleElement().satisfies(slip -> {
            assertThat(slip.kind()).isEqualTo(Slip.Kind.FAR_OFF);
            assertThat(slip.where()).isEqualTo("column mass_g");
        });
    }

    @Test
    void the_first_piece_is_asked_about_from_the_pattern_alone() {
        Slips knowing = new Slips(measures(182, 559, 22, 28), TOLERANCES, SLIPS.keyed());
        assertThat(knowing.ask(Piece.of("1", measures(6.4, 559, 22, 28)), List.of()))
                .hasSize(1);
        assertThat(SLIPS.ask(Piece.of("1", measures(6.4, 559, 22, 28)), List.of()))
                .isEmpty();
    }

    @Test
    void a_piece_entered_twice_is_asked_about() {
        Piece last = sound().get(11);
        assertThat(SLIPS.ask(Piece.of("new", last.measures()), sound()))
                .extracting(Slip::kind)
                .containsExactly(Slip.Kind.TWICE);
    }

    @Test
    void in_a_whole_file_a_piece_is_asked_about_when_it_repeats_the_one_before() {
        List<Piece> pieces = new ArrayList<>(sound());
        pieces.add(Piece.of("new", pieces.get(11).measures()));
        assertThat(SLIPS.askAll(pieces)).singleElement().satisfies(slip -> {
            assertThat(slip.kind()).isEqualTo(Slip.Kind.TWICE);
            assertThat(slip.where()).isEqualTo("piece new");
            assertThat(slip.question()).isEqualTo("all its figures are those of piece p11: was it entered twice?");
        });
    }

    @Test
    void equal_masses_alone_are_no_reason_to_ask() {
        Piece one = Piece.of("1", Measures.ofMass(Mass.ofGrams(182)));
        assertThat(SLIPS.ask(Piece.of("2", one.measures()), List.of(one))).isEmpty();
    }

    @Test
    void labels_that_differ_by_a_leading_zero_are_asked_about() {
        List<Piece> pieces =
                List.of(Piece.of("7", Measures.NONE), Piece.of("07", Measures.NONE), Piece.of("0", Measures.NONE));
        assertThat(SLIPS.askAll(pieces)).extracting(Slip::where).containsExactly("piece 07");
    }

    @Test
    void a_balance_point_past_the_end_is_asked_about() {
        Measures measures = measures(182, 559, 22, 28).with(Column.BALANCE, Length.ofMm(560));
        assertThat(SLIPS.ask(Piece.of("1", measures), List.of()))
                .singleElement()
                .satisfies(slip -> {
                    assertThat(slip.kind()).isEqualTo(Slip.Kind.PAST_THE_END);
                    assertThat(slip.question())
                            .isEqualTo("560 mm lies past the end at 559 mm: is it measured from the start end?");
                });
    }

    @Test
    void inches_are_asked_about_in_inches() {
        Slips inches =
                new Slips(measures(182, 559, 22.225, 28), TOLERANCES, new KeyedFigure(UnitSystem.INCH, MassUnit.OUNCE));
        Measures typed = measures(182, 559, 22.225 + 25.4, 28);
        Slip slip = inches.ask(Piece.of("1", typed), List.of()).get(0);
        assertThat(slip.question()).contains("1 7/8 in is 1 in from the usual 7/8 in", "7/8 in meant?");
    }
}
