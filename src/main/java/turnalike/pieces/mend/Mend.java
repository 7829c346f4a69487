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
 * Finds the least visible cuts that bring a heavy piece to weight: the least Σ w·δ/t with the mass met. First with cuts nobody will see;
 * only if those do not suffice, with the deepest allowed; then another piece must be made. The optimum is proven, see {@link LeastCostRemoval} and,
 * for cuts worth setting up for, {@link WorthwhileCuts}.
 */
public final class Mend {
    private Mend() {}

    /**
     * {@return what to do about the piece}
     *
     * @param order the piece, what it should weigh and what may be cut
     */
    public static MendPlan plan(MendOrder order) {
        Mass off = order.mass().minus(order.target());
        if (Math.abs(off.grams()) <= order.near().grams()) {
            return new MendPlan.Leave(off);
        }
        if (off.grams() < 0) {
            return new MendPlan.Light(order.target().minus(order.mass()));
        }
        return cuts(order, off, room -> room.gentle())
                .or(() -> cuts(order, off, room -> room.most()))
                .orElseGet(() -> new MendPlan.MakeAnother(off, deepest(order)));
    }

    private static Optional<MendPlan> cuts(MendOrder order, Mass off, Function<CutRange, Length> depth) {
        List<LeastCostRemoval.Removable> stocks = stocks(order, depth);
        // A mass too small for any worthwhile cut is still better met by a small one than not at all.
        return WorthwhileCuts.solve(stocks, off.grams(), order.smallest().mm())
                .or(() -> LeastCostRemoval.solve(stocks, off.grams()))
                .map(found -> plan(order, stocks, found));
    }

    private static MendPlan plan(MendOrder order, List<LeastCostRemoval.Removable> stocks, double[] found) {
        List<MendCut> cuts = new ArrayList<>();
        boolean gentle = true;
        for (int i = 0; i < found.length; i++) {
            Mendable member = order.members().get(i);
            if (found[i] > 0) {
                cuts.add(
                        new MendCut(member.member(), member.name(), member.from(), member.to(), Length.ofMm(found[i])));
                gentle &= found[i] <= member.room().gentle().mm();
            }
        }
        cuts.sort(Comparator.comparing(MendCut::from));
        Mass after = order.mass().minus(Mass.ofGrams(LeastCostRemoval.grams(stocks, found)));
        return new MendPlan.Cuts(cuts, after, LeastCostRemoval.cost(stocks, found), gentle);
    }

    private static Mass deepest(MendOrder order) {
        List<LeastCostRemoval.Removable> stocks = stocks(order, room -> room.most());
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
                "least sum of weight x take-off / diameter tolerance that meets the mass; every member in the cut has the same price for "
                        + "its next gram",
                Working.DERIVED,
                "assumes even wood of the planned density along the piece: weigh again after half of the cut");
    }
}
