package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Column;

class ColumnNamesTest {
    private static final Job RUNG = JobReader.read("""
                    {"format": "turnalike-job", "version": 1, "title": "Rungs (invented)", "units": "mm", "count": 2,
                     "wood": {"density_kg_m3": 700},
                     "pattern": {"stock": {"section": "square", "size": 30, "length": 200}, "members": [
                       {"kind": "cylinder", "length": 60, "diameter": 20},
                       {"kind": "cylinder", "name": "3 mm quirk", "length": 3, "diameter": 15},
                       {"kind": "bead", "name": "12 mm bead", "length": 12, "root": 16, "crown": 24},
                       {"kind": "taper", "length": 80, "from": 20, "to": 16}]}}
                    """).job().orElseThrow();

    @Test
    void a_mark_is_named_by_its_members_without_their_numbers() {
        assertThat(ColumnTargets.name(RUNG, Column.mark(1))).isEqualTo("edge between cylinder and 3 mm quirk");
        assertThat(ColumnTargets.name(RUNG, Column.mark(2))).isEqualTo("edge between 3 mm quirk and 12 mm bead");
        assertThat(ColumnTargets.name(RUNG, Column.mark(3))).isEqualTo("12 mm bead crest");
        assertThat(ColumnTargets.name(RUNG, Column.mark(4))).isEqualTo("edge between 12 mm bead and taper");
        assertThat(ColumnTargets.name(RUNG, Column.mark(9))).isEqualTo("mark 9");
    }
}
