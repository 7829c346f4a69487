package turnalike.match;

import java.util.Arrays;
import turnalike.effort.Effort;

/**
 * Goes through every order of one set round the wheel, by splitting the places into two arcs and, for every split of the pieces between
 * them, meeting in the middle ({@link CancellingOrders}). Without a given moment the wheel may be turned and mirrored: one piece stands
 * still at place 0 and of two mirrored splits one is looked at. With one, every order counts.
 *
 * <p>Costs about C(n−1, (n−1)/2) · ((n−1)/2)! steps of a few nanoseconds for n places: microseconds for 10, seconds for 17.
 */
final class ExactOrders {
    /** Told of each order with less left over than the radius; answers with the radius, in g·mm, for those to come. */
    interface Found {
        double order(double leftGMm, int[] pieceAt);
    }

    /** Up to that many pairs of orders are compared one by one; tables cost more. */
    private static final long FEW_PAIRS = 1000;

    /** So many orders of arcs are worked through between two asks. */
    private static final int ORDERS_AN_ASK = 20_000;

    private final double[] momentsGMm;
    private final PlaceDirections compass;
    private final CancellingOrders cancelling;
    private final double givenXGMm;
    private final double givenYGMm;
    private final boolean free;
    private final boolean mirrorComplement;
    private final ArcOrders a;
    private final ArcOrders b;
    private final int[] pieceAt;

    /**
     * @param once whether of two orders that swap heavy for light (for weights in even steps) one is enough
     */
    ExactOrders(double[] momentsGMm, PlaceDirections compass, double givenXGMm, double givenYGMm, boolean once) {
        int n = compass.places;
        this.momentsGMm = momentsGMm;
        this.compass = compass;
        this.givenXGMm = givenXGMm;
        this.givenYGMm = givenYGMm;
        cancelling = new CancellingOrders(momentsGMm, compass);
        free = givenXGMm == 0 && givenYGMm == 0;
        mirrorComplement = once && free && n % 2 == 1;
        a = new ArcOrders(free ? (n - 1) / 2 : n / 2);
        b = new ArcOrders(free ? (n - 1) / 2 : n - n / 2);
        for (int i = 0; i < a.size(); i++) {
            a.places[i] = free ? 1 + i : i;
        }
        for (int i = 0; i < b.size(); i++) {
            b.places[i] = n - 1 - i;
        }
        pieceAt = new int[n];
    }

    /** The longest wheel that can be searched at all. */
    static boolean fits(int places, boolean free) {
        return (free ? (places - 1) / 2 : places - places / 2) <= Permutations.LONGEST;
    }

    /** About how many orders of arcs are listed for one set: the measure of cost. */
    static double cost(int places, boolean free) {
        int rest = free ? (places - 1) / 2 * 2 : places;
        int onA = rest / 2;
        double splits =
                Permutations.choose(rest, onA) / (free && onA > 0 ? 2 : 1) * (free && places % 2 == 0 ? places - 1 : 1);
        return splits * (Permutations.factorial(onA) + Permutations.factorial(rest - onA));
    }

    /**
     * Searches one set.
     *
     * @param set as many pieces as places
     * @return whether the search came to its end
     */
    boolean search(int[] set, double radiusGMm, Effort effort, Found found) {
        int[] ascending = sorted(set, momentsGMm);
        Narrowing narrowing = new Narrowing(radiusGMm, found);
        int n = compass.places;
        if (!free) {
            return splits(ascending, givenXGMm, givenYGMm, false, effort, narrowing);
        }
        // The middle piece stands still: then swapping heavy for light keeps it in place.
        int still = ascending[n / 2];
        pieceAt[0] = still;
        int[] rest = without(ascending, n / 2);
        if (n % 2 == 1) {
            boolean complement = mirrorComplement && evenSteps(ascending, momentsGMm);
            return splits(rest, momentsGMm[still], 0, complement, effort, narrowing);
        }
        for (int i = 0; i < rest.length; i++) {
            pieceAt[n / 2] = rest[i];
            double x = momentsGMm[still] - momentsGMm[rest[i]];
            if (!splits(without(rest, i), x, 0, false, effort, narrowing)) {
                return false;
            }
        }
        return true;
    }

    private boolean splits(
            int[] rest, double xGMm, double yGMm, boolean complement, Effort effort, Narrowing narrowing) {
        int asks = 1 + (a.orders() + b.orders()) / ORDERS_AN_ASK;
        for (int mask : likeliestFirst(rest, complement)) {
            if (effort.spentAfter(asks)) {
                return false;
            }
            Permutations.deal(rest, mask, a.pieces, b.pieces);
            if (narrowing.radiusGMm <= cancelling.widestGMm(a, b) && (long) a.orders() * b.orders() > FEW_PAIRS) {
                if (!cancelling.search(a, b, xGMm, yGMm, narrowing.radiusGMm, effort, narrowing)) {
                    return false;
                }
            } else if (floor(xGMm, yGMm) < narrowing.radiusGMm) {
                if (!everyPair(xGMm, yGMm, effort, narrowing)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The splits to look at, those first whose two arcs weigh alike: their orders cancel most often. */
    private int[] likeliestFirst(int[] rest, boolean complement) {
        int[] masks = Permutations.masks(rest.length, a.size());
        int all = (1 << rest.length) - 1;
        int kept = 0;
        for (int mask : masks) {
            boolean mirrored = free && mask > (all ^ mask);
            int swapped = Integer.reverse(mask) >>> (32 - Math.max(1, rest.length));
            if (!mirrored && !(complement && mask > Math.min(swapped, all ^ swapped))) {
                masks[kept++] = mask;
            }
        }
        masks = Arrays.copyOf(masks, kept);
        if (kept < 100) {
            return masks;
        }
        double total = 0;
        for (int piece : rest) {
            total += momentsGMm[piece];
        }
        double[] uneven = new double[kept];
        long[] ranked = new long[kept];
        for (int i = 0; i < kept; i++) {
            double onA = 0;
            for (int bit = 0; bit < rest.length; bit++) {
                onA += ((masks[i] >>> bit) & 1) * momentsGMm[rest[bit]];
            }
            uneven[i] = Math.abs(total / 2 - onA);
            ranked[i] = (((long) Float.floatToIntBits((float) uneven[i])) << 32) | masks[i];
        }
        Arrays.sort(ranked);
        for (int i = 0; i < kept; i++) {
            masks[i] = (int) ranked[i];
        }
        return masks;
    }

    /**
     * What no order of this split can go below: how far the moments are from cancelling along the line toward the given moment, at best,
     * when the heaviest stand farthest back (rearrangement inequality).
     */
    private double floor(double xGMm, double yGMm) {
        double size = Math.hypot(xGMm, yGMm);
        if (size == 0) {
            return 0;
        }
        double least = size + least(a, xGMm / size, yGMm / size) + least(b, xGMm / size, yGMm / size);
        return least * (1 - 1e-12);
    }

    private double least(ArcOrders arc, double ux, double uy) {
        double[] along = new double[arc.size()];
        double[] moments = new double[arc.size()];
        for (int i = 0; i < along.length; i++) {
            along[i] = compass.cos[arc.places[i]] * ux + compass.sin[arc.places[i]] * uy;
            moments[i] = momentsGMm[arc.pieces[i]];
        }
        Arrays.sort(along);
        Arrays.sort(moments);
        double sum = 0;
        for (int i = 0; i < along.length; i++) {
            sum += along[i] * moments[along.length - 1 - i];
        }
        return sum;
    }

    private boolean everyPair(double xGMm, double yGMm, Effort effort, Narrowing narrowing) {
        Sums onA = new Sums(a, xGMm, yGMm);
        Sums onB = new Sums(b, 0, 0);
        for (int i = 0; i < onA.x.length; i++) {
            if (i % 64 == 63 && effort.spent()) {
                return false;
            }
            double x = onA.x[i];
            double y = onA.y[i];
            double radiusSquared = narrowing.radiusGMm * narrowing.radiusGMm;
            for (int j = 0; j < onB.x.length; j++) {
                double dx = x + onB.x[j];
                double dy = y + onB.y[j];
                double square = dx * dx + dy * dy;
                if (square < radiusSquared) {
                    narrowing.pair(Math.sqrt(square), onA.order(i), onB.order(j));
                    radiusSquared = narrowing.radiusGMm * narrowing.radiusGMm;
                }
            }
        }
        return true;
    }

    static int[] sorted(int[] set, double[] momentsGMm) {
        Integer[] boxed = new Integer[set.length];
        Arrays.setAll(boxed, i -> set[i]);
        Arrays.sort(boxed, (p, q) -> Double.compare(momentsGMm[p], momentsGMm[q]));
        int[] ascending = new int[set.length];
        Arrays.setAll(ascending, i -> boxed[i]);
        return ascending;
    }

    static int[] without(int[] pieces, int index) {
        int[] rest = new int[pieces.length - 1];
        System.arraycopy(pieces, 0, rest, 0, index);
        System.arraycopy(pieces, index + 1, rest, index, rest.length - index);
        return rest;
    }

    /** Whether heavy and light can be swapped without changing the unbalance: moments that lie evenly about their middle. */
    static boolean evenSteps(int[] ascending, double[] momentsGMm) {
        double twice = momentsGMm[ascending[0]] + momentsGMm[ascending[ascending.length - 1]];
        for (int i = 0; i < ascending.length; i++) {
            double pair = momentsGMm[ascending[i]] + momentsGMm[ascending[ascending.length - 1 - i]];
            if (Math.abs(pair - twice) > 1e-15 * Math.abs(twice)) {
                return false;
            }
        }
        return true;
    }

    /** Puts the two arcs into the whole order and keeps the radius between searches. */
    private final class Narrowing implements CancellingOrders.Found {
        private final Found found;
        private double radiusGMm;

        Narrowing(double radiusGMm, Found found) {
            this.radiusGMm = radiusGMm;
            this.found = found;
        }

        @Override
        public double pair(double leftGMm, int[] onA, int[] onB) {
            for (int i = 0; i < onA.length; i++) {
                pieceAt[a.places[i]] = onA[i];
            }
            for (int i = 0; i < onB.length; i++) {
                pieceAt[b.places[i]] = onB[i];
            }
            radiusGMm = found.order(leftGMm, pieceAt);
            return radiusGMm;
        }
    }

    /** The moments of all orders of one arc, stored. */
    private final class Sums {
        final double[] x;
        final double[] y;
        private final ArcOrders arc;
        private final int[] order;

        Sums(ArcOrders arc, double startX, double startY) {
            this.arc = arc;
            x = new double[arc.orders()];
            y = new double[arc.orders()];
            order = new int[arc.size()];
            for (int number = 0; number < x.length; number++) {
                order(number);
                x[number] = startX;
                y[number] = startY;
                for (int i = 0; i < order.length; i++) {
                    x[number] += momentsGMm[order[i]] * compass.cos[arc.places[i]];
                    y[number] += momentsGMm[order[i]] * compass.sin[arc.places[i]];
                }
            }
        }

        int[] order(int number) {
            arc.order(number, order);
            return order;
        }
    }
}
