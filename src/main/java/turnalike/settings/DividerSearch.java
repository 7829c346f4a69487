package turnalike.settings;

import turnalike.effort.Effort;
import turnalike.effort.Progress;

/**
 * The whole search: which marks the stick must give, what is worth trying, a good choice, then the proof, number by number from below.
 */
final class DividerSearch {
    /** Exchanges tried by annealing for each number of openings, per mark and mark: enough that the proof seldom finds better. */
    private static final int EXCHANGES_PER_MARK_SQUARED = 150;

    private static final int MOST_EXCHANGES = 200_000;

    /** So many times the first run's exchanges, a few seconds' worth, are tried where no proof can follow. */
    private static final int RUNS_IN_PLACE_OF_PROOF = 20;

    /** With more marks than this, setting the annealing up alone takes longer than anyone waits; the first sound choice stands. */
    private static final int MOST_IMPROVED = 128;

    private final Spans spans;
    private final Effort effort;
    private final StickCover cover;
    /** With the marks that the cover takes from the stick. */
    private final Spans begun;

    private final int[] candidates;
    /** No choice has fewer openings, as far as proven. */
    private int bound;

    private DividerSearch(Spans spans, Effort effort) {
        this.spans = spans;
        this.effort = effort;
        this.cover = StickCover.of(spans, effort);
        this.begun = spans.giving(cover.best());
        this.candidates = Reduction.worthTrying(begun);
    }

    /** @param spans the marks, and the openings allowed; what these cannot reach the stick gives */
    static ProvenChoice search(Spans spans, Effort effort) {
        return new DividerSearch(spans, effort).run();
    }

    private ProvenChoice run() {
        Choice first = Reduction.sound(begun, candidates, effort);
        int inner = begun.wanted();
        if (inner == 0 || (cover.wanting.length == 0 && first.settings() == 0)) {
            return proven(first, true);
        }
        int exchanges = Math.min(MOST_EXCHANGES, EXCHANGES_PER_MARK_SQUARED * inner * inner);
        // With every mark that the stick might give as given at once: no way of taking them has fewer openings.
        Spans loosest = spans.giving(cover.wanting);
        bound = LowerBound.byEntries(loosest, Reduction.worthTrying(loosest));
        if (spans.marks() > MOST_IMPROVED || cover.best().length > cover.bound()) {
            return proven(first, false);
        }
        boolean leastAlready = first.settings() == bound && first.sum() <= inner;
        Annealing improve = new Annealing(spans, everyWay(), cover.wanting, exchanges, effort);
        Choice good = leastAlready ? first : improve.from(first, bound);
        tell(good);
        return spans.marks() > MarkBits.MOST_MARKS
                ? improved(improve, good, RUNS_IN_PLACE_OF_PROOF * exchanges)
                : prove(new StickSearch(spans, cover, good, improve, this::tell, effort));
    }

    /** What is worth trying with whichever marks from the stick; where there are none, what is worth trying at all. */
    private int[] everyWay() {
        return cover.wanting.length == 0 ? candidates : Reduction.worthTrying(spans);
    }

    private ProvenChoice proven(Choice choice, boolean ties) {
        return new ProvenChoice(choice, cover.bound(), bound, ties);
    }

    /** Where the marks are too many for a proof. */
    private ProvenChoice improved(Annealing improve, Choice good, int exchanges) {
        Choice best = good;
        for (int done = 0; done < exchanges && !effort.spent(); done += Annealing.ASK_EVERY) {
            Choice found = improve.goOn(best, bound, Annealing.ASK_EVERY);
            if (found.betterThan(best)) {
                best = found;
                tell(best);
            }
        }
        return proven(best, false);
    }

    private ProvenChoice prove(StickSearch search) {
        while (bound < search.best().settings()) {
            if (search.any(bound) == FewestSearch.Ending.STOPPED) {
                return proven(search.best(), false);
            }
            // Either nothing was found and the bound rises, or a choice of that many is now the best.
            bound = Math.min(bound + 1, search.best().settings());
            tell(search.best());
        }
        FewestSearch.Ending ending = search.best(bound);
        tell(search.best());
        return proven(search.best(), ending != FewestSearch.Ending.STOPPED);
    }

    private void tell(Choice best) {
        effort.report(new Progress(
                "fewest divider settings", best.settings() + (double) spans.pinned, bound + (double) spans.pinned));
    }
}
