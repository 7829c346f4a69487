package turnalike.match;

import java.util.Arrays;
import java.util.List;
import turnalike.frame.Moment;
import turnalike.units.Length;

/**
 * Looks for the set and order whose unbalance is expected to be least: the mean of its square is the known moment's square, and what the pieces
 * scatter, each by itself and those that were not measured together. Where there are no more than some ten thousand sets and orders each is
 * looked at; beyond, exchanges of two places, or of a place and a spare, the one that gains most each time, from the start and from the best
 * so far with a few pieces exchanged by chance. It ends by a fixed count of exchanges looked at and never by the clock.
 */
public final class ExpectedSearch {
    /** So many sets and orders, a few milliseconds' work, are all looked at. */
    private static final int EVERY_ORDER = 20_000;

    private static final int STARTS = 200;
    private static final long MOST_LOOKS = 400_000;

    /** Tables of this many entries are no longer made: nobody weighs so many pieces for a wheel, and the start stands. */
    private static final int MOST_ENTRIES = 100_000;

    /** A share: less is no gain. */
    private static final double LEAST_GAIN = 1e-9;

    /** How a piece's moment scatters. */
    public interface Scatter {
        /**
         * {@return how much farther out than taken its balance point lies on average, in mm}
         *
         * @param piece one of the problem's
         */
        double shiftMm(Candidate piece);

        /**
         * {@return the standard deviation of what its balance point shares with all others that were not measured, in mm; 0 for one that was}
         *
         * @param piece one of the problem's
         */
        double sharedMm(Candidate piece);

        /**
         * {@return the variance of its moment by itself, both components together, in (g·mm)²}
         *
         * @param piece one of the problem's
         * @param reachMm how far out its balance point stands at its place
         */
        double variance(Candidate piece, double reachMm);
    }

    private final WheelArrays ring;
    private final int places;
    private final int pieces;
    private final double givenX;
    private final double givenY;
    /** By place and piece: what it pulls, what it shares in the common scatter, and what it scatters by itself. */
    private final double[][] pull;

    private final double[] shared;
    private final double[][] variance;
    private final SplitMix64 dice = new SplitMix64(15);
    private long looks;
    private int[] best;
    private double bestSquare;

    private ExpectedSearch(WheelProblem problem, WheelArrays ring, Scatter scatter, int[] start) {
        this.ring = ring;
        places = ring.places();
        pieces = ring.pieces();
        Moment given = Moment.sum(problem.given());
        givenX = given.gMm() == 0 ? 0 : given.xGMm();
        givenY = given.gMm() == 0 ? 0 : given.yGMm();
        pull = new double[places][pieces];
        variance = new double[places][pieces];
        shared = new double[pieces];
        for (int piece = 0; piece < pieces; piece++) {
            Candidate each = problem.pieces().get(piece);
            double grams = each.mass().grams();
            shared[piece] = grams * scatter.sharedMm(each);
            for (int place = 0; place < places; place++) {
                Length reach = each.reach().minus(problem.seatDepth(place));
                pull[place][piece] = grams * (reach.mm() + scatter.shiftMm(each));
                variance[place][piece] = scatter.variance(each, reach.mm());
            }
        }
        best = start;
        bestSquare = square(start);
    }

    /**
     * {@return a placement whose unbalance is expected to be less, by its mean square; the start itself where none is found or there are very
     * many pieces}
     *
     * @param problem the pieces and the wheel
     * @param scatter how their moments scatter
     * @param start the problem's pieces in their places; one that does not pass is left as it is
     * @throws IllegalArgumentException when a piece of the start is none of the problem's
     */
    public static WheelPlacement from(WheelProblem problem, Scatter scatter, WheelPlacement start) {
        WheelArrays ring = WheelMatch.ring(problem);
        int[] order = WheelMatch.preferred(numbers(problem, start), ring.pieces());
        if ((long) ring.places() * ring.pieces() > MOST_ENTRIES || !ring.rule().passes(placed(order, ring.places()))) {
            return start;
        }
        ExpectedSearch search = new ExpectedSearch(problem, ring, scatter, order);
        double before = search.bestSquare;
        search.run();
        if (search.bestSquare >= before * (1 - LEAST_GAIN)) {
            return start;
        }
        int[] pieceAt = placed(search.best, ring.places());
        return WheelMatch.placement(problem, ring, ring.free() ? FirstPlace.turned(pieceAt) : pieceAt, false);
    }

    private static int[] numbers(WheelProblem problem, WheelPlacement start) {
        int[] out = start.seats().stream()
                .mapToInt(seat -> problem.pieces().indexOf(seat.piece()))
                .toArray();
        if (Arrays.stream(out).anyMatch(number -> number < 0)) {
            throw new IllegalArgumentException("a piece of the start is none of the problem's, were "
                    + List.of(problem.pieces().size(), start.seats().size()));
        }
        return out;
    }

    private static int[] placed(int[] order, int places) {
        return Arrays.copyOf(order, places);
    }

    private void run() {
        if (isFew()) {
            everyOrder(new int[places], 0, new boolean[pieces], new double[] {givenX, givenY, 0, 0, 0});
            return;
        }
        descend(best.clone());
        for (int start = 1; start < STARTS && looks < MOST_LOOKS; start++) {
            int[] order = best.clone();
            for (int k = 2 + dice.below(places); k > 0; k--) {
                exchange(order, dice.below(places), dice.below(pieces));
            }
            if (ring.rule().passes(placed(order, places))) {
                descend(order);
            }
        }
    }

    private boolean isFew() {
        double orders = ring.free() ? 1.0 / places : 1;
        for (int place = 0; place < places && orders <= EVERY_ORDER; place++) {
            orders *= pieces - place;
        }
        return orders <= EVERY_ORDER;
    }

    /** Of orders that are one another turned, the one that begins with the piece listed first. */
    private void everyOrder(int[] pieceAt, int filled, boolean[] used, double[] sums) {
        if (filled == places) {
            if (square(sums) < bestSquare * (1 - LEAST_GAIN) && ring.rule().passes(pieceAt)) {
                bestSquare = square(sums);
                best = WheelMatch.preferred(pieceAt, pieces);
            }
            return;
        }
        for (int piece = ring.free() && filled > 0 ? pieceAt[0] + 1 : 0; piece < pieces; piece++) {
            if (!used[piece]) {
                used[piece] = true;
                pieceAt[filled] = piece;
                double[] next = sums.clone();
                add(next, filled, piece, 1);
                everyOrder(pieceAt, filled + 1, used, next);
                used[piece] = false;
            }
        }
    }

    /** Makes the exchange that gains most as long as one gains; keeps where that led if it is the best so far. */
    private void descend(int[] order) {
        double now = square(order);
        boolean gained = true;
        while (gained && looks < MOST_LOOKS) {
            gained = false;
            double[] sums = sums(order);
            double[] tried = new double[sums.length];
            double least = now * (1 - LEAST_GAIN);
            int from = 0;
            int to = 0;
            for (int i = 0; i < places; i++) {
                for (int j = i + 1; j < pieces; j++) {
                    double square = exchanged(order, i, j, sums, tried);
                    if (square < least && (j < places || passes(order, i, j))) {
                        least = square;
                        from = i;
                        to = j;
                        gained = true;
                    }
                }
            }
            exchange(order, from, to);
            now = square(order);
        }
        if (now < bestSquare * (1 - LEAST_GAIN)) {
            bestSquare = now;
            best = order.clone();
        }
    }

    private boolean passes(int[] order, int place, int spare) {
        int[] set = placed(order, places);
        set[place] = order[spare];
        return ring.rule().passes(set);
    }

    private double exchanged(int[] order, int i, int j, double[] sums, double[] tried) {
        looks++;
        System.arraycopy(sums, 0, tried, 0, sums.length);
        add(tried, i, order[i], -1);
        add(tried, i, order[j], 1);
        if (j < places) {
            add(tried, j, order[j], -1);
            add(tried, j, order[i], 1);
        }
        return square(tried);
    }

    private static void exchange(int[] order, int i, int j) {
        int held = order[i];
        order[i] = order[j];
        order[j] = held;
    }

    private double square(int[] order) {
        return square(sums(order));
    }

    private double[] sums(int[] order) {
        double[] sums = {givenX, givenY, 0, 0, 0};
        for (int place = 0; place < places; place++) {
            add(sums, place, order[place], 1);
        }
        return sums;
    }

    private void add(double[] sums, int place, int piece, int sign) {
        double cos = sign * ring.compass().cos[place];
        double sin = sign * ring.compass().sin[place];
        sums[0] += pull[place][piece] * cos;
        sums[1] += pull[place][piece] * sin;
        sums[2] += shared[piece] * cos;
        sums[3] += shared[piece] * sin;
        sums[4] += sign * variance[place][piece];
    }

    private static double square(double[] sums) {
        return sums[0] * sums[0] + sums[1] * sums[1] + sums[2] * sums[2] + sums[3] * sums[3] + sums[4];
    }
}
