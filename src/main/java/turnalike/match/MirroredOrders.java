package turnalike.match;

/**
 * Finds orders on mirrored pairs of places that cancel a given moment. Along the line of the mirror it makes no difference which piece of a
 * pair stands to the left, so all orders that differ only in this have one sum there: the sums of two sides of the line, each far fewer
 * than the side's orders, are brought to meet in the middle, and only for the few that cancel along the line are the lefts and rights
 * gone through, which settle the sum across it. Nothing within the radius is lost.
 *
 * <p>Derived here; the idea of listing halves is Horowitz and Sahni's (J. ACM 21 (1974) 277–292, from memory).
 */
final class MirroredOrders {
    /** Told of each order within the radius, as pieces on the left and right places; answers with the radius, in g·mm, from now on. */
    interface Found {
        double order(double leftGMm, int[] pairs, int[] onLeft, int[] onRight);
    }

    /** Each of some 24 sums is off by half a step, and the given one too. */
    private static final int SLACK_STEPS = 14;

    /** What it takes to look at two ways that may cancel, besides their lefts and rights, in steps of listing. */
    private static final int STEPS_TO_SETTLE = 100;

    /** Settling may take a few times as long as listing: measured, wider radii find more in the same time up to about there. */
    private static final double SETTLED = 10;

    private final double[] momentsGMm;
    final MirroredHalf a;
    final MirroredHalf b;
    private final BloomFilter cells = new BloomFilter();
    private final BloomFilter.Kept keptA = new BloomFilter.Kept();
    private final BloomFilter.Kept keptB = new BloomFilter.Kept();
    private final int[] onLeft;
    private final int[] onRight;
    private final int[] places;
    private final double[] swings;
    private final double[] someSums;
    private final double[] otherSums;
    private double stepGMm;
    private double radiusGMm;

    private MirrorLine line;

    /** @param pairs how many pairs of places are filled at a time, from 1 */
    MirroredOrders(double[] momentsGMm, MirrorLine line, int pairs) {
        this.momentsGMm = momentsGMm;
        this.line = line;
        a = new MirroredHalf(pairs);
        b = new MirroredHalf(pairs);
        onLeft = new int[pairs];
        onRight = new int[pairs];
        places = new int[pairs];
        swings = new double[pairs];
        someSums = new double[1 << (pairs / 2 + 1)];
        otherSums = new double[1 << (pairs / 2 + 1)];
    }

    /** From now on the sides' pairs are those of that line. */
    void mirrorIn(MirrorLine line) {
        this.line = line;
    }

    /** The radius up to which settling what cancels along the line takes not much longer than listing the sums. */
    double widestGMm() {
        double spanA = a.most(momentsGMm, line) - a.least(momentsGMm, line);
        double spanB = b.most(momentsGMm, line) - b.least(momentsGMm, line);
        double share = SETTLED * (1.0 / a.ways() + 1.0 / b.ways()) / (STEPS_TO_SETTLE + (1 << places.length));
        return Math.max(spanA, spanB) * Math.min(1, share);
    }

    /**
     * Tells {@code found} every order of the two sides with |given + order| below the radius, which it may narrow as it is told. Where the
     * sides are odd, each has half of one pair, the last of both: a its left, b its right.
     *
     * @param alongGMm what is to be cancelled, along the line
     * @param acrossGMm and across it
     * @param once whether of two orders that mirror one another one is enough; then there must be nothing across
     */
    void search(double alongGMm, double acrossGMm, double radiusGMm, boolean once, Found found) {
        this.radiusGMm = radiusGMm;
        double lowA = alongGMm + a.least(momentsGMm, line);
        double highA = alongGMm + a.most(momentsGMm, line);
        double lowB = -b.most(momentsGMm, line);
        double highB = -b.least(momentsGMm, line);
        if (Math.max(lowA, lowB) - radiusGMm > Math.min(highA, highB)) {
            return;
        }
        double least = Math.min(lowA, lowB);
        double most = Math.max(highA, highB);
        stepGMm = step(Math.max(most - least, 2 * Math.max(a.reach(momentsGMm, line), b.reach(momentsGMm, line))));
        double middle = (least + most) / 2;
        a.lay(momentsGMm, line, stepGMm, 1, alongGMm - middle);
        b.lay(momentsGMm, line, stepGMm, -1, -middle);
        int near = near();
        int low = (int) Math.round((Math.max(lowA, lowB) - middle) / stepGMm) - near;
        int high = (int) Math.round((Math.min(highA, highB) - middle) / stepGMm) + near;
        meet(near, low, high);
        settle(alongGMm, acrossGMm, once, found);
    }

    private void meet(int near, int low, int high) {
        cells.empty(near, a.ways(), false);
        cells.mark(a, low, high);
        cells.sieve(b, low, high, keptB);
        cells.empty(near, keptB.count, true);
        cells.mark(keptB);
        cells.sieve(a, low, high, keptA);
        int before;
        do {
            before = keptA.count + keptB.count;
            cells.empty(near, keptA.count, true);
            cells.mark(keptA);
            cells.sieve(keptB);
            cells.empty(near, keptB.count, true);
            cells.mark(keptB);
            cells.sieve(keptA);
        } while (keptA.count + keptB.count < before * 0.7);
    }

    /** Goes through what may cancel along the line. */
    private void settle(double alongGMm, double acrossGMm, boolean once, Found found) {
        long[] sumsA = keptA.sorted();
        long[] sumsB = keptB.sorted();
        int first = 0;
        for (long sumA : sumsA) {
            long low = (sumA >> 32) - near();
            long high = (sumA >> 32) + near();
            while (first < sumsB.length && sumsB[first] >> 32 < low) {
                first++;
            }
            for (int j = first; j < sumsB.length && sumsB[j] >> 32 <= high; j++) {
                pair(a.way((int) sumA), b.way((int) sumsB[j]), alongGMm, acrossGMm, once, found);
            }
        }
    }

    /** Tries every left and right of one pair of ways. */
    private void pair(int[] wayA, int[] wayB, double alongGMm, double acrossGMm, boolean once, Found found) {
        double along = alongGMm;
        double across = acrossGMm;
        int pairs = stand(wayA, a, 0);
        pairs = stand(wayB, b, pairs);
        boolean shared = wayA.length % 2 == 1;
        if (shared) {
            onLeft[pairs] = wayA[wayA.length - 1];
            onRight[pairs] = wayB[wayB.length - 1];
            places[pairs] = a.pairs[a.pairs.length - 1];
            if (once && onLeft[pairs] > onRight[pairs]) {
                return;
            }
            pairs++;
        }
        for (int i = 0; i < pairs; i++) {
            int place = line.left[places[i]];
            double p = momentsGMm[onLeft[i]];
            double q = momentsGMm[onRight[i]];
            along += line.along[place] * (p + q);
            swings[i] = line.across[place] * (p - q);
        }
        if (Math.abs(along) >= radiusGMm) {
            return;
        }
        // The first pair stands still if mirroring is the same; the shared one has its lefts and rights in different
        // splits.
        int free = shared ? pairs - 1 : pairs;
        for (int i = free; i < pairs; i++) {
            across += swings[i];
        }
        int fixed = once && !shared && free > 0 ? 1 : 0;
        if (fixed == 1) {
            across += swings[0];
        }
        int middle = (fixed + free) / 2;
        int some = turns(fixed, middle, across, someSums);
        int others = turns(middle, free, 0, otherSums);
        for (int i = 0; i < some; i++) {
            double need = Math.sqrt(Math.max(0, radiusGMm * radiusGMm - along * along));
            for (int j = 0; j < others; j++) {
                double left = someSums[i] + otherSums[j];
                if (Math.abs(left) < need) {
                    tell(i | (j << (middle - fixed)), fixed, free, Math.hypot(along, left), found);
                    need = Math.sqrt(Math.max(0, radiusGMm * radiusGMm - along * along));
                }
            }
        }
    }

    private int stand(int[] way, MirroredHalf side, int from) {
        int to = from;
        for (int i = 0; i + 1 < way.length; i += 2) {
            places[to] = side.pairs[i / 2];
            onLeft[to] = way[i];
            onRight[to++] = way[i + 1];
        }
        return to;
    }

    /** The sums of all lefts and rights of some pairs; a set bit in a sum's number is a pair turned round. */
    private int turns(int from, int to, double start, double[] into) {
        int count = 1;
        into[0] = start;
        for (int i = from; i < to; i++) {
            for (int k = 0; k < count; k++) {
                into[count + k] = into[k] - swings[i];
                into[k] += swings[i];
            }
            count *= 2;
        }
        return count;
    }

    private void tell(int turned, int from, int to, double leftGMm, Found found) {
        int[] onTheLeft = onLeft.clone();
        int[] onTheRight = onRight.clone();
        for (int i = from; i < to; i++) {
            if (((turned >>> (i - from)) & 1) == 1) {
                onTheLeft[i] = onRight[i];
                onTheRight[i] = onLeft[i];
            }
        }
        radiusGMm = found.order(leftGMm, places, onTheLeft, onTheRight);
    }

    /** All sums then fit within 2^30 steps to either side, and the radius within 2^29. */
    private double step(double spanGMm) {
        return (spanGMm + 4 * radiusGMm + Double.MIN_NORMAL) / (1L << 31);
    }

    private int near() {
        return (int) Math.ceil(radiusGMm / stepGMm) + SLACK_STEPS;
    }
}
