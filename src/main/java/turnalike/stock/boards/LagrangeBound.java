package turnalike.stock.boards;

/**
 * What every answer costs at the least, from what each blank is said to be worth: a stretch is worth the most that can be cut from it, and a board
 * that is worth more than it costs is taken as often as it is there (Lagrange's relaxation; derived here). Sound for any worths, so that rounding
 * in the program that proposes them does no harm; the best worths give the program's own value.
 *
 * @param question which
 * @param worth of one blank of each kind, in units of cost
 * @param stretchWorth of one of each stretch
 * @param costUnit what the unit is
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record LagrangeBound(Question question, double[] worth, double[] stretchWorth, double costUnit) {
    /** The tables are filled with these worths and the whole demand already. */
    static LagrangeBound of(Question question, CutTables tables, double[] worth, double costUnit) {
        double[] best = new double[question.stretches().size()];
        for (int stretch = 0; stretch < best.length; stretch++) {
            best[stretch] = Math.max(0, tables.best(stretch, worth, question.demand()));
        }
        return new LagrangeBound(question, worth, best, costUnit);
    }

    /** What a board of that type costs more than it is worth when it is ripped that way. */
    double excess(int type, int rip) {
        int[] gives = question.types().get(type).rips().get(rip);
        double sum = question.types().get(type).cost() / costUnit;
        for (int stretch = 0; stretch < gives.length; stretch++) {
            sum -= gives[stretch] * stretchWorth[stretch];
        }
        return sum;
    }

    /** The same for the best way to rip it. */
    double excess(int type) {
        double least = Double.POSITIVE_INFINITY;
        for (int rip = 0; rip < question.types().get(type).rips().size(); rip++) {
            least = Math.min(least, excess(type, rip));
        }
        return least;
    }

    /** The bound where nothing is decided. */
    double value() {
        double sum = demandWorth();
        for (int type = 0; type < question.types().size(); type++) {
            sum += question.types().get(type).count() * Math.min(0, excess(type));
        }
        return sum;
    }

    /**
     * The bound where some is decided.
     *
     * @param free how many boards of each type are not spoken for
     * @param fixed for each type and way to rip it how many boards; below zero where that is open
     */
    double value(int[] free, int[][] fixed) {
        double sum = demandWorth();
        for (int type = 0; type < free.length; type++) {
            double least = 0;
            for (int rip = 0; rip < fixed[type].length; rip++) {
                double excess = excess(type, rip);
                sum += Math.max(0, fixed[type][rip]) * excess;
                least = fixed[type][rip] < 0 ? Math.min(least, excess) : least;
            }
            sum += free[type] * least;
        }
        return sum;
    }

    private double demandWorth() {
        double sum = 0;
        for (int kind = 0; kind < worth.length; kind++) {
            sum += Math.max(0, worth[kind]) * question.demand()[kind];
        }
        return sum;
    }
}
