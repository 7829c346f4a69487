package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.read.JobReader;
import turnalike.settings.SizedDiameter;
import turnalike.units.Length;

/** An invented finial: a spire that runs from 6 mm to 2 mm, and a tip from there to a point. */
class ByEyeSizesTest {
    private static Plan plan(String tip) {
        Job.Read read = JobReader.read("""
                {"format": "turnalike-job", "version": 1, "title": "Invented finial", "units": "mm",
                 "pattern": {"name": "Finial", "stock": {"section": "round", "size": 20, "length": 70},
                  "members": [
                   {"kind": "tenon", "length": 10, "diameter": 8},
                   {"kind": "bead", "length": 10, "root": 12, "crown": 16},
                   {"kind": "taper", "name": "spire", "length": 30, "from": 6, "to": 2},
                   {"kind": "taper", "name": "tip", "length": 5, %s}]},
                 "turning": {"held": "chuck", "held_at": "start"},
                 "wood": {"density_kg_m3": 700}}
                """.formatted(tip));
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.unlimited());
    }

    @Test
    void a_pointed_tip_gets_no_caliper_and_is_told_by_eye() {
        Plan plan = plan("\"from\": 2, \"to\": 0.4");
        assertThat(plan.settings().calipers())
                .extracting(each -> each.opening().mm())
                .containsExactly(2.0, 6.0, 8.0, 12.0, 16.0);
        assertThat(plan.settings().tooThin()).containsExactly(new SizedDiameter(3, Length.ofMm(0.4)));
        assertThat(FinishedSizes.text(plan, plan.settings().calipers().get(0))).isEqualTo("2 mm");
        assertThat(ByEyeSizes.sentence(plan))
                .contains(
                        "By eye: 4 tip to 0.4 mm, held against the checking template: no caliper is set to less than 2 mm.");
        assertThat(plan.turning().cuts().toString())
                .contains(
                        "4 tip: plane the taper, thick end to thin, by light cuts down to the calipers and on by eye where"
                                + " they do not reach: thinner than a pencil")
                .doesNotContain("0.4 mm");
    }

    @Test
    void what_is_too_thin_all_along_is_cut_by_eye_alone() {
        Plan plan = plan("\"from\": 1.5, \"to\": 1");
        assertThat(plan.settings().tooThin()).hasSize(2);
        assertThat(ByEyeSizes.sentence(plan).orElseThrow()).startsWith("By eye: 4 tip to 1.5 mm and 1 mm, held");
        assertThat(plan.turning().cuts().toString())
                .contains("4 tip: plane the taper, thick end to thin, by light cuts and by eye: thinner than a pencil");
    }

    @Test
    void what_calipers_size_is_not_told() {
        Plan plan = plan("\"from\": 4, \"to\": 2");
        assertThat(plan.settings().tooThin()).isEmpty();
        assertThat(ByEyeSizes.sentence(plan)).isEmpty();
    }

    @Test
    void what_is_left_to_the_eye_by_wish_is_none_of_it() {
        assertThat(ByEyeSizes.sentence(plan("\"from\": 2, \"to\": 0.4, \"by_eye\": true")))
                .isEmpty();
    }
}
