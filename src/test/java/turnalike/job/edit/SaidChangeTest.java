package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.job.kept.JobText;

/** What the history says of an edit. */
final class SaidChangeTest {
    private static final JobText JOB = JobText.read("""
                    {"format": "turnalike-job", "version": 1, "title": "Rungs", "units": "mm", "count": 10,
                     "pattern": {"stock": {"section": "square", "size": 50, "length": 400}, "members": [
                       {"kind": "fillet", "length": 20, "diameter": 26},
                       {"kind": "taper", "length": 60, "from": 26, "to": 20},
                       {"kind": "bead", "name": "hub bead", "length": 12, "root": 30, "crown": 38}]},
                     "wood": {"species": "White ash"}}
                    """).text().orElseThrow();

    private static String fields(Map<String, String> values) {
        return JobEdit.fields(values).what(JOB);
    }

    private static String sizes(int number, Map<String, String> values) {
        return new MemberEdit(number, new MemberEdit.Sizes(values)).what(JOB);
    }

    @Test
    void a_field_is_told_by_its_label_as_it_was_and_is() {
        assertThat(fields(Map.of("count", "12"))).isEqualTo("good pieces wanted: 10 → 12");
        assertThat(fields(Map.of("title", "Stair rungs"))).isEqualTo("title: Rungs → Stair rungs");
        assertThat(fields(Map.of("allowances.sizing", "1")))
                .startsWith("sized over by: ")
                .endsWith(" 1 mm")
                .doesNotContain("→");
        assertThat(fields(Map.of("wood.species", ""))).endsWith("left out (was White ash)");
    }

    @Test
    void a_size_says_whether_it_grew_and_where() {
        assertThat(sizes(3, Map.of("crown", "40"))).isEqualTo("hub bead 3 thicker at the crown: 38 → 40 mm");
        assertThat(sizes(1, Map.of("diameter", "24"))).isEqualTo("fillet 1 thinner: 26 → 24 mm");
        assertThat(sizes(2, Map.of("from", "28"))).isEqualTo("taper 2 thicker at its start: 26 → 28 mm");
        assertThat(sizes(3, Map.of("length", "14"))).isEqualTo("hub bead 3 longer: 12 → 14 mm");
        assertThat(sizes(1, Map.of("length", "1/2 in"))).isEqualTo("fillet 1 shorter: 20 → 1/2 in");
    }

    @Test
    void what_is_no_size_and_what_is_several_are_told_by_their_names() {
        assertThat(sizes(1, Map.of("name", "upper\nfillet"))).isEqualTo("fillet 1, name: upper; fillet");
        assertThat(sizes(3, Map.of("by_eye", "true"))).isEqualTo("hub bead 3, cut by eye, not measured: yes");
        assertThat(sizes(3, Map.of("crown", "40", "root", "28")))
                .isEqualTo("hub bead 3, crown: 38 → 40, root: 30 → 28");
    }

    @Test
    void a_move_says_where_to_and_a_boundary_how_far() {
        assertThat(new MemberEdit(3, new MemberEdit.Move(-2)).what(JOB)).isEqualTo("move hub bead 3 to place 1");
        assertThat(new MemberEdit(1, new MemberEdit.Boundary("22")).what(JOB))
                .isEqualTo("end of fillet 1 moved: 20 → 22 mm");
        assertThat(new MemberEdit(9, new MemberEdit.Remove()).what(JOB)).isEqualTo("remove member 9");
    }

    @Test
    void many_fields_are_counted_and_a_long_text_is_cut() {
        assertThat(fields(Map.of("title", "a", "count", "1", "units", "in", "loss_pct", "3")))
                .isEqualTo("change 4 of the job's fields");
        assertThat(fields(Map.of("title", "x".repeat(90)))).hasSizeLessThan(50).endsWith("…");
    }
}
