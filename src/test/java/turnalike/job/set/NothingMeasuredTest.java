package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

/** A piece of which nothing was measured is as like as can be to every other: whoever places it is told. */
class NothingMeasuredTest {
    private static List<String> said(String frame, String rows) {
        Job job = JobReader.read("""
                        {"format": "turnalike-job", "version": 1, "units": "mm",
                         "pattern": {"name": "Pin", "stock": {"section": "square", "size": 14, "length": 100},
                          "members": [{"kind": "cylinder", "length": 100, "diameter": 10}]},
                         "wood": {"density_kg_m3": 700}, "likeness": {"noted": {"colour": 1}}, "frame": %s}
                        """.formatted(frame)).job().orElseThrow();
        return MatchJob.of(job, PiecesFile.parse(rows, UnitSystem.METRIC).pieces(), false, Effort.ofAsks(200))
                .warnings()
                .stream()
                .filter(each -> each.contains("nothing measured"))
                .toList();
    }

    @Test
    void pieces_placed_with_nothing_measured_are_named() {
        for (String kind : List.of("row", "legs")) {
            String frame = "{\"kind\": \"%s\", \"places\": 4}".formatted(kind);
            assertThat(said(frame, "piece,mass_g,length\n1,5.4,100.1\n2,5.3,99.7\n3,,\n4,5.5,100\n"))
                    .containsExactly(
                            "piece 3 was placed with nothing measured: it counts as like any other; measure it, or take it out if it is"
                                    + " spoiled");
            assertThat(said(frame, "piece,mass_g,length\n1,5.4,100.1\n2,,\n3,,\n4,5.5,100\n"))
                    .singleElement()
                    .asString()
                    .startsWith("pieces ")
                    .contains("2", "3", "were placed with nothing measured");
        }
    }

    @Test
    void a_piece_weighed_or_judged_by_eye_or_left_over_is_not_and_nor_is_any_where_none_is_measured() {
        String row = "{\"kind\": \"row\", \"places\": 2}";
        assertThat(said(row, "piece,mass_g,length\n1,5.4,100\n2,5.4,\n")).isEmpty();
        assertThat(said(row, "piece,length,colour\n1,100,light\n2,,light\n")).isEmpty();
        assertThat(said(row, "piece,length\n1,\n2,\n")).isEmpty();
        assertThat(said("{\"kind\": \"row\", \"places\": 2, \"seen_from\": \"start\"}", "piece,length\n1,100\n2,100\n"))
                .isEmpty();
    }
}
