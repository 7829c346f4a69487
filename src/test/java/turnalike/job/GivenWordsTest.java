package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.read.JobReader;

class GivenWordsTest {
    private static Plan knob(String units, String last, String middle) {
        Job.Read read = JobReader.read("""
                {"format": "turnalike-job", "version": 1, "title": "Invented knob", "units": "%s",
                 "pattern": {"name": "Knob", "stock": {"section": "square", "size": "30 mm", "length": "160 mm"},
                  "members": [
                   {"kind": "tenon", "length": "20 mm", "diameter": "8 mm"},
                   %s
                   {"kind": "bead", "length": "20 mm", "root": "12 mm", "crown": "16 mm"},
                   {"kind": "cylinder", "length": "%s", "diameter": "12 mm"}]},
                 "wood": {"density_kg_m3": 700}}
                """.formatted(units, middle, last));
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.unlimited());
    }

    @Test
    void a_short_piece_is_laid_out_by_the_stick_alone_and_that_is_said_first() {
        Plan plan = knob("mm", "10 mm", "");
        assertThat(GivenWords.stickAlone(plan))
                .contains(
                        "At 50 mm the marking stick alone lays it all out: hold it along the piece and strike every mark, each off by"
                                + " 0.25 mm at worst. Dividers are for who prefers them.");
        assertThat(plan.turning().cuts().toString())
                .contains(
                        "so short a piece takes every mark from the stick now, and the rounds with the dividers may be left out");
        assertThat(GivenWords.stickAlone(knob("in", "61.6 mm", "")).orElseThrow())
                .startsWith("At 4 in the marking stick");
    }

    @Test
    void a_longer_piece_is_not() {
        Plan plan = knob("mm", "62 mm", "");
        assertThat(GivenWords.stickAlone(plan)).isEmpty();
        assertThat(plan.turning().cuts().toString()).doesNotContain("so short a piece");
    }

    @Test
    void nor_one_whose_squares_are_struck_before_mounting() {
        assertThat(GivenWords.stickAlone(knob("mm", "10 mm", "{\"kind\": \"square\", \"length\": 25},")))
                .isEmpty();
    }
}
