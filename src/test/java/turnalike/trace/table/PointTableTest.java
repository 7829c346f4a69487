package turnalike.trace.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.trace.Original;
import turnalike.trace.Profile.Station;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

class PointTableTest {
    private static PointTable.Read read(String text) {
        return PointTable.read(text, UnitSystem.METRIC, Length.ofMm(0.2));
    }

    private static List<String> lines(PointTable.Read read) {
        return read.problems().stream().map(Problem::line).toList();
    }

    @Test
    void places_count_from_the_first_and_radii_are_half_of_what_was_measured() {
        Original original = read("x,diameter\n10,20\n20,22\n30,24\n30,30\n40,31\n")
                .original()
                .orElseThrow();
        assertThat(original.profile().length()).isEqualTo(Length.ofMm(30));
        assertThat(original.profile().stations())
                .extracting(Station::place, Station::radius)
                .contains(tuple(Length.ofMm(20), Length.ofMm(12)))
                .contains(tuple(Length.ofMm(20), Length.ofMm(15)));
        assertThat(original.profile().stations().get(0).uncertainty()).isEqualTo(Length.ofMm(0.1));
        assertThat(read("x,diameter\n10,20\n20,22\n30,24\n30,30\n40,31\n").notes())
                .anyMatch(note -> note.contains("10 mm (25/64 in), is taken as the start end"));
    }

    @Test
    void semicolons_decimal_commas_a_byte_order_mark_and_fractions_are_read() {
        Original comma = read("\ufeffx;diameter\r\n0;20,5\r\n1,5;21\r\n10;2 1/8 in\r\n20;21\r\n30;22\r\n")
                .original()
                .orElseThrow();
        assertThat(comma.profile().stations().get(0).radius()).isEqualTo(Length.ofMm(10.25));
        assertThat(comma.profile().stations().get(1).place()).isEqualTo(Length.ofMm(1.5));
        assertThat(comma.profile().stations().get(2).radius()).isEqualTo(Length.ofInches(2.125 / 2));
        Original inches = PointTable.read(
                        "x,diameter\n0,1\n2 13/16,1 1/2\n4,1\n5,1\n6,1\n", UnitSystem.INCH, Length.ofMm(0.2))
                .original()
                .orElseThrow();
        assertThat(inches.profile().stations().get(1).place()).isEqualTo(Length.ofInches(2.8125));
    }

    @Test
    void unsorted_rows_are_sorted_and_said() {
        PointTable.Read read = read("x,diameter\n0,20\n30,24\n20,22\n40,31\n50,30\n");
        assertThat(read.original().orElseThrow().profile().stations().get(1).radius())
                .isEqualTo(Length.ofMm(11));
        assertThat(read.notes()).anyMatch(note -> note.contains("were sorted"));
    }

    @Test
    void a_table_that_runs_backwards_keeps_its_shoulders() {
        PointTable.Read read = read("x,diameter\n50,30\n30,30\n30,20\n10,20\n0,20\n");
        List<Station> stations = read.original().orElseThrow().profile().stations();
        assertThat(stations).extracting(each -> each.radius().mm()).containsExactly(10.0, 10.0, 10.0, 15.0, 15.0);
    }

    @Test
    void flats_are_a_square_from_shoulder_to_shoulder() {
        Original original = read("x,diameter,side\n0,,40\n50,,40\n50,30,\n60,32,\n70,30,\n90,,40\n110,,40\n")
                .original()
                .orElseThrow();
        assertThat(original.squares())
                .extracting(each -> each.from().mm(), each -> each.to().mm())
                .containsExactly(tuple(0.0, 50.0), tuple(80.0, 110.0));
    }

    @Test
    void each_bad_row_is_named_by_its_line() {
        PointTable.Read read = read("x,diameter,side\n0,20,\n10,abc,\n20,,\n30,20,20\n\n40,0,\n50,20,,1\n-3,20,\n");
        assertThat(read.original()).isEmpty();
        assertThat(lines(read))
                .satisfiesExactly(
                        line -> assertThat(line).startsWith("line 3: diameter: 'abc' is not a length"),
                        line -> assertThat(line).startsWith("line 4: has neither a diameter nor a side"),
                        line -> assertThat(line).startsWith("line 5: has both a diameter and a side"),
                        line -> assertThat(line).startsWith("line 7: diameter: must be above zero"),
                        line -> assertThat(line).startsWith("line 8: 4 cells where the header has 3"),
                        line -> assertThat(line).startsWith("line 9: x: a length carries no sign"));
    }

    @Test
    void too_few_too_many_and_senseless_tables_are_refused() {
        assertThat(lines(read(""))).singleElement().asString().contains("is empty");
        assertThat(lines(read("a,b\n1,2\n"))).singleElement().asString().contains("no column 'x'");
        assertThat(lines(read("x,d\n1,2\n"))).singleElement().asString().contains("no column 'diameter'");
        assertThat(lines(read("x,diameter\n0,1\n1,1\n2,1\n3,1\n")))
                .singleElement()
                .asString()
                .contains("has 4 rows; give 5 to 500");
        assertThat(lines(read("x,diameter\n" + "0,1\n".repeat(501))))
                .singleElement()
                .asString()
                .contains("has 501 rows");
        assertThat(lines(read("x,diameter\n0,20\n5,20\n5,21\n5,22\n9,20\n")))
                .singleElement()
                .asString()
                .contains("line 5: is the third row at one place");
        assertThat(lines(read("x,diameter\n5,20\n5,20.5\n5.1,21\n5.1,22\n5.2,20\n")))
                .singleElement()
                .asString()
                .contains("within 1 mm");
        assertThat(lines(read("x,diameter\n\"0,20\n5,20\n")))
                .singleElement()
                .asString()
                .contains("quotation mark");
        assertThat(lines(read("PK\u0003\u0004\u0000")))
                .singleElement()
                .asString()
                .contains("a spreadsheet's own file, not CSV");
    }

    private static double lastPlace(String header) {
        String rows = "\n0;20\n10;21\n20;22\n30;23\n40;24\n";
        PointTable.Read read = PointTable.read(header + rows, UnitSystem.METRIC, Length.ofMm(0.2));
        assertThat(lines(read)).as(header).isEmpty();
        return read.original().orElseThrow().profile().length().mm();
    }

    @Test
    void headings_name_units_of_their_column_and_may_be_german() {
        for (String header : List.of(
                "x (mm);diameter (mm)",
                "x_mm;diameter_mm",
                "X [mm];Diameter [mm]",
                "x, mm;Dia, mm",
                "Position;Durchmesser",
                "Stelle;Durchmesser in mm",
                "Platz;Ø",
                "\"place\";\"diameter\"")) {
            assertThat(lastPlace(header)).as(header).isEqualTo(40);
        }
        assertThat(lastPlace("x (cm);diameter (mm)")).isEqualTo(400);
        assertThat(lastPlace("x (in);diameter (inches)")).isEqualTo(40 * 25.4);
        Original original = read("Stelle (Zoll),Durchmesser (mm),Vierkant\n0,,20\n1,,20\n1,20,\n2,1 in,\n3,20,\n")
                .original()
                .orElseThrow();
        assertThat(original.profile().length().mm()).isEqualTo(3 * 25.4);
        assertThat(original.profile().stations().get(3).radius()).isEqualTo(Length.ofInches(0.5));
        assertThat(original.squares()).hasSize(1);
    }

    @Test
    void a_heading_with_another_unit_is_told_where_units_go_and_two_equal_columns_are_refused() {
        assertThat(lines(read("x (ells),diameter\n0,1\n")))
                .singleElement()
                .asString()
                .contains("no column 'x'")
                .contains("as x (mm)")
                .contains("as 20 mm")
                .contains("--units");
        assertThat(lines(read("x,diameter,diameter\n0,20,21\n")))
                .containsExactly("line 1: the header has two columns 'diameter'; leave one of them");
        assertThat(lines(read("x,place,diameter\n0,20,21\n")))
                .containsExactly("line 1: the header has two columns 'x'; leave one of them");
    }

    @Test
    void a_row_that_stands_twice_counts_once_and_is_told() {
        PointTable.Read read = read("x,diameter\n0,20\n10,20\n10,20\n10,30\n20,30\n30,30\n");
        assertThat(read.original().orElseThrow().profile().stations()).hasSize(5);
        assertThat(read.notes()).containsExactly("Line 4 says the same as line 3 and is left out.");
        assertThat(lines(read("x,diameter\n0,20\n10,20\n10,20\n20,30\n20,30\n30,30\n")))
                .containsExactly("table: has 4 different rows; give 5 to 500, one for each place");
    }

    @Test
    void an_error_of_which_no_shape_could_be_told_is_refused() {
        String rows = "x,diameter\n0,20\n10,21\n20,30\n30,23\n40,24\n";
        assertThat(lines(PointTable.read(rows, UnitSystem.METRIC, Length.ofMm(50))))
                .singleElement()
                .asString()
                .startsWith("--error: 50 mm is more than a quarter of the thickest diameter, 30 mm");
        assertThat(PointTable.read(rows, UnitSystem.METRIC, Length.ofMm(7)).original())
                .isPresent();
    }
}
