package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import turnalike.effort.Effort;

/**
 * Whether the blanks can all be cut from stretches that are given, and how. A linear program over whole cuts, to which cuts are added by
 * their worth (Gilmore and Gomory, Operations Research 9, 1961; from memory), tells where it cannot be and, by its answer, what to cut
 * first; what is left is searched through, one blank after another put into every cut that can hold it (bin completion; from memory).
 *
 * <p>Exact: {@link Answer#NO} is a proof, by the program's bound or by going through all. First the program's own choice is followed down with
 * few departures from it (limited discrepancy search; Harvey and Ginsberg 1995, from memory), since that finds an answer soonest.
 */
final class StripSearch {
    /** What came of a search. */
    enum Answer {
        YES,
        NO,
        /** The effort was spent first. */
        UNKNOWN
    }

    private static final double WHOLE = 1e-6;
    /** What a blank left out counts, in whole stretches, beside all that there are. */
    private static final double PENALTY = 1_000;

    private static final int MOST_DEPARTURES = 4;
    private static final int MOST_BRANCHES = 20_000;

    private static final Shadow NONE = new Shadow(Double.NEGATIVE_INFINITY, 0, new double[0], new double[0]);

    private final Question question;
    private final CutTables tables;
    private final MasterProgram program;
    private final List<StripCut> cuts = new ArrayList<>();
    private final Set<List<Integer>> known = new HashSet<>();
    private final double[] use;
    private final FillOneByOne filling;
    private Effort effort = Effort.unlimited();
    private List<StripCut> found = List.of();
    private double most;
    private Shadow best = NONE;
    private boolean ruledOut;
    private boolean started;
    private boolean spent;
    private boolean complete;

    StripSearch(Question question, CutTables tables) {
        this.question = question;
        this.tables = tables;
        this.filling = new FillOneByOne(question, Optional.of(tables));
        int stretches = question.stretches().size();
        this.use = new double[stretches];
        double longest = question.stretches().stream()
                .mapToLong(Question.Stretch::capacity)
                .max()
                .orElse(1);
        for (int each = 0; each < stretches; each++) {
            Question.Stretch stretch = question.stretches().get(each);
            use[each] = stretch.holdsOne() ? 1 : Math.max(1e-3, stretch.capacity() / longest);
        }
        double all = 0;
        for (Question.Type type : question.types()) {
            all += type.count()
                    * type.rips().stream()
                            .mapToInt(rip -> Arrays.stream(rip).sum())
                            .max()
                            .orElse(0);
        }
        this.program = new MasterProgram(question.kinds() + stretches, PENALTY + 2 * all);
    }

    /** What {@link #solve} found, when it answered yes. */
    List<StripCut> found() {
        return found;
    }

    /** @param supply how many of each stretch there are */
    Answer solve(int[] supply, Effort most) {
        effort = most;
        spent = false;
        Optional<List<StripCut>> simple = filling.fill(question.demand(), supply, most);
        if (simple.isPresent()) {
            found = simple.get();
            return Answer.YES;
        }
        for (int departures = 0; departures <= MOST_DEPARTURES; departures++) {
            Answer answer = down(question.demand().clone(), supply.clone(), departures, 0);
            if (answer == Answer.YES) {
                return answer;
            }
            if (spent) {
                return Answer.UNKNOWN;
            }
            if (answer == Answer.NO) {
                return answer;
            }
        }
        complete = true;
        return down(question.demand().clone(), supply.clone(), Integer.MAX_VALUE, 0);
    }

    /** Below the root a no counts only where all was gone through. */
    private Answer down(int[] left, int[] supply, int departures, int depth) {
        if (depth == 0) {
            found = new ArrayList<>();
            complete = departures == Integer.MAX_VALUE;
        }
        if (Arrays.stream(left).allMatch(each -> each == 0)) {
            return Answer.YES;
        }
        if (!bounded(left, supply)) {
            return spent ? Answer.UNKNOWN : Answer.NO;
        }
        double[] amounts = program.found();
        if (program.lack() < WHOLE && takeWhole(left, supply, amounts)) {
            return Answer.YES;
        }
        if (depth > 0 && depth % 4 == 0) {
            Optional<List<StripCut>> simple = filling.simple(left, supply);
            if (simple.isPresent()) {
                found.addAll(simple.get());
                return Answer.YES;
            }
        }
        return branch(left, supply, departures, depth, amounts);
    }

    private Answer branch(int[] left, int[] supply, int departures, int depth, double[] amounts) {
        List<Integer> order = inOrder(amounts);
        if (order.isEmpty()) {
            return Answer.UNKNOWN;
        }
        StripCut first = trimmed(cuts.get(order.get(0)), left);
        int kind = largest(first);
        if (kind < 0) {
            return Answer.UNKNOWN;
        }
        Shadow shadow = best;
        boolean through = complete;
        int tried = 0;
        Set<List<Integer>> done = new HashSet<>();
        for (int column : order) {
            StripCut cut = trimmed(cuts.get(column), left);
            boolean isOpen = cut.blanks()[kind] > 0 && supply[cut.stretch()] > 0 && !shadow.rulesOut(cut);
            if (!isOpen || !done.add(key(cut))) {
                continue;
            }
            if (tried > departures) {
                return Answer.UNKNOWN;
            }
            int copies = complete ? 1 : Math.max(1, (int) (amounts[column] + WHOLE));
            Answer answer = take(cut, copies, left, supply, departures - tried, depth);
            if (answer == Answer.YES || spent) {
                return answer;
            }
            through &= answer == Answer.NO;
            tried++;
        }
        if (!complete) {
            return Answer.UNKNOWN;
        }
        List<StripCut> others = new Completions(question, left, supply).with(kind, MOST_BRANCHES);
        through &= others.size() < MOST_BRANCHES;
        for (StripCut cut : others) {
            if (!shadow.rulesOut(cut) && done.add(key(cut))) {
                Answer answer = take(cut, 1, left, supply, departures, depth);
                if (answer == Answer.YES || spent) {
                    return answer;
                }
                through &= answer == Answer.NO;
            }
        }
        return through ? Answer.NO : Answer.UNKNOWN;
    }

    private Answer take(StripCut cut, int copies, int[] left, int[] supply, int departures, int depth) {
        int[] lessLeft = left.clone();
        int[] lessSupply = supply.clone();
        int taken = 0;
        int before = found.size();
        while (taken < copies && lessSupply[cut.stretch()] > 0 && fits(cut, lessLeft)) {
            for (int kind = 0; kind < lessLeft.length; kind++) {
                lessLeft[kind] -= cut.blanks()[kind];
            }
            lessSupply[cut.stretch()]--;
            found.add(cut);
            taken++;
        }
        Answer answer = down(lessLeft, lessSupply, departures, depth + 1);
        if (answer != Answer.YES) {
            found.subList(before, found.size()).clear();
        }
        return answer;
    }

    private static boolean fits(StripCut cut, int[] left) {
        for (int kind = 0; kind < left.length; kind++) {
            if (cut.blanks()[kind] > left[kind]) {
                return false;
            }
        }
        return true;
    }

    private static List<Integer> key(StripCut cut) {
        List<Integer> out = new ArrayList<>(List.of(cut.stretch()));
        for (int kind = 0; kind < cut.blanks().length; kind++) {
            for (int copy = 0; copy < cut.blanks()[kind]; copy++) {
                out.add(kind);
            }
        }
        return out;
    }

    /** Columns in use, the surest first; of equals the fullest. */
    private List<Integer> inOrder(double[] amounts) {
        List<Integer> out = new ArrayList<>();
        for (int column = 0; column < amounts.length; column++) {
            if (amounts[column] > WHOLE) {
                out.add(column);
            }
        }
        out.sort(Comparator.<Integer>comparingDouble(column -> -Math.floor(amounts[column] + WHOLE))
                .thenComparingDouble(column -> -Math.rint(amounts[column] * 1e6))
                .thenComparingDouble(column -> -weight(cuts.get(column))));
        return out;
    }

    private double weight(StripCut cut) {
        double sum = 0;
        for (int kind = 0; kind < cut.blanks().length; kind++) {
            sum += (double) cut.blanks()[kind] * question.weights()[kind];
        }
        return sum;
    }

    private int largest(StripCut cut) {
        int out = -1;
        for (int kind = 0; kind < cut.blanks().length; kind++) {
            if (cut.blanks()[kind] > 0 && (out < 0 || question.weights()[kind] > question.weights()[out])) {
                out = kind;
            }
        }
        return out;
    }

    private static StripCut trimmed(StripCut cut, int[] left) {
        int[] blanks = new int[left.length];
        for (int kind = 0; kind < left.length; kind++) {
            blanks[kind] = Math.min(cut.blanks()[kind], left[kind]);
        }
        return new StripCut(cut.stretch(), blanks);
    }

    /** The program's answer where it is in whole cuts. */
    private boolean takeWhole(int[] left, int[] supply, double[] amounts) {
        int[] stillLeft = left.clone();
        int[] stillThere = supply.clone();
        List<StripCut> out = new ArrayList<>();
        for (int column = 0; column < amounts.length; column++) {
            int copies = (int) Math.rint(amounts[column]);
            if (Math.abs(amounts[column] - copies) > WHOLE) {
                return false;
            }
            for (int copy = 0; copy < copies; copy++) {
                StripCut cut = trimmed(cuts.get(column), stillLeft);
                if (--stillThere[cut.stretch()] < 0) {
                    return false;
                }
                for (int kind = 0; kind < left.length; kind++) {
                    stillLeft[kind] -= cut.blanks()[kind];
                }
                out.add(cut);
            }
        }
        if (Arrays.stream(stillLeft).anyMatch(each -> each > 0)) {
            return false;
        }
        found.addAll(out);
        return true;
    }

    /** Solves the program for what is left; false when it shows that it cannot be, or when the effort is spent. */
    private boolean bounded(int[] left, int[] supply) {
        double[] limits = new double[question.kinds() + supply.length];
        double all = 0;
        for (int kind = 0; kind < left.length; kind++) {
            limits[kind] = left[kind];
        }
        for (int stretch = 0; stretch < supply.length; stretch++) {
            limits[left.length + stretch] = -supply[stretch];
            all += supply[stretch] * use[stretch];
        }
        if (!started || !program.restart(limits)) {
            program.start(limits);
            started = true;
        }
        ruledOut = false;
        most = all;
        best = NONE;
        boolean solved = program.solve(duals -> price(duals, left, supply), () -> {
            spent = effort.spentAfter(program.asks());
            return spent;
        });
        spent |= !solved; // stopped before its end the program shows nothing: say so rather than guess
        return solved && !spent && !ruledOut;
    }

    private boolean isTooMuch(double value) {
        return value > most + 1e-6 * Math.max(1, most);
    }

    private Shadow shadow(double value, double[] worth, int[] left, int[] supply) {
        double[] cost = new double[supply.length];
        for (int stretch = 0; stretch < cost.length; stretch++) {
            cost[stretch] = supply[stretch] > 0 ? Math.max(use[stretch], tables.best(stretch, worth, left)) : 0;
        }
        return new Shadow(value, most, worth, cost);
    }

    /**
     * The best bound of a node by what it says that blanks are worth and stretches cost.
     *
     * @param least the bound
     * @param most what there is
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Shadow(double least, double most, double[] worth, double[] cost) {
        /** Whether the bound alone rules out that this is cut here: it costs more than it is worth by more than there is to spare. */
        boolean rulesOut(StripCut cut) {
            if (worth.length == 0) {
                return false;
            }
            double excess = cost[cut.stretch()];
            for (int kind = 0; kind < worth.length; kind++) {
                excess -= cut.blanks()[kind] * Math.max(0, worth[kind]);
            }
            return least + excess > most + 1e-6 * Math.max(1, most);
        }
    }

    /**
     * What any answer needs of the stretches at the least, by the duals alone: sound for any duals, however the program rounds (Lagrange's bound;
     * derived here). Beyond what there is, there is no answer.
     */
    private double least(double[] worth, int[] left, int[] supply) {
        double sum = 0;
        for (int kind = 0; kind < left.length; kind++) {
            sum += Math.max(0, worth[kind]) * left[kind];
        }
        for (int stretch = 0; stretch < supply.length; stretch++) {
            if (supply[stretch] > 0) {
                sum -= supply[stretch] * Math.max(0, tables.best(stretch, worth, left) - use[stretch]);
            }
        }
        return sum;
    }

    private int price(double[] duals, int[] left, int[] supply) {
        int kinds = question.kinds();
        if (effort.spentAfter(tables.asks())) {
            spent = true;
            return 0;
        }
        double[] worth = Arrays.copyOf(duals, kinds);
        tables.fill(worth, left);
        double value = least(worth, left, supply);
        if (value > best.least()) {
            best = shadow(value, worth, left, supply);
        }
        if (isTooMuch(value)) {
            ruledOut = true;
            return MasterProgram.Pricing.ENOUGH;
        }
        int added = 0;
        for (int stretch = 0; stretch < supply.length; stretch++) {
            if (supply[stretch] > 0) {
                double reduced = use[stretch] + duals[kinds + stretch] - tables.best(stretch, worth, left);
                if (reduced < -1e-7) {
                    added += add(tables.cut(stretch, worth, left));
                }
            }
        }
        return added;
    }

    private int add(StripCut cut) {
        if (!known.add(key(cut))) {
            return 0;
        }
        int[] rows = new int[cut.count() + 1];
        double[] entries = new double[rows.length];
        int at = 0;
        for (int kind = 0; kind < cut.blanks().length; kind++) {
            if (cut.blanks()[kind] > 0) {
                rows[at] = kind;
                entries[at++] = cut.blanks()[kind];
            }
        }
        rows[at] = question.kinds() + cut.stretch();
        entries[at++] = -1;
        program.add(new MasterProgram.Column(Arrays.copyOf(rows, at), Arrays.copyOf(entries, at), use[cut.stretch()]));
        cuts.add(cut);
        return 1;
    }
}
