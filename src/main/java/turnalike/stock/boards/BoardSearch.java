package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Progress;

/**
 * The boards that cost least of all from which every blank can be cut, and how. Branch and bound over how many of each kind of board are
 * ripped in each way: the bound is a linear program over boards and whole cuts, to which cuts are added by their worth; whether the strips
 * of a choice in whole numbers hold all the blanks, {@link StripSearch} answers.
 */
final class BoardSearch {
    private static final double WHOLE = 1e-6;

    /** So much of what is left of the effort one choice of boards may take. */
    private static final double SHARE = 0.3;

    /**
     * One answer.
     *
     * @param cost of its boards
     * @param opened for each type and each way to rip it, how many boards
     * @param cuts of all their stretches that anything is cut from
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Found(long cost, int[][] opened, List<StripCut> cuts) {
        Found {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * What came of a search.
     *
     * @param found the best answer, if any
     * @param bound no answer costs less
     * @param proven whether the answer is the best, or there is none
     */
    record Outcome(Optional<Found> found, long bound, boolean proven) {}

    private final Question question;
    private final Effort effort;
    private final String what;
    private final long costStep;
    private final double costUnit;
    private final CutTables tables;
    private final BoardProgram program;
    private final StripSearch inner;
    private final Map<List<Integer>, StripSearch.Answer> tried = new HashMap<>();
    private final List<int[]> tooLittle = new ArrayList<>();
    private Optional<Found> best = Optional.empty();
    private long limit = Long.MAX_VALUE;
    private long rootBound;
    private boolean open;

    private BoardSearch(Question question, CutTables tables, Effort effort, String what) {
        this.question = question;
        this.tables = tables;
        this.effort = effort;
        this.what = what;
        this.costStep = question.costStep();
        this.costUnit = question.costUnit();
        this.program = new BoardProgram(question, tables, effort);
        this.inner = new StripSearch(question, tables);
    }

    /**
     * Searches.
     *
     * @param most no answer that costs more is of use
     * @param what is searched, as whoever waits is told
     */
    static Outcome solve(Question question, long most, Effort effort, String what) {
        return question.types().size() <= ManyTypes.FEW
                ? one(question, most, effort, what)
                : ManyTypes.solve(question, most, effort, what);
    }

    /** The same with all types at once. */
    static Outcome one(Question question, long most, Effort effort, String what) {
        Optional<CutTables> tables = CutTables.of(question);
        if (tables.isPresent()) {
            return new BoardSearch(question, tables.get(), effort, what).search(most);
        }
        Optional<Found> first = new FirstBoards(question, tables).find().filter(each -> each.cost() <= most);
        long bound = FirstBoards.byContent(question);
        return new Outcome(first, bound, first.map(each -> each.cost() <= bound).orElse(false));
    }

    /**
     * What the program says before anything is decided.
     *
     * @param found a first answer, if any
     * @param worths of the blanks, in units of cost
     * @param costUnit that unit
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Root(Optional<Found> found, double[] worths, double costUnit) {}

    static Root root(Question question, CutTables tables, Effort effort) {
        BoardProgram program = new BoardProgram(question, tables, effort);
        program.bound(each -> false);
        return new Root(new FirstBoards(question, Optional.of(tables)).find(), program.worths(), question.costUnit());
    }

    private Outcome search(long most) {
        limit = most == Long.MAX_VALUE ? most : most + 1;
        new FirstBoards(question, Optional.of(tables))
                .find()
                .filter(each -> each.cost() < limit)
                .ifPresent(this::keep);
        boolean through = node(0);
        boolean proven = through && !open;
        long bound = proven ? best.map(Found::cost).orElse(rootBound) : Math.min(rootBound, limitCost());
        return new Outcome(
                best,
                bound,
                proven || best.map(each -> each.cost() <= rootBound).orElse(false));
    }

    private long limitCost() {
        return best.map(Found::cost).orElse(Long.MAX_VALUE);
    }

    /** Whether all below was gone through; prunes by what is known. */
    private boolean node(int depth) {
        Optional<Double> value = bound();
        if (value.isEmpty()) {
            return false;
        }
        long bound = rounded(value.get());
        if (depth == 0) {
            rootBound = bound;
            best.ifPresent(each -> effort.report(new Progress(what, each.cost(), rootBound)));
        }
        if (bound >= limit) {
            return true;
        }
        double[] amounts = program.amounts();
        int[] whole = new int[amounts.length];
        int branchOn = -1;
        double farthest = WHOLE;
        for (int rip = 0; rip < whole.length; rip++) {
            whole[rip] = (int) Math.ceil(amounts[rip] - WHOLE);
            double off = Math.abs(amounts[rip] - Math.rint(amounts[rip]));
            if (off > farthest) {
                farthest = off;
                branchOn = rip;
            }
        }
        if (branchOn >= 0) {
            tryQuickly(whole);
        } else {
            StripSearch.Answer answer = tryAll(whole);
            if (answer == StripSearch.Answer.YES && bound >= limit) {
                return true;
            }
            branchOn = firstFree(amounts);
            if (branchOn < 0) {
                open |= answer == StripSearch.Answer.UNKNOWN;
                return answer != StripSearch.Answer.UNKNOWN;
            }
        }
        return branch(branchOn, Math.max(0, amounts[branchOn]), depth);
    }

    /** The free one with the most boards, for what is not chosen matters least. */
    private int firstFree(double[] amounts) {
        int out = -1;
        for (int rip = 0; rip < amounts.length; rip++) {
            if (program.fixed(rip) < 0 && (out < 0 || amounts[rip] > amounts[out] + WHOLE)) {
                out = rip;
            }
        }
        return out;
    }

    /**
     * Each number of boards ripped in one way, the nearest to the program's first. The bound never falls on the way from there to either side,
     * so that the first number that is ruled out rules out those beyond.
     */
    private boolean branch(int rip, double amount, int depth) {
        int type = program.typeOf(rip);
        int most = question.types().get(type).count();
        for (int other = 0; other < program.rips(); other++) {
            most -= other != rip && program.typeOf(other) == type ? Math.max(0, program.fixed(other)) : 0;
        }
        int down = Math.min(most, (int) Math.floor(amount + WHOLE));
        int up = down + 1;
        boolean through = true;
        while (down >= 0 || up <= most) {
            boolean goUp = down < 0 || (up <= most && up - amount <= amount - down);
            program.fix(rip, goUp ? up : down);
            boolean ruledOut = limit != Long.MAX_VALUE && ruledOut();
            if (!ruledOut && !program.spent()) {
                through &= node(depth + 1);
            }
            program.open(rip);
            if (program.spent()) {
                return false;
            }
            if (goUp) {
                up = ruledOut ? most + 1 : up + 1;
            } else {
                down = ruledOut ? -1 : down - 1;
            }
        }
        return through;
    }

    private boolean ruledOut() {
        Optional<Double> value = bound();
        return value.isPresent() && rounded(value.get()) >= limit;
    }

    private Optional<Double> bound() {
        return program.bound(each -> rounded(each) >= limit);
    }

    private long rounded(double value) {
        return rounded(value, costUnit, costStep);
    }

    /** A value in units of cost as the least cost on the grid that is not below it; the allowance covers the rounding of sums. */
    static long rounded(double value, double costUnit, long costStep) {
        double cost = value * costUnit / costStep;
        double least = Math.ceil(cost - Math.max(1e-4, 1e-9 * cost));
        return least > 1e17 ? Long.MAX_VALUE : ((long) least) * costStep;
    }

    private void tryQuickly(int[] opened) {
        if (!program.withinCount(opened) || program.cost(opened) >= limit) {
            return;
        }
        new FillOneByOne(question, Optional.of(tables))
                .fill(question.demand(), program.supply(opened), effort.share(SHARE))
                .ifPresent(cuts -> take(opened, cuts));
    }

    private StripSearch.Answer tryAll(int[] opened) {
        int[] supply = program.supply(opened);
        List<Integer> key = Arrays.stream(supply).boxed().toList();
        StripSearch.Answer before = tried.get(key);
        if (before != null) {
            return before;
        }
        for (int[] little : tooLittle) {
            if (isWithin(supply, little)) {
                return StripSearch.Answer.NO;
            }
        }
        StripSearch.Answer answer = inner.solve(supply, effort.share(SHARE));
        tried.put(key, answer);
        if (answer == StripSearch.Answer.YES) {
            take(opened, inner.found());
        } else if (answer == StripSearch.Answer.NO) {
            tooLittle.add(supply);
        }
        return answer;
    }

    private static boolean isWithin(int[] some, int[] all) {
        for (int i = 0; i < some.length; i++) {
            if (some[i] > all[i]) {
                return false;
            }
        }
        return true;
    }

    private void take(int[] opened, List<StripCut> how) {
        long cost = program.cost(opened);
        if (cost < limit) {
            keep(new Found(cost, program.table(opened), how));
        }
    }

    private void keep(Found answer) {
        best = Optional.of(answer);
        limit = answer.cost();
        if (rootBound > 0) {
            effort.report(new Progress(what, answer.cost(), rootBound));
        }
    }
}
