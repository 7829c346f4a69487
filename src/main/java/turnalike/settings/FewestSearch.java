package turnalike.settings;

import java.util.Optional;
import java.util.function.Consumer;
import turnalike.effort.Effort;

/**
 * Searches all choices of a given number of openings, by branch and bound, and so proves what the least number is.
 *
 * <p>The task is a labelling spanning tree (Chang and Leu, Information Processing Letters 63, 1997; from memory) with a limit on depth:
 * marks are nodes, openings are labels, and the fewest labels must join every mark to an end within a few steps. At each node of the
 * search some openings are chosen and some ruled out. {@link Zones} says which zones still need an entry and which of them each opening
 * can enter; when the openings that may still be chosen cannot enter all, as far as {@link ZoneWeights} tell, the node is dropped, and so
 * is each opening that cannot belong to enough. The search branches either on the openings that enter most zones of a set (one of them
 * must be the best of those to come, {@link BranchCandidates}) or on those that enter the scarcest zone (one of them must be chosen), whichever
 * are fewer; each branch rules out the openings of the branches before it, so no choice is looked at twice. Exact; the time grows with
 * the number of openings to the power of the settings. When it takes long, the annealing of {@link Annealing} goes on beside it: what
 * that finds is the answer should the proof not be reached, and the search itself looks only for better.
 *
 * <p>With a limit to the whole error a choice that reaches every mark need not be sound: {@link SoundPaths} judges it, and where it is not,
 * all ways to add what is left of the openings are tried. A sound choice reaches every mark, so none is missed; and what has none with
 * the known misses left out of account has none with them.
 *
 * <p>Tried and dropped: branching by what is handed on to all children together, on several scarce zones, or by the zones' weights (more
 * nodes or hardly fewer), a second start for the set of leaders (no faster), probing each opening at the root and one below it (where the
 * proof is hard, none of some 240 is refuted that way), covering a node's zones exactly (refutes a quarter of the nodes that weights do
 * not, and takes longer than searching them), and bounds apart for each number of openings that start at an end (refutes 8 to 18 % more).
 */
final class FewestSearch {
    /** How a search came to its end. */
    enum Ending {
        /** All choices were looked at, and none reached every mark. */
        NONE,
        /** A choice was found, and, when the best was asked for, all were looked at. */
        FOUND,
        /** The effort was spent first: nothing is proven. */
        STOPPED
    }

    /** Openings looked at between one ask and the next: less than a thousandth of a second's work. */
    private static final int ASK_EVERY = 4096;

    /** To judge the paths of a choice takes as long as looking at so many openings. */
    private static final int JUDGED = 512;

    /** Asks before the annealing goes on beside the search, about half a second's: most proofs are done by then. */
    private static final int ALONE_FOR = 400;

    /** Exchanges of the annealing at each ask from then on: about a third of the time. */
    private static final int EXCHANGES_PER_ASK = 500;

    /** With fewer openings to come, looking for a better set of leaders takes longer than it saves. */
    private static final int CHOOSES_LEADERS_FROM = 4;

    private final Spans spans;
    private final MarkBits bits;
    private final Zones zones;
    private final BranchCandidates leaders = new BranchCandidates();
    private final SumBound sums;
    private final StepCount count;
    private final SoundPaths paths;
    private final int[] candidates;
    private final Annealing meanwhile;
    private final Consumer<Choice> better;
    private final Effort effort;
    private Choice best;
    private int lookedAt;
    private int asks;

    private SearchLevel[] levels = new SearchLevel[0];
    private int[] chosen = new int[0];
    private int chosenCount;
    private boolean wantsBest;
    private int asked;
    private boolean stopped;
    private boolean overtaken;
    private boolean keeps = true;
    /** The fewest openings that reached every mark and were not sound all the same. */
    private int leastUnsound = Integer.MAX_VALUE;

    /**
     * @param spans those whose marks from the stick are decided
     * @param candidates the openings worth trying, pinned ones left out
     * @param known the best choice known; the search looks only for better
     * @param meanwhile looks for better choices now and then while the search takes long
     * @param better is told each better choice
     */
    FewestSearch(
            Spans spans, int[] candidates, Choice known, Annealing meanwhile, Consumer<Choice> better, Effort effort) {
        this.spans = spans;
        this.bits = new MarkBits(spans);
        this.zones = new Zones(bits);
        this.sums = new SumBound(bits, candidates);
        this.count = new StepCount(spans);
        this.paths = new SoundPaths(spans, SoundPaths.MANY_NODES);
        this.candidates = candidates;
        this.best = known;
        this.meanwhile = meanwhile;
        this.better = better;
        this.effort = effort;
    }

    /**
     * From now on only tells whether there is a choice, and keeps none: where more marks are taken as given than may be, it shows what
     * cannot be with fewer, and its choices are none.
     */
    FewestSearch relaxed() {
        keeps = false;
        return this;
    }

    /** Tells it of a better choice found elsewhere. */
    void know(Choice choice) {
        best = choice.betterThan(best) ? choice : best;
    }

    /** Tells it that so many openings were met elsewhere that reach every mark and are not sound. */
    void knowUnsound(int openings) {
        leastUnsound = Math.min(leastUnsound, openings);
    }

    /** The fewest openings known that reach every mark and are not sound, as some mark is past the limit. */
    int leastUnsound() {
        return leastUnsound;
    }

    /** The best choice known now. */
    Choice best() {
        return best;
    }

    /** Looks for any choice of at most that many openings. */
    Ending any(int settings) {
        return run(settings, false);
    }

    /** With the least number of openings known: finds the smallest sum of steps, then the shortest longest step, by looking at all. */
    Ending best(int settings) {
        return run(settings, true);
    }

    private Ending run(int settings, boolean best) {
        wantsBest = best;
        asked = settings;
        overtaken = false;
        stopped = effort.spent();
        if (stopped) {
            return Ending.STOPPED;
        }
        chosen = new int[settings];
        chosenCount = 0;
        levels = new SearchLevel[settings + 1];
        for (int i = 0; i <= settings; i++) {
            levels[i] = new SearchLevel(bits, candidates.length);
        }
        System.arraycopy(bits.pinned(), 0, levels[0].neighbours, 0, bits.marks);
        System.arraycopy(candidates, 0, levels[0].candidates, 0, candidates.length);
        levels[0].size = candidates.length;
        boolean found = search(settings);
        if (overtaken) {
            return Ending.FOUND;
        }
        // Where the paths of some choice are not decided, it may be sound after all.
        return stopped || paths.undecided() ? Ending.STOPPED : found ? Ending.FOUND : Ending.NONE;
    }

    private boolean search(int budget) {
        SearchLevel level = levels[chosenCount];
        lookedAt += 1 + level.size;
        if (lookedAt >= ASK_EVERY) {
            lookedAt = 0;
            pause();
        }
        if (stopped) {
            return false;
        }
        long unreached = bits.unreached(level.neighbours);
        if (unreached == 0) {
            return found(budget);
        }
        if (budget == 0) {
            return false;
        }
        // The bound on the sum counts on every opening's reaching something; one added to an unsound choice need not.
        if (wantsBest && leastUnsound >= asked) {
            level.size = sums.keep(level, budget, mostSum());
        }
        if (level.size == 0) {
            return false;
        }
        return budget == 1 ? last(level) : branch(level, unreached, budget);
    }

    /** Asks whether to go on, and lets the annealing have its share. */
    private void pause() {
        stopped = effort.spent();
        asks++;
        if (!stopped && asks > ALONE_FOR) {
            take(meanwhile.goOn(best, asked, EXCHANGES_PER_ASK));
            overtaken = !wantsBest && best.settings() <= asked;
            stopped = overtaken;
        }
    }

    private boolean branch(SearchLevel level, long unreached, int budget) {
        level.enter(zones, unreached);
        level.weights.turnTo(unreached);
        // With two to come, what is handed on below is the test itself.
        if (budget > 2 && !level.weights.sift(level, budget, chosenCount == 0)) {
            return false;
        }
        int branches = order(level, unreached, budget);
        boolean any = false;
        boolean sister = false;
        for (int i = 0; i < branches && !stopped && (wantsBest || !any); i++) {
            SearchLevel child = levels[chosenCount + 1];
            if (level.handOn(child, i, unreached, budget - 1)) {
                if (sister) {
                    child.weights.keepBeside(level.weights);
                } else {
                    child.weights.takeOver(level.weights);
                }
                sister = true;
                any |= choose(level, level.candidates[level.order[i]], budget);
            }
        }
        return any;
    }

    /** Puts the openings to branch on in front and returns how many they are; 0 when no choice can follow. */
    private int order(SearchLevel level, long unreached, int budget) {
        long counted = zones.apart(unreached);
        if (budget >= CHOOSES_LEADERS_FROM) {
            counted = leaders.choose(level, counted, unreached, budget);
        }
        int branches = leaders.sort(level, counted, budget);
        int scarcest = level.scarcest(unreached);
        int entering = level.entering(scarcest);
        if (entering < branches) {
            level.bringForward(scarcest);
            branches = entering;
        }
        return branches;
    }

    private boolean choose(SearchLevel level, int opening, int budget) {
        SearchLevel child = levels[chosenCount + 1];
        System.arraycopy(level.neighbours, 0, child.neighbours, 0, bits.marks);
        bits.join(child.neighbours, opening);
        chosen[chosenCount++] = opening;
        boolean found = search(budget - 1);
        chosenCount--;
        return found;
    }

    /** Those handed on enter every zone at once, as the openings chosen before the latest leave them; each is tried. */
    private boolean last(SearchLevel level) {
        boolean any = false;
        for (int i = 0; i < level.size && (wantsBest || !any); i++) {
            any |= choose(level, level.candidates[i], 1);
        }
        return any;
    }

    private boolean found(int budget) {
        if (!keeps) {
            return true;
        }
        count.count(chosen, chosenCount);
        Optional<Choice> sound = paths.judge(count, chosen, chosenCount);
        sound.ifPresent(this::take);
        if (sound.isEmpty()) {
            leastUnsound = Math.min(leastUnsound, chosenCount);
        }
        return sound.isPresent() || add(budget, 0);
    }

    /** Where some mark is past the limit though every mark is reached, one opening more may help, whichever; even the same again. */
    private boolean add(int budget, int from) {
        boolean any = false;
        for (int i = from; i < candidates.length && budget > 0 && !stopped && (wantsBest || !any); i++) {
            lookedAt += JUDGED;
            if (lookedAt >= ASK_EVERY) {
                lookedAt = 0;
                pause();
            }
            chosen[chosenCount++] = candidates[i];
            count.count(chosen, chosenCount);
            Optional<Choice> sound = paths.judge(count, chosen, chosenCount);
            sound.ifPresent(this::take);
            any |= sound.isPresent() || add(budget - 1, i);
            chosenCount--;
        }
        return any;
    }

    private void take(Choice choice) {
        if (choice.betterThan(best)) {
            best = choice;
            better.accept(choice);
        }
    }

    /** The greatest sum worth finding: the best one again if the longest step may yet be shorter, else one less. */
    private int mostSum() {
        double longest = 0;
        for (int i = 0; i < chosenCount; i++) {
            longest = Math.max(longest, spans.openings.get(chosen[i]).shortestMm());
        }
        return longest < best.longestMm() - Spans.SLACK_MM ? best.sum() : best.sum() - 1;
    }
}
