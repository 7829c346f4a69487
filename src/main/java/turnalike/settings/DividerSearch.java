package turnalike.settings;

import turnalike.effort.Effort;
import turnalike.effort.Progress;

/** The whole search: what is worth trying, a good choice, then the proof, number by number from below. */
final class DividerSearch {
    /** Exchanges tried by annealing for each number of openings, per mark and mark: enough that the proof seldom finds better. */
    private static final int EXCHANGES_PER_MARK_SQUARED = 150;

    private static final int MOST_EXCHANGES = 200_000;

    /** With more marks than this, setting the annealing up alone takes longer than anyone waits; the first sound choice stands. */
    private static final int MOST_IMPROVED = 128;

    private final Spans spans;
    private final Effort effort;
    private final int[] candidates;

    private DividerSearch(Spans spans, Effort effort) {
        this.spans = spans;
        this.effort = effort;
        this.candidates = Reduction.worthTrying(spans);
    }

    /** @param spans in which every mark can be reached, else {@link IllegalStateException} */
    static Proven search(Spans spans, Effort effort) {
        return new DividerSearch(spans, effort).run();
    }

    private Proven run() {
        Choice first = Reduction.sound(spans, candidates, effort);
        int inner = spans.marks() - 2;
        if (inner == 0 || first.settings() == 0) {
            return new Proven(first, first.settings(), true);
        }
        int exchanges = Math.min(MOST_EXCHANGES, EXCHANGES_PER_MARK_SQUARED * inner * inner);
        int bound = LowerBound.byEntries(spans, candidates);
        if (spans.marks() > MOST_IMPROVED) {
            return new Proven(first, bound, false);
        }
        boolean leastAlready = first.settings() == bound && first.sum() <= inner;
        Improve improve = new Improve(spans, candidates, exchanges, effort);
        Choice good = leastAlready ? first : improve.from(first, bound);
        tell(good, bound);
        if (spans.marks() > MarkBits.MOST_MARKS) {
            return new Proven(good, bound, false);
        }
        return prove(new FewestSearch(spans, candidates, good, improve, effort), bound);
    }

    private Proven prove(FewestSearch search, int from) {
        int bound = from;
        while (bound < search.best().settings()) {
            if (search.any(bound) == FewestSearch.Ending.STOPPED) {
                return new Proven(search.best(), bound, false);
            }
            // Either nothing was found and the bound rises, or a choice of that many is now the best.
            bound = Math.min(bound + 1, search.best().settings());
            tell(search.best(), bound);
        }
        FewestSearch.Ending ending = search.best(bound);
        tell(search.best(), bound);
        return new Proven(search.best(), bound, ending != FewestSearch.Ending.STOPPED);
    }

    private void tell(Choice best, int bound) {
        effort.report(new Progress(
                "fewest divider settings", best.settings() + (double) spans.pinned, bound + (double) spans.pinned));
    }
}
