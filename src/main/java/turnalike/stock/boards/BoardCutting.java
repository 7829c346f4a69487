package turnalike.stock.boards;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Progress;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.units.Length;

/**
 * Blanks out of boards: as many as there is wood for, out of the boards that cost least (the fewest, where nothing has a price), and of all
 * such plans one that leaves the longest single piece.
 *
 * <p>A board is ripped across its width into rips, each as wide as the square that is wanted; each rip is split into strips over one another;
 * each strip is cut across between faults. That is the order at the saw too, and the only kind of plan that is looked at.
 */
public final class BoardCutting {
    /** Finer than any saw, and the finest that left-overs are told apart by. */
    private static final double FINE_MM = 1e-3;

    private final CuttingOrder order;
    private final Effort effort;
    private final List<Wanted> kinds;
    private final BoardPrices prices;
    private boolean proven = true;

    private BoardCutting(CuttingOrder order, Effort effort) {
        this.order = order;
        this.effort = effort;
        this.kinds = order.wanted().stream()
                .filter(each -> order.boards().stream().anyMatch(board -> order.fits(each, board)))
                .toList();
        this.prices = BoardPrices.of(order);
    }

    /**
     * {@return the plan}
     *
     * @param order what is to be cut out of what
     * @param effort what the search may spend; spent early, the plan says how far from the best it may be
     */
    public static CuttingPlan plan(CuttingOrder order, Effort effort) {
        return new BoardCutting(order, effort).plan();
    }

    private CuttingPlan plan() {
        if (kinds.isEmpty()) {
            return whole(List.of(), BigDecimal.ZERO, true, Length.ZERO, true);
        }
        BoardChoice choice = new BoardChoice(order, kinds, prices);
        Solved first = firstAim(choice);
        Layouts layouts = new Layouts(order, kinds, first.model());
        List<CutBoard> cut = first.outcome().found().map(layouts::of).orElse(List.of());
        BigDecimal bound = prices.told(first.outcome().bound());
        boolean best = proven && first.outcome().proven() && first.model().complete();
        if (!best) {
            bound = proven ? bound : BigDecimal.ZERO;
        }
        return longest(choice, first, cut, bound, best);
    }

    /**
     * A question with its answer.
     *
     * @param model of the order
     * @param outcome of the search
     * @param lacking blanks that are left out
     */
    private record Solved(BoardModel model, BoardSearch.Outcome outcome, int lacking) {}

    /** As many blanks as can be, then the least cost. */
    private Solved firstAim(BoardChoice choice) {
        BoardModel.Terms all = new BoardModel.Terms(Optional.empty(), 0, false);
        Solved whole = solve(choice, all, Long.MAX_VALUE, effort.share(0.5));
        if (whole.outcome().found().isPresent()) {
            return whole;
        }
        int blanks = kinds.stream().mapToInt(Wanted::count).sum();
        BoardModel most = choice.all(new BoardModel.Terms(Optional.empty(), blanks, true));
        BoardSearch.Outcome lacking =
                BoardSearch.solve(most.question(), Long.MAX_VALUE, effort.share(0.5), "blanks without wood");
        proven = lacking.proven() && most.complete();
        int lacks = (int) lacking.found().orElseThrow().cost();
        BoardModel.Terms some = new BoardModel.Terms(Optional.empty(), lacks, false);
        Solved rest = solve(choice, some, Long.MAX_VALUE, effort.share(0.7));
        if (rest.outcome().found().isPresent()) {
            return rest;
        }
        // What was found while counting blanks is an answer, if a dear one.
        BoardSearch.Found found = lacking.found().orElseThrow();
        long cost = 0;
        for (int type = 0; type < most.copies().size(); type++) {
            for (int opened : found.opened()[type]) {
                cost += opened * prices.of(most.copies().get(type).get(0).board());
            }
        }
        BoardSearch.Found dear = new BoardSearch.Found(cost, found.opened(), found.cuts());
        return new Solved(
                most, new BoardSearch.Outcome(Optional.of(dear), rest.outcome().bound(), false), lacks);
    }

    private Solved solve(BoardChoice choice, BoardModel.Terms terms, long most, Effort share) {
        while (true) {
            BoardModel model = choice.model(terms);
            BoardSearch.Outcome outcome = BoardSearch.solve(
                    model.question(), most, told(share), prices.priced() ? "cost of the boards" : "boards");
            if (choice.isEnoughFor(outcome.found().map(BoardSearch.Found::cost).orElse(most))) {
                return new Solved(model, outcome, terms.lacking());
            }
        }
    }

    /** Whoever waits is told prices, and not the whole numbers that stand for them. */
    private Effort told(Effort share) {
        double unit = prices.perUnit();
        return new Effort() {
            @Override
            public boolean spent() {
                return share.spent();
            }

            @Override
            public boolean spentAfter(int asks) {
                return share.spentAfter(asks);
            }

            @Override
            public Effort share(double part) {
                return told(share.share(part));
            }

            @Override
            public void report(Progress progress) {
                share.report(new Progress(progress.what(), progress.best() / unit, progress.bound() / unit));
            }
        };
    }

    /** The second aim by halving: a piece that is to be left over is one more blank. */
    private CuttingPlan longest(BoardChoice choice, Solved first, List<CutBoard> cut, BigDecimal bound, boolean best) {
        long cost = first.outcome().found().map(BoardSearch.Found::cost).orElse(0L);
        List<CutBoard> boards = cut;
        double least = LeftOvers.of(order, boards).stream()
                .mapToDouble(each -> each.length().mm())
                .max()
                .orElse(0);
        double most = order.boards().stream()
                .mapToDouble(each -> order.boards().isEmpty()
                        ? 0
                        : each.longestClear(order.sawing()).mm())
                .max()
                .orElse(0);
        boolean sure = !boards.isEmpty();
        boolean wholeFirst = true;
        while (most - least > FINE_MM && sure) {
            double middle = wholeFirst ? most : (least + most) / 2;
            BoardModel.Terms terms = new BoardModel.Terms(Optional.of(Length.ofMm(middle)), first.lacking(), false);
            Solved longer = solve(choice, terms, cost, effort.share(0.4));
            if (longer.outcome().found().isPresent()) {
                boards = new Layouts(order, kinds, longer.model())
                        .of(longer.outcome().found().get());
                double there = LeftOvers.of(order, boards).stream()
                        .mapToDouble(each -> each.length().mm())
                        .max()
                        .orElse(0);
                sure = there >= middle - FINE_MM;
                least = Math.max(there, least);
            } else if (longer.outcome().proven() && longer.model().complete()) {
                most = wholeFirst ? most - FINE_MM : middle;
            } else {
                sure = false;
            }
            wholeFirst = false;
        }
        return whole(boards, bound, best, Length.ofMm(Math.max(least, most)), sure);
    }

    private CuttingPlan whole(
            List<CutBoard> boards, BigDecimal bound, boolean best, Length longest, boolean longestProven) {
        return CuttingPlan.of(order, boards, bound, best, longest, longestProven);
    }
}
