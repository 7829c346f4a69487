package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.effort.Effort;

/**
 * Which openings are worth trying, without losing any best plan.
 *
 * <p>An opening that joins one pair of inner marks strikes one mark at two steps or more. The opening from an end straight to that mark
 * in its place makes no more settings and fewer steps, so the first is never in a best plan as long as the second is allowed. Of the
 * openings that do nothing but strike one mark from an end, the shortest is enough.
 */
final class Reduction {
    private Reduction() {}

    /** Indices into {@link Spans#openings}, rising, the pinned ones left out. */
    static int[] worthTrying(Spans spans) {
        boolean[] direct = directs(spans);
        boolean[] single = new boolean[spans.marks()];
        return IntStream.range(spans.pinned, spans.openings.size())
                .filter(i -> keep(spans, spans.openings.get(i), direct, single))
                .toArray();
    }

    private static boolean keep(Spans spans, Opening opening, boolean[] direct, boolean[] single) {
        if (opening.pairs() > 1) {
            return true;
        }
        int low = opening.low()[0];
        int high = opening.high()[0];
        if (!spans.isEnd(low) && !spans.isEnd(high)) {
            return !direct[low] || !direct[high];
        }
        int mark = spans.isEnd(low) ? high : low;
        boolean first = !single[mark];
        single[mark] = true;
        return first;
    }

    /** By mark, whether an allowed opening strikes it straight from an end; true for what needs no dividers. */
    static boolean[] directs(Spans spans) {
        boolean[] direct = new boolean[spans.marks()];
        for (int mark = 0; mark < spans.marks(); mark++) {
            direct[mark] = spans.isEnd(mark)
                    || spans.onTheStick[mark]
                    || !spans.isBarred(0, mark)
                    || !spans.isBarred(mark, spans.last());
        }
        return direct;
    }

    /**
     * A choice that reaches every mark, to begin with: the openings that start from an end, or all if those do not do, and of them each
     * that is not missed is dropped, those with the fewest pairs first, as long as the effort lasts.
     */
    static Choice sound(Spans spans, int[] candidates, Effort effort) {
        int[] fromEnds = Arrays.stream(candidates)
                .filter(i -> spans.openings.get(i).fromAnEnd(spans.last()))
                .toArray();
        StepCount count = new StepCount(spans);
        count.count(fromEnds, fromEnds.length);
        List<Integer> kept = new ArrayList<>();
        for (int opening : count.unreached() == 0 ? fromEnds : candidates) {
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

    private static int[] toArray(List<Integer> openings) {
        return openings.stream().mapToInt(Integer::intValue).toArray();
    }
}
