package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/** Small pieces on a kitchen scale: a rod 100 mm long and 10 mm thick of 700 kg/m³ weighs 5.5 g. */
class CoarseScaleTest {
    private static final List<String> FRAMES = List.of(
            "{\"kind\": \"wheel\", \"places\": 4, \"hub_radius\": 60}",
            "{\"kind\": \"row\", \"places\": 4}",
            "{\"kind\": \"legs\", \"places\": 4}");

    private static Job job(String frame, double scaleG) {
        return JobReader.read("""
                        {"format": "turnalike-job", "version": 1, "units": "mm",
                         "pattern": {"name": "Pin", "stock": {"section": "square", "size": 14, "length": 100},
                          "members": [{"kind": "cylinder", "length": 100, "diameter": 10}]},
                         "wood": {"density_kg_m3": 700}, "tolerances": {"mass_pct": 4, "scale_g": %s}, "frame": %s}
                        """.formatted(scaleG, frame)).job().orElseThrow();
    }

    private static List<Piece> pieces() {
        return PiecesFile.parse("piece,mass_g\n1,5\n2,6\n3,5\n4,5\n5,5\n6,5\n7,7\n8,5\n", UnitSystem.METRIC)
                .pieces();
    }

    @Test
    void a_step_is_held_against_what_a_set_may_differ_by() {
        Mass piece = Mass.ofGrams(50);
        assertThat(CoarseScale.words(new WeighingScale(Mass.ofGrams(5)), 10, piece))
                .isEmpty();
        assertThat(CoarseScale.words(new WeighingScale(Mass.ofGrams(5.01)), 10, piece)
                        .orElseThrow())
                .startsWith("one step of the scale, 5.01 g, is 10 % of a piece, more than the 10 %");
        assertThat(CoarseScale.words(new WeighingScale(Mass.ofGrams(0)), 0.1, piece))
                .isEmpty();
    }

    @Test
    void the_plan_says_so_before_anything_is_turned_and_every_set_once_it_is_weighed() {
        for (String frame : FRAMES) {
            Job coarse = job(frame, 1);
            assertThat(Plan.of(coarse, Effort.ofAsks(200)).warnings())
                    .anyMatch(each ->
                            each.where().equals("weights") && each.what().contains("is 18 % of a piece"));
            assertThat(MatchJob.of(coarse, pieces(), false, Effort.ofAsks(200)).warnings())
                    .anyMatch(each -> each.startsWith("one step of the scale, 1 g, is 19 % of a piece"));
            Job fine = job(frame, 0.1);
            assertThat(Plan.of(fine, Effort.ofAsks(200)).warnings())
                    .noneMatch(each -> each.where().equals("weights"));
            assertThat(MatchJob.of(fine, pieces(), false, Effort.ofAsks(200)).warnings())
                    .noneMatch(each -> each.contains("step of the scale"));
        }
    }

    /** Seven grams among fives is a heavy piece on a scale of whole grams, and a slip on one of tenths. */
    @Test
    void a_step_or_two_of_a_coarse_scale_are_no_slip() {
        String row = FRAMES.get(1);
        assertThat(ColumnTargets.slips(job(row, 1), MassUnit.GRAM).askAll(pieces()))
                .isEmpty();
        assertThat(ColumnTargets.slips(job(row, 0.1), MassUnit.GRAM).askAll(pieces()))
                .anyMatch(slip -> slip.where().startsWith("piece 7"));
    }
}
