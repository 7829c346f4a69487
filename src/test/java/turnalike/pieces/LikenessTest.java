package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.Seeds;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

class LikenessTest {
    private static final LikenessTolerances TOLERANCES = new LikenessTolerances(Length.ofMm(0.4), Length.ofMm(0.2), 2);
    private static final Likeness LIKENESS =
            new Likeness(TOLERANCES, LikenessWeights.USUAL, Optional.of(Mass.ofGrams(200)));
    private static final KeyedFigure METRIC = new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM);

    /** A piece from text like {@code mass_g=182.4 d1=22}. */
    private static Piece piece(String label, String figures) {
        Measures measures = Measures.NONE;
        for (String each : figures.split(" ", -1)) {
            String[] sides = each.split("=", -1);
            Column column = Column.find(sides[0]).orElseThrow();
            measures = METRIC.enter(measures, column, sides[1]).get();
        }
        return Piece.of(label, measures);
    }

    /** By hand from the contract's formula: t is 0.4 for lengths, 0.2 for diameters, 2 % of 200 g = 4 g for mass; w 3, 2 and 1. */
    @ParameterizedTest
    @CsvSource({
        "mass_g=198, mass_g=200, 0.5",
        "length=559, length=558.6, 3",
        "balance=280, balance=281, 7.5",
        "d1=22, d1=22.1, 1",
        "m4=120, m4=120.2, 1.5",
        "mass_g=198 length=559 d1=22 d2=28, mass_g=200 length=558.6 d1=22.1 d3=28, 4.5",
        "d1=22, d2=22, 0",
        "d1=22, mass_g=182, 0",
    })
    void the_difference_is_the_contract_s_sum(String first, String second, double expected) {
        assertThat(LIKENESS.difference(piece("1", first), piece("2", second))).isCloseTo(expected, within(1e-9));
    }

    /** The sum is worked out by itself; it must be that of the parts, bit by bit, also with what is judged by eye. */
    @Test
    void the_difference_is_the_sum_of_its_parts() {
        Likeness judging = new Likeness(
                TOLERANCES, new LikenessWeights(3, 2, 1, Map.of("colour", 0.5, "grain", 2.0)), Optional.empty());
        List<String> grades = List.of("pale", "dark", "1", "2,5");
        Seeds.each(300, random -> {
            Piece one = any(random).noting("colour", grades.get(random.nextInt(4)));
            Piece other = any(random)
                    .noting("colour", grades.get(random.nextInt(4)))
                    .noting("grain", grades.get(random.nextInt(4)));
            for (Likeness each : List.of(LIKENESS, judging)) {
                for (Piece first : List.of(one, other.noting("colour", ""))) {
                    List<Likeness.Part> parts = each.parts(first, other);
                    double sum = 0;
                    for (Likeness.Part part : parts) {
                        sum += part.counts();
                    }
                    assertThat(each.findDifference(first, other))
                            .isEqualTo(parts.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum));
                }
            }
        });
    }

    /** Looked up once for a search over many pieces, to the bit what each pair says by itself. */
    @Test
    void each_pair_of_many_differs_as_the_two_do_by_themselves() {
        Likeness judging = new Likeness(
                TOLERANCES, new LikenessWeights(3, 2, 1, Map.of("colour", 0.5, "grain", 2.0)), Optional.empty());
        List<String> grades = List.of("pale", " Pale ", "dark", "1", "2,5", "1.0");
        Seeds.each(30, random -> {
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                Piece plain = any(random).noting("colour", grades.get(random.nextInt(6)));
                pieces.add(random.nextBoolean() ? plain : plain.noting("grain", grades.get(random.nextInt(6))));
            }
            pieces.add(Piece.of("bare", Measures.NONE));
            for (Likeness each : List.of(LIKENESS, judging)) {
                PairDifferences pairs = new PairDifferences(each, pieces);
                for (int i = 0; i < pieces.size(); i++) {
                    for (int j = 0; j < pieces.size(); j++) {
                        assertThat(pairs.between(i, j)).isEqualTo(each.difference(pieces.get(i), pieces.get(j)));
                    }
                }
            }
        });
    }

    @Test
    void a_difference_is_a_distance() {
        Seeds.each(200, random -> {
            Piece a = any(random);
            Piece b = any(random);
            Piece c = any(random);
            double ab = LIKENESS.difference(a, b);
            assertThat(ab).isEqualTo(LIKENESS.difference(b, a)).isNotNegative();
            assertThat(LIKENESS.difference(a, a)).isZero();
            assertThat(LIKENESS.difference(a, c)).isLessThanOrEqualTo(ab + LIKENESS.difference(b, c) + 1e-9);
            assertThat(ab).isCloseTo(LIKENESS.figure(a, b.measures()).figure(), within(1e-9));
        });
    }

    private static Piece any(Random random) {
        return piece(
                "x",
                "mass_g=%s length=%s d1=%s"
                        .formatted(190 + random.nextInt(20), 559 + random.nextInt(3), 22 + random.nextInt(10) / 10.0));
    }

    @Test
    void weights_are_the_job_s_to_set() {
        LikenessWeights own = new LikenessWeights(0, 5, 0, Map.of("grain", 4.0, "colour", 2.0));
        Likeness likeness = new Likeness(TOLERANCES, own, Optional.empty());
        Piece one = new Piece("1", piece("1", "length=1 d1=22").measures(), Map.of("grain", "3", "colour", "Pale"));
        Piece two = new Piece("2", piece("2", "length=9 d1=22.2").measures(), Map.of("grain", "1,5", "colour", "pale"));
        Piece three = new Piece("3", two.measures(), Map.of("colour", "dark"));
        assertThat(likeness.difference(one, two)).isCloseTo(5 + 4 * 1.5, within(1e-9));
        assertThat(likeness.difference(two, three)).isEqualTo(2);
        assertThat(LIKENESS.difference(two, three)).isZero(); // extra columns are ignored unless the job weighs them
        assertThatThrownBy(() -> new LikenessWeights(-1, 0, 0, Map.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_mass_tolerance_is_of_the_mean_of_all_weighed() {
        List<Piece> set = List.of(piece("1", "mass_g=100"), piece("2", "mass_g=300"), piece("3", "d1=22"));
        Likeness likeness = Likeness.among(set, TOLERANCES, LikenessWeights.USUAL);
        assertThat(likeness.meanMass()).contains(Mass.ofGrams(200));
        assertThat(Likeness.among(set.subList(2, 3), TOLERANCES, LikenessWeights.USUAL)
                        .meanMass())
                .isEmpty();
    }

    @Test
    void the_pattern_s_figures_come_before_the_median() {
        List<Piece> set =
                List.of(piece("1", "mass_g=180 d1=22"), piece("2", "mass_g=190 d1=23"), piece("3", "mass_g=182 d1=24"));
        Measures reference = Likeness.reference(piece("p", "d1=22.5").measures(), set);
        assertThat(reference).isEqualTo(piece("r", "mass_g=182 d1=22.5").measures());
        assertThat(Likeness.reference(Measures.NONE, set.subList(0, 2))
                        .figures()
                        .get(Column.MASS))
                .isEqualTo(185.0);
    }

    @Test
    void the_figure_is_told_in_words_the_worst_first() {
        LikenessWords words =
                new LikenessWords(Map.of(Column.mark(3), "upper bead", Column.diameter(2), "lower neck"), METRIC);
        Piece seven = piece("7", "mass_g=204.1 length=559.1 balance=280 m3=318.8 d2=18.3 d4=30");
        Measures reference = piece("r", "mass_g=200 length=559 balance=280 m3=320 d2=18 d4=30.25")
                .measures();
        Likeness.Figure figure = LIKENESS.figure(seven, reference);
        assertThat(words.of(figure, 3))
                .isEqualTo("piece 7: its upper bead stands 1.2 mm low; its lower neck is 0.3 mm too thick; "
                        + "its check place 4 is 0.25 mm too thin");
        assertThat(figure.figure()).isCloseTo(9 + 3 + 2.5 + 1.025 + 0.75, within(1e-9));
        assertThat(words.of(LIKENESS.figure(piece("8", "d1=22"), reference), 3)).contains("nothing measured");
        assertThat(words.of(LIKENESS.figure(piece("9", "d2=18"), reference), 3)).contains("just as asked for");
    }

    @Test
    void nothing_is_said_to_be_naught_too_heavy() {
        Likeness.Part mass = new Likeness.Part("mass_g", Optional.of(Column.MASS), 0.3, 0.2);
        Likeness.Part thick = new Likeness.Part("d2", Optional.of(Column.diameter(2)), 0.3, 0.75);
        LikenessWords coarse = new LikenessWords(
                Map.of(), new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM, new WeighingScale(Mass.ofGrams(5))));
        LikenessWords fine = new LikenessWords(Map.of(), new KeyedFigure(UnitSystem.METRIC, MassUnit.GRAM));
        Likeness.Figure alone = new Likeness.Figure("7", 0.2, List.of(mass));
        assertThat(coarse.of(alone, 3)).isEqualTo("piece 7: just as asked for");
        assertThat(fine.of(alone, 3)).isEqualTo("piece 7: it is 0.3 g heavy");
        assertThat(coarse.of(new Likeness.Figure("7", 0.95, List.of(thick, mass)), 3))
                .isEqualTo("piece 7: its check place 2 is 0.3 mm too thick");
    }

    @Test
    void words_are_the_same_in_a_locale_with_a_decimal_comma() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            LikenessWords words = new LikenessWords(Map.of(), new KeyedFigure(UnitSystem.INCH, MassUnit.OUNCE));
            Measures reference = piece("r", "mass_g=200 d1=22 length=508").measures();
            Piece piece = piece("1", "mass_g=204.5 d1=22.1 length=508.396875");
            assertThat(words.of(LIKENESS.figure(piece, reference), 3))
                    .isEqualTo(
                            "piece 1: it is 1/64 in long; it is 0.16 oz heavy; its check place 1 is 0.004 in too thick");
        } finally {
            Locale.setDefault(before);
        }
    }
}
