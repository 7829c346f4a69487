package turnalike.match;

import turnalike.effort.Effort;
import turnalike.effort.Progress;

/**
 * Chooses the set and its order with the smallest unbalance: exactly, going through every set and every order, where that is within reach
 * ({@link ExactOrders}), else by polishing ({@link Polishing}) as long as the effort lasts.
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

    private final Ring ring;
    private final double noiseGMm;
    private final boolean strict;

    int[] pieceAt = new int[0];
    double leftGMm = Double.POSITIVE_INFINITY;
    boolean proven;

    WheelSearch(Ring ring, double noiseGMm, boolean strict) {
        this.ring = ring;
        this.noiseGMm = noiseGMm;
        this.strict = strict;
    }

    void run(Effort effort) {
        Polishing polishing = new Polishing(ring);
        double nothing = ring.roundingGMm();
        double cost = cost();
        if (cost > TRIFLING) {
            polishing.run(nothing, OPENING_ROUNDS, atMost(OPENING_ROUNDS * 4, effort));
        }
        take(polishing);
        boolean exact = cost <= CHEAP || (cost <= HOPELESS && (strict || leftGMm > noiseGMm));
        if (leftGMm > nothing && exact) {
            proven = everySet(cost <= TRIFLING ? Effort.unlimited() : effort);
        }
        if (!proven && leftGMm > nothing && !effort.spent()) {
            polishing.offer(pieceAt);
            polishing.run(strict ? nothing : Math.max(nothing, noiseGMm), PATIENCE, effort);
            take(polishing);
        }
        proven |= leftGMm <= nothing;
        effort.report(new Progress("unbalance in g mm", leftGMm, proven ? leftGMm : 0));
    }

    private void take(Polishing polishing) {
        pieceAt = polishing.pieceAt();
        leftGMm = polishing.leftGMm();
    }

    /** Orders of arcs to be listed for all passing sets. */
    private double cost() {
        if (!ExactOrders.fits(ring.places(), ring.free())) {
            return Double.POSITIVE_INFINITY;
        }
        double each = Math.max(1, ExactOrders.cost(ring.places(), ring.free()));
        double most = Math.min(HOPELESS / each, 1e6) + 2;
        long sets = ring.rule().count((long) most);
        return sets * each;
    }

    private boolean everySet(Effort effort) {
        ExactOrders orders =
                new ExactOrders(ring.momentsGMm(), ring.compass(), ring.givenXGMm(), ring.givenYGMm(), true);
        return ring.rule()
                .each(set -> orders.search(set, leftGMm, effort, (left, found) -> {
                    leftGMm = left;
                    pieceAt = found.clone();
                    return left;
                }));
    }

    private static Effort atMost(int asks, Effort effort) {
        Effort few = Effort.ofAsks(asks);
        return () -> few.spent() || effort.spent();
    }
}
