package turnalike.job.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.job.set.SetMatch;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

/** The set as a table: every place once, in order, the rest as spares. */
class SetTableTest {
    private static final String LABELS = "piece,mass_g,length\n=1+1,100,220\nb,101,220.1\nc,102.5,220.2\n@d,99,220\n";

    private static SetMatch match(String frame, String more, String csv) {
        return match(frame, more, csv, "'scale_g': 20");
    }

    private static SetMatch match(String frame, String more, String csv, String scale) {
        Job job = JobReader.read("""
                {'format': 'turnalike-job', 'version': 1, 'units': 'mm',
                 'pattern': {'stock': {'section': 'square', 'size': 40, 'length': 230},
                  'members': [{'kind': 'tenon', 'length': 20, 'diameter': 16}, {'kind': 'taper', 'length': 200, 'from': 30, 'to': 20}]},
                 'wood': {'density_kg_m3': 700}, 'tolerances': {'mass_pct': 50, %s}, 'frame': %s %s}
                """.formatted(scale, frame, more).replace('\'', '"'))
                .job()
                .orElseThrow();
        List<Piece> pieces = PiecesFile.parse(csv, UnitSystem.METRIC).pieces();
        assertThat(MatchJob.problems(job, pieces)).isEmpty();
        return MatchJob.of(job, pieces, false, Effort.ofAsks(2000));
    }

    @Test
    void no_label_of_a_table_is_a_formula_and_it_reads_as_a_pieces_file() {
        SetMatch set = match(
                "{'kind': 'wheel', 'places': 3, 'hub_radius': 60}",
                ", 'by_hand': {'order': ['@d', '=1+1', 'c']}",
                LABELS);
        assertThat(SetTable.csv(set)).isEqualToNormalizingNewlines("""
                        place,piece,mass_g,angle_deg
                        1,'@d,99,0
                        2,'=1+1,100,120
                        3,c,102.5,240
                        spare,b,101,
                        """);
        assertThat(PiecesFile.parse(SetTable.csv(set), UnitSystem.METRIC).pieces())
                .extracting(Piece::label)
                .containsExactly("@d", "=1+1", "c", "b");
    }

    /** 7.7 oz are 218.2913280625 g: nobody reads that off a scale. */
    @Test
    void a_set_kept_in_ounces_is_told_in_ounces_and_reads_as_a_pieces_file() {
        String csv = "piece,mass_oz\na,7.7\nb,7.6\nc,7.75\nd,7.8\n";
        String[] frames = {
            "{'kind': 'wheel', 'places': 3, 'hub_radius': 60}",
            "{'kind': 'row', 'places': 3}",
            "{'kind': 'legs', 'places': 3}"
        };
        for (String frame : frames) {
            SetMatch set = match(frame, "", csv, "'scale_oz': 0.05");
            String table = SetTable.csv(set);
            assertThat(table).startsWith("place,piece,mass_oz").contains(",a,7.7", ",b,7.6", ",c,7.75", ",d,7.8");
            assertThat(PiecesFile.parse(table, UnitSystem.METRIC).pieces())
                    .extracting(Piece::mass)
                    .containsExactlyInAnyOrderElementsOf(PiecesFile.parse(csv, UnitSystem.METRIC).pieces().stream()
                            .map(Piece::mass)
                            .toList());
        }
    }

    @Test
    void pieces_weighed_in_grams_are_told_in_a_set_of_ounces_as_the_scale_would_show_them() {
        SetMatch set = match(
                "{'kind': 'row', 'places': 2}",
                ", 'by_hand': {'order': ['a', 'b']}",
                "piece,mass_g\na,219.2\nb,7.7 oz\nc,221.3\n",
                "'scale_oz': 0.1");
        assertThat(SetTable.csv(set).lines())
                .containsExactly("place,piece,mass_oz", "1,a,7.7", "2,b,7.7", "spare,c,7.8");
    }

    @Test
    void a_wheel_whose_seats_are_bored_tells_by_how_much_at_each_place() {
        SetMatch set = match(
                "{'kind': 'wheel', 'places': 4, 'hub_radius': 60, 'seat_depths': [0, 0.5, 0, 0], 'run_out': 0.05}",
                ", 'by_hand': {'order': ['@d', '=1+1', 'c', 'b']}",
                LABELS);
        // Lengths 220, 220, 220.2, 220.1 in seats 0, 0.5, 0, 0 deep: the second stands lowest, the others down to
        // 0.05 above it.
        assertThat(SetTable.csv(set).lines())
                .containsExactly(
                        "place,piece,mass_g,angle_deg,bore_deeper_mm",
                        "1,'@d,99,0,0.45",
                        "2,'=1+1,100,90,0",
                        "3,c,102.5,180,0.65",
                        "4,b,101,270,0.55");
    }

    @Test
    void rows_tell_the_length_of_each_place_and_legs_their_group() {
        SetMatch row = match("{'kind': 'row', 'places': 3}", ", 'by_hand': {'order': ['c', 'b', '@d']}", LABELS);
        assertThat(SetTable.csv(row).lines())
                .containsExactly("place,piece,mass_g", "1,c,102.5", "2,b,101", "3,'@d,99", "spare,'=1+1,100");
        SetMatch lengths = match(
                "{'kind': 'row', 'lengths': [{'stretch': 1, 'length': 200, 'count': 1}, {'stretch': 1, 'length': 250, 'count': 1}]}",
                "",
                "piece,length\nx,220\ny,270\n");
        assertThat(SetTable.csv(lengths).lines()).containsExactly("place,piece,mass_g,of_length", "1,x,,A", "2,y,,B");
        SetMatch legs = match(
                "{'kind': 'legs', 'places': 2, 'groups': 2}",
                ", 'by_hand': {'order': ['c', 'b', '@d', '=1+1']}",
                LABELS);
        assertThat(SetTable.csv(legs).lines())
                .containsExactly("place,piece,mass_g,group", "1,c,102.5,1", "2,b,101,1", "3,'@d,99,2", "4,'=1+1,100,2");
    }
}
