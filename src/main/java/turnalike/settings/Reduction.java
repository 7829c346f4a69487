package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import turnalike.effort.Effort;

/**
 * Which openings are worth trying, without losing any best plan.
 *
 * <p>An opening that joins one pair of inner marks strikes one mark at two steps or more. The opening from an end straight to that mark
 * in its place makes no more settings and fewer steps, so the first is never in a best plan as long as the second is allowed. Of the
 * openings that do nothing but strike one mark from an end, the shortest is enough. What is said of ends here and in the searches holds
 * for every given mark.
 */
final class Reduction {
    private Reduction() {}

    /** Indices into {@link Spans#openings}, rising, the pinned ones left out. */
    static int[] worthTrying(Spans spans) {
        if (spans.whole.isPresent() && !holdsWith(spans, spans.whole.orElseThrow())) {
            return IntStream.range(spans.pinned, spans.openings.size()).toArray();
        }
        boolean[] direct = directs(spans);
        boolean[] single = new boolean[spans.marks()];
        return IntStream.range(spans.pinned, spans.openings.size())
                .filter(i -> keep(spans, spans.openings.get(i), direct, single))
                .toArray();
    }

    /**
     * Whether the above holds with a limit to the whole error. The opening from an end may miss its mark as the chain in its place did,
     * so far as the match tolerance t allows, and saves k-1 mark errors e; the chain's miss was k·t at most. So no error grows by more
     * than (k-1)(t-e): by nothing where t is at most e, and the opening from an end is free to miss, as one
     * beside a forbidden opening, or as wide as the dividers open, is not.
     */
    private static boolean holdsWith(Spans spans, Spans.WholeLimit limit) {
        return spans.rules.toleranceMm() <= limit.errorMm()
                && spans.rules.forbiddenMm().length == 0
                && !spans.hasForcedMisses();
    }

    private static boolean keep(Spans spans, Opening opening, boolean[] direct, boolean[] single) {
        if (opening.pairs() > 1) {
            return true;
        }
        int low = opening.low()[0];
        int high = opening.high()[0];
        if (!spans.given[low] && !spans.given[high]) {
            return !direct[low] || !direct[high];
        }
        int mark = spans.given[low] ? high : low;
        if (spans.given[mark]) {
            return false;
        }
        boolean first = !single[mark];
        single[mark] = true;
        return first;
    }

    /** By mark, whether an allowed opening strikes it straight from a given one; true for what needs no dividers. */
    static boolean[] directs(Spans spans) {
        boolean[] direct = spans.given.clone();
        for (int mark = 0; mark < spans.marks(); mark++) {
            for (int from = 0; from < spans.marks() && !direct[mark]; from++) {
                direct[mark] = spans.given[from] && !spans.isBarred(from, mark);
            }
        }
        return direct;
    }

    /**
     * A choice that reaches every mark, to begin with: of {@link #enough} openings each that is not missed is dropped, those with the
     * fewest pairs first, as long as the effort lasts.
     */
    static Choice sound(Spans spans, int[] candidates, Effort effort) {
        Choice reaching = reaching(spans, candidates, effort);
        return spans.whole.isEmpty() ? reaching : SoundStart.of(spans, reaching, effort);
    }

    private static Choice reaching(Spans spans, int[] candidates, Effort effort) {
        StepCount count = new StepCount(spans);
        List<Integer> kept = new ArrayList<>();
        for (int opening : enough(spans, candidates, count)) {
            kept.add(opening);
        }
        kept.sort(Comparator.comparing(i -> spans.openings.get(i).pairs()));
        for (int at = 0; at < kept.size() && !effort.spent(); ) {
            Integer dropped = kept.remove(at);
            int[] rest = toArray(kept);
            count.count(rest, rest.length);
            if (count.unreached() > 0) {
                kept.add(at++, dropped);
            }
        }
        int[] chosen = toArray(kept);
        count.count(chosen, chosen.length);
        return Choice.of(count, chosen, chosen.length);
    }

    /** One by one those that reach most; where that comes to a stand, those that start from an end, or all if those do not do. */
    private static int[] enough(Spans spans, int[] candidates, StepCount count) {
        if (spans.marks() <= MarkBits.MOST_MARKS) {
            Optional<int[]> greedy = greedy(new MarkBits(spans), candidates);
            if (greedy.isPresent()) {
                return greedy.orElseThrow();
            }
        }
        int[] fromEnds = Arrays.stream(candidates)
                .filter(i -> spans.openings.get(i).fromGiven(spans.given))
                .toArray();
        count.count(fromEnds, fromEnds.length);
        return count.unreached() == 0 ? fromEnds : candidates;
    }

    private static Optional<int[]> greedy(MarkBits bits, int[] candidates) {
        long[] neighbours = bits.pinned();
        IntStream.Builder chosen = IntStream.builder();
        int unreached = Long.bitCount(bits.unreached(neighbours));
        while (unreached > 0) {
            int least = unreached;
            int best = -1;
            for (int candidate : candidates) {
                long[] joined = neighbours.clone();
                bits.join(joined, candidate);
                int left = Long.bitCount(bits.unreached(joined));
                if (left < least) {
                    least = left;
                    best = candidate;
                }
            }
            if (best < 0) {
                return Optional.empty();
            }
            chosen.add(best);
            bits.join(neighbours, best);
            unreached = least;
        }
        return Optional.of(chosen.build().toArray());
    }

    private static int[] toArray(List<Integer> openings) {
        return openings.stream().mapToInt(Integer::intValue).toArray();
    }
}
