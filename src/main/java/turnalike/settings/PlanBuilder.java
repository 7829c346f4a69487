package turnalike.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.units.Length;
import turnalike.units.Working;

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
        count.count(choice.openings(), choice.settings());
        this.openings = new ArrayList<>(IntStream.range(0, spans.pinned).boxed().toList());
        IntStream.of(choice.openings()).forEach(openings::add);
        openings.forEach(opening -> steps.add(new ArrayList<>()));
    }

    /**
     * The plan: each mark is struck from a mark one step nearer an end; if several offer themselves, with a pinned opening before any
     * other, then over the shortest distance, then from the lower mark.
     */
    static DividerPlan write(DividerProblem problem, Spans spans, ProvenChoice proven) {
        PlanBuilder writer = new PlanBuilder(problem, spans, proven.choice());
        for (int mark = 1; mark < spans.last(); mark++) {
            if (!spans.onTheStick[mark]) {
                writer.strike(mark);
            }
        }
        List<DividerSetting> settings = writer.settings();
        List<MarkError> errors = IntStream.range(0, spans.marks())
                .mapToObj(mark ->
                        MarkError.of(mark, writer.count.steps(mark), problem.markError(), spans.onTheStick[mark]))
                .toList();
        int lowerBound = Math.min(settings.size(), spans.pinned + proven.lowerBound());
        return new DividerPlan(
                settings,
                errors,
                writer.count.sum(),
                lowerBound == settings.size(),
                proven.ties(),
                lowerBound,
                workings(problem, settings.size(), lowerBound));
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

    private Length middle(List<DividerStep> served) {
        double[] distances = served.stream()
                .mapToDouble(step -> spans.distanceMm(step.from(), step.to()))
                .sorted()
                .toArray();
        return Length.ofMm((distances[0] + distances[distances.length - 1]) / 2);
    }

    private static List<Working> workings(DividerProblem problem, int settings, int lowerBound) {
        return List.of(
                new Working(
                        "fewest divider settings",
                        "%d settings; no sound plan has fewer than %d".formatted(settings, lowerBound),
                        Working.DERIVED
                                + ": a labelling spanning tree with a depth limit (Chang and Leu, Information Processing Letters 63, 1997; "
                                + "from memory), by annealing and then branch and bound over all choices of openings",
                        lowerBound == settings
                                ? "proven"
                                : "best found; between %d and %d is not decided".formatted(lowerBound, settings)),
                new Working(
                        "error of a mark",
                        "k steps of %s each: k times that at worst, √k times that as root-sum-square; limit %s, so at most %d steps"
                                .formatted(
                                        problem.markError().formatFinest(problem.units()),
                                        problem.limit().formatFinest(problem.units()),
                                        problem.mostSteps()),
                        "F. Scholz, Tolerance Stack Analysis Methods, Boeing, December 1995",
                        "the root-sum-square figure assumes that the steps err independently"));
    }
}
