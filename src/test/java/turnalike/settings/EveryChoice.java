package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import turnalike.units.Length;

/**
 * The best plan by trying every set of marks from the stick and every set of openings, least sets first, with no code of the search. An
 * opening serves the window that begins at a distance between two marks, or is the largest there is: whatever serves some distances,
 * that one serves too. Counts steps only: for a limit that leaves room for every miss.
 */
final class EveryChoice {
    private static final double NOISE_MM = 1e-9;
    private static final int FAR = 1_000;

    /**
     * The best by the contract: marks from the stick for want of an opening, openings besides the pinned ones, sum of steps, longest
     * step; openings is -1 when there is no plan.
     */
    record Best(int stick, int openings, int sumOfSteps, double longestMm) {}

    private final DividerProblem problem;
    private final double[] mm;
    private final double[] starts;
    private final double tolerance;
    private final double smallest;
    private final double largest;
    private final boolean[][] pinned;
    private final boolean[][] barred;
    private List<List<Integer>> sticks = List.of(List.of());
    private List<Integer> stick = List.of();
    private Best best = new Best(0, -1, 0, 0);

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
        this.tolerance = problem.matchTolerance().mm();
        this.smallest = problem.smallest().map(Length::mm).orElse(0.0);
        this.largest = problem.largest().map(Length::mm).orElse(Double.MAX_VALUE);
        this.pinned = forEachTwo(this::isPinned);
        this.barred = forEachTwo(this::isBarred);
    }

    static Best of(DividerProblem problem) {
        if (!new EveryChoice(problem.withAnyOpening()).wanting().isEmpty()) {
            return new Best(0, -1, 0, 0);
        }
        EveryChoice all = new EveryChoice(problem);
        all.findSticks();
        for (int size = 0; size <= problem.marks().size() && all.best.openings() < 0; size++) {
            for (List<Integer> stick : all.sticks) {
                all.stick = stick;
                all.choose(new double[size], 0, 0);
            }
        }
        return all.best;
    }

    /** What all openings together do not reach. */
    private List<Integer> wanting() {
        int[] steps = steps(starts);
        return IntStream.range(0, mm.length)
                .filter(mark -> steps[mark] >= FAR)
                .boxed()
                .toList();
    }

    /** Every smallest set of wanting marks with which all openings together reach every mark. */
    private void findSticks() {
        List<Integer> wanting = wanting();
        for (int size = 0; ; size++) {
            List<List<Integer>> found = new ArrayList<>();
            for (int set = 0; set < 1 << wanting.size(); set++) {
                int these = set;
                stick = IntStream.range(0, wanting.size())
                        .filter(i -> (these >> i & 1) == 1)
                        .mapToObj(wanting::get)
                        .toList();
                if (stick.size() == size && wanting().isEmpty()) {
                    found.add(stick);
                }
            }
            if (!found.isEmpty()) {
                sticks = found;
                return;
            }
        }
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
            if (!isGiven(mark)) {
                sum += steps[mark];
                longest = Math.max(longest, shortestLastStep(chosen, steps, mark));
            }
        }
        Best found = new Best(stick.size(), chosen.length, sum, longest);
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
        for (int mark = 0; mark < mm.length; mark++) {
            steps[mark] = isGiven(mark) ? 0 : FAR;
        }
        int most = problem.limit()
                .map(limit -> (int) Math.floor(limit.mm() / problem.markError().mm() + 1e-9))
                .orElse(3);
        for (int round = 1; round <= most; round++) {
            for (int a = 0; a < mm.length; a++) {
                for (int b = 0; b < mm.length; b++) {
                    if (steps[a] == round - 1 && steps[b] > round && (pinned[a][b] || served(chosen, a, b))) {
                        steps[b] = round;
                    }
                }
            }
        }
        return steps;
    }

    private boolean isGiven(int mark) {
        return mark == 0
                || mark == mm.length - 1
                || problem.onTheStick().contains(mark)
                || problem.squares().contains(mark)
                || problem.squares().contains(mark - 1)
                || stick.contains(mark);
    }

    private double shortestLastStep(double[] chosen, int[] steps, int mark) {
        double shortest = Double.POSITIVE_INFINITY;
        for (int a = 0; a < mm.length; a++) {
            if (steps[a] == steps[mark] - 1 && pinned[a][mark]) {
                return 0;
            }
            if (steps[a] == steps[mark] - 1 && served(chosen, a, mark)) {
                shortest = Math.min(shortest, Math.abs(mm[a] - mm[mark]));
            }
        }
        return shortest;
    }

    private boolean served(double[] chosen, int a, int b) {
        if (barred[a][b]) {
            return false;
        }
        double distance = Math.abs(mm[a] - mm[b]);
        for (double start : chosen) {
            if (distance < smallest - NOISE_MM) {
                return false;
            }
            if (Math.abs(distance - Math.min(start + tolerance, largest)) <= tolerance + NOISE_MM) {
                return true;
            }
        }
        return false;
    }

    private boolean isPinned(int a, int b) {
        double distance = Math.abs(mm[a] - mm[b]);
        return a != b && !isBarred(a, b) && within(problem.pinned(), distance);
    }

    /** What hangs on two marks alone, told once for each two: it is asked for with every set of openings. */
    private boolean[][] forEachTwo(BiPredicate<Integer, Integer> what) {
        boolean[][] out = new boolean[mm.length][mm.length];
        for (int a = 0; a < mm.length; a++) {
            for (int b = 0; b < mm.length; b++) {
                out[a][b] = what.test(a, b);
            }
        }
        return out;
    }

    /** Forbidden, or some of a square lies between the two legs. */
    private boolean isBarred(int a, int b) {
        double low = Math.min(mm[a], mm[b]);
        double high = Math.max(mm[a], mm[b]);
        return within(problem.forbidden(), high - low)
                || problem.squares().stream().anyMatch(square -> mm[square] < high && mm[square + 1] > low);
    }

    private boolean within(List<Length> openings, double distance) {
        return openings.stream()
                .anyMatch(opening -> Math.abs(opening.mm() - distance)
                        <= problem.matchTolerance().mm() + NOISE_MM);
    }
}
