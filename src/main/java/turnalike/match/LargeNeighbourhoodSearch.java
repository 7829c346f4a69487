package turnalike.match;

import java.util.Arrays;
import turnalike.effort.Effort;

/**
 * Improves an order round the wheel without end: some pairs of places that mirror one another in a line through the axle are set free, and
 * their pieces put back in the best of very many orders ({@link MirroredOrders}). More pairs see more orders (8 pairs: 10^11 of them in
 * a fraction of a millisecond, 10 pairs: 10^13 in about one), so their number grows when fewer find nothing more. Where there are spares,
 * some are tried in the set.
 *
 * <p>Sound, not exact: each order it gives is a real one and its unbalance is true, but nothing says that none is better.
 */
final class LargeNeighbourhoodSearch {
    private static final int FEWEST_PAIRS = 3;
    private static final int MOST_PAIRS = 10;

    /** How often so many pairs may find nothing before more are tried. */
    private static final int FRUITLESS = 4;

    /** A round takes as long as so many steps of the exact searches. */
    private static final int ASKS = 160;

    private final WheelArrays ring;
    private final SplitMix64 dice = new SplitMix64(1);
    private final PlaceDirections halves;
    private final MirrorLine[] lines;
    private final MirroredOrders[] made = new MirroredOrders[MOST_PAIRS + 1];
    private final int mostPairs;
    private int pairs;
    private int fruitless;
    private WheelOrder best;

    LargeNeighbourhoodSearch(WheelArrays ring) {
        this(ring, MOST_PAIRS);
    }

    /** @param mostPairs fewer make quicker rounds and a coarser end */
    LargeNeighbourhoodSearch(WheelArrays ring, int mostPairs) {
        this.ring = ring;
        this.mostPairs = Math.min(mostPairs, ring.places() / 2);
        pairs = Math.min(FEWEST_PAIRS, this.mostPairs);
        halves = new PlaceDirections(2 * ring.places());
        lines = new MirrorLine[ring.places()];
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
        WheelOrder found = swapped(ConstructedOrders.facing(ascending));
        int[] polygons = ConstructedOrders.polygons(ascending);
        if (polygons.length > 0) {
            WheelOrder exact = new WheelOrder(ring, polygons);
            found = better(found, exact.leftGMm() <= ring.roundingGMm() ? exact : swapped(polygons));
        }
        for (int i = 0; i < 3; i++) {
            found = better(found, swapped(ConstructedOrders.random(set, dice)));
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
        while (best.leftGMm() > enoughGMm && nothing < rounds && mostPairs > 0 && !effort.spentAfter(ASKS)) {
            nothing = round() ? 0 : nothing + 1;
        }
    }

    private boolean round() {
        WheelOrder trial = best.copy();
        if (trial.spares.length > 0 && dice.below(2) == 0) {
            trial.exchange(dice, 1 + dice.below(3));
        }
        MirrorLine line = line(dice.below(ring.places()));
        int pairs = Math.min(this.pairs, line.pairs());
        if (pairs > 0) {
            refill(trial, line, mirrored(line, pairs));
        }
        trial.weigh();
        boolean improved =
                trial.leftGMm() < best.leftGMm() * (1 - 1e-9) && ring.rule().passes(trial.pieceAt);
        if (improved) {
            best = trial;
        }
        fruitless = improved ? 0 : fruitless + 1;
        if (fruitless > FRUITLESS && this.pairs < mostPairs) {
            this.pairs++;
            fruitless = 0;
        }
        return improved;
    }

    private MirrorLine line(int sum) {
        if (lines[sum] == null) {
            lines[sum] = new MirrorLine(halves, sum);
        }
        return lines[sum];
    }

    private MirroredOrders mirrored(MirrorLine line, int pairs) {
        if (made[pairs] == null) {
            made[pairs] = new MirroredOrders(ring.momentsGMm(), line, pairs);
        }
        made[pairs].mirrorIn(line);
        return made[pairs];
    }

    /** Takes the pieces off random pairs of places, whose moment the others leave over, and puts them back as they cancel it best. */
    private void refill(WheelOrder trial, MirrorLine line, MirroredOrders mirrored) {
        int count = mirrored.a.size();
        int[] pairs = new int[line.pairs()];
        Arrays.setAll(pairs, i -> i);
        dice.bringForward(pairs, count);
        int[] pieces = new int[2 * count];
        for (int i = 0; i < count; i++) {
            pieces[2 * i] = takeOff(trial, line.left[pairs[i]]);
            pieces[2 * i + 1] = takeOff(trial, line.right[pairs[i]]);
        }
        dice.bringForward(pieces, pieces.length);
        System.arraycopy(pieces, 0, mirrored.a.pieces, 0, count);
        System.arraycopy(pieces, count, mirrored.b.pieces, 0, count);
        System.arraycopy(pairs, 0, mirrored.a.pairs, 0, count / 2);
        System.arraycopy(pairs, count / 2, mirrored.b.pairs, 0, count / 2);
        if (count % 2 == 1) {
            mirrored.a.pairs[count / 2] = pairs[count - 1];
            mirrored.b.pairs[count / 2] = pairs[count - 1];
        }
        double along = line.along(trial.xGMm, trial.yGMm);
        double across = line.across(trial.xGMm, trial.yGMm);
        double radius = Math.min(best.leftGMm(), mirrored.widestGMm());
        mirrored.search(along, across, radius, false, (left, refilled, onLeft, onRight) -> {
            for (int i = 0; i < refilled.length; i++) {
                trial.pieceAt[line.left[refilled[i]]] = onLeft[i];
                trial.pieceAt[line.right[refilled[i]]] = onRight[i];
            }
            return left;
        });
    }

    private int takeOff(WheelOrder trial, int place) {
        int piece = trial.pieceAt[place];
        trial.xGMm -= ring.momentsGMm()[piece] * ring.compass().cos[place];
        trial.yGMm -= ring.momentsGMm()[piece] * ring.compass().sin[place];
        return piece;
    }
}
