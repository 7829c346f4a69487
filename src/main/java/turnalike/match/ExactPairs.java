package turnalike.match;

import java.util.Arrays;
import turnalike.effort.Effort;

/**
 * Goes through every order of one set round the wheel by mirrored pairs of places ({@link MirroredOrders}): for every choice of the pieces
 * on the mirror line and every split of the others between the pairs near its one end and those near the other. Without a given moment the
 * wheel may be turned and mirrored: one piece stands still and of two mirrored orders one is looked at. With one, every order counts.
 *
 * <p>Costs about 2 · C(2m, m) · m!/2^(m/2) steps of a nanosecond or two for m pairs: half a second for 17 places, some seconds for 19.
 */
final class ExactPairs {
    /** The most pairs that can be searched at all; it would take days. */
    private static final int MOST_PAIRS = 12;

    private final double[] momentsGMm;
    private final double givenXGMm;
    private final double givenYGMm;
    private final boolean free;
    private final boolean once;
    private final MirrorLine line;
    private final MirroredOrders mirrored;
    private final MirroredHalf a;
    private final MirroredHalf b;
    private final int[] pieceAt;

    private double radiusGMm;

    /** @param once whether of two orders that swap heavy for light (for weights in even steps) one is enough */
    ExactPairs(double[] momentsGMm, PlaceDirections compass, double givenXGMm, double givenYGMm, boolean once) {
        int n = compass.places;
        this.momentsGMm = momentsGMm;
        this.givenXGMm = givenXGMm;
        this.givenYGMm = givenYGMm;
        this.once = once;
        free = givenXGMm == 0 && givenYGMm == 0;
        // With a given moment the wheel cannot be turned; a line between places then spares going through the pieces
        // on it.
        line = new MirrorLine(new PlaceDirections(2 * n), free || n % 2 == 1 ? 0 : 1);
        mirrored = new MirroredOrders(momentsGMm, line, line.pairs());
        a = mirrored.a;
        b = mirrored.b;
        for (int k = 0; k < a.pairs.length; k++) {
            a.pairs[k] = k;
        }
        for (int k = 0; k < b.pairs.length; k++) {
            b.pairs[k] = line.pairs() - 1 - k;
        }
        pieceAt = new int[n];
    }

    /** Whether wheels of that size can be searched at all. */
    static boolean fits(int places, boolean free) {
        return pairs(places, free) <= MOST_PAIRS;
    }

    /** About how many ways are listed for one set: the measure of cost. */
    static double cost(int places, boolean free) {
        int pairs = pairs(places, free);
        double onLine = free == (places % 2 == 0) ? (free ? places - 1 : places) : 1;
        return onLine * Permutations.choose(2 * pairs, pairs) * 2 * Permutations.pairedCount(pairs);
    }

    /**
     * About how many steps settling takes beyond {@link #cost} for a radius, if sums along the line spread like those of the whole set: much
     * where little cancels at best, as with one very heavy piece.
     */
    static double settling(double[] momentsGMm, int[] set, boolean free, double radiusGMm) {
        int places = set.length;
        double mean =
                Arrays.stream(set).mapToDouble(p -> momentsGMm[p]).average().orElse(0);
        double squares = Arrays.stream(set)
                .mapToDouble(p -> (momentsGMm[p] - mean) * (momentsGMm[p] - mean))
                .sum();
        int pairs = pairs(places, free);
        double near = Math.min(1, 2 * radiusGMm / Math.max(Math.sqrt(squares), Double.MIN_NORMAL));
        return cost(places, free) / 2 * Permutations.pairedCount(pairs) * near * ((1 << pairs) / 4.0 + 100);
    }

    private static int pairs(int places, boolean free) {
        return free ? (places - 1) / 2 : places / 2;
    }

    /**
     * Searches one set.
     *
     * @param set as many pieces as places
     * @return whether the search came to its end
     */
    boolean search(int[] set, double radiusGMm, Effort effort, ExactOrders.Found found) {
        this.radiusGMm = radiusGMm;
        int[] ascending = ExactOrders.sorted(set, momentsGMm);
        int n = pieceAt.length;
        double along = line.along(givenXGMm, givenYGMm);
        double across = line.across(givenXGMm, givenYGMm);
        if (!free && n % 2 == 0) {
            return splits(ascending, along, across, false, effort, found);
        }
        if (!free) {
            return onPlace(line.onLine[0], ascending, along, across, effort, found);
        }
        // The middle piece stands still: then swapping heavy for light keeps it in place.
        int still = ascending[n / 2];
        pieceAt[line.onLine[0]] = still;
        double x = line.along[line.onLine[0]] * momentsGMm[still];
        int[] rest = ExactOrders.without(ascending, n / 2);
        if (n % 2 == 0) {
            return onPlace(line.onLine[1], rest, x, 0, effort, found);
        }
        boolean complement = once && ExactOrders.evenSteps(ascending, momentsGMm);
        return splits(rest, x, 0, complement, effort, found);
    }

    /** Tries every piece on a place of the line. */
    private boolean onPlace(
            int place, int[] rest, double along, double across, Effort effort, ExactOrders.Found found) {
        for (int i = 0; i < rest.length; i++) {
            pieceAt[place] = rest[i];
            double x = along + line.along[place] * momentsGMm[rest[i]];
            if (!splits(ExactOrders.without(rest, i), x, across, false, effort, found)) {
                return false;
            }
        }
        return true;
    }

    private boolean splits(
            int[] rest, double along, double across, boolean complement, Effort effort, ExactOrders.Found found) {
        for (int mask : likeliestFirst(rest, along, complement)) {
            if (effort.spent()) {
                return false;
            }
            Permutations.deal(rest, mask, a.pieces, b.pieces);
            mirrored.search(along, across, radiusGMm, free, (left, pairs, onLeft, onRight) -> {
                for (int i = 0; i < pairs.length; i++) {
                    pieceAt[line.left[pairs[i]]] = onLeft[i];
                    pieceAt[line.right[pairs[i]]] = onRight[i];
                }
                radiusGMm = found.order(left, pieceAt);
                return radiusGMm;
            });
        }
        return true;
    }

    /** The splits to look at, those first whose two sides are nearest to cancelling on average. */
    private int[] likeliestFirst(int[] rest, double along, boolean complement) {
        int[] masks = Permutations.masks(rest.length, a.size());
        double meanA = Arrays.stream(a.slots(line)).average().orElse(0);
        double meanB = Arrays.stream(b.slots(line)).average().orElse(0);
        long[] ranked = new long[masks.length];
        int kept = 0;
        for (int mask : masks) {
            int swapped = Integer.reverse(mask) >>> (32 - Math.max(1, rest.length));
            if (complement && mask > swapped) {
                continue;
            }
            double left = along;
            for (int i = 0; i < rest.length; i++) {
                left += momentsGMm[rest[i]] * (((mask >>> i) & 1) == 1 ? meanA : meanB);
            }
            ranked[kept++] = ((long) Float.floatToIntBits((float) Math.abs(left)) << 32) | mask;
        }
        Arrays.sort(ranked, 0, kept);
        int[] sorted = new int[kept];
        Arrays.setAll(sorted, i -> (int) ranked[i]);
        return sorted;
    }
}
