package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** What a refused mass, a broken table and a written one say, word by word. */
class PiecesWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "~~ | the mass is empty | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "+ | the mass is empty | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "-3 g | a mass is above zero, was '-3 g' | zero the scale and weigh again",
                "−3 | a mass is above zero, was '−3' | zero the scale and weigh again",
                "0 | a mass is above zero, was '0' | leave it blank when the piece was not weighed",
                "abc | 'abc' is not a mass | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "1 2 | '1 2' is not one mass | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "1 lb 3 | '1 lb 3' is not one mass | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "1 lb 3 oz x | '1 lb 3 oz x' is not one mass | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "3 oz 1 lb | '3 oz 1 lb' is not one mass | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "3 stone | unknown unit 'stone' in '3 stone' | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "1 lb 3 st | unknown unit 'st' in '1 lb 3 st' | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "1/0 oz | '1/0 oz' holds no proper fraction | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "1 2/2 oz | '1 2/2 oz' holds no proper fraction | write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz",
                "100.001 kg | '100.001 kg' is more than 100 kg | check the unit and the decimal sign",
            })
    void a_refused_mass_says_why_and_what_to_do(String text, String what, String mend) {
        assertThat(MassText.parse(text, MassUnit.GRAM)).isEqualTo(Parsed.<Mass>refused(what, mend));
    }

    @Test
    void the_heaviest_is_taken_and_units_and_spaces_of_every_kind_are_read() {
        assertThat(MassText.parse("100 kg", MassUnit.OUNCE)).isEqualTo(Parsed.of(Mass.ofGrams(100_000)));
        assertThat(MassText.parse("2/2 oz", MassUnit.GRAM)).isEqualTo(Parsed.of(Mass.ofOunces(1)));
        assertThat(MassText.parse("182.4\u00a0g", MassUnit.GRAM)).isEqualTo(Parsed.of(Mass.ofGrams(182.4)));
        assertThat(MassText.parse("182.4\tg", MassUnit.GRAM)).isEqualTo(Parsed.of(Mass.ofGrams(182.4)));
        assertThat(MassText.tidy("+ 6½\u2009OZ ")).isEqualTo("6 1/2 oz");
        assertThat(MassText.tidy("½ oz")).isEqualTo("1/2 oz");
        assertThat(MassText.format(Mass.ofGrams(0))).isEqualTo("0");
        assertThat(MassText.format(Mass.ofGrams(1500))).isEqualTo("1500");
        assertThat(MassText.format(Mass.ofGrams(0.001))).isEqualTo("0.001");
    }

    @ParameterizedTest
    @CsvSource({
        "182.44, GRAM, 182.4 g",
        "182.46, GRAM, 182.5 g",
        "-182.46, GRAM, 182.5 g",
        "0.04, GRAM, 0 g",
        "200, GRAM, 200 g",
        "141.747615625, OUNCE, 5 oz",
        "143.165091781, OUNCE, 5.05 oz",
    })
    void masses_in_a_sentence_have_a_decimal_in_grams_and_two_in_ounces(double grams, MassUnit unit, String text) {
        KeyedFigure keyed = new KeyedFigure(UnitSystem.METRIC, unit);
        assertThat(FigureText.figure(Column.MASS, grams, keyed)).isEqualTo(text);
    }

    private static Problem problem(String text) {
        List<Problem> problems = PiecesFile.parse(text, UnitSystem.METRIC).problems();
        assertThat(problems).hasSize(1);
        return problems.get(0);
    }

    @Test
    void what_is_no_table_is_told_apart_and_where_the_table_breaks() {
        String mend = "save the sheet as CSV in UTF-8, or paste its cells";
        assertThat(problem("PK\u0003\u0004"))
                .isEqualTo(new Problem("pieces file", "this is a spreadsheet's own file, not CSV", mend));
        assertThat(problem("piece,mass_g\n1,\u0000"))
                .isEqualTo(new Problem("pieces file", "this is not a table in plain text", mend));
        assertThat(problem("piece,mass_g\n1,180\n2,\"181\n").where()).isEqualTo("line 3");
        assertThat(PiecesFile.parse("piece,mass_g\n1,180\n2,\"181\n", UnitSystem.METRIC)
                        .pieces())
                .extracting(Piece::label)
                .containsExactly("1");
        assertThat(problem("\n\npiece,mass_g\n\n1,x\n").where()).isEqualTo("line 5, column mass_g");
        assertThat(PiecesFile.parse("piece,mass_g\u0085", UnitSystem.METRIC).problems())
                .as("a line end of old machines is no rubbish")
                .noneMatch(each -> each.what().contains("plain text"));
    }

    @Test
    void lines_of_too_few_and_too_many_cells_are_told_by_their_number() {
        assertThat(problem("piece,mass_g,d1\n1\n"))
                .isEqualTo(new Problem(
                        "line 2", "1 cell where the header has 3", "leave a blank cell for what was not measured"));
        assertThat(problem("piece;mass_g\n1;2;3\n").mend()).isEqualTo("leave a blank cell for what was not measured");
        assertThat(problem("piece,mass_g\n1,2,3\n").mend()).startsWith("a decimal comma cannot be told");
        assertThat(problem("piece,mass_g\n,180\n"))
                .isEqualTo(new Problem(
                        "line 2, column piece", "the piece has no label", "give each piece a short label of its own"));
        assertThat(problem("piece,mass_g\n" + "x".repeat(Piece.LONGEST_LABEL + 1) + ",180\n")
                        .what())
                .isEqualTo("the label has more than %d letters".formatted(Piece.LONGEST_LABEL));
        assertThat(PiecesFile.parse("piece,mass_g\n" + "x".repeat(Piece.LONGEST_LABEL) + ",180\n", UnitSystem.METRIC)
                        .problems())
                .isEmpty();
        assertThat(problem("piece,mass_g\n\"a\nb\",180\n").what()).isEqualTo("the label holds what is not a letter");
        assertThat(problem("piece,mass_g\n\ufffd,180\n").what()).isEqualTo("the label holds what is not a letter");
    }

    @Test
    void ten_thousand_pieces_are_read() {
        StringBuilder text = new StringBuilder("piece,mass_g\n");
        for (int i = 0; i < PiecesFile.MOST_PIECES; i++) {
            text.append(i).append(",1\n");
        }
        PiecesFile.Read read = PiecesFile.parse(text.toString(), UnitSystem.METRIC);
        assertThat(read.problems()).isEmpty();
        assertThat(read.pieces()).hasSize(PiecesFile.MOST_PIECES);
    }

    @Test
    void a_header_in_doubt_is_told_on_its_line_with_its_question() {
        PiecesFile.Read read = PiecesFile.parse("\npiece,mass_g,wt,dia 2\n1,180,1,2\n", UnitSystem.METRIC);
        assertThat(read.slips())
                .containsExactly(
                        Slip.ofHeader("line 2, column wt", true), Slip.ofHeader("line 2, column dia 2", false));
        assertThat(read.slips().get(0).question()).startsWith("is this the mass?");
        assertThat(read.slips().get(1).question()).startsWith("is this a measure?");
        assertThat(read.massUnit()).isEqualTo(MassUnit.GRAM);
        assertThat(PiecesFile.parse("name,x\n1,2\n", UnitSystem.METRIC).problems())
                .as("no header at all: one line says it")
                .hasSize(1);
        assertThat(PiecesFile.parse("d1,x\n1,2\n", UnitSystem.METRIC).problems())
                .extracting(Problem::what)
                .containsExactly("the header has no column 'piece'", "the header has no column of masses");
        assertThat(PiecesFile.parse("piece,mass_oz\n1,6\n", UnitSystem.METRIC)
                        .pieces()
                        .get(0)
                        .mass())
                .contains(Mass.ofOunces(6));
    }

    @Test
    void a_table_is_written_with_the_mass_first_whatever_was_measured_and_blanks_for_the_rest() {
        Piece one = new Piece(
                "1", Measures.ofMass(Mass.ofGrams(182.4)).with(Column.diameter(1), Length.ofMm(22.5)), Map.of());
        Piece two = new Piece("2", Measures.NONE.with(Column.LENGTH, Length.ofMm(508)), Map.of("note", "a,b"));
        assertThat(PiecesFile.format(List.of(one, two), UnitSystem.METRIC).lines())
                .containsExactly("piece,mass_g,length,d1,note", "1,182.4,,22.5,", "2,,508,,\"a,b\"");
        assertThat(PiecesFile.format(List.of(two), UnitSystem.INCH).lines())
                .containsExactly("piece,mass_g,length,note", "2,,20,\"a,b\"");
    }
}
