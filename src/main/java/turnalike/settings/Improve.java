package turnalike.settings;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import turnalike.effort.Effort;

/**
 * Looks for good choices of openings by annealing (Kirkpatrick, Gelatt and Vecchi, Science 220, 1983; from memory): with a fixed number
 * of openings, one is exchanged for another at random; a choice that leaves fewer marks unreached, or costs fewer steps, is kept, a
 * worse one is kept with a chance that falls as the search goes on. Proves nothing; what it finds, {@link FewestSearch} need not look for.
 */
final class Improve {
    private static final int ASK_EVERY = 64;
    /** In units of the energy below; tried on patterns of 30 to 60 marks, where half and twice as much found no better. */
    private static final double HOTTEST = 1.0;

    private static final double COOLEST = 0.05;
    /** How often a number of openings is tried before it is given up; a second and third try found one fewer now and then. */
    private static final int TRIES = 3;

    private final Spans spans;
    private final int[] candidates;
    private final int[][] entering;
    private final StepCount count;
    private final Effort effort;
    private final Random random = new Random(20_260_101);

    Improve(Spans spans, int[] candidates, Effort effort) {
        this.spans = spans;
        this.candidates = candidates;
        this.effort = effort;
        this.count = new StepCount(spans);
        this.entering = entering();
    }

    /** For each mark, the candidates with a step to or from it. */
    private int[][] entering() {
        List<IntStream.Builder> entering =
                Stream.generate(IntStream::builder).limit(spans.marks()).toList();
        for (int candidate : candidates) {
            Opening opening = spans.openings.get(candidate);
            BitSet touched = new BitSet();
            for (int i = 0; i < opening.pairs(); i++) {
                touched.set(opening.low()[i]);
                touched.set(opening.high()[i]);
            }
            touched.stream().forEach(mark -> entering.get(mark).add(candidate));
        }
        return entering.stream().map(each -> each.build().toArray()).toArray(int[][]::new);
    }

    /**
     * From a choice that reaches every mark to the best found in about that many exchanges for each number of openings tried.
     *
     * @param least no choice has fewer openings
     */
    Choice from(Choice first, int exchanges, int least) {
        Choice best = first;
        for (int tries = 0; tries < TRIES && best.settings() > Math.max(least, 1) && !effort.spent(); tries++) {
            Optional<Choice> fewer = anneal(Arrays.copyOf(best.openings(), best.settings() - 1), exchanges, true);
            if (fewer.isPresent()) {
                best = fewer.get();
                tries = -1;
            }
        }
        Choice unpolished = best;
        return anneal(best.openings(), exchanges, false)
                .filter(polished -> polished.betterThan(unpolished))
                .orElse(unpolished);
    }

    private Optional<Choice> anneal(int[] start, int exchanges, boolean stopWhenAllReached) {
        int[] now = start;
        count.count(now, now.length);
        double energy = energy();
        @Nullable Choice best = null;
        for (int i = 0; i < exchanges; i++) {
            if (i % ASK_EVERY == 0 && effort.spent()) {
                break;
            }
            double heat = HOTTEST * (1 - (double) i / exchanges) + COOLEST;
            int slot = random.nextInt(now.length);
            int old = now[slot];
            now[slot] = proposal(now);
            count.count(now, now.length);
            double next = energy();
            if (next <= energy || random.nextDouble() < Math.exp((energy - next) / heat)) {
                energy = next;
                if (count.unreached() == 0 && (best == null || count.sum() <= best.sum())) {
                    Choice found = Choice.of(count, now, now.length);
                    if (best == null || found.betterThan(best)) {
                        best = found;
                    }
                    if (stopWhenAllReached) {
                        return Optional.of(best);
                    }
                }
            } else {
                now[slot] = old;
            }
        }
        return Optional.ofNullable(best);
    }

    /** An opening that touches a mark drawn at random, by preference one that the last count left unreached. */
    private int proposal(int[] now) {
        int mark = 1 + random.nextInt(spans.marks() - 2);
        for (int tries = 0; tries < 8 && count.steps(mark) != Integer.MAX_VALUE; tries++) {
            mark = 1 + random.nextInt(spans.marks() - 2);
        }
        int[] pool = entering[mark].length == 0 ? candidates : entering[mark];
        int picked = pool[random.nextInt(pool.length)];
        for (int opening : now) {
            if (opening == picked) {
                return candidates[random.nextInt(candidates.length)];
            }
        }
        return picked;
    }

    private double energy() {
        return 3.0 * count.unreached() + 0.25 * count.sum() / Math.max(1, spans.mostSteps - 1);
    }
}
