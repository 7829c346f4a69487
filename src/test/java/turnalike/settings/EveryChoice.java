package turnalike.settings;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.units.Length;

/**
 * The best plan by trying every set of openings, least sets first, with no code of the search. An opening serves the window that
 * begins at a distance between two marks: whatever serves some distances, the window that begins at the least of them serves too.
 */
final class EveryChoice {
    private static final double NOISE_MM = 1e-9;
    private static final int FAR = 1_000;

    /** The best by the contract: openings besides the pinned ones, sum of steps, longest step; openings is -1 when there is no plan. */
    record Best(int openings, int sumOfSteps, double longestMm) {}

    private final DividerProblem problem;
    private final double[] mm;
    private final double[] starts;
    private Best best = new Best(-1, 0, 0);

    private EveryChoice(DividerProblem problem) {
        this.problem = problem;
        this.mm = problem.marks().stream().mapToDouble(Length::mm).toArray();
        this.starts = IntStream.range(0, mm.length)
                .boxed()
                .flatMap(a -> IntStream.range(a + 1, mm.length).mapToObj(b -> mm[b] - mm[a]))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .distinct()
                .toArray();
    }

    static Best of(DividerProblem problem) {
        EveryChoice all = new EveryChoice(problem);
        for (int size = 0; size <= problem.marks().size() && all.best.openings() < 0; size++) {
            all.choose(new double[size], 0, 0);
        }
        return all.best;
    }

    private void choose(double[] chosen, int count, int from) {
        if (count == chosen.length) {
            weigh(chosen);
            return;
        }
        for (int i = from; i < starts.length; i++) {
            chosen[count] = starts[i];
            choose(chosen, count + 1, i + 1);
        }
    }

    private void weigh(double[] chosen) {
        int[] steps = steps(chosen);
        if (Arrays.stream(steps).anyMatch(k -> k >= FAR)) {
            return;
        }
        int sum = 0;
        double longest = 0;
        for (int mark = 1; mark < mm.length - 1; mark++) {
            if (!problem.onTheStick().contains(mark)) {
                sum += steps[mark];
                longest = Math.max(longest, shortestLastStep(chosen, steps, mark));
            }
        }
        Best found = new Best(chosen.length, sum, longest);
        boolean better = best.openings() < 0
                || found.sumOfSteps() < best.sumOfSteps()
                || (found.sumOfSteps() == best.sumOfSteps() && found.longestMm() < best.longestMm() - NOISE_MM);
        if (better) {
            best = found;
        }
    }

    private int[] steps(double[] chosen) {
        int[] steps = new int[mm.length];
        Arrays.fill(steps, FAR);
        steps[0] = 0;
        steps[mm.length - 1] = 0;
        problem.onTheStick().forEach(mark -> steps[mark] = 1);
        int most = (int) Math.floor(problem.limit().mm() / problem.markError().mm() + 1e-9);
        for (int round = 1; round <= most; round++) {
            for (int a = 0; a < mm.length; a++) {
                for (int b = 0; b < mm.length; b++) {
                    if (steps[a] == round - 1 && steps[b] > round && (pinned(a, b) || served(chosen, a, b))) {
                        steps[b] = round;
                    }
                }
            }
        }
        return steps;
    }

    private double shortestLastStep(double[] chosen, int[] steps, int mark) {
        double shortest = Double.POSITIVE_INFINITY;
        for (int a = 0; a < mm.length; a++) {
            if (steps[a] == steps[mark] - 1 && pinned(a, mark)) {
                return 0;
            }
            if (steps[a] == steps[mark] - 1 && served(chosen, a, mark)) {
                shortest = Math.min(shortest, Math.abs(mm[a] - mm[mark]));
            }
        }
        return shortest;
    }

    private boolean served(double[] chosen, int a, int b) {
        double distance = Math.abs(mm[a] - mm[b]);
        return !barred(distance)
                && Arrays.stream(chosen)
                        .anyMatch(start -> distance >= start - NOISE_MM
                                && distance
                                        <= start + 2 * problem.matchTolerance().mm() + NOISE_MM);
    }

    private boolean pinned(int a, int b) {
        double distance = Math.abs(mm[a] - mm[b]);
        return a != b && !barred(distance) && within(problem.pinned(), distance);
    }

    private boolean barred(double distance) {
        return within(problem.forbidden(), distance);
    }

    private boolean within(List<Length> openings, double distance) {
        return openings.stream()
                .anyMatch(opening -> Math.abs(opening.mm() - distance)
                        <= problem.matchTolerance().mm() + NOISE_MM);
    }
}
