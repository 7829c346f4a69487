package turnalike.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.effort.Watch;
import turnalike.units.Length;

/** Turns a choice of openings into settings with their steps, and the errors of the marks. */
final class PlanBuilder {
    /** With more marks the least misses take longer than anyone waits, and each opening stands in the middle of what it serves. */
    static final int MOST_FOR_LEAST_MISSES = 128;

    private final DividerProblem problem;
    private final Spans spans;
    /** Indices into {@link Spans#openings}, the pinned ones first. */
    private final List<Integer> openings;

    private final Strikes strikes;
    private final double[] openingsMm;

    private PlanBuilder(DividerProblem problem, Spans spans, Choice choice) {
        this.problem = problem;
        this.spans = spans;
        this.openings = new ArrayList<>(IntStream.range(0, spans.pinned).boxed().toList());
        IntStream.of(choice.openings()).forEach(openings::add);
        this.strikes = choice.strikes().orElseGet(() -> shortest(choice));
        this.openingsMm = set();
    }

    static DividerPlan write(DividerProblem problem, Spans spans, ProvenChoice proven, Watch watch) {
        PlanBuilder writer = new PlanBuilder(problem, spans, proven.choice());
        List<DividerSetting> settings = writer.settings();
        GivenMarks given = given(problem, proven);
        int lowerBound = Math.min(settings.size(), spans.pinned + proven.lowerBound());
        boolean fewest = given.fewestProven() && lowerBound == settings.size();
        boolean ties = given.fewestProven() && proven.ties();
        return new DividerPlan(
                settings,
                given,
                writer.errors(given),
                writer.strikes.sum(),
                fewest,
                ties,
                lowerBound,
                watch.ending(fewest && ties),
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
                    Length miss = Length.ofMm(LeastMisses.missMm(spans, strikes, openingsMm, mark));
                    return MarkError.of(mark, stick ? 1 : strikes.steps()[mark], miss, problem.markError(), stick);
                })
                .toList();
    }

    /**
     * Each mark is struck from a mark one step nearer a given one; if several offer themselves, with a pinned opening before any other,
     * then over the shortest distance, then from the lower mark.
     */
    private Strikes shortest(Choice choice) {
        StepCount count = new StepCount(spans);
        count.useStick(choice.stick());
        count.count(choice.openings(), choice.settings());
        Strikes shortest = Strikes.none(spans, choice.stick());
        for (int round = 1; round <= spans.mostSteps; round++) {
            for (int mark = 1; mark < spans.last(); mark++) {
                if (count.steps(mark) == round) {
                    strike(shortest, mark);
                }
            }
        }
        return shortest;
    }

    private void strike(Strikes strikes, int mark) {
        int nearest = spans.marks();
        int with = -1;
        int from = -1;
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = spans.openings.get(openings.get(i));
            for (int pair = 0; pair < opening.pairs(); pair++) {
                int other = opening.low()[pair] == mark
                        ? opening.high()[pair]
                        : opening.high()[pair] == mark ? opening.low()[pair] : mark;
                double distance = i < spans.pinned ? 0 : spans.distanceMm(mark, other);
                int steps = strikes.steps()[other];
                if (steps < nearest || (steps == nearest && distance < shortest - Spans.SLACK_MM)) {
                    nearest = steps;
                    with = i;
                    from = other;
                    shortest = distance;
                }
            }
        }
        strikes.strike(mark, from, with);
    }

    /** What each opening is set to: the least misses, or the middle of what it serves where the marks are too many. */
    private double[] set() {
        OpeningRange[] ranges = new OpeningRange[openings.size()];
        for (int i = 0; i < ranges.length; i++) {
            ranges[i] = OpeningRange.of(spans, openings.get(i));
            for (DividerStep step : served(i)) {
                ranges[i] = ranges[i].serving(distanceMm(step), spans.rules);
            }
        }
        if (spans.marks() > MOST_FOR_LEAST_MISSES || allExact(ranges)) {
            return IntStream.range(0, ranges.length)
                    .mapToDouble(i -> middle(ranges[i], served(i)))
                    .toArray();
        }
        double[] least =
                LeastMisses.of(spans, strikes, ranges, problem.markError().mm());
        for (int i = 0; i < least.length; i++) {
            least[i] = tidy(least[i], served(i), ranges[i]);
        }
        return least;
    }

    /** Whether the middle of what it serves misses nothing, for every opening. */
    private boolean allExact(OpeningRange[] ranges) {
        return IntStream.range(0, ranges.length).allMatch(i -> {
            double middle = middle(ranges[i], served(i));
            return served(i).stream().allMatch(step -> Math.abs(distanceMm(step) - middle) <= Spans.SLACK_MM);
        });
    }

    private double middle(OpeningRange range, List<DividerStep> served) {
        double[] distances =
                served.stream().mapToDouble(this::distanceMm).sorted().toArray();
        return distances.length == 0
                ? range.leastMm()
                : range.nearest((distances[0] + distances[distances.length - 1]) / 2);
    }

    /** Rid of the rounding of the programme that found it, where it stands for a distance or the middle of two. */
    private double tidy(double openingMm, List<DividerStep> served, OpeningRange range) {
        double middle = middle(range, served);
        return served.stream()
                .map(this::distanceMm)
                .filter(distance -> Math.abs(distance - openingMm) <= Spans.SLACK_MM)
                .findFirst()
                .orElse(Math.abs(middle - openingMm) <= Spans.SLACK_MM ? middle : openingMm);
    }

    private double distanceMm(DividerStep step) {
        return spans.distanceMm(step.from(), step.to());
    }

    private List<DividerStep> served(int opening) {
        return IntStream.range(0, spans.marks())
                .filter(mark -> strikes.isStruck(mark) && strikes.with()[mark] == opening)
                .mapToObj(mark -> new DividerStep(strikes.from()[mark], mark, strikes.steps()[mark]))
                .sorted(Comparator.comparing(DividerStep::round).thenComparing(DividerStep::to))
                .toList();
    }

    /** The settings that serve a mark, and the pinned ones whether they do or not. */
    private List<DividerSetting> settings() {
        List<DividerSetting> settings = new ArrayList<>();
        for (int i = 0; i < openings.size(); i++) {
            List<DividerStep> served = served(i);
            if (i < spans.pinned) {
                settings.add(new DividerSetting(problem.pinned().get(i), served, true));
            } else if (!served.isEmpty()) {
                settings.add(new DividerSetting(Length.ofMm(openingsMm[i]), served, false));
            }
        }
        settings.sort(Comparator.comparing(DividerSetting::opening));
        return settings;
    }
}
