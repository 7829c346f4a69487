package turnalike.settings;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import turnalike.effort.Effort;

/**
 * Which marks the stick must give, and how few will do.
 *
 * <p>A mark is <em>wanting</em> when no chain of the allowed openings, all of them at hand, carries a given mark to it within the allowed
 * steps. A wanting mark taken from the stick is given then, and its <em>ball</em>, the wanting marks within so many steps of it, is no
 * longer wanting: no chain from another mark can run through a given one, since that one would be nearer. So the fewest marks are the
 * fewest balls that cover all wanting marks. Without a limit to the steps the balls are the connected parts, and one mark of each does.
 * In general it is a set cover, solved by branch and bound: branch on the mark that the fewest balls hold, bound by marks no two of which
 * share a ball. (Derived here.) Exact given the effort; spent, the best found and the bound stand.
 */
final class StickCover {
    /** Nodes between one ask for effort and the next: some hundredths of a millisecond each. */
    private static final int ASK_EVERY = 16;

    /** The wanting marks, rising; the sets below go by places in it. */
    final int[] wanting;

    private final List<BitSet> balls;
    private final Effort effort;
    private BitSet best;
    private int bound;
    private int nodes;
    private boolean stopped;

    private StickCover(Spans spans, Effort effort) {
        this.effort = effort;
        int[] all = IntStream.range(0, spans.openings.size()).toArray();
        StepCount count = new StepCount(spans);
        count.count(all, all.length);
        wanting = IntStream.range(0, spans.marks())
                .filter(mark -> count.steps(mark) == Integer.MAX_VALUE)
                .toArray();
        List<BitSet> joined = wanting.length == 0 ? List.of() : joined(spans);
        balls = IntStream.of(wanting)
                .mapToObj(mark -> ball(spans, joined, mark))
                .toList();
        best = greedy();
        bound = apart(everyMark()).cardinality();
    }

    /** The fewest marks, or the fewest found when the effort is spent first. */
    static StickCover of(Spans spans, Effort effort) {
        StickCover cover = new StickCover(spans, effort);
        cover.search(new BitSet(), cover.everyMark());
        if (!cover.stopped) {
            cover.bound = cover.best.cardinality();
        }
        return cover;
    }

    /** The marks found, rising. */
    int[] best() {
        return marks(best);
    }

    /** No fewer will do. */
    int bound() {
        return bound;
    }

    /** The places of all wanting marks. */
    BitSet everyMark() {
        BitSet every = new BitSet();
        every.set(0, wanting.length);
        return every;
    }

    /** What a mark covers, itself included; shared, not to be changed. */
    BitSet ball(int place) {
        return balls.get(place);
    }

    /** The marks at those places, rising. */
    int[] marks(BitSet places) {
        return places.stream().map(place -> wanting[place]).toArray();
    }

    /** Of those places the one that the fewest of the allowed ones cover. */
    int scarcest(BitSet uncovered, BitSet allowed) {
        int scarcest = -1;
        int fewest = Integer.MAX_VALUE;
        for (int place = uncovered.nextSetBit(0); place >= 0; place = uncovered.nextSetBit(place + 1)) {
            int coverers = common(balls.get(place), allowed).cardinality();
            if (coverers < fewest) {
                fewest = coverers;
                scarcest = place;
            }
        }
        return scarcest;
    }

    /** Places no two of which one mark covers, as many as fit: each takes a mark of its own. */
    BitSet apart(BitSet uncovered) {
        BitSet apart = new BitSet();
        BitSet touched = new BitSet();
        uncovered.stream()
                .boxed()
                .sorted((a, b) ->
                        Integer.compare(balls.get(a).cardinality(), balls.get(b).cardinality()))
                .forEach(place -> {
                    if (!touched.intersects(balls.get(place))) {
                        apart.set(place);
                        touched.or(balls.get(place));
                    }
                });
        return apart;
    }

    static BitSet common(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    static BitSet less(BitSet one, BitSet other) {
        BitSet rest = (BitSet) one.clone();
        rest.andNot(other);
        return rest;
    }

    /** By mark, the marks one step away. */
    private static List<BitSet> joined(Spans spans) {
        List<BitSet> joined = Stream.generate(BitSet::new).limit(spans.marks()).toList();
        for (Opening opening : spans.openings) {
            for (int i = 0; i < opening.pairs(); i++) {
                joined.get(opening.low()[i]).set(opening.high()[i]);
                joined.get(opening.high()[i]).set(opening.low()[i]);
            }
        }
        return joined;
    }

    private BitSet ball(Spans spans, List<BitSet> joined, int mark) {
        BitSet within = new BitSet();
        within.set(mark);
        BitSet latest = within;
        for (int step = 1; step <= spans.mostSteps && !latest.isEmpty(); step++) {
            BitSet next = new BitSet();
            latest.stream().forEach(each -> next.or(joined.get(each)));
            next.andNot(within);
            within.or(next);
            latest = next;
        }
        BitSet places = new BitSet();
        IntStream.range(0, wanting.length)
                .filter(place -> within.get(wanting[place]))
                .forEach(places::set);
        return places;
    }

    private BitSet greedy() {
        BitSet chosen = new BitSet();
        BitSet uncovered = everyMark();
        while (!uncovered.isEmpty()) {
            int widest = 0;
            int most = 0;
            for (int place = 0; place < wanting.length; place++) {
                int covers = common(balls.get(place), uncovered).cardinality();
                if (covers > most) {
                    most = covers;
                    widest = place;
                }
            }
            chosen.set(widest);
            uncovered.andNot(balls.get(widest));
        }
        return chosen;
    }

    private void search(BitSet chosen, BitSet uncovered) {
        if (uncovered.isEmpty()) {
            best = chosen.cardinality() < best.cardinality() ? (BitSet) chosen.clone() : best;
            return;
        }
        if (chosen.cardinality() + apart(uncovered).cardinality() >= best.cardinality() || stops()) {
            return;
        }
        List<BitSet> tried = new ArrayList<>();
        for (int place : byWorth(balls.get(scarcest(uncovered, everyMark())), uncovered)) {
            BitSet covers = common(balls.get(place), uncovered);
            boolean outdone =
                    tried.stream().anyMatch(earlier -> less(covers, earlier).isEmpty());
            if (!outdone && !stopped) {
                tried.add(covers);
                chosen.set(place);
                search(chosen, less(uncovered, covers));
                chosen.clear(place);
            }
        }
    }

    private boolean stops() {
        if (nodes++ % ASK_EVERY == 0) {
            stopped = stopped || effort.spent();
        }
        return stopped;
    }

    private int[] byWorth(BitSet places, BitSet uncovered) {
        return places.stream()
                .boxed()
                .sorted((a, b) -> Integer.compare(
                        common(balls.get(b), uncovered).cardinality(),
                        common(balls.get(a), uncovered).cardinality()))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
