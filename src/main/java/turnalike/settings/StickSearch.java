package turnalike.settings;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import turnalike.effort.Effort;
import turnalike.settings.FewestSearch.Ending;

/**
 * The exact search over all ways to take as few marks from the stick as will do, and for each over all choices of openings.
 *
 * <p>Where every mark can be reached there is one way, no mark at all, and this is {@link FewestSearch} alone. Else it branches on the
 * wanting mark that the fewest marks cover, each branch ruling out those before it, so that no way is met twice. Before it branches it
 * asks {@link FewestSearch} with every mark that may still be taken as given at once: what no choice of openings does then, none does
 * on any way from here, since a mark more that is given only shortens the chains. Where there is a choice, it has to look. What is found
 * out of a node is kept, for the same nodes come again with each number of openings.
 */
final class StickSearch {
    private final Spans spans;
    private final StickCover cover;
    private final int most;
    private final Annealing meanwhile;
    private final Consumer<Choice> better;
    private final Effort effort;
    private final Map<Node, Range> known = new HashMap<>();
    private Choice best;
    private int leastUnsound = Integer.MAX_VALUE;
    private Optional<Leaf> latest = Optional.empty();

    /** What is taken from the stick, and what may be besides. */
    private record Node(BitSet taken, BitSet allowed) {}

    /** With fewer openings than {@code least} there is none from here; with {@code found} it could not be ruled out. */
    private record Range(int least, int found) {
        static final Range OPEN = new Range(0, Integer.MAX_VALUE);
    }

    /** The search that was used last: it goes on where it was when the same marks come again. */
    private record Leaf(BitSet taken, FewestSearch search) {}

    /**
     * @param spans nothing taken from the stick yet but what the turner wishes
     * @param cover of them, done
     * @param known the best choice known; the search looks only for better
     * @param meanwhile looks for better choices now and then while the search takes long
     * @param better is told each better choice
     */
    StickSearch(
            Spans spans, StickCover cover, Choice known, Annealing meanwhile, Consumer<Choice> better, Effort effort) {
        this.spans = spans;
        this.cover = cover;
        this.most = cover.best().length;
        this.best = known;
        this.meanwhile = meanwhile;
        this.better = better;
        this.effort = effort;
    }

    /** The best choice known now. */
    Choice best() {
        return best;
    }

    /** Looks for any choice of at most that many openings. */
    Ending any(int settings) {
        return visit(new BitSet(), cover.everyMark(), cover.everyMark(), settings, false);
    }

    /** With the least number of openings known: the smallest sum of steps, then the shortest longest step, by looking at all. */
    Ending best(int settings) {
        return visit(new BitSet(), cover.everyMark(), cover.everyMark(), settings, true);
    }

    private Ending visit(BitSet taken, BitSet uncovered, BitSet allowed, int settings, boolean all) {
        if (uncovered.isEmpty()) {
            return atLeaf(taken, settings, all);
        }
        if (taken.cardinality() + cover.apart(uncovered).cardinality() > most) {
            return Ending.NONE;
        }
        Ending relaxed = relaxed(new Node((BitSet) taken.clone(), (BitSet) allowed.clone()), settings);
        if (relaxed != Ending.FOUND || (!all && best.settings() <= settings)) {
            return relaxed;
        }
        return branch(taken, uncovered, allowed, settings, all);
    }

    private Ending branch(BitSet taken, BitSet uncovered, BitSet allowed, int settings, boolean all) {
        BitSet left = (BitSet) allowed.clone();
        boolean found = false;
        BitSet coverers = StickCover.common(cover.ball(cover.scarcest(uncovered, allowed)), allowed);
        for (int place = coverers.nextSetBit(0); place >= 0; place = coverers.nextSetBit(place + 1)) {
            taken.set(place);
            left.clear(place);
            BitSet rest = StickCover.less(uncovered, cover.ball(place));
            Ending ending = visit(taken, rest, left, settings, all);
            taken.clear(place);
            found |= ending == Ending.FOUND;
            if (ending == Ending.STOPPED || (found && !all)) {
                return ending;
            }
        }
        return found ? Ending.FOUND : Ending.NONE;
    }

    private Ending atLeaf(BitSet taken, int settings, boolean all) {
        Node node = new Node((BitSet) taken.clone(), new BitSet());
        Range range = known.getOrDefault(node, Range.OPEN);
        if (settings < range.least()) {
            return Ending.NONE;
        }
        Leaf leaf = latest.filter(each -> each.taken().equals(taken)).orElseGet(() -> leaf(node.taken()));
        latest = Optional.of(leaf);
        FewestSearch search = leaf.search();
        search.know(best);
        search.knowUnsound(leastUnsound);
        Ending ending = all ? search.best(settings) : search.any(settings);
        best = search.best();
        leastUnsound = search.leastUnsound();
        if (ending == Ending.NONE && !all) {
            known.put(node, new Range(settings + 1, range.found()));
        }
        return ending;
    }

    private Leaf leaf(BitSet taken) {
        Spans decided = spans.giving(cover.marks(taken));
        int[] candidates = Reduction.worthTrying(decided);
        return new Leaf(taken, new FewestSearch(decided, candidates, best, meanwhile, better, effort));
    }

    /** Whether there are choices with every allowed mark given; found too when meanwhile a choice came up that is as good. */
    private Ending relaxed(Node node, int settings) {
        Range range = known.getOrDefault(node, Range.OPEN);
        if (settings < range.least()) {
            return Ending.NONE;
        }
        if (settings >= range.found()) {
            return Ending.FOUND;
        }
        BitSet any = (BitSet) node.taken().clone();
        any.or(node.allowed());
        Spans given = spans.giving(cover.marks(any));
        FewestSearch search =
                new FewestSearch(given, Reduction.worthTrying(given), best, meanwhile, better, effort).relaxed();
        Ending ending = search.any(settings);
        boolean overtaken = search.best().betterThan(best);
        best = search.best();
        if (ending == Ending.NONE) {
            known.put(node, new Range(settings + 1, range.found()));
        } else if (ending == Ending.FOUND && !overtaken) {
            known.put(node, new Range(range.least(), settings));
        }
        return ending;
    }
}
