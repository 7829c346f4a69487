package turnalike.match;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import turnalike.effort.Effort;
import turnalike.effort.Progress;

/**
 * Chooses the set and its order with the smallest unbalance: exactly, going through every set and every order, where that is within reach
 * ({@link ExactPairs}, {@link ExactOrders}), else by polishing ({@link LargeNeighbourhoodSearch}) as long as the effort lasts.
 */
final class WheelSearch {
    /** Proof at this cost, well under a tenth of a second, is had whatever the effort. */
    private static final double TRIFLING = 5e6;

    /** Proof up to this cost, about a second, is worth having even below the noise of the scale. */
    private static final double CHEAP = 1.5e8;

    /** Beyond this cost, some hours, going through every order is hopeless and polishing finds more. */
    private static final double HOPELESS = 2e12;

    /** A wheel without spares is polished at least this long before the noise of the scale may end it. */
    private static final int OPENING_ROUNDS = 24;

    /** So many rounds in a row without success, minutes of them, and no more is hoped for. */
    private static final int PATIENCE = 100_000;

    private final WheelArrays ring;
    private final double noiseGMm;
    private final boolean strict;

    int[] pieceAt = new int[0];
    double leftGMm = Double.POSITIVE_INFINITY;
    boolean proven;

    WheelSearch(WheelArrays ring, double noiseGMm, boolean strict) {
        this.ring = ring;
        this.noiseGMm = noiseGMm;
        this.strict = strict;
    }

    void run(Effort effort) {
        LargeNeighbourhoodSearch polishing = new LargeNeighbourhoodSearch(ring);
        double nothing = ring.roundingGMm();
        boolean trifling = cost(ordersCost()) <= TRIFLING;
        if (!trifling) {
            polishing.run(nothing, OPENING_ROUNDS, atMost(OPENING_ROUNDS * 4, effort));
        }
        take(polishing);
        double cost = trifling ? 0 : cost(Math.min(pairsCost(ring.rule().alikest()), ordersCost()));
        boolean exact = cost <= CHEAP || (cost <= HOPELESS && (strict || leftGMm > noiseGMm));
        if (leftGMm > nothing && exact) {
            proven = everySet(trifling, trifling ? Effort.unlimited() : effort);
        }
        if (!proven && leftGMm > nothing && !effort.spent()) {
            polishing.offer(pieceAt);
            polishing.run(strict ? nothing : Math.max(nothing, noiseGMm), PATIENCE, effort);
            take(polishing);
        }
        proven |= leftGMm <= nothing;
        effort.report(new Progress("unbalance in g·mm", leftGMm, proven ? leftGMm : 0));
    }

    private void take(LargeNeighbourhoodSearch polishing) {
        int[] polished = polishing.pieceAt();
        double trueGMm = ring.leftGMm(polished);
        if (trueGMm <= leftGMm) {
            pieceAt = polished;
            leftGMm = trueGMm;
        }
    }

    /** Steps for all passing sets, counted no further than matters. */
    private double cost(double each) {
        if (each > HOPELESS) {
            return each;
        }
        double most = Math.min(HOPELESS / Math.max(1, each), 1e6) + 2;
        long sets = ring.rule().count((long) most);
        return sets * Math.max(1, each);
    }

    private double pairsCost(int[] set) {
        return ExactPairs.fits(ring.places(), ring.free())
                ? ExactPairs.cost(ring.places(), ring.free())
                        + ExactPairs.settling(ring.momentsGMm(), set, ring.free(), leftGMm + ring.missGMm())
                : Double.POSITIVE_INFINITY;
    }

    private double ordersCost() {
        return ExactOrders.fits(ring.places(), ring.free())
                ? ExactOrders.cost(ring.places(), ring.free())
                : Double.POSITIVE_INFINITY;
    }

    /** @param trifling whether there is no radius to begin with, which only whole orders can do without */
    private boolean everySet(boolean trifling, Effort effort) {
        // Uneven seats: the searches see a sum that misses the true one by so much at most. All orders below the best
        // and this are looked at, so none that is truly better is left out.
        double missGMm = ring.missGMm();
        ExactOrders.Found found = (left, order) -> {
            double trueGMm = missGMm == 0 ? left : ring.leftGMm(order);
            if (trueGMm < leftGMm) {
                leftGMm = trueGMm;
                pieceAt = order.clone();
            }
            return leftGMm + missGMm;
        };
        Supplier<ExactOrders> orders = once(
                () -> new ExactOrders(ring.momentsGMm(), ring.compass(), ring.givenXGMm(), ring.givenYGMm(), true));
        Supplier<ExactPairs> pairs =
                once(() -> new ExactPairs(ring.momentsGMm(), ring.compass(), ring.givenXGMm(), ring.givenYGMm(), true));
        return ring.rule()
                .each(set -> (!trifling && pairsCost(set) <= ordersCost())
                        ? pairs.get().search(set, leftGMm + missGMm, effort, found)
                        : orders.get().search(set, leftGMm + missGMm, effort, found));
    }

    /** Makes it when first asked for: a wheel may be too large for one of the two. */
    private static <T> Supplier<T> once(Supplier<T> maker) {
        List<T> made = new ArrayList<>(1);
        return () -> {
            if (made.isEmpty()) {
                made.add(maker.get());
            }
            return made.get(0);
        };
    }

    private static Effort atMost(int asks, Effort effort) {
        Effort few = Effort.ofAsks(asks);
        // The fixed count is no end of the search, so it is not to be known of outside.
        return () -> few.spent() || effort.spent();
    }
}
