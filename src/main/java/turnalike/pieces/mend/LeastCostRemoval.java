package turnalike.pieces.mend;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Spreads a mass to be taken off over members at the least cost Σ c·max(0, δ - thick), lower ≤ δ ≤ upper, Σ(aδ - bδ²) = grams.
 *
 * <p>Each gram taken off one member makes its next gram dearer, so the cost is convex in the grams and the optimum is where the price of
 * the next gram, c/(a - 2bδ), is the same λ on every member that is between its bounds (Karush–Kuhn–Tucker; derived here). λ is found by
 * halving until two neighbouring doubles remain; what is then still missing goes to the members whose cut differs between the two, in order,
 * by the exact root. That meets the mass to rounding, also when b = 0 and a member fills all at one price.
 */
final class LeastCostRemoval {
    /** One member of the problem, in millimetres and grams. */
    record Removable(Removal removal, double costPerMm, double thick, double lower, double upper) {
        /** Where paying begins. */
        double free() {
            return costPerMm == 0 ? upper : Math.min(Math.max(thick, lower), upper);
        }

        double cost(double takeOffMm) {
            return costPerMm * Math.max(0, takeOffMm - thick);
        }

        /** How deep to cut while a gram costs no more than the price. */
        double atPrice(double price) {
            double start = free();
            if (start == upper || costPerMm >= price * removal.slope(start)) {
                return start;
            }
            if (costPerMm < price * removal.slope(upper)) {
                return upper;
            }
            double even = (removal.gramsPerMm() - costPerMm / price) / (2 * removal.gramsPerMm2());
            return Math.min(Math.max(even, start), upper);
        }

        Removable between(double low, double high) {
            return new Removable(removal, costPerMm, thick, low, high);
        }
    }

    private final List<Removable> stocks;
    private final double grams;

    private LeastCostRemoval(List<Removable> stocks, double grams) {
        this.stocks = stocks;
        this.grams = grams;
    }

    /** The cheapest cuts, one for each stock; empty when the bounds cannot give that mass. */
    static Optional<double[]> solve(List<Removable> stocks, double grams) {
        return new LeastCostRemoval(stocks, grams).solve();
    }

    static double grams(List<Removable> stocks, double[] cuts) {
        return IntStream.range(0, cuts.length)
                .mapToDouble(i -> stocks.get(i).removal().grams(cuts[i]))
                .sum();
    }

    static double cost(List<Removable> stocks, double[] cuts) {
        return IntStream.range(0, cuts.length)
                .mapToDouble(i -> stocks.get(i).cost(cuts[i]))
                .sum();
    }

    private Optional<double[]> solve() {
        double[] least = each(Removable::lower);
        double[] most = each(Removable::upper);
        // Room for the last digit: a caller may ask for exactly what the bounds give.
        double slack = 1e-12 * (grams + grams(stocks, most));
        if (grams(stocks, least) > grams + slack || grams(stocks, most) < grams - slack) {
            return Optional.empty();
        }
        double[] free = each(Removable::free);
        if (grams(stocks, free) >= grams) {
            return Optional.of(fill(least, free, thickestFirst()));
        }
        double low = 0;
        // Twice the dearest price: at that price itself, rounding decides whether a member with b = 0 is cut at all.
        double high = 2
                * stocks.stream()
                        .mapToDouble(
                                stock -> stock.costPerMm() / stock.removal().slope(stock.upper()))
                        .max()
                        .orElse(0);
        for (double middle = high / 2; low < middle && middle < high; middle = (low + high) / 2) {
            if (grams(stocks, at(middle)) < grams) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double[] enough = at(high);
        return Optional.of(fill(
                low == 0 ? free : at(low),
                enough,
                IntStream.range(0, stocks.size()).toArray()));
    }

    /** From cuts that take off too little toward cuts that take off enough, one member after the other, until the mass is met. */
    private double[] fill(double[] from, double[] to, int[] order) {
        double[] cuts = from.clone();
        for (int i : order) {
            double missing = grams - grams(stocks, cuts);
            if (missing <= 0) {
                break;
            }
            Removal removal = stocks.get(i).removal();
            double wanted = removal.takeOffMm(removal.grams(cuts[i]) + missing);
            cuts[i] = Math.max(cuts[i], Math.min(wanted, to[i]));
        }
        return cuts;
    }

    private int[] thickestFirst() {
        return IntStream.range(0, stocks.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -stocks.get(i).thick()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private double[] at(double price) {
        return each(stock -> stock.atPrice(price));
    }

    private double[] each(ToDoubleFunction<Removable> figure) {
        return stocks.stream().mapToDouble(figure).toArray();
    }
}
