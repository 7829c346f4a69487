package turnalike.job;

import java.util.List;
import turnalike.pattern.PlacedMember;

/**
 * What follows for one of the lengths that a job's pieces are made in.
 *
 * @param length which
 * @param plan of its own order: stock, marks, settings, turning; it has no frame
 */
public record LengthPlan(OneLength length, Plan plan) {
    /**
     * {@return the plan of each length that a plan's pieces are made in; the plan itself where all are as drawn}
     *
     * @param plan of a job
     */
    public static List<Plan> each(Plan plan) {
        return plan.lengths().isEmpty()
                ? List.of(plan)
                : plan.lengths().stream().map(LengthPlan::plan).toList();
    }

    /** {@return the member that differs, in its place in these pieces} */
    public PlacedMember stretch() {
        return plan.job().pattern().placed().get(length.told().stretch());
    }
}
