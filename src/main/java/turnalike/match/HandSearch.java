package turnalike.match;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import turnalike.effort.Effort;

/**
 * Improves an order some of whose places are held: every other piece may change its place with another or with one that was left over. All
 * orders that keep the held ones are gone through where they are few; else each exchange that helps is made, and again from a shaken order,
 * as long as the effort lasts. It never gives a worse order than it began with.
 */
final class HandSearch {
    /** Whether a piece may stand at a place. */
    interface Fits {
        boolean at(int piece, int place);
    }

    /**
     * How good an order is: the first figure decides, of equal ones the next. Smaller is better.
     *
     * @param misses how far the pieces miss passing as a set, 0 when they pass
     * @param cost what is searched for, no less than 0
     * @param tie asked only of orders that are alike otherwise
     */
    record Judge(ToDoubleFunction<int[]> misses, ToDoubleFunction<int[]> cost, ToDoubleFunction<int[]> tie) {}

    /** So many orders are gone through in some hundredths of a second. */
    private static final long FEW = 100_000;

    /** So many shakes in a row without gain and no more is hoped for (tried on wheels of 8 to 24 places). */
    private static final int PATIENCE = 3000;

    /** Figures nearer than this share are alike. */
    private static final double ALIKE = 1e-12;

    /** So many pieces looked at count as one step of the effort. */
    private static final int AN_ASK = 2000;

    private final Judge judge;
    private final Fits fits;
    private final int places;
    private final int[] free;

    /** The piece of each place, then those left over. */
    private int[] now;

    private int[] best;
    private double bestMisses;
    private double bestCost;
    private double bestTie;

    /** Whether every order that keeps the held ones was gone through. */
    boolean proven;

    HandSearch(int pieces, int[] start, HandPlaces hand, Fits fits, Judge judge) {
        this.judge = judge;
        this.fits = fits;
        this.places = start.length;
        this.free = IntStream.range(0, places)
                .filter(place -> !hand.held().containsKey(place))
                .toArray();
        boolean[] placed = new boolean[pieces];
        for (int piece : start) {
            placed[piece] = true;
        }
        this.now = IntStream.concat(
                        Arrays.stream(start), IntStream.range(0, pieces).filter(piece -> !placed[piece]))
                .toArray();
        this.best = now.clone();
        note();
    }

    int[] pieceAt() {
        return Arrays.copyOf(best, places);
    }

    void run(Effort effort) {
        if (free.length == 0) {
            proven = true;
            return;
        }
        if (orders() <= FEW) {
            now = best.clone();
            proven = each(0, effort);
            return;
        }
        now = best.clone();
        improve(effort);
        SplitMix64 dice = new SplitMix64(5);
        int nothing = 0;
        while (nothing < PATIENCE && !effort.spent()) {
            double misses = bestMisses;
            double cost = bestCost;
            double tie = bestTie;
            now = best.clone();
            shake(dice);
            improve(effort);
            boolean gained = bestMisses < misses || bestCost < cost || bestTie < tie;
            nothing = gained ? 0 : nothing + 1;
        }
    }

    /** How many orders keep the held ones, counted no further than matters. */
    private long orders() {
        long count = 1;
        int choices = now.length - (places - free.length);
        for (int i = 0; i < free.length && count <= FEW; i++) {
            count *= choices - i;
        }
        return count;
    }

    /** Goes through all that may stand at the free places from that one on; whether it came to the end. */
    private boolean each(int at, Effort effort) {
        if (at == free.length) {
            take();
            return !effort.spent();
        }
        for (int slot = at; slot < slots(); slot++) {
            if (fits.at(now[slot(slot)], free[at])) {
                swap(free[at], slot(slot));
                boolean more = each(at + 1, effort);
                swap(free[at], slot(slot));
                if (!more) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The free places, then what is left over. */
    private int slots() {
        return free.length + now.length - places;
    }

    private int slot(int number) {
        return number < free.length ? free[number] : places + number - free.length;
    }

    private void improve(Effort effort) {
        double[] had = figures();
        int asks = 1 + slots() * places / AN_ASK;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < free.length; i++) {
                if (effort.spentAfter(asks)) {
                    return;
                }
                for (int j = i + 1; j < slots(); j++) {
                    if (!mayChange(free[i], slot(j))) {
                        continue;
                    }
                    swap(free[i], slot(j));
                    double[] has = figures();
                    if (isBetter(has, had)) {
                        had = has;
                        moved = true;
                        take();
                    } else {
                        swap(free[i], slot(j));
                    }
                }
            }
        }
    }

    private void shake(SplitMix64 dice) {
        int times = 2 + dice.below(3);
        for (int k = 0; k < times; k++) {
            int one = free[dice.below(free.length)];
            int other = slot(dice.below(slots()));
            if (one != other && mayChange(one, other)) {
                swap(one, other);
            }
        }
        take();
    }

    private boolean mayChange(int one, int other) {
        return fits.at(now[other], one) && (other >= places || fits.at(now[one], other));
    }

    private void swap(int one, int other) {
        int piece = now[one];
        now[one] = now[other];
        now[other] = piece;
    }

    private double[] figures() {
        int[] order = Arrays.copyOf(now, places);
        return new double[] {judge.misses.applyAsDouble(order), judge.cost.applyAsDouble(order)};
    }

    private static boolean isBetter(double[] has, double[] had) {
        return has[0] < had[0] || (has[0] == had[0] && has[1] < had[1] - ALIKE * (1 + had[1]));
    }

    /** Keeps what is now where it is better than the best. */
    private void take() {
        double[] has = figures();
        double[] had = {bestMisses, bestCost};
        boolean alike = has[0] == had[0] && Math.abs(has[1] - had[1]) <= ALIKE * (1 + had[1]);
        if (isBetter(has, had) || (alike && tie() < bestTie - ALIKE)) {
            best = now.clone();
            note();
        }
    }

    private double tie() {
        return judge.tie.applyAsDouble(Arrays.copyOf(now, places));
    }

    private void note() {
        double[] has = figures();
        bestMisses = has[0];
        bestCost = has[1];
        bestTie = tie();
    }
}
