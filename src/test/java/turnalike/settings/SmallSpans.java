package turnalike.settings;

import java.util.Arrays;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Few invented marks with wishes of all kinds, small enough that every set of openings can be tried, and plain answers about them. */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SmallSpans(Spans spans, int[] candidates) {
    static final int FAR = Integer.MAX_VALUE;

    /** Four to six marks; now and then one on the stick, a pinned opening, a forbidden one. */
    static SmallSpans random(Random random) {
        int count = 4 + random.nextInt(3);
        TreeSet<Integer> places = new TreeSet<>();
        while (places.size() < count) {
            places.add(random.nextInt(2 * count + 4));
        }
        double[] mm = places.stream().mapToDouble(place -> 2.5 * place).toArray();
        boolean[] stick = new boolean[count];
        stick[1 + random.nextInt(count - 2)] = random.nextInt(3) == 0;
        double[] pinned = random.nextInt(3) == 0 ? new double[] {between(mm, random)} : new double[0];
        double[] forbidden = random.nextInt(3) == 0 ? new double[] {between(mm, random)} : new double[0];
        Spans spans = Spans.along(
                mm, random.nextBoolean() ? 0.1 : 1.3, 1 + random.nextInt(count - 2), stick, pinned, forbidden);
        return new SmallSpans(
                spans, IntStream.range(spans.pinned, spans.openings.size()).toArray());
    }

    private static double between(double[] mm, Random random) {
        int low = random.nextInt(mm.length - 1);
        return mm[low + 1 + random.nextInt(mm.length - 1 - low)] - mm[low];
    }

    /** Some of the candidates, at most that many. */
    int[] draw(int most, Random random) {
        return random.ints(0, Math.max(1, candidates.length))
                .limit(most)
                .distinct()
                .filter(i -> i < candidates.length)
                .map(i -> candidates[i])
                .toArray();
    }

    int[] without(int[] chosen) {
        return Arrays.stream(candidates)
                .filter(i -> Arrays.stream(chosen).noneMatch(c -> c == i))
                .toArray();
    }

    /** Tells every set of at most that many of {@code rest} which together with {@code chosen} reaches every mark. */
    void completions(int[] chosen, int[] rest, int most, Consumer<int[]> use) {
        for (int set = 0; set < 1 << rest.length; set++) {
            if (Integer.bitCount(set) <= most) {
                int these = set;
                int[] more = IntStream.range(0, rest.length)
                        .filter(i -> (these >> i & 1) == 1)
                        .map(i -> rest[i])
                        .toArray();
                if (Arrays.stream(steps(both(chosen, more))).noneMatch(step -> step == FAR)) {
                    use.accept(more);
                }
            }
        }
    }

    static int[] both(int[] some, int[] others) {
        return IntStream.concat(Arrays.stream(some), Arrays.stream(others)).toArray();
    }

    /** Steps to each mark by going over all pairs again and again; {@link #FAR} where the allowed steps do not get. */
    int[] steps(int[] chosen) {
        int[] steps = new int[spans.marks()];
        Arrays.fill(steps, FAR);
        for (int mark = 0; mark < spans.marks(); mark++) {
            steps[mark] = spans.given[mark] ? 0 : FAR;
        }
        int[] all = both(IntStream.range(0, spans.pinned).toArray(), chosen);
        for (int again = 0; again < spans.marks(); again++) {
            for (int opening : all) {
                Opening pairs = spans.openings.get(opening);
                for (int i = 0; i < pairs.pairs(); i++) {
                    relax(steps, pairs.low()[i], pairs.high()[i]);
                    relax(steps, pairs.high()[i], pairs.low()[i]);
                }
            }
        }
        return steps;
    }

    private void relax(int[] steps, int from, int to) {
        if (steps[from] < spans.mostSteps && steps[from] + 1 < steps[to]) {
            steps[to] = steps[from] + 1;
        }
    }

    /** The sum of steps of marks that dividers reach. */
    int sum(int[] steps) {
        return IntStream.range(1, spans.last())
                .filter(mark -> !spans.given[mark] && steps[mark] != FAR)
                .map(mark -> steps[mark])
                .sum();
    }

    /** The bits of the marks that are not reached. */
    long unreached(int[] chosen) {
        int[] steps = steps(chosen);
        long out = 0;
        for (int mark = 0; mark < steps.length; mark++) {
            out |= steps[mark] == FAR ? 1L << mark : 0;
        }
        return out;
    }
}
