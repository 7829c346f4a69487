package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import turnalike.effort.Effort;
import turnalike.effort.Progress;

/**
 * The boards that cost least of all from which every blank can be cut, and how. Branch and bound over how many of each kind of board are
 * ripped in each way: the bound is a linear program over boards and whole cuts, to which cuts are added by their worth; whether the strips
 * of a choice in whole numbers hold all the blanks, {@link StripSearch} answers.
 */
final class BoardSearch {
    private static final double WHOLE = 1e-6;
    private static final double PENALTY = 1_000;

    /** So much of what is left of the effort one choice of boards may take. */
    private static final double SHARE = 0.3;

    /** How many ways to rip a board are compared when the first answer is put together. */
    private static final int MOST_COMPARED = 600;

    /**
     * One answer.
     *
     * @param cost of its boards
     * @param opened for each type and each way to rip it, how many boards
     * @param cuts of all their stretches that anything is cut from
     */
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
    private final Optional<CutTables> tables;
    private final Effort effort;
    private final String what;
    private final long costStep;
    private final double costUnit;
    private final int kinds;
    private final int stretches;
    private final List<int[]> ripColumns = new ArrayList<>();
    private final List<StripCut> cuts = new ArrayList<>();
    private final Map<Integer, Integer> cutColumns = new HashMap<>();
    private final Set<Object> known = new HashSet<>();
    private final Map<List<Integer>, StripSearch.Answer> tried = new HashMap<>();
    private final List<int[]> tooLittle = new ArrayList<>();
    private Optional<Found> best = Optional.empty();
    private long limit = Long.MAX_VALUE;
    private long rootBound;
    private boolean open;
    private boolean spent;
    private double least;
    private double[] worths;

    private BoardSearch(Question question, Effort effort, String what) {
        this.question = question;
        this.tables = CutTables.of(question);
        this.effort = effort;
        this.what = what;
        this.costStep = question.costStep();
        this.costUnit = Math.max(
                1,
                question.types().stream().mapToLong(Question.Type::cost).max().orElse(1));
        this.kinds = question.kinds();
        this.stretches = question.stretches().size();
        this.worths = new double[kinds];
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
        return new BoardSearch(question, effort, what).search(most);
    }

    /**
     * What the program says before anything is decided.
     *
     * @param found a first answer, if any
     * @param worths of the blanks, in units of cost
     * @param costUnit that unit
     */
    record Root(Optional<Found> found, double[] worths, double costUnit) {}

    static Root root(Question question, long most, Effort effort, String what) {
        BoardSearch search = new BoardSearch(question, effort, what);
        search.limit = Long.MAX_VALUE;
        search.greedy();
        if (search.tables.isPresent()) {
            search.prepare();
            search.limit = Long.MAX_VALUE;
            search.bounded();
        }
        return new Root(search.best.filter(each -> each.cost() <= most), search.worths, search.costUnit);
    }

    private Outcome search(long most) {
        limit = most == Long.MAX_VALUE ? most : most + 1;
        rootBound = 0;
        if (tables.isEmpty()) {
            greedy();
            return new Outcome(best, byContent(), best.isPresent() && best.get().cost() <= byContent());
        }
        greedy();
        prepare();
        boolean through = node(0);
        boolean proven = through && !open;
        long bound = proven ? best.map(Found::cost).orElse(rootBound) : Math.min(rootBound, limitCost());
        return new Outcome(
                best,
                bound,
                proven || best.map(each -> each.cost() <= rootBound).orElse(false));
    }

    private void prepare() {
        program = new MasterProgram(kinds + stretches + question.types().size(), PENALTY + 4 * allBoards());
        for (int type = 0; type < question.types().size(); type++) {
            for (int rip = 0; rip < question.types().get(type).rips().size(); rip++) {
                addRip(type, rip);
            }
        }
        inner = new StripSearch(question, tables.get());
        fixed = new int[ripColumns.size()];
        Arrays.fill(fixed, -1);
        openFree();
    }

    /** What costs nothing and can be ripped in one way only is opened at once. */
    private void openFree() {
        for (int rip = 0; rip < fixed.length; rip++) {
            Question.Type type = question.types().get(ripColumns.get(rip)[0]);
            if (type.cost() == 0 && type.rips().size() == 1) {
                fixed[rip] = type.count();
                program.close(rip, true);
            }
        }
    }

    private MasterProgram program = new MasterProgram(0, 0);
    private StripSearch inner;
    private int[] fixed = {};

    private long limitCost() {
        return best.map(Found::cost).orElse(Long.MAX_VALUE);
    }

    private void addRip(int type, int rip) {
        int[] gives = question.types().get(type).rips().get(rip);
        int count = (int) Arrays.stream(gives).filter(each -> each > 0).count();
        int[] rows = new int[count + 1];
        double[] entries = new double[count + 1];
        int at = 0;
        for (int stretch = 0; stretch < gives.length; stretch++) {
            if (gives[stretch] > 0) {
                rows[at] = kinds + stretch;
                entries[at++] = gives[stretch];
            }
        }
        rows[at] = kinds + stretches + type;
        entries[at] = -1;
        program.add(new MasterProgram.Column(
                rows, entries, question.types().get(type).cost() / costUnit));
        ripColumns.add(new int[] {type, rip});
    }

    /** Whether all below was gone through; prunes by what is known. */
    private boolean node(int depth) {
        Optional<Double> value = bounded();
        if (value.isEmpty()) {
            return false;
        }
        long bound = rounded(value.get());
        if (depth == 0) {
            rootBound = bound;
            effort.report(new Progress(what, Math.min(limitCost(), 1e15), rootBound));
        }
        if (bound >= limit) {
            return true;
        }
        double[] amounts = Arrays.copyOf(program.found(), program.columns());
        int[] whole = new int[ripColumns.size()];
        int branchOn = -1;
        double farthest = WHOLE;
        for (int rip = 0; rip < whole.length; rip++) {
            double amount = fixed[rip] >= 0 ? fixed[rip] : amounts[rip];
            whole[rip] = (int) Math.ceil(amount - WHOLE);
            double off = Math.abs(amount - Math.rint(amount));
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
        for (int rip = 0; rip < fixed.length; rip++) {
            if (fixed[rip] < 0 && (out < 0 || amounts[rip] > amounts[out] + WHOLE)) {
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
        int type = ripColumns.get(rip)[0];
        int most = question.types().get(type).count();
        for (int other = 0; other < fixed.length; other++) {
            most -= other != rip && fixed[other] > 0 && ripColumns.get(other)[0] == type ? fixed[other] : 0;
        }
        int down = Math.min(most, (int) Math.floor(amount + WHOLE));
        int up = down + 1;
        boolean through = true;
        while (down >= 0 || up <= most) {
            boolean goUp = down < 0 || (up <= most && up - amount <= amount - down);
            fixed[rip] = goUp ? up : down;
            program.close(rip, true);
            boolean ruledOut = limit != Long.MAX_VALUE && ruledOut();
            if (!ruledOut && !spent) {
                through &= node(depth + 1);
            }
            program.close(rip, false);
            fixed[rip] = -1;
            if (spent) {
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
        Optional<Double> value = bounded();
        return value.isPresent() && rounded(value.get()) >= limit;
    }

    private long rounded(double value) {
        return rounded(value, costUnit, costStep);
    }

    /** A value in units of cost as the least cost on the grid that is not below it; the allowance covers the rounding of sums. */
    static long rounded(double value, double costUnit, long costStep) {
        double cost = value * costUnit / costStep;
        double least = Math.ceil(cost - Math.max(1e-4, 1e-9 * cost));
        return least > 1e17 ? Long.MAX_VALUE : (long) least * costStep;
    }

    private Optional<Double> bounded() {
        double[] limits = new double[kinds + stretches + question.types().size()];
        for (int kind = 0; kind < kinds; kind++) {
            limits[kind] = question.demand()[kind];
        }
        for (int type = 0; type < question.types().size(); type++) {
            limits[kinds + stretches + type] = -question.types().get(type).count();
        }
        for (int rip = 0; rip < fixed.length; rip++) {
            if (fixed[rip] > 0) {
                int type = ripColumns.get(rip)[0];
                int[] gives = question.types().get(type).rips().get(ripColumns.get(rip)[1]);
                for (int stretch = 0; stretch < stretches; stretch++) {
                    limits[kinds + stretch] -= (double) gives[stretch] * fixed[rip];
                }
                limits[kinds + stretches + type] += fixed[rip];
            }
        }
        program.start(limits);
        least = Double.NEGATIVE_INFINITY;
        boolean solved = program.solve(this::price, () -> {
            spent |= effort.spentAfter(program.asks());
            return spent;
        });
        if (!solved || spent) {
            spent = true;
            return Optional.empty();
        }
        return Optional.of(least > allBoards() + 1 ? 1e18 : Math.max(0, least));
    }

    /** What no answer costs more than. */
    private double allBoards() {
        return question.types().stream()
                        .mapToDouble(each -> (double) each.count() * each.cost())
                        .sum()
                / costUnit;
    }

    private int price(double[] duals) {
        if (effort.spentAfter(tables.get().asks())) {
            spent = true;
            return 0;
        }
        double[] worth = Arrays.copyOf(duals, kinds);
        tables.get().fill(worth, question.demand());
        LagrangeBound bound = LagrangeBound.of(question, tables.get(), worth, costUnit);
        double value = bound.value(free(), fixed());
        if (value > least) {
            least = value;
            worths = worth;
        }
        if (rounded(least) >= limit) {
            return MasterProgram.Pricing.ENOUGH;
        }
        int added = 0;
        for (int stretch = 0; stretch < stretches; stretch++) {
            double reduced = duals[kinds + stretch] - tables.get().best(stretch, worth, question.demand());
            if (reduced < -1e-7) {
                added += add(tables.get().cut(stretch, worth, question.demand()));
            }
        }
        return added;
    }

    private int add(StripCut cut) {
        if (!known.add(List.of(cut.stretch(), Arrays.toString(cut.blanks())))) {
            return 0;
        }
        int filled = (int) Arrays.stream(cut.blanks()).filter(each -> each > 0).count();
        int[] rows = new int[filled + 1];
        double[] entries = new double[filled + 1];
        int at = 0;
        for (int kind = 0; kind < kinds; kind++) {
            if (cut.blanks()[kind] > 0) {
                rows[at] = kind;
                entries[at++] = cut.blanks()[kind];
            }
        }
        rows[at] = kinds + cut.stretch();
        entries[at] = -1;
        cutColumns.put(program.add(new MasterProgram.Column(rows, entries, 0)), cuts.size());
        cuts.add(cut);
        return 1;
    }

    private int[][] fixed() {
        int[][] out = emptyTable();
        for (int rip = 0; rip < fixed.length; rip++) {
            out[ripColumns.get(rip)[0]][ripColumns.get(rip)[1]] = fixed[rip];
        }
        return out;
    }

    /** How many boards of each type are not spoken for yet. */
    private int[] free() {
        int[] out = question.types().stream().mapToInt(Question.Type::count).toArray();
        for (int rip = 0; rip < fixed.length; rip++) {
            out[ripColumns.get(rip)[0]] -= Math.max(0, fixed[rip]);
        }
        return out;
    }

    private void tryQuickly(int[] opened) {
        if (!withinCount(opened) || cost(opened) >= limit) {
            return;
        }
        new FillOneByOne(question, tables)
                .fill(question.demand(), supply(opened), effort.share(SHARE))
                .ifPresent(cuts -> take(opened, cuts));
    }

    private StripSearch.Answer tryAll(int[] opened) {
        int[] supply = supply(opened);
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

    private boolean withinCount(int[] opened) {
        int[] sums = new int[question.types().size()];
        for (int rip = 0; rip < opened.length; rip++) {
            sums[ripColumns.get(rip)[0]] += opened[rip];
        }
        for (int type = 0; type < sums.length; type++) {
            if (sums[type] > question.types().get(type).count()) {
                return false;
            }
        }
        return true;
    }

    private long cost(int[] opened) {
        long sum = 0;
        for (int rip = 0; rip < opened.length; rip++) {
            sum += opened[rip] * question.types().get(ripColumns.get(rip)[0]).cost();
        }
        return sum;
    }

    private int[] supply(int[] opened) {
        int[] out = new int[stretches];
        for (int rip = 0; rip < opened.length; rip++) {
            int[] gives = question.types()
                    .get(ripColumns.get(rip)[0])
                    .rips()
                    .get(ripColumns.get(rip)[1]);
            for (int stretch = 0; stretch < stretches; stretch++) {
                out[stretch] += gives[stretch] * opened[rip];
            }
        }
        return out;
    }

    private void take(int[] opened, List<StripCut> how) {
        long cost = cost(opened);
        if (cost < limit) {
            int[][] table = emptyTable();
            for (int rip = 0; rip < opened.length; rip++) {
                table[ripColumns.get(rip)[0]][ripColumns.get(rip)[1]] = opened[rip];
            }
            keep(new Found(cost, table, how));
        }
    }

    private void keep(Found answer) {
        best = Optional.of(answer);
        limit = answer.cost();
        effort.report(new Progress(what, answer.cost(), rootBound));
    }

    private int[][] emptyTable() {
        return question.types().stream()
                .map(type -> new int[type.rips().size()])
                .toArray(int[][]::new);
    }

    /** A first answer: again and again the board that gives most for its cost, ripped as suits what is left. */
    private void greedy() {
        FillOneByOne filling = new FillOneByOne(question, tables);
        int[] left = question.demand().clone();
        int[][] opened = emptyTable();
        List<StripCut> out = new ArrayList<>();
        long cost = 0;
        while (Arrays.stream(left).anyMatch(each -> each > 0)) {
            int bestType = -1;
            int bestRip = -1;
            double bestGain = 0;
            int compared = 0;
            for (int type = 0; type < opened.length && compared < MOST_COMPARED; type++) {
                Question.Type of = question.types().get(type);
                if (Arrays.stream(opened[type]).sum() == of.count()) {
                    continue;
                }
                for (int rip = 0; rip < of.rips().size() && compared < MOST_COMPARED; rip++) {
                    compared++;
                    int[] after = left.clone();
                    filling.partial(after, of.rips().get(rip));
                    double gain = 0;
                    for (int kind = 0; kind < kinds; kind++) {
                        gain += (double) (left[kind] - after[kind]) * question.weights()[kind];
                    }
                    gain /= Math.max(0.5, of.cost());
                    if (gain > bestGain) {
                        bestGain = gain;
                        bestType = type;
                        bestRip = rip;
                    }
                }
            }
            if (bestType < 0) {
                return;
            }
            out.addAll(
                    filling.partial(left, question.types().get(bestType).rips().get(bestRip)));
            opened[bestType][bestRip]++;
            cost += question.types().get(bestType).cost();
        }
        if (cost < limit) {
            keep(new Found(cost, opened, out));
        }
    }

    /** A bound without a program: every blank costs at least what its length costs where length is cheapest. */
    private long byContent() {
        double cheapest = Double.POSITIVE_INFINITY;
        for (Question.Type type : question.types()) {
            double most = 0;
            for (int[] rip : type.rips()) {
                double sum = 0;
                for (int stretch = 0; stretch < stretches; stretch++) {
                    sum += rip[stretch]
                            * (double) Math.max(
                                    0, question.stretches().get(stretch).capacity());
                }
                most = Math.max(most, sum);
            }
            cheapest = Math.min(cheapest, most > 0 ? type.cost() / most : 0);
        }
        double need = 0;
        for (int kind = 0; kind < kinds; kind++) {
            need += (double) question.weights()[kind] * question.demand()[kind];
        }
        return Double.isInfinite(cheapest) ? 0 : (long) Math.ceil(need * cheapest / costStep - 1e-6) * costStep;
    }
}
