package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import turnalike.pattern.Mark;
import turnalike.units.Length;

/**
 * Which marks stand at the same place on every length that a job's pieces are made in.
 *
 * @param fromStart numbers of the marks that are as far from the start end on all of them, ascending
 * @param fromEnd numbers of those others that are as far from the far end on all of them, ascending
 * @param own numbers of the marks that are neither, ascending
 */
public record CommonMarks(List<Integer> fromStart, List<Integer> fromEnd, List<Integer> own) {
    /** Places are sums of lengths: the same place may differ by rounding. */
    private static final double ROUNDING_MM = 1e-6;

    public CommonMarks {
        fromStart = List.copyOf(fromStart);
        fromEnd = List.copyOf(fromEnd);
        own = List.copyOf(own);
    }

    /**
     * {@return the marks common to all of these}
     *
     * @param plans of every length, one or more; their marks go by the same numbers, since they are of one turning
     */
    public static CommonMarks of(List<LengthPlan> plans) {
        List<Integer> fromStart = new ArrayList<>();
        List<Integer> fromEnd = new ArrayList<>();
        List<Integer> own = new ArrayList<>();
        for (int i = 0; i < plans.get(0).plan().marks().size(); i++) {
            if (alike(plans, i, (plan, mark) -> mark.place())) {
                fromStart.add(i);
            } else if (alike(plans, i, CommonMarks::toEnd)) {
                fromEnd.add(i);
            } else {
                own.add(i);
            }
        }
        return new CommonMarks(fromStart, fromEnd, own);
    }

    /**
     * {@return how far a mark is from the far end}
     *
     * @param plan whose piece it is on
     * @param mark of that plan
     */
    public static Length toEnd(Plan plan, Mark mark) {
        return plan.job().pattern().length().minus(mark.place());
    }

    private static boolean alike(List<LengthPlan> plans, int mark, BiFunction<Plan, Mark, Length> place) {
        List<Length> places = plans.stream()
                .map(LengthPlan::plan)
                .filter(plan -> mark < plan.marks().size())
                .map(plan -> place.apply(plan, plan.marks().get(mark)))
                .toList();
        return places.size() == plans.size()
                && places.stream()
                        .allMatch(each -> each.minus(places.get(0)).abs().mm() < ROUNDING_MM);
    }
}
