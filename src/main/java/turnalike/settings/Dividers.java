package turnalike.settings;

import java.util.List;
import turnalike.effort.Effort;
import turnalike.effort.Watch;
import turnalike.units.Problem;

/** Plans the fewest divider settings that reach every mark. */
public final class Dividers {
    private Dividers() {}

    /**
     * {@return what stands in the way of any sound plan, as far as no search is needed to see it: wishes that contradict one another, then
     * each mark that no allowed choice of openings of any size reaches, with what would free it} None exactly when {@link #solve} finds a plan.
     *
     * @param problem marks, tolerances and wishes
     */
    public static List<Problem> obstacles(DividerProblem problem) {
        return Obstacles.list(problem);
    }

    /**
     * {@return the sound plan that takes the fewest marks from the stick for want of an opening within {@code problem.largest()}; of
     * those the one with the fewest distinct openings; of those, the smallest sum of steps; of those, the shortest longest step,
     * which is the smallest largest opening} (An opening serves a window of distances, so the largest could be shifted by up to the match
     * tolerance; the comparison takes the longest distance stepped, and the opening is then reported where the marks' errors are least.)
     * Pinned openings stand in every plan and are counted. Only a mark that no chain of the allowed openings reaches is ever taken from
     * the stick, and it counts as given then.
     *
     * <p>Exact up to 64 marks, given the effort; when that is spent first, or with more marks, a sound plan still, with what is proven of
     * it. Distances equal to 1e-9 mm are taken as equal.
     *
     * @param problem marks, tolerances and wishes
     * @param effort asked some thousand times a second; progress tells the settings found and the bound
     */
    public static DividerOutcome solve(DividerProblem problem, Effort effort) {
        List<Problem> obstacles = Obstacles.list(problem);
        if (!obstacles.isEmpty()) {
            return new DividerOutcome.Refused(obstacles);
        }
        Spans spans = problem.spans();
        Watch watch = Watch.over(effort);
        ProvenChoice proven = DividerSearch.search(spans, watch);
        return new DividerOutcome.Planned(PlanBuilder.write(problem, spans, proven, watch));
    }
}
