package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.read.JobReader;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.turning.Cut;
import turnalike.turning.Phase;
import turnalike.units.Length;
import turnalike.units.Problem;

/** An invented vase between two tenons: a peak at 20 and a hollow at 80 from its start, which is at 30. */
class CurveMarksTest {
    private static String text(String diameter, String moreKeys, String curveKeys) {
        return """
                {"format": "turnalike-job", "version": 1, "title": "Invented vase", "units": "mm", %s
                 "tolerances": {"diameter": %s},
                 "pattern": {"name": "Vase", "stock": {"section": "round", "size": 50, "length": 220},
                  "members": [
                   {"kind": "tenon", "length": 30, "diameter": 20},
                   {"kind": "curve", "name": "vase", "points": [[0, 26], [20, 44], [80, 24], [120, 34]]%s},
                   {"kind": "tenon", "length": 30, "diameter": 19}]},
                 "wood": {"density_kg_m3": 700}}
                """.formatted(moreKeys, diameter, curveKeys);
    }

    private static Plan plan(String diameter, String curveKeys) {
        Job.Read read = JobReader.read(text(diameter, "", curveKeys));
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.unlimited());
    }

    @Test
    void a_curve_is_marked_at_peak_and_hollow_and_at_more_places_the_tighter_the_tolerance() {
        Plan loose = plan("2", "");
        Plan tight = plan("0.4", "");
        for (Plan plan : List.of(loose, tight)) {
            assertThat(plan.marks())
                    .anyMatch(mark ->
                            mark.label().equals("2 vase peak") && mark.place().mm() == 50)
                    .anyMatch(mark ->
                            mark.label().equals("2 vase hollow") && mark.place().mm() == 110);
        }
        assertThat(tight.marks().size()).isGreaterThan(loose.marks().size());
        assertThat(loose.marks().size()).isGreaterThan(6);
    }

    @Test
    void each_of_its_marks_is_sized_by_a_caliper_setting_that_serves_its_diameter() {
        Plan plan = plan("0.4", "");
        PlacedMember vase = plan.job().pattern().placed().get(1);
        for (Member.Diameter diameter : vase.diameters()) {
            assertThat(plan.settings().calipers())
                    .anyMatch(setting -> setting.members().contains(1)
                            && setting.finished().minus(diameter.size()).abs().mm() <= 0.4 + 1e-9);
        }
        TreeSet<Length> sized = new TreeSet<>();
        for (Cut cut : plan.turning().cuts()) {
            if (cut.phase() == Phase.SIZING) {
                sized.addAll(cut.places());
            }
        }
        assertThat(sized)
                .containsAll(plan.marks().stream()
                        .filter(mark -> mark.kind() == Mark.Kind.CREST)
                        .map(Mark::place)
                        .toList());
    }

    @Test
    void by_eye_takes_its_marks_and_its_calipers_away() {
        Plan plan = plan("0.4", ", \"by_eye\": true");
        assertThat(plan.marks()).hasSize(4);
        assertThat(plan.settings().calipers())
                .noneMatch(setting -> setting.members().contains(1));
    }

    @Test
    void its_marks_are_taken_from_the_stick_by_their_labels() {
        Job.Read read = JobReader.read(text("2", "\"settings\": {\"stick\": [\"2 vase peak\"]},", ""));
        assertThat(read.problems()).extracting(Problem::line).isEmpty();
        Job job = read.job().orElseThrow();
        int peak = job.wishes().onTheStick().iterator().next();
        assertThat(job.pattern().marks().get(peak).label()).isEqualTo("2 vase peak");
    }
}
