package turnalike.match;

import java.util.Arrays;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.frame.Moment;

/**
 * Looks for sets and orders that are both balanced and round. For speed it weighs the square of the unbalance against the mean square of what is
 * left of the radii once their mean and their first wave round the rim, which is only an offset of the centre, are taken out: both follow a
 * swap in a few steps. What it comes by is then measured properly.
 */
final class TradeOffSearch {
    /** So many sets and orders, a tenth of a second's work, are all looked at. */
    private static final long EVERY_ORDER = 60_000;

    /** Six and six pieces leave far less over than a scale can tell, in well under a millisecond. */
    private static final int QUICK_ARC = 6;

    private static final int WEIGHTINGS = 19;
    /** A share of the weighted sum: less is no gain. */
    private static final double LEAST_GAIN = 1e-9;
    /** A share of a sum, above its rounding by more than {@link #LEAST_GAIN} is below one. */
    private static final double BEYOND_ROUNDING = 1e-8;

    private static final int MOST_ROUNDS = 40;

    /** Swaps looked at before no further start is made, some tenth of a second: the search ends by them and never by the clock. */
    private static final long MOST_SWAPS = 5_000_000;

    private final TradeOff.Rim rim;
    private final Consumer<TradeOff.Point> found;
    private final PlaceDirections compass;
    private final WheelArrays ring;
    private final boolean turns;
    /** By place and spoke, what a spoke pulls and how far out it reaches there, in the seat as it lies and is bored. */
    private final double[][] pulls;

    private final double[][] radii;
    private final SplitMix64 dice = new SplitMix64(6);
    private final double usualSquare;
    private final double usualRough;
    private long swaps;
    private WheelOrder order;

    TradeOffSearch(TradeOff.Rim rim, Consumer<TradeOff.Point> found) {
        this.rim = rim;
        this.found = found;
        int n = rim.wheel().places();
        compass = new PlaceDirections(n);
        pulls = new double[n][rim.spokes().size()];
        radii = new double[n][rim.spokes().size()];
        for (int place = 0; place < n; place++) {
            for (int spoke = 0; spoke < rim.spokes().size(); spoke++) {
                pulls[place][spoke] = rim.spokes().get(spoke).piece().mass().grams()
                        * rim.reach(place, spoke).mm();
                radii[place][spoke] = rim.radius(place, spoke)
                        .minus(rim.deepening(place, spoke))
                        .mm();
            }
        }
        boolean alike = rim.seatDepths().stream().distinct().count() == 1;
        ring = ring(alike);
        turns = alike && ring.free();
        double[] lengths = Arrays.stream(radii).flatMapToDouble(Arrays::stream).toArray();
        // What random orders show on average: the scales that make the two aims comparable. Where all weigh or reach
        // the same, far above what rounding makes of that, or the swaps would chase rounding for ever.
        usualSquare = Math.max(variance(ring.momentsGMm()) * n, square(BEYOND_ROUNDING * total(ring.momentsGMm())));
        usualRough = Math.max(variance(lengths), square(BEYOND_ROUNDING * total(lengths) / lengths.length));
        order = new WheelOrder(ring, ring.rule().alikest());
    }

    /** The wheel with what a spoke pulls on average over the places, and what a place adds to that on average over the spokes. */
    private WheelArrays ring(boolean seatsAlike) {
        int spokes = rim.spokes().size();
        double[] masses =
                rim.spokes().stream().mapToDouble(s -> s.piece().mass().grams()).toArray();
        double[] moments = new double[spokes];
        for (int spoke = 0; spoke < spokes; spoke++) {
            int each = spoke;
            moments[spoke] = seatsAlike
                    ? pulls[0][spoke]
                    : Arrays.stream(pulls).mapToDouble(p -> p[each]).average().orElse(0);
        }
        Moment given = Moment.sum(rim.given());
        double x = given.gMm() == 0 ? 0 : given.xGMm();
        double y = given.gMm() == 0 ? 0 : given.yGMm();
        if (!seatsAlike) {
            double mean = Arrays.stream(moments).average().orElse(0);
            for (int place = 0; place < pulls.length; place++) {
                double more = Arrays.stream(pulls[place]).average().orElse(0) - mean;
                x += more * compass.cos[place];
                y += more * compass.sin[place];
            }
        }
        SetRule rule = new SetRule(masses, pulls.length, rim.tolerancePct() / 100);
        return new WheelArrays(masses, moments, compass, rule, x, y);
    }

    void run(Effort effort) {
        if (everyOrder()) {
            return;
        }
        LargeNeighbourhoodSearch balanced = new LargeNeighbourhoodSearch(ring, QUICK_ARC);
        balanced.run(ring.roundingGMm(), 50, limited(200, effort));
        order = new WheelOrder(ring, balanced.pieceAt());
        offer();
        for (int round = 0; round < MOST_ROUNDS && !isSpent(effort); round++) {
            if (round > 0) {
                dice.bringForward(order.pieceAt, order.pieceAt.length);
            }
            for (int k = 0; k < WEIGHTINGS && !isSpent(effort); k++) {
                descend(Math.pow(10, -6 + 0.5 * k), effort);
            }
        }
    }

    private boolean isSpent(Effort effort) {
        return swaps >= MOST_SWAPS || effort.spent();
    }

    private static Effort limited(int asks, Effort effort) {
        Effort few = Effort.ofAsks(asks);
        return () -> few.spent() || effort.spent();
    }

    /** Whether there were few enough to look at each set in each order; of orders that are one another turned or mirrored, one. */
    private boolean everyOrder() {
        int n = compass.places;
        if (n > Permutations.LONGEST) {
            return false;
        }
        double orders = Permutations.factorial(turns ? n - 1 : n);
        if (orders > EVERY_ORDER || orders * ring.rule().count((long) (EVERY_ORDER / orders) + 1) > EVERY_ORDER) {
            return false;
        }
        ring.rule().each(set -> {
            int[] listed = Arrays.stream(set).sorted().toArray();
            everyOrder(listed, turns ? 1 : 0);
            return true;
        });
        return true;
    }

    private void everyOrder(int[] pieceAt, int fixed) {
        if (fixed == pieceAt.length) {
            if (!turns || pieceAt[1] < pieceAt[pieceAt.length - 1]) {
                found.accept(rim.point(pieceAt));
            }
            return;
        }
        for (int i = fixed; i < pieceAt.length; i++) {
            swap(pieceAt, fixed, i);
            everyOrder(pieceAt, fixed + 1);
            swap(pieceAt, fixed, i);
        }
    }

    private void offer() {
        found.accept(rim.point(turns ? FirstPlace.turned(order.pieceAt) : order.pieceAt));
    }

    /** Swaps as long as the weighted sum, added up afresh after each round of swaps, falls; then notes where that led. */
    private void descend(double weight, Effort effort) {
        Sums now = new Sums();
        double last = Double.POSITIVE_INFINITY;
        while (now.score(weight) < last * (1 - LEAST_GAIN) && !isSpent(effort)) {
            last = now.score(weight);
            for (int i = 0; i < order.pieceAt.length; i++) {
                swapPlaced(now, weight, i);
                swapSpares(now, weight, i);
            }
            now = new Sums();
        }
        offer();
    }

    private void swapPlaced(Sums now, double weight, int i) {
        int[] pieceAt = order.pieceAt;
        for (int j = i + 1; j < pieceAt.length; j++) {
            double before = now.score(weight);
            now.keep();
            now.add(i, pieceAt[i], -1);
            now.add(j, pieceAt[j], -1);
            now.add(i, pieceAt[j], 1);
            now.add(j, pieceAt[i], 1);
            swaps++;
            if (now.score(weight) < before * (1 - LEAST_GAIN)) {
                swap(pieceAt, i, j);
            } else {
                now.takeBack();
            }
        }
    }

    private void swapSpares(Sums now, double weight, int i) {
        int[] pieceAt = order.pieceAt;
        for (int s = 0; s < order.spares.length; s++) {
            double before = now.score(weight);
            int held = pieceAt[i];
            now.keep();
            now.add(i, held, -1);
            now.add(i, order.spares[s], 1);
            swaps++;
            pieceAt[i] = order.spares[s];
            if (now.score(weight) < before * (1 - LEAST_GAIN) && ring.rule().passes(pieceAt)) {
                order.spares[s] = held;
            } else {
                pieceAt[i] = held;
                now.takeBack();
            }
        }
    }

    private static void swap(int[] pieceAt, int i, int j) {
        int held = pieceAt[i];
        pieceAt[i] = pieceAt[j];
        pieceAt[j] = held;
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

    /** The sums that both aims are made of: moment, radii and their squares, and the radii's first wave. */
    private final class Sums {
        private final double[] sums = new double[6];
        private final double[] before = new double[6];
        private final double mean;

        Sums() {
            int[] pieceAt = order.pieceAt;
            mean = IntStream.range(0, pieceAt.length)
                    .mapToDouble(place -> radii[place][pieceAt[place]])
                    .average()
                    .orElse(0);
            Moment given = Moment.sum(rim.given());
            sums[0] = given.gMm() == 0 ? 0 : given.xGMm();
            sums[1] = given.gMm() == 0 ? 0 : given.yGMm();
            for (int place = 0; place < pieceAt.length; place++) {
                add(place, pieceAt[place], 1);
            }
        }

        private void add(int place, int spoke, int sign) {
            double radius = radii[place][spoke] - mean;
            double pull = pulls[place][spoke];
            sums[0] += sign * pull * compass.cos[place];
            sums[1] += sign * pull * compass.sin[place];
            sums[2] += sign * radius * radius;
            sums[3] += sign * radius * compass.cos[place];
            sums[4] += sign * radius * compass.sin[place];
            sums[5] += sign * radius;
        }

        void keep() {
            System.arraycopy(sums, 0, before, 0, sums.length);
        }

        void takeBack() {
            System.arraycopy(before, 0, sums, 0, sums.length);
        }

        double score(double weight) {
            double n = compass.places;
            double square = sums[0] * sums[0] + sums[1] * sums[1];
            double rough =
                    sums[2] / n - sums[5] * sums[5] / (n * n) - 2 * (sums[3] * sums[3] + sums[4] * sums[4]) / (n * n);
            return square / usualSquare + weight * rough / usualRough;
        }
    }
}
