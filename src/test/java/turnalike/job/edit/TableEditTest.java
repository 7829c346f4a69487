package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.job.kept.JobText;
import turnalike.units.UnitSystem;

/** Rows of the shop's tables added, changed, taken out and pasted. */
class TableEditTest {
    private static final Map<String, String> BOARD =
            Map.of("board", "A", "thickness", "2", "width", "8 1/2", "length", "8 ft", "price", "€ 18.50");

    private static JobText done(JobText text, ShopTable table, TableEdit.Deed deed) {
        JobText.Read read = new TableEdit(table, deed).on(text);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    private static JobText withBoard() {
        return done(NewJob.in(UnitSystem.INCH), ShopTable.BOARDS, new TableEdit.Add(List.of(BOARD)));
    }

    @Test
    void a_board_is_kept_as_typed_and_read_in_the_jobs_units() {
        JobText text = withBoard();
        assertThat(text.text()).contains("\"width\": \"8 1/2\"", "\"price\": 18.50");
        assertThat(text.job().shop().boards()).singleElement().satisfies(board -> {
            assertThat(board.width().mm()).isCloseTo(215.9, within(1e-9));
            assertThat(board.price().orElseThrow()).isEqualByComparingTo("18.5");
        });
        JobText metric = new UnitsChange(UnitSystem.METRIC).on(text).text().orElseThrow();
        assertThat(metric.job().shop())
                .as("the same boards in other units")
                .isEqualTo(text.job().shop());
    }

    @Test
    void weights_and_times_are_read_as_people_write_them() {
        JobText text = done(
                NewJob.in(UnitSystem.METRIC),
                ShopTable.BLANKS,
                new TableEdit.Add(List.of(Map.of("blank", "1", "mass_g", "18 oz", "lost", "x"))));
        assertThat(text.job().shop().blanks()).singleElement().satisfies(blank -> {
            assertThat(blank.mass().grams()).isCloseTo(510.291, within(1e-3));
            assertThat(blank.lost()).isTrue();
        });
        text = done(text, ShopTable.TIMES, new TableEdit.Add(List.of(Map.of("stage", "milling", "minutes", "1:20"))));
        assertThat(text.job().shop().times().getOrDefault("milling", List.of()))
                .extracting(timing -> timing.minutes())
                .containsExactly(80.0);
    }

    @Test
    void a_row_is_changed_and_taken_out_and_an_empty_table_leaves_no_key() {
        JobText text = withBoard();
        ShopTable.Row row = ShopTable.BOARDS.rows(text).get(0);
        TableEdit.Seen seen = new TableEdit.Seen(row.number(), row.text());
        JobText wider = done(text, ShopTable.BOARDS, new TableEdit.Put(seen, Map.of("width", "9", "price", "")));
        assertThat(ShopTable.BOARDS.rows(wider).get(0).cells())
                .containsEntry("width", "9")
                .containsEntry("length", "8 ft")
                .doesNotContainKey("price");
        assertThat(done(text, ShopTable.BOARDS, new TableEdit.Remove(seen)).text())
                .doesNotContain("\"boards\"");
        assertThat(done(text, ShopTable.BOARDS, new TableEdit.Clear()).text()).doesNotContain("\"boards\"");
        assertThat(new TableEdit(ShopTable.BOARDS, new TableEdit.Remove(seen)).what(text))
                .isEqualTo("take out board A");
    }

    @Test
    void a_row_somebody_else_changed_is_not_typed_over() {
        TableEdit.Put put = new TableEdit.Put(new TableEdit.Seen(1, "{\"board\":\"A\"}"), Map.of("width", "9"));
        JobText.Read read = new TableEdit(ShopTable.BOARDS, put).on(withBoard());
        assertThat(read.text()).isEmpty();
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("boards 1");
            assertThat(problem.what()).isEqualTo("was changed meanwhile");
        });
    }

    @Test
    void a_row_that_moved_up_is_known_again() {
        JobText text = done(
                withBoard(),
                ShopTable.BOARDS,
                new TableEdit.Add(List.of(Map.of("board", "B", "thickness", "1", "width", "6", "length", "60"))));
        ShopTable.Row second = ShopTable.BOARDS.rows(text).get(1);
        ShopTable.Row first = ShopTable.BOARDS.rows(text).get(0);
        JobText left = done(text, ShopTable.BOARDS, new TableEdit.Remove(new TableEdit.Seen(1, first.text())));
        JobText changed = done(
                left, ShopTable.BOARDS, new TableEdit.Put(new TableEdit.Seen(2, second.text()), Map.of("width", "7")));
        assertThat(ShopTable.BOARDS.rows(changed)).singleElement().satisfies(row -> assertThat(row.cell("width"))
                .isEqualTo("7"));
    }

    @Test
    void what_cannot_be_is_told_at_its_cell() {
        JobText.Read read = new TableEdit(
                        ShopTable.BOARDS,
                        new TableEdit.Add(
                                List.of(Map.of("board", "A", "thickness", "-2", "width", "9", "length", "80"))))
                .on(NewJob.in(UnitSystem.INCH));
        assertThat(read.problems()).extracting(problem -> problem.where()).containsExactly("boards 1: thickness");
    }

    @Test
    void a_paste_is_read_under_the_headings_people_write_with_units_in_the_heading_or_the_cell() {
        PastedTable pasted = PastedTable.of(
                ShopTable.BOARDS,
                "No\tLength (ft)\tWidth, mm\tThickness\tQty\tCost ($)\tShelf\nA1\t8\t210\t2 1/4 in\t2\t18.50\tleft\nA2\t96 in\t8"
                        + " 1/2 in\t50 mm\t\t\t\n");
        assertThat(pasted.problems()).isEmpty();
        assertThat(pasted.rows().get(0))
                .isEqualTo(Map.of(
                        "board",
                        "A1",
                        "length",
                        "8 ft",
                        "width",
                        "210 mm",
                        "thickness",
                        "2 1/4 in",
                        "count",
                        "2",
                        "price",
                        "18.50"));
        JobText text = done(NewJob.in(UnitSystem.INCH), ShopTable.BOARDS, new TableEdit.Add(pasted.rows()));
        assertThat(text.job().shop().boards()).hasSize(2);
        assertThat(text.job().shop().boards().get(1).thickness().mm()).isEqualTo(50);
    }

    @Test
    void a_paste_that_cannot_be_read_says_where_and_how_to_mend_it() {
        assertThat(PastedTable.of(ShopTable.BOARDS, "Length;Width\n8;9\n").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.line())
                        .isEqualTo("cells, line 1: no heading is 'board'; name the columns in the first line: board,"
                                + " thickness, width, length, count, price"));
        assertThat(PastedTable.of(ShopTable.BLANKS, "Blank,Weight,Weight (oz)\n1,2,3\n")
                        .problems())
                .extracting(problem -> problem.where())
                .containsExactly("line 1, column mass_g");
        assertThat(PastedTable.of(ShopTable.BLANKS, "Blank,Weight\n").problems())
                .hasSize(1);
        assertThat(PastedTable.of(ShopTable.BLANKS, "  \n").problems()).hasSize(1);
        assertThat(PastedTable.of(ShopTable.BLANKS, "Blank,Weight\n1,512,5\n").problems())
                .extracting(problem -> problem.where())
                .containsExactly("line 2");
    }
}
