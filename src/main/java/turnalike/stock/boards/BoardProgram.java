package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import turnalike.effort.Effort;

/**
 * The linear program over boards and whole cuts, to which cuts are added by their worth: a row for each kind of blank, each stretch and each type
 * of board. Some numbers of boards may be fixed; the bound is what Lagrange's relaxation makes of the program's worths.
 */
final class BoardProgram {
    private static final double PENALTY = 1_000;

    private final Question question;
    private final CutTables tables;
    private final Effort effort;
    private final int kinds;
    private final int stretches;
    private final double costUnit;
    private final double allBoards;
    private final MasterProgram program;
    private final List<int[]> rips = new ArrayList<>();
    private final Set<List<Integer>> known = new HashSet<>();
    private final int[] fixed;
    private DoublePredicate isEnough = each -> false;
    private double[] worths;
    private double least;
    private boolean spent;

    BoardProgram(Question question, CutTables tables, Effort effort) {
        this.question = question;
        this.tables = tables;
        this.effort = effort;
        this.kinds = question.kinds();
        this.stretches = question.stretches().size();
        this.worths = new double[kinds];
        this.costUnit = question.costUnit();
        this.allBoards = question.types().stream()
                        .mapToDouble(each -> (double) each.count() * each.cost())
                        .sum()
                / costUnit;
        this.program = new MasterProgram(kinds + stretches + question.types().size(), PENALTY + 4 * allBoards);
        for (int type = 0; type < question.types().size(); type++) {
            for (int rip = 0; rip < question.types().get(type).rips().size(); rip++) {
                addRip(type, rip);
            }
        }
        this.fixed = new int[rips.size()];
        Arrays.fill(fixed, -1);
        openFree();
    }

    /** How many types and ways to rip them there are, one after another. */
    int rips() {
        return rips.size();
    }

    int typeOf(int rip) {
        return rips.get(rip)[0];
    }

    /** How many boards are ripped so; below zero where that is open. */
    int fixed(int rip) {
        return fixed[rip];
    }

    void fix(int rip, int boards) {
        fixed[rip] = boards;
        program.close(rip, true);
    }

    void open(int rip) {
        fixed[rip] = -1;
        program.close(rip, false);
    }

    boolean spent() {
        return spent;
    }

    /** What the best bound of the last {@link #bound} says that blanks are worth, in units of cost. */
    double[] worths() {
        return worths;
    }

    /** How many boards the program opens of each. */
    double[] amounts() {
        double[] found = program.found();
        double[] out = new double[rips.size()];
        for (int rip = 0; rip < out.length; rip++) {
            out[rip] = fixed[rip] >= 0 ? fixed[rip] : found[rip];
        }
        return out;
    }

    /** What costs nothing and can be ripped in one way only is opened at once. */
    private void openFree() {
        for (int rip = 0; rip < fixed.length; rip++) {
            Question.Type type = question.types().get(typeOf(rip));
            if (type.cost() == 0 && type.rips().size() == 1) {
                fix(rip, type.count());
            }
        }
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
        rips.add(new int[] {type, rip});
    }

    /**
     * What no answer costs less than, in units of cost, as numbers are fixed now; empty when the effort was spent first.
     *
     * @param enough whether a bound rules out all that is of use; then no better one is looked for
     */
    Optional<Double> bound(DoublePredicate enough) {
        isEnough = enough;
        double[] limits = new double[kinds + stretches + question.types().size()];
        for (int kind = 0; kind < kinds; kind++) {
            limits[kind] = question.demand()[kind];
        }
        for (int type = 0; type < question.types().size(); type++) {
            limits[kinds + stretches + type] = -question.types().get(type).count();
        }
        for (int rip = 0; rip < fixed.length; rip++) {
            if (fixed[rip] > 0) {
                int type = typeOf(rip);
                int[] gives = question.types().get(type).rips().get(rips.get(rip)[1]);
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
        return Optional.of(least > allBoards + 1 ? 1e18 : Math.max(0, least));
    }

    private int price(double[] duals) {
        if (effort.spentAfter(tables.asks())) {
            spent = true;
            return 0;
        }
        double[] worth = Arrays.copyOf(duals, kinds);
        tables.fill(worth, question.demand());
        LagrangeBound bound = LagrangeBound.of(question, tables, worth, costUnit);
        double value = bound.value(free(), table(fixed));
        if (value > least) {
            least = value;
            worths = worth;
        }
        if (isEnough.test(least)) {
            return MasterProgram.Pricing.ENOUGH;
        }
        int added = 0;
        for (int stretch = 0; stretch < stretches; stretch++) {
            double reduced = duals[kinds + stretch] - tables.best(stretch, worth, question.demand());
            if (reduced < -1e-7) {
                added += add(tables.cut(stretch, worth, question.demand()));
            }
        }
        return added;
    }

    private int add(StripCut cut) {
        if (!known.add(cut.key())) {
            return 0;
        }
        program.add(cut.column(0));
        return 1;
    }

    /** How many boards of each type are not spoken for yet. */
    private int[] free() {
        int[] out = question.types().stream().mapToInt(Question.Type::count).toArray();
        for (int rip = 0; rip < fixed.length; rip++) {
            out[typeOf(rip)] -= Math.max(0, fixed[rip]);
        }
        return out;
    }

    boolean withinCount(int[] opened) {
        int[] sums = new int[question.types().size()];
        for (int rip = 0; rip < opened.length; rip++) {
            sums[typeOf(rip)] += opened[rip];
        }
        for (int type = 0; type < sums.length; type++) {
            if (sums[type] > question.types().get(type).count()) {
                return false;
            }
        }
        return true;
    }

    long cost(int[] opened) {
        long sum = 0;
        for (int rip = 0; rip < opened.length; rip++) {
            sum += opened[rip] * question.types().get(typeOf(rip)).cost();
        }
        return sum;
    }

    int[] supply(int[] opened) {
        int[] out = new int[stretches];
        for (int rip = 0; rip < opened.length; rip++) {
            int[] gives = question.types().get(typeOf(rip)).rips().get(rips.get(rip)[1]);
            for (int stretch = 0; stretch < stretches; stretch++) {
                out[stretch] += gives[stretch] * opened[rip];
            }
        }
        return out;
    }

    /** The same numbers type by type. */
    int[][] table(int[] opened) {
        int[][] out = question.noneOpened();
        for (int rip = 0; rip < opened.length; rip++) {
            out[rips.get(rip)[0]][rips.get(rip)[1]] = opened[rip];
        }
        return out;
    }
}
