package turnalike.settings;

import java.util.Arrays;

/** A bound that takes no search. */
final class LowerBound {
    private LowerBound() {}

    /**
     * Each mark that dividers must reach takes an entry of its own; an opening gives at most as many as its pairs join marks together
     * that were apart. So the least number is that of the openings with most joins until they are enough. (The bound known for the
     * labelling spanning tree; derived here.)
     */
    static int byEntries(Spans spans, int[] candidates) {
        int lacking = 0;
        int[] group = startGroups(spans);
        for (int pin = 0; pin < spans.pinned; pin++) {
            join(group, spans.openings.get(pin));
        }
        for (int mark = 0; mark < spans.marks(); mark++) {
            lacking += root(group, mark) == mark ? 1 : 0;
        }
        lacking--;
        int[] joins = Arrays.stream(candidates)
                .map(i -> join(group.clone(), spans.openings.get(i)))
                .sorted()
                .toArray();
        int openings = 0;
        for (int i = joins.length - 1; i >= 0 && lacking > 0; i--) {
            lacking -= joins[i];
            openings++;
        }
        return openings;
    }

    /** The given marks are one group, every other mark its own. */
    private static int[] startGroups(Spans spans) {
        int[] group = new int[spans.marks()];
        for (int mark = 0; mark < spans.marks(); mark++) {
            group[mark] = spans.given[mark] ? 0 : mark;
        }
        return group;
    }

    private static int join(int[] group, Opening opening) {
        int joins = 0;
        for (int i = 0; i < opening.pairs(); i++) {
            int low = root(group, opening.low()[i]);
            int high = root(group, opening.high()[i]);
            if (low != high) {
                group[Math.max(low, high)] = Math.min(low, high);
                joins++;
            }
        }
        return joins;
    }

    private static int root(int[] group, int mark) {
        int at = mark;
        while (group[at] != at) {
            at = group[at];
        }
        return at;
    }
}
