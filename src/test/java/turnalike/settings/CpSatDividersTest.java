package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.settings.PatternFamilies.Family;

/** The same optimum from a solver of another kind, OR-Tools CP-SAT, on patterns too large to try every choice. */
class CpSatDividersTest {
    /** Far more than it takes; the test fails if it is not enough rather than passing unproven. */
    private static final double SECONDS_EACH = 60;

    @Test
    void all_three_parts_of_the_aim_agree_with_cp_sat() {
        for (Family family : Family.values()) {
            for (int count : new int[] {8, 10, 11}) {
                agrees(PatternFamilies.marks(family, count, new Random(count)));
            }
        }
    }

    private static final Effort PROOF_ALONE = new Effort() {
        @Override
        public boolean spent() {
            return false;
        }

        @Override
        public boolean wantsProofAlone() {
            return true;
        }
    };

    private static void agrees(double[] places) {
        DividerProblem problem = DividersTest.problem(places);
        CpSatDividers.Found found =
                new CpSatDividers(places, problem.matchTolerance().mm(), problem.mostSteps()).solve(SECONDS_EACH, 8);
        assertThat(found.proven()).isEqualTo(3);
        for (Effort effort : List.of(Effort.unlimited(), PROOF_ALONE)) {
            DividerPlan plan = Dividers.solve(problem, effort).findPlan().orElseThrow();
            assertThat(plan.settings()).hasSize(found.settings());
            assertThat(plan.sumOfSteps()).isEqualTo(found.sumOfSteps());
            assertThat(PlanCheck.longestStepMm(problem, plan)).isEqualTo(found.longestMm(), Offset.offset(1e-9));
        }
    }
}
