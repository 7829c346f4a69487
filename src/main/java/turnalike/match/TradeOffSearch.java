package turnalike.match;

import java.util.Arrays;
import java.util.List;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.units.Length;

/**
 * Looks for orders that are both balanced and round. For speed it weighs the square of the unbalance against the mean square of what is left of
 * the radii once their mean and their first wave round the rim, which is only an offset of the centre, are taken out: both follow a swap in
 * a few steps. What it comes by is then measured properly.
 */
final class TradeOffSearch {
    private static final int EVERY_ORDER = 7;
    /** Six and six pieces leave far less over than a scale can tell, in well under a millisecond. */
    private static final int QUICK_ARC = 6;

    private static final int WEIGHTINGS = 19;
    /** A share of the weighted sum: less is no gain. */
    private static final double LEAST_GAIN = 1e-9;
    /** A share of a sum, above its rounding by more than {@link #LEAST_GAIN} is below one. */
    private static final double BEYOND_ROUNDING = 1e-8;

    private static final int MOST_ROUNDS = 40;

    private final TradeOff.Rim rim;
    private final TradeOff.Front front;
    private final PlaceDirections compass;
    private final WheelArrays ring;
    private final double[] moments;
    private final double[] lengths;
    private final double[] depths;
    private final SplitMix64 dice = new SplitMix64(6);
    private final double usualSquare;
    private final double usualRough;
    private int[] order;

    TradeOffSearch(TradeOff.Rim rim, TradeOff.Front front) {
        this.rim = rim;
        this.front = front;
        int n = rim.wheel().places();
        compass = new PlaceDirections(n);
        List<Spoke> spokes = rim.spokes();
        double[] masses =
                spokes.stream().mapToDouble(s -> s.piece().mass().grams()).toArray();
        moments = spokes.stream()
                .mapToDouble(s -> s.piece().mass().grams() * s.piece().reach().mm())
                .toArray();
        lengths = spokes.stream().mapToDouble(s -> s.length().mm()).toArray();
        depths = rim.seatDepths().stream().mapToDouble(Length::mm).toArray();
        Moment given = Moment.sum(rim.given());
        SetRule any = new SetRule(masses, n, Double.MAX_VALUE);
        ring = new WheelArrays(
                masses,
                moments,
                compass,
                any,
                given.gMm() == 0 ? 0 : given.xGMm(),
                given.gMm() == 0 ? 0 : given.yGMm());
        // What random orders show on average: the scales that make the two aims comparable. Where all weigh or reach
        // the same, far above
        // what rounding makes of that, or the swaps would chase rounding for ever.
        usualSquare = Math.max(variance(moments) * n, square(BEYOND_ROUNDING * total(moments)));
        usualRough = Math.max(variance(lengths) + variance(depths), square(BEYOND_ROUNDING * total(lengths) / n));
        order = new int[n];
        Arrays.setAll(order, i -> i);
    }

    void run(Effort effort) {
        if (order.length <= EVERY_ORDER) {
            everyOrder(0);
            return;
        }
        LargeNeighbourhoodSearch balanced = new LargeNeighbourhoodSearch(ring, QUICK_ARC);
        balanced.run(ring.roundingGMm(), 50, limited(200, effort));
        order = balanced.pieceAt();
        front.offer(rim.point(order));
        for (int round = 0; round < MOST_ROUNDS && !effort.spent(); round++) {
            if (round > 0) {
                dice.bringForward(order, order.length);
            }
            for (int k = 0; k < WEIGHTINGS && !effort.spent(); k++) {
                descend(Math.pow(10, -6 + 0.5 * k), effort);
            }
        }
    }

    private static Effort limited(int asks, Effort effort) {
        Effort few = Effort.ofAsks(asks);
        return () -> few.spent() || effort.spent();
    }

    private void everyOrder(int fixed) {
        if (fixed == order.length) {
            front.offer(rim.point(order));
            return;
        }
        for (int i = fixed; i < order.length; i++) {
            swap(fixed, i);
            everyOrder(fixed + 1);
            swap(fixed, i);
        }
    }

    /** Swaps as long as the weighted sum, added up afresh after each round of swaps, falls; then notes where that led. */
    private void descend(double weight, Effort effort) {
        Sums now = new Sums();
        double last = Double.POSITIVE_INFINITY;
        while (now.score(weight) < last * (1 - LEAST_GAIN) && !effort.spent()) {
            last = now.score(weight);
            for (int i = 0; i < order.length; i++) {
                for (int j = i + 1; j < order.length; j++) {
                    double before = now.score(weight);
                    now.swapped(i, j);
                    if (now.score(weight) < before * (1 - LEAST_GAIN)) {
                        swap(i, j);
                    } else {
                        now.takeBack();
                    }
                }
            }
            now = new Sums();
        }
        front.offer(rim.point(order));
    }

    private void swap(int i, int j) {
        int held = order[i];
        order[i] = order[j];
        order[j] = held;
    }

    private static double total(double[] values) {
        return Arrays.stream(values).map(Math::abs).sum();
    }

    private static double square(double value) {
        return value * value;
    }

    private static double variance(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElse(0);
    }

    /** The sums that both aims are made of: moment, radii squared, and the radii's first wave. */
    private final class Sums {
        private final double[] sums = new double[5];
        private final double[] before = new double[5];
        private final double mean;

        Sums() {
            double sum = 0;
            for (int place = 0; place < order.length; place++) {
                sum += lengths[order[place]] - depths[place];
            }
            mean = sum / order.length;
            sums[0] = ring.givenXGMm();
            sums[1] = ring.givenYGMm();
            for (int place = 0; place < order.length; place++) {
                add(place, order[place], 1);
            }
        }

        private void add(int place, int spoke, int sign) {
            double radius = lengths[spoke] - depths[place] - mean;
            sums[0] += sign * moments[spoke] * compass.cos[place];
            sums[1] += sign * moments[spoke] * compass.sin[place];
            sums[2] += sign * radius * radius;
            sums[3] += sign * radius * compass.cos[place];
            sums[4] += sign * radius * compass.sin[place];
        }

        /** What the sums would be with the pieces of two places swapped. */
        void swapped(int i, int j) {
            System.arraycopy(sums, 0, before, 0, sums.length);
            add(i, order[i], -1);
            add(j, order[j], -1);
            add(i, order[j], 1);
            add(j, order[i], 1);
        }

        void takeBack() {
            System.arraycopy(before, 0, sums, 0, sums.length);
        }

        double score(double weight) {
            int n = order.length;
            double square = sums[0] * sums[0] + sums[1] * sums[1];
            double rough = sums[2] / n - 2 * (sums[3] * sums[3] + sums[4] * sums[4]) / ((double) n * n);
            return square / usualSquare + weight * rough / usualRough;
        }
    }
}
