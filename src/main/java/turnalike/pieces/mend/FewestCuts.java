package turnalike.pieces.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The fewest cuts that take off a mass, each at least {@code smallest}; of as few, the cheapest. Where the piece is thicker than the
 * pattern by a cut worth making, it is cut first, the thickest first, for as long as there is mass to take off: those cuts make it more
 * alike. Every choice of up to {@link #MOST_MORE} further members is tried, so as far as that it is exact; the time grows with the cube of
 * the number of members.
 */
final class FewestCuts {
    private static final int MOST_MORE = 3;

    private final List<LeastCostRemoval.Removable> stocks;
    private final double grams;
    private final double smallest;
    private double[] best = {};
    private double bestCost = Double.POSITIVE_INFINITY;

    private FewestCuts(List<LeastCostRemoval.Removable> stocks, double grams, double smallest) {
        this.stocks = stocks;
        this.grams = grams;
        this.smallest = smallest;
    }

    static Optional<double[]> solve(List<LeastCostRemoval.Removable> stocks, double grams, double smallest) {
        return new FewestCuts(stocks, grams, smallest).solve();
    }

    private Optional<double[]> solve() {
        List<Integer> first = thickFirst();
        for (int more = first.isEmpty() ? 1 : 0; more <= MOST_MORE; more++) {
            choose(first, 0, more);
            if (bestCost < Double.POSITIVE_INFINITY) {
                return Optional.of(best);
            }
        }
        return Optional.empty();
    }

    /** The thickest members, as many as it takes to use up the mass on what they have too much. */
    private List<Integer> thickFirst() {
        List<Integer> thick = IntStream.range(0, stocks.size())
                .filter(i -> excess(i) >= smallest)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -excess(i)))
                .toList();
        List<Integer> first = new ArrayList<>();
        double left = grams;
        for (int i : thick) {
            // A next cut that would have to be smaller than is worth making is not made.
            if (left < stocks.get(i).removal().grams(smallest)) {
                break;
            }
            first.add(i);
            left -= stocks.get(i).removal().grams(excess(i));
        }
        return first;
    }

    private double excess(int member) {
        return Math.min(stocks.get(member).thick(), stocks.get(member).upper());
    }

    private void choose(List<Integer> chosen, int from, int more) {
        if (more == 0) {
            price(chosen);
            return;
        }
        for (int i = from; i < stocks.size(); i++) {
            if (!chosen.contains(i) && stocks.get(i).upper() >= smallest) {
                List<Integer> wider = new ArrayList<>(chosen);
                wider.add(i);
                choose(wider, i + 1, more - 1);
            }
        }
    }

    private void price(List<Integer> chosen) {
        List<LeastCostRemoval.Removable> cut = chosen.stream()
                .map(i -> stocks.get(i).between(smallest, stocks.get(i).upper()))
                .toList();
        Optional<double[]> found = LeastCostRemoval.solve(cut, grams);
        if (found.isPresent() && LeastCostRemoval.cost(cut, found.get()) < bestCost) {
            bestCost = LeastCostRemoval.cost(cut, found.get());
            best = new double[stocks.size()];
            for (int i = 0; i < chosen.size(); i++) {
                best[chosen.get(i)] = found.get()[i];
            }
        }
    }
}
