package turnalike.pieces.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest cuts of which none is smaller than is worth setting up for: each cut is nothing or at least {@code smallest}. Branch and
 * bound over {@link LeastCostRemoval}: where its answer holds a cut too small, the member is first left alone, then cut at least that deep; a branch
 * no cheaper than the best so far is dropped. Exact; at worst 2ⁿ steps for n members, in practice one to three.
 */
final class WorthwhileCuts {
    private final double smallest;
    private final double grams;
    private double[] best = {};
    private double bestCost = Double.POSITIVE_INFINITY;

    private WorthwhileCuts(double smallest, double grams) {
        this.smallest = smallest;
        this.grams = grams;
    }

    static Optional<double[]> solve(List<LeastCostRemoval.Removable> stocks, double grams, double smallest) {
        WorthwhileCuts search = new WorthwhileCuts(smallest, grams);
        search.branch(stocks);
        return search.bestCost < Double.POSITIVE_INFINITY ? Optional.of(search.best) : Optional.empty();
    }

    private void branch(List<LeastCostRemoval.Removable> stocks) {
        Optional<double[]> relaxed = LeastCostRemoval.solve(stocks, grams);
        if (relaxed.isEmpty() || LeastCostRemoval.cost(stocks, relaxed.get()) >= bestCost) {
            return;
        }
        double[] cuts = relaxed.get();
        for (int i = 0; i < cuts.length; i++) {
            if (cuts[i] > 0 && cuts[i] < smallest) {
                branch(with(stocks, i, 0, 0));
                if (stocks.get(i).upper() >= smallest) {
                    branch(with(stocks, i, smallest, stocks.get(i).upper()));
                }
                return;
            }
        }
        best = cuts;
        bestCost = LeastCostRemoval.cost(stocks, cuts);
    }

    private static List<LeastCostRemoval.Removable> with(
            List<LeastCostRemoval.Removable> stocks, int at, double low, double high) {
        List<LeastCostRemoval.Removable> changed = new ArrayList<>(stocks);
        changed.set(at, stocks.get(at).between(low, high));
        return changed;
    }
}
