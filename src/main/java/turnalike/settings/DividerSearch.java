package turnalike.settings;

import java.util.Optional;
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

    /** How long a short proof may take, some hundredths of a second. */
    private static final int SHORT_PROOF_ASKS = 64;

    /** Of the effort, where there is a limit to the whole error, for the search without it. */
    private static final double SHARE_WITHOUT_LIMIT = 0.5;

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

    /**
     * With a limit to the whole error, first without: what is least then is no more than what is least with it, and mostly its openings
     * can be set and its marks struck so that the limit is kept.
     *
     * @param spans the marks, and the openings allowed; what these cannot reach the stick gives
     */
    static ProvenChoice search(Spans spans, Effort effort) {
        if (spans.whole.isEmpty()) {
            return new DividerSearch(spans, effort).run(0, Optional.empty());
        }
        Effort share = effort.share(SHARE_WITHOUT_LIMIT);
        ProvenChoice without = new DividerSearch(spans.withoutLimit(), untold(share)).run(0, Optional.empty());
        Optional<Choice> sound = judge(spans, without.choice());
        boolean least = sound.filter(each -> each.sum() == without.choice().sum()
                        && each.longestMm() <= without.choice().longestMm() + Spans.SLACK_MM)
                .isPresent();
        return least
                ? new ProvenChoice(sound.orElseThrow(), without.leastStick(), without.lowerBound(), without.ties())
                : new DividerSearch(spans, effort).run(without.lowerBound(), sound);
    }

    /** The same, but nobody is told how far it comes: fewer openings may do without the limit than with it. */
    private static Effort untold(Effort effort) {
        return new Effort() {
            @Override
            public boolean spent() {
                return effort.spent();
            }

            @Override
            public boolean wantsProofAlone() {
                return effort.wantsProofAlone();
            }
        };
    }

    private static Optional<Choice> judge(Spans spans, Choice choice) {
        StepCount count = new StepCount(spans);
        count.useStick(choice.stick());
        count.count(choice.openings(), choice.settings());
        return new SoundPaths(spans, SoundPaths.MANY_NODES).judge(count, choice.openings(), choice.settings());
    }

    /**
     * @param least no choice has fewer openings
     * @param known a sound choice, if one is known
     */
    private ProvenChoice run(int least, Optional<Choice> known) {
        Choice start = Reduction.sound(begun, candidates, effort);
        Choice first = known.filter(each -> each.stick().length < start.stick().length || each.betterThan(start))
                .orElse(start);
        if (first.stick().length > cover.best().length) {
            // Some mark is out of reach only because of what its steps miss; which to take then is not searched for.
            return proven(first, false);
        }
        int inner = begun.wanted();
        if (inner == 0 || (cover.wanting.length == 0 && first.settings() == 0)) {
            return proven(first, true);
        }
        int exchanges = Math.min(MOST_EXCHANGES, EXCHANGES_PER_MARK_SQUARED * inner * inner);
        // With every mark that the stick might give as given at once: no way of taking them has fewer openings.
        Spans loosest = spans.giving(cover.wanting);
        bound = Math.max(least, LowerBound.byEntries(loosest, Reduction.worthTrying(loosest)));
        if (spans.marks() > MOST_IMPROVED || cover.best().length > cover.bound()) {
            return proven(first, false);
        }
        boolean leastAlready = first.settings() == bound && first.sum() <= inner;
        Annealing improve = new Annealing(spans, everyWay(), cover.wanting, exchanges, effort);
        Choice good = leastAlready ? first : good(improve, first);
        tell(good);
        return spans.marks() > MarkBits.MOST_MARKS
                ? improved(improve, good, RUNS_IN_PLACE_OF_PROOF * exchanges)
                : prove(new StickSearch(spans, cover, good, improve, this::tell, effort));
    }

    /** Where only a proof is wanted, a short one is tried first: mostly it settles what annealing would take ten times as long to leave open. */
    private Choice good(Annealing improve, Choice first) {
        Choice start = first;
        if (effort.wantsProofAlone() && spans.marks() <= MarkBits.MOST_MARKS) {
            Effort few = Effort.ofAsks(SHORT_PROOF_ASKS);
            Effort shortly = () -> effort.spent() || few.spent();
            start = prove(new StickSearch(spans, cover, first, improve, this::tell, shortly))
                    .choice();
        }
        return improve.from(start, bound);
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
