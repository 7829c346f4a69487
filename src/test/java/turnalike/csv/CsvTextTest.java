package turnalike.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class CsvTextTest {
    private static final String LETTERS = "'=+-@ \t\rx,\"";

    @Test
    void cells_of_any_letters_are_read_back() {
        Seeds.each(2000, random -> {
            StringBuilder cell = new StringBuilder();
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                cell.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            String written = PlainCell.write(cell.toString());
            assertThat(PlainCell.read(written)).isEqualTo(cell.toString());
            assertThat(written.charAt(0)).isNotIn('=', '+', '-', '@', '\t', '\r');
        });
    }

    /** Blanks round a cell go, as a spreadsheet's do; nothing else does. */
    @Test
    void a_line_written_is_the_line_read() {
        Seeds.each(300, random -> {
            List<String> cells = new ArrayList<>(List.of("piece"));
            for (int i = 1 + random.nextInt(5); i > 0; i--) {
                StringBuilder cell = new StringBuilder("y");
                for (int k = random.nextInt(4); k > 0; k--) {
                    cell.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
                }
                cells.add(cell.append('z').toString());
            }
            CsvText read = CsvText.of("piece\n" + CsvText.row(cells), "piece");
            assertThat(read.broken()).isEmpty();
            assertThat(read.lines()).hasSize(2);
            assertThat(read.lines().get(1).cells()).isEqualTo(cells);
        });
    }

    @Test
    void the_separator_is_the_one_that_parts_the_first_column_from_the_rest() {
        for (char each : new char[] {',', ';', '\t'}) {
            CsvText read = CsvText.of("\ufeffX%cdiameter\n1%c\"2%c5\"\n".formatted(each, each, each), "x");
            assertThat(read.separator()).isEqualTo(each);
            assertThat(read.column("x")).isZero();
            assertThat(read.column("Diameter")).isEqualTo(1);
            assertThat(read.column("side")).isEqualTo(-1);
            assertThat(read.lines().get(1).number()).isEqualTo(2);
            assertThat(read.lines().get(1).cell(1)).isEqualTo("2" + each + "5");
            assertThat(read.lines().get(1).cell(-1)).isEmpty();
            assertThat(read.lines().get(1).cell(2)).isEmpty();
        }
        assertThat(CsvText.of("", "x").column("x")).isEqualTo(-1);
    }
}
