package turnalike.trace.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** Rows mistyped are told by their line with what was likely meant; what may be so passes. */
class MistypingsTest {
    private static final String PLAIN = "x,diameter\n0,24.1\n10,24.2\n20,24.3\n30,24.5\n40,24.6\n50,24.8\n60,25\n";

    private static PointTable.Read read(String text) {
        return PointTable.read(text, UnitSystem.METRIC, Length.ofMm(0.2));
    }

    private static List<String> problems(String text) {
        return read(text).problems().stream().map(Problem::line).toList();
    }

    private static List<String> notes(String text) {
        PointTable.Read read = read(text);
        assertThat(read.problems()).isEmpty();
        return read.notes();
    }

    @Test
    void a_diameter_whose_decimal_point_slipped_is_refused_with_what_was_meant() {
        assertThat(problems(PLAIN)).isEmpty();
        assertThat(problems(PLAIN.replace("30,24.5", "30,245")))
                .containsExactly(
                        "line 5: diameter: 245 mm stands among 24.3 mm and 24.6 mm; write 24.5 mm if the decimal"
                                + " point slipped; if it is right, give two rows of it, where it begins and where it ends");
        assertThat(problems(PLAIN.replace("30,24.5", "30,2.45")))
                .singleElement()
                .asString()
                .contains("write 24.5 mm");
        String inches = PLAIN.replace("24.5", "245").replace("x,", "x_in,");
        assertThat(PointTable.read(inches, UnitSystem.INCH, Length.ofMm(0.2)).problems())
                .singleElement()
                .asString()
                .contains("line 5");
    }

    @Test
    void a_place_whose_decimal_point_slipped_is_refused_wherever_it_would_be_sorted_to() {
        assertThat(problems(PLAIN.replace("30,24.5", "300,24.5")))
                .containsExactly(
                        "line 5: x: 300 mm stands between 20 mm and 40 mm; write 30 mm if the decimal point slipped;"
                                + " if it is right, put the row where it belongs");
        assertThat(problems(PLAIN.replace("30,24.5", "3.0,24.5")))
                .singleElement()
                .asString()
                .contains("write 30 mm");
        assertThat(problems(PLAIN.replace("\n30,24.5\n", "\n55,24.5\n"))).isEmpty();
        assertThat(notes(PLAIN.replace("60,25", "600,25")))
                .anyMatch(note -> note.startsWith("Line 8: the place 600 mm lies far beyond 50 mm")
                        && note.contains("is it 60 mm?"));
    }

    @Test
    void what_merely_stands_out_is_asked_about() {
        assertThat(notes(PLAIN.replace("30,24.5", "30,54.5")))
                .contains(
                        "Line 5: 54.5 mm stands alone among 24.3 mm and 24.6 mm: a slip? If it is right, a row more on either"
                                + " side of it tells its shape.");
        assertThat(notes(PLAIN.replace("60,25", "60,250")))
                .anyMatch(note -> note.startsWith("Line 8: 250 mm at the end, beside 24.8 mm: is it 25 mm?"));
    }

    @Test
    void a_groove_and_a_disc_measured_once_pass_and_so_does_one_ten_times_as_thick_measured_twice() {
        assertThat(notes(PLAIN.replace("30,24.5", "30,14"))).isEmpty();
        assertThat(notes(PLAIN.replace("30,24.5", "30,44"))).isEmpty();
        assertThat(notes(PLAIN.replace("30,24.5", "30,42.5"))).isEmpty();
        assertThat(notes(PLAIN.replace("30,24.5", "30,24.5\n30,245\n34,245\n34,24.5")))
                .isEmpty();
    }

    /** Half a bead at a shoulder, a bead on a thin rod: more than twice as thick as both its neighbours, yet no steeper than members are. */
    @Test
    void a_bead_on_a_thin_rod_is_no_slip() {
        assertThat(notes("x,diameter\n0,8\n20,8\n27,20\n34,8\n60,8\n")).isEmpty();
    }
}
