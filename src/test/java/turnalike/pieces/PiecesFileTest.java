package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.Seeds;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

class PiecesFileTest {
    private static List<Piece> read(String text, UnitSystem units) {
        PiecesFile.Read read = PiecesFile.parse(text, units);
        assertThat(read.problems()).isEmpty();
        return read.pieces();
    }

    private static List<Piece> read(String text) {
        return read(text, UnitSystem.METRIC);
    }

    private static List<String> problems(String text) {
        return PiecesFile.parse(text, UnitSystem.METRIC).problems().stream()
                .map(Problem::line)
                .toList();
    }

    @Test
    void columns_are_found_by_name_in_any_order() {
        Piece piece = read("d2,balance,mass_g,piece,length,d1\n21,280,182.4,7,559,22.5\n")
                .get(0);
        assertThat(piece.label()).isEqualTo("7");
        assertThat(piece.mass()).contains(Mass.ofGrams(182.4));
        assertThat(piece.length()).contains(Length.ofMm(559));
        assertThat(piece.balance()).contains(Length.ofMm(280));
        assertThat(piece.diameters()).containsExactly(Map.entry(1, Length.ofMm(22.5)), Map.entry(2, Length.ofMm(21)));
    }

    @Test
    void blank_cells_are_not_measured_and_blank_lines_are_skipped() {
        List<Piece> pieces = read("piece,mass_g,d1\n\n1,,\n,,\n2, ,22\n\n");
        assertThat(pieces).extracting(Piece::label).containsExactly("1", "2");
        assertThat(pieces.get(0).measures()).isEqualTo(Measures.NONE);
        assertThat(pieces.get(1).mass()).isEmpty();
    }

    @Test
    void extra_columns_are_kept() {
        Piece piece =
                read("piece,note,mass_g,wood\n1,\"a knot, small\",182,cherry\n").get(0);
        assertThat(piece.extra()).containsExactly(Map.entry("note", "a knot, small"), Map.entry("wood", "cherry"));
    }

    @Test
    void ounces_and_inches_carry_fractions() {
        PiecesFile.Read read = PiecesFile.parse(
                "piece,mass_oz,length,d1\n1,6 1/2,22,\"7/8\"\"\"\n2,6.25 oz,1' 10\",22 mm\n", UnitSystem.INCH);
        assertThat(read.problems()).isEmpty();
        assertThat(read.massUnit()).isEqualTo(MassUnit.OUNCE);
        assertThat(read.pieces().get(0).mass().orElseThrow().grams()).isCloseTo(6.5 * 28.349523125, within(1e-9));
        assertThat(read.pieces().get(0).measures().figures().get(Column.diameter(1)))
                .isCloseTo(22.225, within(1e-9));
        assertThat(read.pieces().get(1).length().orElseThrow().mm()).isCloseTo(558.8, within(1e-9));
        assertThat(read.pieces().get(1).diameters()).containsEntry(1, Length.ofMm(22));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "piece;mass_g;d1\n1;182,4;22,5\n",
                "piece\tmass_g\td1\r\n1\t182,4\t22,5\r\n",
                "\ufeffpiece,mass_g,d1\r\n1,182.4,22.5",
                "\"piece\",\"mass_g\",\"d1\"\r\"1\",\"182,4\",\"22,5\"\r",
                "PIECE , Mass_G , D1\n 1 , 182.4 , 22.5 \n",
                "mass_g;d1;piece\n182,4;22,5 mm;1\n",
            })
    void pastes_and_files_of_every_kind_read_alike(String text) {
        assertThat(read(text))
                .containsExactly(Piece.of(
                        "1", Measures.ofMass(Mass.ofGrams(182.4)).with(Column.diameter(1), Length.ofMm(22.5))));
    }

    @Test
    void decimal_commas_between_commas_are_refused_with_a_mend() {
        assertThat(problems("piece,mass_g,d1\n1,182,4,22,5\n"))
                .containsExactly(
                        "line 2: 5 cells where the header has 3; a decimal comma cannot be told from a separator here: "
                                + "write decimal points, or put semicolons between the cells");
    }

    @Test
    void a_trailing_blank_cell_does_not_hide_a_decimal_comma() {
        assertThat(problems("piece,mass_g,d1\n1,182,4,\n")).hasSize(1);
        assertThat(read("piece,mass_g,d1,\n1,182,4,\n")).hasSize(1);
    }

    @Test
    void every_problem_is_found_in_order_with_its_line() {
        String text = "piece,mass_g,length,d1\n1,0,559,22\n1,-3,x,\n,NaN,0,1/0\n4,182\n5,200000,30000,22\n";
        assertThat(problems(text).stream().map(line -> line.substring(0, line.indexOf(':'))))
                .containsExactly(
                        "line 2, column mass_g",
                        "line 3, column piece",
                        "line 3, column mass_g",
                        "line 3, column length",
                        "line 4, column piece",
                        "line 4, column mass_g",
                        "line 4, column length",
                        "line 4, column d1",
                        "line 5",
                        "line 6, column mass_g",
                        "line 6, column length");
    }

    @Test
    void a_duplicate_label_names_both_lines() {
        assertThat(problems("piece,mass_g\n\"7\",1\n 7 ,2\n").get(0))
                .contains("line 3", "piece '7' is already on line 2");
    }

    @Test
    void lines_are_counted_through_quoted_line_ends() {
        assertThat(problems("piece,mass_g,note\n1,1,\"two\nlines\"\n\n2,x,\n").get(0))
                .startsWith("line 5, column mass_g");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "label,x\\n1,1\\n | the header has no column 'piece'",
                "1,182\\n2,183\\n | the header has no column 'piece'",
                "piece,length\\n1,1\\n | no column of masses",
                "piece,mass_g,mass_oz\\n1,1,1\\n | in grams and in ounces",
                "piece,mass_g,d1,D1\\n1,1,1,1\\n | two columns bear this name",
                "piece,mass_g,note,note\\n1,1,1,1\\n | two columns bear this name",
                "piece,mass_g\\n | no piece",
                "piece,mass_g,\\n1,1,x\\n | under no column name",
                "piece,mass_g\\n1,\"182\\n2,183\\n | quotation mark",
                "piece,mass_g\\n1,\"182\"x\\n | quotation mark",
            })
    void broken_tables_are_refused(String text, String what) {
        assertThat(problems(text.replace("\\n", "\n")))
                .hasSize(1)
                .first()
                .asString()
                .contains(what);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\n", "\ufeff", ",,,\n"})
    void an_empty_file_is_refused(String text) {
        assertThat(problems(text)).hasSize(1).first().asString().contains("empty");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"PK\u0003\u0004\u0000\u0000", "p\u0000i\u0000e\u0000c\u0000e\u0000", "\u0089PNG\r\n\u001a\n"})
    void what_is_no_text_is_refused_in_one_line(String text) {
        assertThat(problems(text)).hasSize(1).first().asString().contains("CSV");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Total", "SUM:", "average", "Grand total", "Mean mass", "Σ"})
    void a_row_that_sums_up_is_named_with_its_line(String label) {
        assertThat(problems("piece,mass_g\n1,182\n2,180\n" + label + ",362\n"))
                .containsExactly(
                        "line 4: '%s' sums the pieces up and is none; take the line out of the table".formatted(label));
    }

    @Test
    void a_header_that_stands_again_in_the_middle_is_named_with_its_line() {
        assertThat(problems("piece,mass_g\n1,182\nPiece,Mass_g\n2,180\n"))
                .containsExactly("line 3: the header stands here again; take the line out of the table");
    }

    @ParameterizedTest
    @ValueSource(strings = {"182.4,1\n180.1,2\n182.4,3\n", "182,3\n180,2\n181,1\n"})
    void labels_and_masses_under_each_others_names_are_told(String lines) {
        assertThat(problems("piece,mass_g\n" + lines))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("line 1, columns piece and mass_g: they seem to have changed places");
    }

    /** Light pieces numbered from 101 with masses that are no count, and labels that are names, are what they say. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "101,12\n102,15\n103,11\n",
                "1,182\n2,180\n3,181\n",
                "a,1\nb,2\nc,3\n",
                "sum of all,1\n2,2\n3,3\n"
            })
    void honest_pieces_are_not_taken_for_them(String lines) {
        assertThat(problems("piece,mass_g\n" + lines)).isEmpty();
    }

    @Test
    void no_rubbish_is_thrown_at() {
        Seeds.each(500, random -> {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "piece,mass_g,d1\n" : "");
            String letters = "0123456789.,;\t\"'\n\r -/½pd\u0000\ufffdé";
            for (int i = random.nextInt(60); i > 0; i--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            PiecesFile.Read read = PiecesFile.parse(text.toString(), UnitSystem.INCH);
            assertThat(read.pieces().isEmpty() && read.problems().isEmpty()).isFalse();
        });
    }

    @Test
    void too_many_pieces_are_another_table() {
        StringBuilder text = new StringBuilder("piece,mass_g\n");
        for (int i = 0; i <= PiecesFile.MOST_PIECES; i++) {
            text.append(i).append(",1\n");
        }
        assertThat(problems(text.toString())).hasSize(1).first().asString().contains("10001 pieces");
    }

    @Test
    void a_chart_of_a_diameter_needs_no_mass() {
        PiecesFile.Read read = PiecesFile.parseWithoutMass("piece,d1\n1,22\n", UnitSystem.METRIC);
        assertThat(read.problems()).isEmpty();
        assertThat(read.pieces()).hasSize(1);
    }

    @Test
    void a_header_that_nearly_names_a_column_is_asked_about() {
        PiecesFile.Read read = PiecesFile.parse("piece,mass_g,Weight,d 1,note\n1,182,182,22,\n", UnitSystem.METRIC);
        assertThat(read.problems()).isEmpty();
        assertThat(read.slips()).extracting(Slip::where).containsExactly("line 1, column Weight", "line 1, column d 1");
    }

    @Test
    void format_is_the_inverse_of_parse() {
        for (UnitSystem units : UnitSystem.values()) {
            Seeds.each(200, random -> {
                List<Piece> pieces = new ArrayList<>();
                for (int i = 0; i < 1 + random.nextInt(5); i++) {
                    pieces.add(piece(random, "p" + i));
                }
                PiecesFile.Read read = PiecesFile.parse(PiecesFile.format(pieces, units), units);
                assertThat(read.problems()).isEmpty();
                // A length is written in 15 decimals at most: 3/64 in, as a double 1.1906249999999998 mm, is read
                // back as 1.190625.
                assertThat(read.pieces())
                        .usingRecursiveComparison()
                        .withEqualsForType((a, b) -> Math.abs(a - b) <= 5e-16, Double.class)
                        .isEqualTo(pieces);
            });
        }
    }

    /** A spreadsheet that opens the file finds no formula in it; read again it is the same to the letter. */
    @ParameterizedTest
    @ValueSource(
            strings = {"=HYPERLINK(\"http://a/?\"&B2)", "+1", "-3", "@SUM(A1)", "'=1", "''-", "' =1", "\uff1d1+1", "'"})
    void what_a_spreadsheet_would_take_for_a_formula_is_written_as_text_and_read_back(String cell) {
        Map<String, String> extra = new LinkedHashMap<>();
        extra.put("note", cell);
        extra.put(cell + " note", "plain");
        extra.put("inner", "a " + cell);
        List<Piece> pieces = List.of(new Piece(cell, Measures.ofMass(Mass.ofGrams(182)), extra));
        String text = PiecesFile.format(pieces, UnitSystem.METRIC);
        assertThat(read(text)).isEqualTo(pieces);
        assertThat(CSV_CELL.matcher(text).results())
                .allSatisfy(each -> assertThat(each.group(1)).doesNotContainPattern("^\"?\\s*[=+\\-@\uff1d]"));
    }

    private static final Pattern CSV_CELL = Pattern.compile("(?:^|,|\r\n)(\"(?:[^\"]|\"\")*\"|[^,\r\n]*)");

    @Test
    void lengths_are_written_as_they_were_entered() {
        for (String entered : List.of("15.07", "14.984375", "0.7", "22.3", "1.1", "99.99")) {
            Length length = Length.parse(entered, UnitSystem.INCH).get();
            Piece piece = Piece.of("1", Measures.NONE.with(Column.LENGTH, length));
            assertThat(PiecesFile.format(List.of(piece), UnitSystem.INCH)).contains("1,," + entered + "\r\n");
        }
        Length inMm = Length.parse("38.15 mm", UnitSystem.INCH).get();
        Piece piece = Piece.of("1", Measures.NONE.with(Column.LENGTH, inMm));
        assertThat(PiecesFile.format(List.of(piece), UnitSystem.METRIC)).contains("1,,38.15\r\n");
    }

    private static Piece piece(Random random, String label) {
        Measures measures = Measures.NONE;
        for (Column column :
                List.of(Column.LENGTH, Column.BALANCE, Column.mark(3), Column.diameter(1), Column.diameter(12))) {
            if (random.nextBoolean()) {
                measures = measures.with(
                        column,
                        random.nextBoolean()
                                ? Length.ofMm((1 + random.nextInt(90_000)) / 100.0)
                                : Length.ofInches((1 + random.nextInt(2_000)) / 64.0));
            }
        }
        if (random.nextBoolean()) {
            measures = measures.with(
                    random.nextBoolean()
                            ? Mass.ofGrams(random.nextDouble() + 1)
                            : Mass.ofOunces(1 + random.nextInt(99) / 16.0));
        }
        Map<String, String> extra = new LinkedHashMap<>();
        if (random.nextBoolean()) {
            extra.put(
                    "note",
                    List.of("a,b", "\"q\"", "two\nlines", " spaced ", "7/8\"", "é; \t")
                            .get(random.nextInt(6)));
        }
        return new Piece(label + List.of("", " b", ",", "\"", "=1").get(random.nextInt(5)), measures, extra);
    }

    @Test
    void two_pieces_of_one_label_are_not_written() {
        List<Piece> twins = List.of(Piece.of("1", Measures.NONE), Piece.of("1", Measures.NONE));
        assertThatThrownBy(() -> PiecesFile.format(twins, UnitSystem.METRIC))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void an_instrument_s_line_is_entered_and_a_blank_takes_it_out() {
        KeyedFigure keyed = new KeyedFigure(UnitSystem.INCH, MassUnit.OUNCE);
        Measures weighed =
                keyed.enter(Measures.NONE, Column.MASS, "+  182.4 g\r\n").get();
        assertThat(weighed.mass()).contains(Mass.ofGrams(182.4));
        Measures both = keyed.enter(weighed, Column.diameter(1), "+0.875\n").get();
        assertThat(both.figures().get(Column.diameter(1))).isCloseTo(22.225, within(1e-9));
        assertThat(keyed.enter(both, Column.MASS, " ").get().figures()).containsOnlyKeys(Column.diameter(1));
        assertThat(keyed.enter(both, Column.diameter(1), "0").isValue()).isFalse();
        assertThat(keyed.enter(both, Column.MASS, "OL").isValue()).isFalse();
    }

    @Test
    void a_piece_that_cannot_be_cannot_be_made() {
        assertThatThrownBy(() -> Piece.of(" 1", Measures.NONE)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Piece("1", Measures.NONE, Map.of("D1", "3")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Measures.ofMass(Mass.ofGrams(0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Column.diameter(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
