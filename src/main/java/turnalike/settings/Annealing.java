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
 * Looks for good choices of openings, and of the marks that the stick gives, by annealing (Kirkpatrick, Gelatt and Vecchi, Science 220,
 * 1983; from memory): with a fixed number of openings and of such marks, one is exchanged for another at random; a choice that leaves
 * fewer marks unreached, or costs fewer steps, is kept, a worse one is kept with a chance that falls as the search goes on. Proves
 * nothing; what it finds, {@link FewestSearch} need not look for.
 */
final class Annealing {
    /** Exchanges between one ask for effort and the next. */
    static final int ASK_EVERY = 64;
    /** In units of the energy below; tried on patterns of 30 to 60 marks, where half and twice as much found no better. */
    private static final double HOTTEST = 1.0;

    private static final double COOLEST = 0.05;

    /** What a choice that reaches every mark, but one past the limit, costs: half a mark that is not reached. */
    private static final double UNSOUND = 1.5;

    /** How often a number of openings is tried before it is given up; a second and third try found one fewer now and then. */
    private static final int TRIES = 3;

    /** Some seconds' worth: a longer one would hardly come to its end. */
    private static final int LONGEST_RUN = 4_000_000;

    private final Spans spans;
    private final int[] candidates;
    private final int[][] entering;
    private final int[] wanting;
    private final StepCount count;
    private final SoundPaths paths;
    private final int exchanges;
    private final Effort effort;
    private final Random random = new Random(20_260_101);
    private Optional<Run> going = Optional.empty();
    private boolean wentForFewer;
    private int longer;

    /**
     * @param wanting the marks that the stick may give; none where every mark can be reached
     * @param exchanges of the first run
     */
    Annealing(Spans spans, int[] candidates, int[] wanting, int exchanges, Effort effort) {
        this.spans = spans;
        this.candidates = candidates;
        this.wanting = wanting;
        this.effort = effort;
        this.count = new StepCount(spans);
        this.paths = new SoundPaths(spans, SoundStart.FEW_NODES);
        this.entering = entering();
        this.exchanges = exchanges;
        this.longer = exchanges;
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
     * From a choice that reaches every mark to the best found in about the first run's exchanges for each number of openings tried.
     *
     * @param least no choice has fewer openings
     */
    Choice from(Choice first, int least) {
        Choice best = first;
        for (int tries = 0; tries < TRIES && best.settings() > Math.max(least, 1) && !effort.spent(); tries++) {
            Optional<Choice> fewer = anneal(forFewer(best, exchanges));
            if (fewer.isPresent()) {
                best = fewer.get();
                tries = -1;
            }
        }
        Choice unpolished = best;
        return anneal(new Run(best.openings(), best.stick(), exchanges, false))
                .filter(polished -> polished.betterThan(unpolished))
                .orElse(unpolished);
    }

    private Run forFewer(Choice best, int exchanges) {
        return new Run(Arrays.copyOf(best.openings(), best.settings() - 1), best.stick(), exchanges, true);
    }

    private Optional<Choice> anneal(Run run) {
        while (!run.isDone() && !effort.spent()) {
            run.exchange(ASK_EVERY);
        }
        return run.best();
    }

    /**
     * Goes on with the annealing where the last call left off, in ever longer runs, by turns for one opening fewer and for fewer steps.
     * Asks for no effort: the caller does.
     *
     * @param least no choice has fewer openings
     * @return the best choice known afterwards
     */
    Choice goOn(Choice best, int least, int exchanges) {
        if (going.isEmpty() || going.get().isDone() || going.get().isIdle(best, least)) {
            going = Optional.of(next(best, least));
        }
        going.get().exchange(exchanges);
        return going.get().best().filter(found -> found.betterThan(best)).orElse(best);
    }

    private Run next(Choice best, int least) {
        boolean open = best.settings() > Math.max(least, 1);
        wentForFewer = open && !wentForFewer;
        if (wentForFewer || !open) {
            longer = Math.min(2 * longer, LONGEST_RUN);
        }
        return wentForFewer ? forFewer(best, longer) : new Run(best.openings(), best.stick(), longer, false);
    }

    /** One run: exchanges while the heat falls. */
    private final class Run {
        private final int[] now;
        private final int[] stick;
        private final int exchanges;
        private final boolean stopWhenAllReached;
        private @Nullable Choice best;
        private double energy;
        private int done;

        Run(int[] start, int[] stick, int exchanges, boolean stopWhenAllReached) {
            this.now = start;
            this.stick = stick;
            this.exchanges = exchanges;
            this.stopWhenAllReached = stopWhenAllReached;
            count.useStick(stick);
            count.count(now, now.length);
            this.energy = energy();
        }

        Optional<Choice> best() {
            return Optional.ofNullable(best);
        }

        boolean isDone() {
            return done >= exchanges || (stopWhenAllReached && best != null);
        }

        /** Whether it looks for what is known already, or for what cannot be. */
        boolean isIdle(Choice known, int least) {
            return stopWhenAllReached
                    ? now.length >= known.settings() || now.length < least
                    : now.length > known.settings();
        }

        /** Tries that many more exchanges, or what is left of them. */
        void exchange(int most) {
            count.useStick(stick);
            int until = Math.min(exchanges, done + most);
            while (done < until && !isDone()) {
                double heat = HOTTEST * (1 - (double) done / exchanges) + COOLEST;
                done++;
                exchangeOne(heat);
            }
        }

        private void exchangeOne(double heat) {
            int drawn = random.nextInt(now.length + stick.length);
            int[] where = drawn < now.length ? now : stick;
            int slot = drawn < now.length ? drawn : drawn - now.length;
            int old = where[slot];
            where[slot] = drawn < now.length ? proposal(now) : other(stick, slot);
            count.count(now, now.length);
            double next = energy();
            if (next <= energy || random.nextDouble() < Math.exp((energy - next) / heat)) {
                energy = next;
                if (count.unreached() == 0 && (best == null || count.sum() <= best.sum())) {
                    Optional<Choice> found = paths.judge(count, now, now.length);
                    if (found.isPresent() && (best == null || found.get().betterThan(best))) {
                        best = found.get();
                    }
                    energy += found.isEmpty() ? UNSOUND : 0;
                }
            } else {
                where[slot] = old;
            }
        }
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

    /** A mark for the stick drawn at random; the one there is where the others have it already. */
    private int other(int[] stick, int slot) {
        int drawn = wanting[random.nextInt(wanting.length)];
        for (int mark : stick) {
            if (mark == drawn) {
                return stick[slot];
            }
        }
        return drawn;
    }

    private double energy() {
        return 3.0 * count.unreached() + 0.25 * count.sum() / Math.max(1, spans.mostSteps - 1);
    }
}
