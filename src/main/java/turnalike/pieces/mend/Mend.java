package turnalike.pieces.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Working;

/**
 * Finds the cuts that bring a heavy piece to weight: where it is thicker than the pattern first, then the fewest that do, and of those the
 * least visible, the least Σ w·δ/t with the mass met. First with cuts nobody will see; only if those do not suffice, with the deepest that
 * leave every diameter within its tolerance; only then with cuts that may not, where the diameter was not measured, which is told; then
 * another piece must be made. See {@link FewestCuts} and, beyond three cuts, {@link WorthwhileCuts}.
 */
public final class Mend {
    private static final double ROUNDING = 1e-12;

    private Mend() {}

    /**
     * {@return what to do about the piece}
     *
     * @param order the piece, what it should weigh and what may be cut
     */
    public static MendPlan plan(MendOrder order) {
        Mass off = order.mass().minus(order.target());
        // Two readings one step apart differ by it to the last digits of their doubles.
        if (Math.abs(off.grams())
                <= order.near().grams() + ROUNDING * order.target().grams()) {
            return new MendPlan.Leave(off, true);
        }
        if (off.grams() < 0) {
            return new MendPlan.Light(order.target().minus(order.mass()));
        }
        if (off.grams() < leastWorthwhile(order)) {
            return new MendPlan.Leave(off, false);
        }
        return fewest(order, off, CutRange::gentle)
                .or(() -> fewest(order, off, CutRange::most))
                .or(() -> many(order, off, CutRange::most))
                .or(() -> fewest(order, off, CutRange::risked))
                .or(() -> many(order, off, CutRange::risked))
                .orElseGet(() -> new MendPlan.MakeAnother(off, deepest(order)));
    }

    /** What the smallest cut worth making takes off where it takes off least; 0 when any cut is worth making. */
    private static double leastWorthwhile(MendOrder order) {
        return order.members().stream()
                .filter(member -> member.room().risked().compareTo(order.smallest()) >= 0)
                .mapToDouble(member -> member.removal().grams(order.smallest().mm()))
                .min()
                .orElse(0);
    }

    private static Optional<MendPlan> fewest(MendOrder order, Mass off, Function<CutRange, Length> depth) {
        List<LeastCostRemoval.Removable> stocks = stocks(order, depth);
        Optional<double[]> found = order.smallest().isPositive()
                ? FewestCuts.solve(stocks, off.grams(), order.smallest().mm())
                : LeastCostRemoval.solve(stocks, off.grams());
        return found.map(each -> plan(order, stocks, each));
    }

    private static Optional<MendPlan> many(MendOrder order, Mass off, Function<CutRange, Length> depth) {
        List<LeastCostRemoval.Removable> stocks = stocks(order, depth);
        return WorthwhileCuts.solve(stocks, off.grams(), order.smallest().mm())
                .map(found -> plan(order, stocks, found));
    }

    private static MendPlan plan(MendOrder order, List<LeastCostRemoval.Removable> stocks, double[] found) {
        List<MendCut> cuts = new ArrayList<>();
        boolean gentle = true;
        for (int i = 0; i < found.length; i++) {
            Mendable member = order.members().get(i);
            if (found[i] > 0) {
                cuts.add(new MendCut(
                        member.member(),
                        member.name(),
                        member.from(),
                        member.to(),
                        Length.ofMm(found[i]),
                        found[i] <= member.room().most().mm() + 1e-9));
                gentle &= found[i] <= member.room().gentle().mm() + 1e-9;
            }
        }
        cuts.sort(Comparator.comparing(MendCut::from));
        Mass after = order.mass().minus(Mass.ofGrams(LeastCostRemoval.grams(stocks, found)));
        return new MendPlan.Cuts(cuts, after, LeastCostRemoval.cost(stocks, found), gentle);
    }

    private static Mass deepest(MendOrder order) {
        List<LeastCostRemoval.Removable> stocks = stocks(order, CutRange::risked);
        return Mass.ofGrams(LeastCostRemoval.grams(
                stocks,
                stocks.stream().mapToDouble(LeastCostRemoval.Removable::upper).toArray()));
    }

    private static List<LeastCostRemoval.Removable> stocks(MendOrder order, Function<CutRange, Length> depth) {
        return order.members().stream()
                .map(member -> new LeastCostRemoval.Removable(
                        member.removal(),
                        member.weight() / order.tolerance().mm(),
                        member.room().thick().mm(),
                        0,
                        depth.apply(member.room()).mm()))
                .toList();
    }

    /** {@return how the cuts were chosen} */
    public static Working working() {
        return new Working(
                "least visible cut",
                "what is thicker than the pattern first, then the fewest cuts, of those the least sum of weight x take-off / diameter"
                        + " tolerance that meets the mass",
                Working.DERIVED,
                "assumes even wood along the piece: weigh again after half of the cut");
    }
}
