package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import turnalike.effort.Effort;

/**
 * A question with more types of boards than a program holds well. The bound is found on some of them, to which those are added that the worths of
 * the blanks say would lower it; then only those are searched that cost too little more than they are worth to be ruled out.
 */
final class ManyTypes {
    /** So many are searched at once. */
    static final int FEW = 60;

    private static final int ADDED = 40;
    private static final int MOST_ROUNDS = 25;
    private static final int MOST_SEARCHED = 180;

    private final Question question;
    private final CutTables tables;
    private final long most;
    private final Effort effort;
    private final String what;
    private Optional<BoardSearch.Found> best = Optional.empty();

    private ManyTypes(Question question, CutTables tables, long most, Effort effort, String what) {
        this.question = question;
        this.tables = tables;
        this.most = most;
        this.effort = effort;
        this.what = what;
    }

    static BoardSearch.Outcome solve(Question question, long most, Effort effort, String what) {
        return CutTables.of(question)
                .map(tables -> new ManyTypes(question, tables, most, effort, what).search())
                .orElseGet(() -> BoardSearch.one(question, most, effort, what));
    }

    private BoardSearch.Outcome search() {
        List<Integer> active = promising();
        Optional<LagrangeBound> bound = Optional.empty();
        for (int round = 0; round < MOST_ROUNDS && active.size() < 2 * MOST_SEARCHED; round++) {
            Question.Part part = question.only(active);
            BoardSearch.Root root = root(part.question());
            root.found().filter(each -> each.cost() <= most).ifPresent(each -> keep(whole(each, part)));
            LagrangeBound next = bound(root);
            if (bound.isEmpty()
                    || next.value() * next.costUnit()
                            > bound.get().value() * bound.get().costUnit()) {
                bound = Optional.of(next);
            }
            List<Integer> more = lowering(next, active);
            if (more.isEmpty() || effort.spentAfter(tables.asks())) {
                break;
            }
            active.addAll(more);
        }
        return bound.map(this::search).orElseThrow();
    }

    /** Its tables are no larger than those of the whole question, and so are there. */
    private BoardSearch.Root root(Question part) {
        return BoardSearch.root(part, CutTables.of(part).orElseThrow(), effort.share(0.3));
    }

    /** Those whose length costs least, and whatever is no board. */
    private List<Integer> promising() {
        Comparator<Integer> byCost = Comparator.comparingDouble(this::costOfLength);
        return new ArrayList<>(IntStream.range(0, question.types().size())
                .boxed()
                .sorted(byCost.thenComparing(Comparator.naturalOrder()))
                .limit(FEW)
                .toList());
    }

    private double costOfLength(int type) {
        double longest = 0;
        for (int[] rip : question.types().get(type).rips()) {
            double sum = 0;
            for (int stretch = 0; stretch < rip.length; stretch++) {
                Question.Stretch each = question.stretches().get(stretch);
                if (each.holdsOne() && rip[stretch] > 0) {
                    return -1;
                }
                sum += rip[stretch] * (double) Math.max(0, each.capacity());
            }
            longest = Math.max(longest, sum);
        }
        return longest > 0 ? question.types().get(type).cost() / longest : Double.POSITIVE_INFINITY;
    }

    private LagrangeBound bound(BoardSearch.Root root) {
        tables.fill(root.worths(), question.demand());
        return LagrangeBound.of(question, tables, root.worths(), root.costUnit());
    }

    private List<Integer> lowering(LagrangeBound bound, List<Integer> active) {
        Set<Integer> there = new HashSet<>(active);
        double[] excess = excess(bound);
        return IntStream.range(0, excess.length)
                .filter(type -> excess[type] < -1e-9 && !there.contains(type))
                .boxed()
                .sorted(Comparator.comparingDouble(type -> excess[type]))
                .limit(ADDED)
                .toList();
    }

    private double[] excess(LagrangeBound bound) {
        return IntStream.range(0, question.types().size())
                .mapToDouble(bound::excess)
                .toArray();
    }

    private BoardSearch.Outcome search(LagrangeBound bound) {
        long least = BoardSearch.rounded(bound.value(), bound.costUnit(), question.costStep());
        if (best.isPresent() && best.get().cost() <= least) {
            return new BoardSearch.Outcome(best, best.get().cost(), true);
        }
        double limit = best.map(each -> (double) each.cost()).orElse(most == Long.MAX_VALUE ? 1e18 : most + 1.0);
        double gap = limit / bound.costUnit() - bound.value() + 1e-6;
        double[] excess = excess(bound);
        List<Integer> left = IntStream.range(0, excess.length)
                .filter(type -> excess[type] < gap)
                .boxed()
                .sorted(Comparator.comparingDouble(type -> excess[type]))
                .toList();
        boolean all = left.size() <= MOST_SEARCHED;
        Question.Part part =
                question.only(left.stream().limit(MOST_SEARCHED).sorted().toList());
        long useful = best.map(each -> each.cost() - 1).orElse(most);
        BoardSearch.Outcome rest = BoardSearch.one(part.question(), useful, effort, what);
        rest.found().ifPresent(each -> keep(whole(each, part)));
        boolean proven =
                (all && rest.proven()) || best.map(each -> each.cost() <= least).orElse(false);
        long known = all
                ? Math.max(
                        least,
                        Math.min(rest.bound(), best.map(BoardSearch.Found::cost).orElse(Long.MAX_VALUE)))
                : least;
        return new BoardSearch.Outcome(
                best, proven ? best.map(BoardSearch.Found::cost).orElse(known) : known, proven);
    }

    private void keep(BoardSearch.Found found) {
        if (best.isEmpty() || found.cost() < best.get().cost()) {
            best = Optional.of(found);
        }
    }

    private BoardSearch.Found whole(BoardSearch.Found found, Question.Part part) {
        int[][] opened = question.noneOpened();
        for (int type = 0; type < found.opened().length; type++) {
            opened[part.types().get(type)] = found.opened()[type].clone();
        }
        List<StripCut> cuts = found.cuts().stream()
                .map(cut -> new StripCut(part.stretches().get(cut.stretch()), cut.blanks()))
                .toList();
        return new BoardSearch.Found(found.cost(), opened, cuts);
    }
}
