package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/** Which slip is proposed for a figure, for a whole column, and what is told of a difference; every figure worked out by hand. */
class LikelyCorrectionTest {
    private static final KeyedFigure METRIC = new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM);
    private static final KeyedFigure INCH = new KeyedFigure(UnitSystem.INCH, MassUnit.OUNCE);

    private static void found(
            KeyedFigure keyed,
            String column,
            double typed,
            double centre,
            double width,
            String kind,
            double meant,
            String how) {
        Column of = Column.find(column).orElseThrow();
        LikelyCorrection found = LikelyCorrection.find(
                        of, LikelyCorrection.figure(of, typed, keyed), new UsualRange(centre, width), keyed)
                .orElseThrow();
        assertThat(found.kind()).isEqualTo(Slip.Kind.valueOf(kind));
        assertThat(found.figure()).isCloseTo(meant, within(1e-6 * meant));
        assertThat(found.how()).isEqualTo(how);
    }

    @ParameterizedTest
    @CsvSource({
        "mass_g, 6.42, 182, 20, WRONG_UNIT, 182.00393846, is it in ounces",
        "mass_g, 0.4, 182, 20, WRONG_UNIT, 181.436948, is it in pounds",
        "mass_g, 0.182, 182, 20, WRONG_UNIT, 182, is it in kilograms",
        "length, 22, 559, 20, WRONG_UNIT, 558.8, is it in inches",
        "length, 55.9, 559, 20, WRONG_UNIT, 559, is it in centimetres",
        "length, 5590, 559, 20, DECIMAL_POINT, 559, did the decimal point slip",
        "length, 5.59, 559, 20, DECIMAL_POINT, 559, did the decimal point slip",
        "length, 55900, 559, 20, DECIMAL_POINT, 559, did the decimal point slip",
        "length, 0.559, 559, 20, DECIMAL_POINT, 559, did the decimal point slip",
        "length, 559000, 559, 20, DECIMAL_POINT, 559, did the decimal point slip",
        "mass_g, 18.24, 182, 20, DECIMAL_POINT, 182.4, did the decimal point slip",
        "mass_g, 821, 281, 10, DIGIT, 281, did two digits change places",
        "mass_g, 821, 812, 10, DIGIT, 812, did two digits change places",
        "d1, 18.4, 14.8, 1, DIGIT, 14.8, did two digits change places",
        "mass_g, 3182, 182, 40, DIGIT, 182, is there a digit too many",
        "d1, 22.75, 2.75, 0.2, DIGIT, 2.75, is there a digit too many",
        "mass_g, 282, 190, 40, DIGIT, 182, is one digit wrong",
        "mass_g, 282, 194, 40, DIGIT, 202, is one digit wrong",
        "mass_g, 282, 192, 40, DIGIT, 182, is one digit wrong",
        "mass_g, 209, 299, 10, DIGIT, 299, is one digit wrong",
        "mass_g, 299, 209, 10, DIGIT, 209, is one digit wrong",
    })
    void the_likeliest_is_proposed_and_of_several_the_one_nearest_the_usual(
            String column, double typed, double centre, double width, String kind, double meant, String how) {
        found(METRIC, column, typed, centre, width, kind, meant, how);
    }

    @ParameterizedTest
    @CsvSource({
        "mass_oz, 182, 182, 20, WRONG_UNIT, 182, is it in grams",
        "length, 559, 559, 20, WRONG_UNIT, 559, is it in millimetres",
        "mass_oz, 4.6, 181.43694800, 20, DIGIT, 181.43694800, did two digits change places",
        "length, 42.5, 622.3, 20, DIGIT, 622.3, did two digits change places",
    })
    void what_was_typed_in_ounces_and_inches_is_put_right_in_them(
            String column, double typed, double centre, double width, String kind, double meant, String how) {
        found(INCH, column, typed, centre, width, kind, meant, how);
    }

    @Test
    void where_nothing_explains_a_figure_nothing_is_proposed() {
        Column first = Column.diameter(1);
        assertThat(LikelyCorrection.find(first, 5, new UsualRange(30, 3), METRIC))
                .isEmpty();
        // The figure itself is no correction of itself.
        assertThat(LikelyCorrection.unit(Column.MASS, 182, new UsualRange(182, 20), METRIC))
                .isEmpty();
        // A digit must bring it well within, half the width.
        assertThat(LikelyCorrection.find(Column.MASS, 282, new UsualRange(192, 19.9), METRIC))
                .isEmpty();
    }

    private static Measures measures(double massG, double lengthMm, double balanceMm) {
        return Measures.ofMass(Mass.ofGrams(massG))
                .with(Column.LENGTH, Length.ofMm(lengthMm))
                .with(Column.BALANCE, Length.ofMm(balanceMm));
    }

    private static List<Measures> alike(int count, Measures each) {
        return new ArrayList<>(java.util.Collections.nCopies(count, each));
    }

    /** The pattern's figure has tenths, which a kitchen scale never shows; what little pounds leave is told all the same. */
    @Test
    void a_question_about_a_column_tells_no_mass_finer_than_the_scale_and_no_length_finer_than_a_rule() {
        KeyedFigure kitchen = new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM, new WeighingScale(Mass.ofGrams(1)));
        Measures wanted = measures(299.4, 386, 113.04);
        assertThat(WholeColumns.of(alike(3, measures(613.2, 386, 103.67)), wanted, kitchen)
                        .slips())
                .extracting(Slip::question)
                .containsExactly(
                        "its middle figure is 613 g where the pattern has 299 g: is it measured as the pattern is?",
                        "its middle figure is 103.7 mm where the pattern has 113 mm: is it measured as the pattern is?");
        assertThat(WholeColumns.of(alike(3, measures(0.66, 386, 113)), wanted, kitchen)
                        .slips())
                .extracting(Slip::question)
                .containsExactly("its middle figure is 0.7 g where the pattern has 299 g: is it in pounds?");
    }

    @Test
    void a_whole_column_is_asked_about_from_three_pieces_on_with_its_middle_and_the_patterns_figure() {
        Measures wanted = measures(182, 559, 280);
        WholeColumns three = WholeColumns.of(alike(3, measures(6.42, 559, 280)), wanted, METRIC);
        assertThat(three.slips())
                .containsExactly(new Slip(
                        "column mass_g",
                        Slip.Kind.WRONG_UNIT,
                        "its middle figure is 6.4 g where the pattern has 182 g: is it in ounces?",
                        Optional.empty()));
        assertThat(three.inDoubt()).containsExactly(Column.MASS);
        assertThat(WholeColumns.of(alike(2, measures(6.42, 559, 280)), wanted, METRIC)
                        .slips())
                .isEmpty();
        assertThat(WholeColumns.of(alike(3, measures(182, 559, 400)), wanted, METRIC)
                        .slips())
                .containsExactly(new Slip(
                        "column balance",
                        Slip.Kind.FAR_OFF,
                        "its middle figure is 400 mm where the pattern has 280 mm: is it measured as the pattern is?",
                        Optional.empty()));
    }

    @Test
    void two_columns_change_names_only_when_that_explains_both_and_each_is_asked_about_once() {
        Measures wanted = measures(182, 559, 280);
        WholeColumns swapped = WholeColumns.of(alike(4, measures(182, 280, 559)), wanted, METRIC);
        assertThat(swapped.slips())
                .containsExactly(new Slip(
                        "columns length and balance",
                        Slip.Kind.SWAPPED_COLUMNS,
                        "do they stand under each other's names?",
                        Optional.empty()));
        assertThat(swapped.inDoubt()).isEqualTo(Set.of(Column.LENGTH, Column.BALANCE));
        // The balance point would fit under length; what stands under length fits nowhere.
        assertThat(WholeColumns.of(alike(4, measures(182, 700, 559)), wanted, METRIC)
                        .slips())
                .extracting(Slip::where, Slip::kind)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("column length", Slip.Kind.FAR_OFF),
                        org.assertj.core.groups.Tuple.tuple("column balance", Slip.Kind.FAR_OFF));
        assertThat(WholeColumns.of(alike(4, measures(182, 280, 700)), wanted, METRIC)
                        .slips())
                .extracting(Slip::where)
                .containsExactly("column length", "column balance");
        // Three columns of one figure each other's: the first pair is named, the third alone.
        Measures marks = Measures.NONE
                .with(Column.LENGTH, Length.ofMm(500))
                .with(Column.mark(1), Length.ofMm(200))
                .with(Column.mark(2), Length.ofMm(201));
        Measures read = Measures.NONE
                .with(Column.LENGTH, Length.ofMm(200))
                .with(Column.mark(1), Length.ofMm(500))
                .with(Column.mark(2), Length.ofMm(500));
        assertThat(WholeColumns.of(alike(3, read), marks, METRIC).slips())
                .extracting(Slip::where)
                .containsExactly("columns length and m1", "column m2");
    }

    @Test
    void each_part_of_a_difference_tells_its_column_its_sign_and_what_it_counts() {
        LikenessTolerances tolerances = new LikenessTolerances(Length.ofMm(0.5), Length.ofMm(0.25), 2);
        assertThat(tolerances.figure(Column.MASS, Mass.ofGrams(150))).isCloseTo(3, within(1e-12));
        assertThat(tolerances.figure(Column.LENGTH, Mass.ofGrams(150))).isEqualTo(0.5);
        assertThat(tolerances.figure(Column.BALANCE, Mass.ofGrams(150))).isEqualTo(0.5);
        assertThat(tolerances.figure(Column.mark(2), Mass.ofGrams(150))).isEqualTo(0.5);
        assertThat(tolerances.figure(Column.diameter(2), Mass.ofGrams(150))).isEqualTo(0.25);
        LikenessWeights weights = new LikenessWeights(3, 2, 1, Map.of("grain", 4.0));
        Likeness likeness = new Likeness(tolerances, weights, Optional.of(Mass.ofGrams(150)));
        Piece one = new Piece("1", measures(147, 500, 250), Map.of("grain", " 2 "));
        Piece two = new Piece("2", measures(150, 499.5, 250), Map.of("grain", "3,5"));
        assertThat(likeness.parts(one, two))
                .containsExactly(
                        new Likeness.Part("mass_g", Optional.of(Column.MASS), -3, 1),
                        new Likeness.Part("length", Optional.of(Column.LENGTH), 0.5, 3),
                        new Likeness.Part("balance", Optional.of(Column.BALANCE), 0, 0),
                        new Likeness.Part("grain", Optional.empty(), -1.5, 6));
        assertThat(likeness.findDifference(one, two).getAsDouble()).isCloseTo(10, within(1e-12));
        Likeness.Figure figure = likeness.figure(one, two.measures());
        assertThat(figure.piece()).isEqualTo("1");
        assertThat(figure.figure()).isCloseTo(4, within(1e-12));
        assertThat(figure.parts()).extracting(Likeness.Part::counts).containsExactly(3.0, 1.0, 0.0);
        assertThat(likeness.findDifference(one, Piece.of("3", Measures.NONE))).isEmpty();
        assertThat(likeness.difference(one, Piece.of("3", Measures.NONE))).isZero();
    }

    @ParameterizedTest
    @CsvSource({"2, 2.0, 0", "2, x, 1", "x, 2, 1", "Pale, pale, 0", "pale, dark, 1", "-1, 1, 2", "1, 4, 3"})
    void what_was_noted_is_told_apart_by_its_number_or_by_its_letters(String mine, String others, double counts) {
        LikenessWeights weights = new LikenessWeights(3, 2, 1, Map.of("grain", 1.0));
        Likeness likeness =
                new Likeness(new LikenessTolerances(Length.ofMm(0.5), Length.ofMm(0.25), 2), weights, Optional.empty());
        Piece one = new Piece("1", Measures.NONE, Map.of("grain", mine));
        Piece two = new Piece("2", Measures.NONE, Map.of("grain", others));
        assertThat(likeness.difference(one, two)).isEqualTo(counts);
        assertThat(likeness.difference(two, one)).isEqualTo(counts);
    }

    @Test
    void what_was_not_measured_is_empty_and_what_cannot_be_is_refused() {
        Measures all = measures(182, 559, 280);
        assertThat(all.mass()).contains(Mass.ofGrams(182));
        assertThat(all.length(Column.BALANCE)).contains(Length.ofMm(280));
        assertThat(all.without(Column.BALANCE).length(Column.BALANCE)).isEmpty();
        assertThat(all.without(Column.BALANCE).figures()).containsOnlyKeys(Column.MASS, Column.LENGTH);
        assertThat(all.without(Column.MASS).mass()).isEmpty();
        assertThat(all.figure(Column.mark(1))).isEmpty();
        assertThat(all.figure(Column.LENGTH)).hasValue(559);
        for (double impossible : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> all.with(Column.LENGTH, impossible))
                    .hasMessageContaining("length must be above zero");
        }
        Optional<Mass> nothing = Optional.of(Mass.ofGrams(0));
        LikenessTolerances tolerances = new LikenessTolerances(Length.ofMm(0.5), Length.ofMm(0.25), 2);
        assertThatThrownBy(() -> new Likeness(tolerances, LikenessWeights.USUAL, nothing))
                .hasMessageContaining("mean mass");
    }
}
