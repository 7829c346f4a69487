package turnalike.settings;

import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import turnalike.units.Length;

/**
 * The best plan within the limit to the whole error by trying every set of openings on a grid of 0.05 mm, and for each every way to strike
 * every mark, with no code of the search. For few marks without wishes. There may be better plans off the grid; none on it is missed.
 */
final class EveryGridOpening {
    private static final double GRID_MM = 0.05;
    private static final double NOISE_MM = 1e-9;

    record Best(int openings, int sumOfSteps) {}

    private final double[] mm;
    private final double tolerance;
    private final double error;
    private final double limit;
    private final double[] grid;
    private int best = Integer.MAX_VALUE;

    private EveryGridOpening(DividerProblem problem) {
        this.mm = problem.marks().stream().mapToDouble(Length::mm).toArray();
        this.tolerance = problem.matchTolerance().mm();
        this.error = problem.markError().mm();
        this.limit = problem.limit().orElseThrow().mm();
        TreeSet<Long> places = new TreeSet<>();
        for (int a = 0; a < mm.length; a++) {
            for (int b = a + 1; b < mm.length; b++) {
                long middle = Math.round((mm[b] - mm[a]) / GRID_MM);
                long reach = Math.round(tolerance / GRID_MM);
                for (long place = middle - reach; place <= middle + reach; place++) {
                    places.add(place);
                }
            }
        }
        // An opening that serves one distance only is as good at that distance, so of those the exact ones are enough.
        this.grid = places.stream()
                .mapToDouble(place -> place * GRID_MM)
                .filter(d -> pairs(d) > 1 || isExact(d))
                .toArray();
    }

    /** The least openings up to that many, with the least sum of steps; none when none on the grid is sound. */
    static Optional<Best> of(DividerProblem problem, int most) {
        for (int size = 0; size <= most; size++) {
            EveryGridOpening all = new EveryGridOpening(problem);
            all.choose(new double[size], 0, 0);
            if (all.best < Integer.MAX_VALUE) {
                return Optional.of(new Best(size, all.best));
            }
        }
        return Optional.empty();
    }

    private long pairs(double opening) {
        return IntStream.range(0, mm.length)
                .mapToLong(a -> IntStream.range(a + 1, mm.length)
                        .filter(b -> serves(opening, a, b))
                        .count())
                .sum();
    }

    private boolean isExact(double opening) {
        return IntStream.range(0, mm.length)
                .anyMatch(a -> Arrays.stream(mm).anyMatch(b -> Math.abs(b - mm[a] - opening) <= NOISE_MM));
    }

    private boolean serves(double opening, int a, int b) {
        return Math.abs(Math.abs(mm[a] - mm[b]) - opening) <= tolerance + NOISE_MM;
    }

    private void choose(double[] chosen, int count, int from) {
        if (count == chosen.length) {
            if (mayReachAll(chosen)) {
                strike(chosen, 1, new int[mm.length], new double[mm.length]);
            }
            return;
        }
        for (int i = from; i < grid.length; i++) {
            chosen[count] = grid[i];
            choose(chosen, count + 1, i + 1);
        }
    }

    private boolean mayReachAll(double[] chosen) {
        boolean[] reached = new boolean[mm.length];
        reached[0] = true;
        reached[mm.length - 1] = true;
        for (int again = 0; again < mm.length; again++) {
            for (int a = 0; a < mm.length; a++) {
                for (int b = 0; b < mm.length; b++) {
                    reached[b] |= reached[a] && a != b && served(chosen, a, b);
                }
            }
        }
        return IntStream.range(0, mm.length).allMatch(i -> reached[i]);
    }

    private boolean served(double[] chosen, int a, int b) {
        return Arrays.stream(chosen).anyMatch(opening -> serves(opening, a, b));
    }

    /** Gives each inner mark in turn a mark to be struck from and an opening; weighs the whole once all have one. */
    private void strike(double[] chosen, int mark, int[] from, double[] with) {
        if (mark == mm.length - 1) {
            weigh(from, with);
            return;
        }
        for (int start = 0; start < mm.length; start++) {
            for (double opening : chosen) {
                if (start != mark && serves(opening, start, mark)) {
                    from[mark] = start;
                    with[mark] = opening;
                    strike(chosen, mark + 1, from, with);
                }
            }
        }
    }

    private void weigh(int[] from, double[] with) {
        int sum = 0;
        for (int mark = 1; mark < mm.length - 1; mark++) {
            int at = mark;
            int count = 0;
            double place = 0;
            while (at != 0 && at != mm.length - 1) {
                place += at > from[at] ? with[at] : -with[at];
                at = from[at];
                count++;
                if (count > mm.length) {
                    return; // round in a circle
                }
            }
            double miss = mm[at] + place - mm[mark];
            if (Math.abs(miss) + count * error > limit + NOISE_MM) {
                return;
            }
            sum += count;
        }
        best = Math.min(best, sum);
    }
}
