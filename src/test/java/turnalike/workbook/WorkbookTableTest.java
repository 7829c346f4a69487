package turnalike.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

class WorkbookTableTest {
    private static final String HEADER = "<row r='1'>" + text("A1", "piece") + text("B1", "mass_g") + "</row>";

    private static String text(String at, String text) {
        return "<c r='%s' t='inlineStr'><is><t>%s</t></is></c>".formatted(at, text);
    }

    private static List<String> lines(String rows) {
        WorkbookTable.Read read = WorkbookTable.read(Workbooks.of(rows), "x.xlsx");
        assertThat(read.problems()).isEmpty();
        return read.text().lines().toList();
    }

    private static Problem refused(byte[] bytes) {
        WorkbookTable.Read read = WorkbookTable.read(bytes, "x.xlsx");
        assertThat(read.text()).isEmpty();
        assertThat(read.problems()).isNotEmpty();
        return read.problems().get(0);
    }

    @Test
    void pieces_written_as_a_workbook_are_the_same_pieces_when_read() {
        Seeds.each(20, random -> {
            UnitSystem units = random.nextBoolean() ? UnitSystem.INCH : UnitSystem.METRIC;
            List<Piece> pieces = List.of(
                    piece(
                            "007",
                            random.nextInt(9000) / 10.0,
                            random.nextDouble() * 500,
                            Map.of("note", "=HYPERLINK(1)")),
                    piece("=1+1", random.nextDouble() * 900, 381, Map.of("note", "'=x", "when", "2026-11-29")),
                    piece("ä \"b\", c; d", 1e-3, 15.07 * 25.4, Map.of("note", "-5", "code", "0012")));
            String table = PiecesFile.format(pieces, units);
            byte[] workbook = WorkbookFile.of("Pieces", table, PiecesFile::isFigure);
            WorkbookTable.Read read = WorkbookTable.read(workbook, "pieces.xlsx");
            assertThat(read.problems()).isEmpty();
            PiecesFile.Read again = PiecesFile.parse(read.text(), units);
            assertThat(again.problems()).isEmpty();
            assertThat(again.pieces()).isEqualTo(PiecesFile.parse(table, units).pieces());
        });
    }

    private static Piece piece(String label, double grams, double lengthMm, Map<String, String> extra) {
        Measures measures = Measures.ofMass(Mass.ofGrams(grams)).with(Column.LENGTH, Length.ofMm(lengthMm));
        return new Piece(label, measures, extra);
    }

    @Test
    void a_line_of_the_text_is_a_row_of_the_sheet() {
        String rows = "<row r='3'>" + text("B3", "piece") + text("C3", "mass_g") + "</row><row r='5'>" + text("B5", "a")
                + "<c r='C5'><v>213.5</v></c></row><row r='6'><c r='B6' s='2'/></row>";
        assertThat(lines(rows)).containsExactly("", "", ",\"piece\",\"mass_g\"", "", ",\"a\",\"213.5\"", "");
    }

    @Test
    void figures_stand_in_few_digits_and_dates_as_dates() {
        String rows = HEADER
                + "<row r='2'><c r='A2'><v>7</v></c><c r='B2' s='2'><v>1.4999999999999999E-2</v></c></row>"
                + "<row r='3'><c r='A3' s='1'><v>45993</v></c><c r='B3'><v>1E21</v></c></row>"
                + "<row r='4'><c r='A4' s='3'><v>0.4375</v></c><c r='B4' t='b'><v>1</v></c></row>";
        assertThat(lines(rows).subList(1, 4))
                .containsExactly("\"7\",\"0.015\"", "\"2025-12-02\",\"1000000000000000000000\"", "\"10:30\",\"TRUE\"");
    }

    @Test
    void a_formula_gives_the_result_that_was_kept() {
        String rows = HEADER + "<row r='2'><c r='A2' t='str'><f>\"a\"&amp;1</f><v>a1</v></c>"
                + "<c r='B2'><f>200+13.5</f><v>213.5</v></c></row>";
        assertThat(lines(rows).get(1)).isEqualTo("\"a1\",\"213.5\"");
    }

    @Test
    void a_cell_that_cannot_be_read_is_named_with_its_sheet() {
        String rows = HEADER + "<row r='2'>" + text("A2", "a") + "<c r='B2'><f>200+13.5</f></c></row>"
                + "<row r='3'>" + text("A3", "b") + "<c r='B3' t='e'><f>1/0</f><v>#DIV/0!</v></c></row>"
                + "<row r='4'>" + text("A4", "c") + "<c r='B4'><v>wide</v></c></row>";
        WorkbookTable.Read read = WorkbookTable.read(Workbooks.of(rows), "x.xlsx");
        assertThat(read.problems().stream().map(Problem::line))
                .satisfiesExactly(
                        first -> assertThat(first).contains("sheet 'Weighed', cell B2", "formula without its result"),
                        second -> assertThat(second).contains("cell B3", "#DIV/0!"),
                        third -> assertThat(third).contains("cell B4"));
    }

    @Test
    void a_cell_of_several_lines_is_one_line() {
        assertThat(lines("<row r='1'>" + text("A1", "mass\n g\tnet") + "</row>"))
                .containsExactly("\"mass g net\"");
    }

    @Test
    void what_grows_without_end_is_refused_before_it_is_read() {
        byte[] bomb = Workbooks.around(HEADER)
                .part("xl/media/a.bin", new byte[60 << 20])
                .bytes();
        assertThat(bomb.length).isLessThan(1 << 20);
        assertThat(refused(bomb).what()).contains("unpacks to more than 48 MiB");
    }

    @Test
    void what_no_spreadsheet_writes_is_refused() {
        Workbooks entity = Workbooks.empty()
                .part(
                        "xl/workbook.xml",
                        "<?xml version='1.0'?><!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/passwd'>]><a>&b;</a>");
        assertThat(refused(entity.bytes()).what()).contains("no spreadsheet wrote");
        assertThat(refused(Workbooks.of("<row r='1'>" + text("ZZZZZZ1", "x") + "</row>"))
                        .what())
                .contains("no spreadsheet wrote");
        assertThat(refused(Workbooks.of("<row r='1'>" + text("XFD1", "x") + "</row>"))
                        .line())
                .contains("cell XFD1", "256 columns");
        assertThat(refused(Workbooks.of(HEADER + "<row r='1048576'>" + text("A1048576", "x") + "</row>"))
                        .line())
                .contains("row 1048576", "20000");
        assertThat(refused(Workbooks.of("<row r='1'>" + text("A1", "x".repeat(6000)) + "</row>"))
                        .line())
                .contains("cell A1", "5000 letters");
    }

    @Test
    void what_is_no_workbook_is_named() {
        assertThat(refused(Workbooks.empty().part("content.xml", "<a/>").bytes())
                        .what())
                .isEqualTo("is a zip file, no workbook");
        byte[] whole = Workbooks.of(HEADER);
        for (int cut = 4; cut < whole.length; cut += 97) {
            assertThat(refused(Arrays.copyOf(whole, cut)).line()).contains("x.xlsx");
        }
        assertThat(refused(Workbooks.of("<row r='1'><c r='A1'")).line()).contains("damaged");
    }

    @Test
    void a_sheet_without_a_cell_is_an_empty_table() {
        assertThat(lines("")).isEmpty();
    }
}
