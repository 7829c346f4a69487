package turnalike.match;

import java.util.Arrays;
import turnalike.effort.Effort;

/**
 * Improves an order round the wheel without end: some places are set free, split into two arcs, and their pieces put back in the best of
 * all orders for that split ({@link CancellingOrders}). Longer arcs see more orders (9 and 9 pieces: 10^11 of them in a few
 * milliseconds' work, 10 and 10: 10^13 in a tenth of a second), so arcs grow when shorter ones find nothing more. Where there are spares,
 * some are tried in the set.
 *
 * <p>Sound, not exact: each order it gives is a real one and its unbalance is true, but nothing says that none is better.
 */
final class Polishing {
    private static final int SHORTEST_ARC = 3;
    private static final int LONGEST_ARC = 10;

    /** How often arcs of one length may find nothing before longer ones are tried. */
    private static final int FRUITLESS = 4;

    private final Ring ring;
    private final CancellingOrders cancelling;
    private final Dice dice = new Dice(1);
    private final Arc[] arcsA = new Arc[LONGEST_ARC + 1];
    private final Arc[] arcsB = new Arc[LONGEST_ARC + 1];
    private final int longest;
    private int arc;
    private int fruitless;
    private WheelOrder best;

    Polishing(Ring ring) {
        this(ring, LONGEST_ARC);
    }

    /** @param longestArc shorter arcs make quicker rounds and a coarser end */
    Polishing(Ring ring, int longestArc) {
        this.ring = ring;
        cancelling = new CancellingOrders(ring.momentsGMm(), ring.compass());
        longest = Math.min(longestArc, ring.places() / 2);
        arc = Math.min(SHORTEST_ARC, longest);
        best = start();
    }

    double leftGMm() {
        return best.leftGMm();
    }

    int[] pieceAt() {
        return best.pieceAt.clone();
    }

    /** Takes over an order found elsewhere if it is better. */
    void offer(int[] pieceAt) {
        WheelOrder other = new WheelOrder(ring, pieceAt);
        if (other.leftGMm() < best.leftGMm()) {
            best = other;
        }
    }

    /** The best of a few constructed orders after swapping what helps. */
    private WheelOrder start() {
        int[] set = ring.rule().alikest();
        Integer[] boxed = Arrays.stream(set).boxed().toArray(Integer[]::new);
        Arrays.sort(boxed, (p, q) -> Double.compare(ring.momentsGMm()[p], ring.momentsGMm()[q]));
        int[] ascending = Arrays.stream(boxed).mapToInt(Integer::intValue).toArray();
        WheelOrder found = swapped(Starts.facing(ascending));
        int[] polygons = Starts.polygons(ascending);
        if (polygons.length > 0) {
            WheelOrder exact = new WheelOrder(ring, polygons);
            found = better(found, exact.leftGMm() <= ring.roundingGMm() ? exact : swapped(polygons));
        }
        for (int i = 0; i < 3; i++) {
            found = better(found, swapped(Starts.random(set, dice)));
        }
        return found;
    }

    private WheelOrder swapped(int[] pieceAt) {
        WheelOrder order = new WheelOrder(ring, pieceAt);
        order.descend();
        return order;
    }

    private static WheelOrder better(WheelOrder a, WheelOrder b) {
        return b.leftGMm() < a.leftGMm() ? b : a;
    }

    /** Polishes until the unbalance is at most {@code enoughGMm}, the effort spent, or {@code rounds} rounds in a row found nothing. */
    void run(double enoughGMm, int rounds, Effort effort) {
        int nothing = 0;
        while (best.leftGMm() > enoughGMm && nothing < rounds && longest > 0 && !effort.spent()) {
            nothing = round(effort) ? 0 : nothing + 1;
        }
    }

    private boolean round(Effort effort) {
        WheelOrder trial = best.copy();
        if (trial.spares.length > 0 && dice.below(2) == 0) {
            trial.exchange(dice, 1 + dice.below(3));
        }
        Arc a = arc(arcsA);
        Arc b = arc(arcsB);
        setFree(trial, a, b);
        double before = best.leftGMm();
        double radius = Math.min(before, cancelling.widestGMm(a, b));
        cancelling.search(a, b, trial.xGMm, trial.yGMm, radius, effort, (left, onA, onB) -> {
            for (int i = 0; i < onA.length; i++) {
                trial.pieceAt[a.places[i]] = onA[i];
                trial.pieceAt[b.places[i]] = onB[i];
            }
            return left;
        });
        trial.weigh();
        boolean improved = trial.leftGMm() < before * (1 - 1e-9) && ring.rule().passes(trial.pieceAt);
        if (improved) {
            best = trial;
        }
        fruitless = improved ? 0 : fruitless + 1;
        if (fruitless > FRUITLESS && arc < longest) {
            arc++;
            fruitless = 0;
        }
        return improved;
    }

    private Arc arc(Arc[] made) {
        if (made[arc] == null) {
            made[arc] = new Arc(arc);
        }
        return made[arc];
    }

    /** Takes random pieces off; what the others leave over stands in the trial's moment. */
    private void setFree(WheelOrder trial, Arc a, Arc b) {
        int[] places = new int[ring.places()];
        Arrays.setAll(places, i -> i);
        dice.bringForward(places, 2 * a.size());
        int[] pieces = new int[2 * a.size()];
        for (int i = 0; i < pieces.length; i++) {
            pieces[i] = trial.pieceAt[places[i]];
            trial.xGMm -= ring.momentsGMm()[pieces[i]] * ring.compass().cos[places[i]];
            trial.yGMm -= ring.momentsGMm()[pieces[i]] * ring.compass().sin[places[i]];
        }
        dice.bringForward(pieces, pieces.length);
        System.arraycopy(places, 0, a.places, 0, a.size());
        System.arraycopy(places, a.size(), b.places, 0, b.size());
        System.arraycopy(pieces, 0, a.pieces, 0, a.size());
        System.arraycopy(pieces, a.size(), b.pieces, 0, b.size());
    }
}
