package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import turnalike.effort.Effort;

/**
 * The linear program over whole cuts from stretches that are given, to which cuts are added by their worth (Gilmore and Gomory, Operations
 * Research 9, 1961; from memory): a row for each kind of blank and each stretch. What it finds in parts of cuts says what to cut first, and
 * its bound where blanks are left over.
 */
final class StripProgram {
    /** What a blank left out counts, in whole stretches, beside all that there are. */
    private static final double PENALTY = 1_000;

    private static final Shadow NONE = new Shadow(Double.NEGATIVE_INFINITY, 0, new double[0], new double[0]);

    private final Question question;
    private final CutTables tables;
    private final MasterProgram program;
    private final List<StripCut> cuts = new ArrayList<>();
    private final Set<List<Integer>> known = new HashSet<>();
    private final double[] use;
    private Effort effort = Effort.unlimited();
    private double most;
    private Shadow best = NONE;
    private boolean ruledOut;
    private boolean started;
    private boolean spent;

    StripProgram(Question question, CutTables tables) {
        this.question = question;
        this.tables = tables;
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

    /** What the bounds from now on may spend. */
    void spendFrom(Effort given) {
        effort = given;
        spent = false;
    }

    /** Whether that was spent before a bound was known. */
    boolean isSpent() {
        return spent;
    }

    /** How much of each cut the last {@link #bounded} takes. */
    double[] amounts() {
        return program.found();
    }

    /** What blanks it leaves out: none where it is zero. */
    double lack() {
        return program.lack();
    }

    StripCut cut(int column) {
        return cuts.get(column);
    }

    /** What the last {@link #bounded} rules out. */
    Shadow shadow() {
        return best;
    }

    /** Solves the program for what is left; false when it shows that it cannot be, or when the effort is spent. */
    boolean bounded(int[] left, int[] supply) {
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
    record Shadow(double least, double most, double[] worth, double[] cost) {
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
        if (!known.add(cut.key())) {
            return 0;
        }
        program.add(cut.column(use[cut.stretch()]));
        cuts.add(cut);
        return 1;
    }
}
