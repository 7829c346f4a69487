package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;

/** Quick ways to cut all blanks from given stretches, which often do and never prove that it cannot be done. */
final class FillOneByOne {
    private final Question question;
    private final Optional<CutTables> tables;
    private final Integer[] kinds;

    FillOneByOne(Question question, Optional<CutTables> tables) {
        this.question = question;
        this.tables = tables;
        this.kinds = new Integer[question.kinds()];
        for (int kind = 0; kind < kinds.length; kind++) {
            kinds[kind] = kind;
        }
        Arrays.sort(kinds, (a, b) -> Long.compare(question.weights()[b], question.weights()[a]));
    }

    /** Both ways. */
    Optional<List<StripCut>> fill(int[] demand, int[] supply, Effort effort) {
        return simple(demand, supply)
                .or(() -> fullest(demand, supply, 1, effort))
                .or(() -> fullest(demand, supply, 1.15, effort));
    }

    /** The longest blank first, each where it leaves the least room (best fit decreasing; from memory). */
    Optional<List<StripCut>> simple(int[] demand, int[] supply) {
        int[] left = demand.clone();
        List<StripCut> out = partial(left, supply);
        return Arrays.stream(left).allMatch(each -> each == 0) ? Optional.of(out) : Optional.empty();
    }

    /**
     * The same for as many as there is room for.
     *
     * @param left what is wanted; what was cut is taken off
     */
    List<StripCut> partial(int[] left, int[] supply) {
        List<int[]> open = new ArrayList<>();
        List<Integer> stretch = new ArrayList<>();
        List<Long> room = new ArrayList<>();
        int[] there = supply.clone();
        for (int kind : kinds) {
            long weight = question.weights()[kind];
            while (left[kind] > 0) {
                int best = -1;
                for (int at = 0; at < open.size(); at++) {
                    if (room.get(at) >= weight
                            && question.stretches()
                                    .get(stretch.get(at))
                                    .blanks()
                                    .get(kind)
                            && (best < 0 || room.get(at) < room.get(best))) {
                        best = at;
                    }
                }
                if (best < 0) {
                    int fresh = freshFor(kind, there);
                    if (fresh < 0) {
                        break;
                    }
                    there[fresh]--;
                    Question.Stretch opened = question.stretches().get(fresh);
                    open.add(new int[question.kinds()]);
                    stretch.add(fresh);
                    room.add(opened.holdsOne() ? weight : opened.capacity());
                    best = open.size() - 1;
                }
                left[kind]--;
                open.get(best)[kind]++;
                room.set(best, room.get(best) - weight);
            }
        }
        List<StripCut> out = new ArrayList<>();
        for (int at = 0; at < open.size(); at++) {
            out.add(new StripCut(stretch.get(at), open.get(at)));
        }
        return out;
    }

    private int freshFor(int kind, int[] left) {
        int out = -1;
        for (int each = 0; each < left.length; each++) {
            Question.Stretch stretch = question.stretches().get(each);
            boolean holds = stretch.holdsOne() || question.weights()[kind] <= stretch.capacity();
            if (left[each] > 0 && holds && stretch.blanks().get(kind)) {
                boolean better = out < 0
                        || (!stretch.holdsOne()
                                && (question.stretches().get(out).holdsOne()
                                        || stretch.capacity()
                                                < question.stretches().get(out).capacity()));
                out = better ? each : out;
            }
        }
        return out;
    }

    /**
     * One stretch after another, the longest blank that is left first and beside it what fills the stretch best (after the minimum bin slack
     * of Gupta and Ho, 1999; from memory).
     *
     * @param bias above 1 prefers few long blanks to many short ones
     */
    Optional<List<StripCut>> fullest(int[] demand, int[] supply, double bias, Effort effort) {
        int[] left = demand.clone();
        int[] there = supply.clone();
        double[] worth = new double[question.kinds()];
        for (int kind = 0; kind < worth.length; kind++) {
            worth[kind] = Math.pow(question.weights()[kind] / (double) question.weights()[kinds[0]], bias);
        }
        List<StripCut> out = new ArrayList<>();
        while (true) {
            int longest = -1;
            for (int kind : kinds) {
                if (left[kind] > 0) {
                    longest = kind;
                    break;
                }
            }
            if (longest < 0) {
                return Optional.of(out);
            }
            int stretch = freshFor(longest, there);
            if (stretch < 0
                    || tables.isEmpty()
                    || effort.spentAfter(tables.get().asks())) {
                return Optional.empty();
            }
            left[longest]--;
            there[stretch]--;
            StripCut cut = new StripCut(stretch, new int[left.length]);
            if (!question.stretches().get(stretch).holdsOne()) {
                tables.get().fill(worth, left);
                cut = tables.get().cutBeside(stretch, question.weights()[longest]);
            }
            for (int kind = 0; kind < left.length; kind++) {
                left[kind] -= cut.blanks()[kind];
            }
            cut.blanks()[longest]++;
            out.add(cut);
        }
    }
}
