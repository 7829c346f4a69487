package turnalike.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.units.Length;

/** Turns a choice of openings into settings with their steps, and the errors of the marks. */
final class PlanBuilder {
    private final DividerProblem problem;
    private final Spans spans;
    private final StepCount count;
    private final List<Integer> openings;
    private final List<List<DividerStep>> steps = new ArrayList<>();

    private PlanBuilder(DividerProblem problem, Spans spans, Choice choice) {
        this.problem = problem;
        this.spans = spans;
        this.count = new StepCount(spans);
        count.useStick(choice.stick());
        count.count(choice.openings(), choice.settings());
        this.openings = new ArrayList<>(IntStream.range(0, spans.pinned).boxed().toList());
        IntStream.of(choice.openings()).forEach(openings::add);
        openings.forEach(opening -> steps.add(new ArrayList<>()));
    }

    /**
     * The plan: each mark is struck from a mark one step nearer a given one; if several offer themselves, with a pinned opening before any
     * other, then over the shortest distance, then from the lower mark.
     */
    static DividerPlan write(DividerProblem problem, Spans spans, ProvenChoice proven) {
        PlanBuilder writer = new PlanBuilder(problem, spans, proven.choice());
        for (int mark = 1; mark < spans.last(); mark++) {
            if (writer.count.steps(mark) > 0) {
                writer.strike(mark);
            }
        }
        List<DividerSetting> settings = writer.settings();
        GivenMarks given = given(problem, proven);
        int lowerBound = Math.min(settings.size(), spans.pinned + proven.lowerBound());
        return new DividerPlan(
                settings,
                given,
                writer.errors(given),
                writer.count.sum(),
                given.fewestProven() && lowerBound == settings.size(),
                given.fewestProven() && proven.ties(),
                lowerBound,
                DividerWorkings.of(problem, given, settings.size(), lowerBound));
    }

    private static GivenMarks given(DividerProblem problem, ProvenChoice proven) {
        List<Integer> shoulders = problem.shoulders();
        return new GivenMarks(
                shoulders,
                problem.onTheStick().stream()
                        .filter(mark -> !shoulders.contains(mark))
                        .sorted()
                        .toList(),
                IntStream.of(proven.choice().stick()).boxed().toList(),
                proven.leastStick());
    }

    private List<MarkError> errors(GivenMarks given) {
        return IntStream.range(0, spans.marks())
                .mapToObj(mark -> {
                    boolean stick =
                            given.wished().contains(mark) || given.outOfReach().contains(mark);
                    return MarkError.of(mark, stick ? 1 : count.steps(mark), problem.markError(), stick);
                })
                .toList();
    }

    private void strike(int mark) {
        int setting = -1;
        int from = -1;
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = spans.openings.get(openings.get(i));
            for (int pair = 0; pair < opening.pairs(); pair++) {
                int other = opening.low()[pair] == mark
                        ? opening.high()[pair]
                        : opening.high()[pair] == mark ? opening.low()[pair] : mark;
                double distance = i < spans.pinned ? 0 : spans.distanceMm(mark, other);
                if (count.steps(other) == count.steps(mark) - 1 && distance < shortest - Spans.SLACK_MM) {
                    setting = i;
                    from = other;
                    shortest = distance;
                }
            }
        }
        steps.get(setting).add(new DividerStep(from, mark, count.steps(mark)));
    }

    /** The settings that serve a mark, and the pinned ones whether they do or not. */
    private List<DividerSetting> settings() {
        List<DividerSetting> settings = new ArrayList<>();
        for (int i = 0; i < openings.size(); i++) {
            List<DividerStep> served = new ArrayList<>(steps.get(i));
            served.sort(Comparator.comparing(DividerStep::round).thenComparing(DividerStep::to));
            if (i < spans.pinned) {
                settings.add(new DividerSetting(problem.pinned().get(i), served, true));
            } else if (!served.isEmpty()) {
                settings.add(new DividerSetting(middle(served), served, false));
            }
        }
        settings.sort(Comparator.comparing(DividerSetting::opening));
        return settings;
    }

    /** Of the distances served, or the largest opening where that is below: both are within the match tolerance of them all. */
    private Length middle(List<DividerStep> served) {
        double[] distances = served.stream()
                .mapToDouble(step -> spans.distanceMm(step.from(), step.to()))
                .sorted()
                .toArray();
        Length middle = Length.ofMm((distances[0] + distances[distances.length - 1]) / 2);
        return problem.largest()
                .filter(largest -> largest.compareTo(middle) < 0)
                .orElse(middle);
    }
}
