package turnalike.settings;

import java.util.List;
import java.util.Optional;
import turnalike.units.Problem;

/** What came of planning the dividers: a sound plan, or what stands in the way of any. */
public sealed interface DividerOutcome permits DividerOutcome.Planned, DividerOutcome.Refused {
    /**
     * There is a plan.
     *
     * @param plan in which every mark is reached
     */
    record Planned(DividerPlan plan) implements DividerOutcome {}

    /**
     * No plan can be sound, or the wishes contradict one another.
     *
     * @param problems each mark that cannot be reached, or each wish that cannot be kept, with what would free it
     */
    record Refused(List<Problem> problems) implements DividerOutcome {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** {@return the plan, if there is one} */
    default Optional<DividerPlan> findPlan() {
        return this instanceof Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }
}
