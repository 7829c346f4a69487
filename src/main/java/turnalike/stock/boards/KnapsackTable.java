package turnalike.stock.boards;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Optional;

/**
 * The most that blanks can be worth which fit a stretch, for every capacity at once: the knapsack with bounded copies by dynamic
 * programming (Bellman; from memory), over the sums that blanks can reach instead of over every whole number, so that lengths of any
 * fineness cost no more than they must.
 */
final class KnapsackTable {
    /** Above so many sums times kinds the table would outgrow a small machine. */
    private static final int MOST_ENTRIES = 12_000_000;

    private static final int MOST_SUMS = 60_000;

    private final int[] kinds;
    private final int[] copies;
    private final long[] weights;
    private final long[] sums;
    /** For each kind and sum: which sum is less by one of that kind; below zero for none. */
    private final int[][] before;

    private final short[][] took;
    private final double[] worth;
    private final int[] bestUpTo;

    private KnapsackTable(int[] kinds, int[] copies, long[] weights, long[] sums, int[][] before) {
        this.kinds = kinds;
        this.copies = copies;
        this.weights = weights;
        this.sums = sums;
        this.before = before;
        this.took = new short[kinds.length][sums.length];
        this.worth = new double[sums.length];
        this.bestUpTo = new int[sums.length];
    }

    /** Empty when the blanks reach more sums than can be gone through. */
    static Optional<KnapsackTable> of(Question question, BitSet blanks, long capacity) {
        int[] kinds = blanks.stream()
                .filter(kind -> question.weights()[kind] <= capacity && question.demand()[kind] > 0)
                .boxed()
                .sorted(Comparator.comparingLong(kind -> question.weights()[kind]))
                .mapToInt(kind -> kind)
                .toArray();
        int[] copies = Arrays.stream(kinds)
                .map(kind -> (int) Math.min(
                        Math.min(Short.MAX_VALUE, question.demand()[kind]), capacity / question.weights()[kind]))
                .toArray();
        long[] sums = {0};
        for (int i = 0; i < kinds.length; i++) {
            for (int copy = 0; copy < copies[i]; copy++) {
                long[] more = merged(sums, question.weights()[kinds[i]], capacity);
                if (more.length > MOST_SUMS || (long) more.length * kinds.length > MOST_ENTRIES) {
                    return Optional.empty();
                }
                if (more.length == sums.length) {
                    break;
                }
                sums = more;
            }
        }
        int[][] before = new int[kinds.length][sums.length];
        for (int i = 0; i < kinds.length; i++) {
            long weight = question.weights()[kinds[i]];
            int less = 0;
            for (int at = 0; at < sums.length; at++) {
                while (sums[less] < sums[at] - weight) {
                    less++;
                }
                before[i][at] = sums[less] == sums[at] - weight ? less : -1;
            }
        }
        return Optional.of(new KnapsackTable(
                kinds,
                copies,
                Arrays.stream(kinds).mapToLong(kind -> question.weights()[kind]).toArray(),
                sums,
                before));
    }

    /** Both sorted lists in one: the sums, and the sums with one more. */
    private static long[] merged(long[] sums, long weight, long capacity) {
        long[] out = new long[2 * sums.length];
        int count = 0;
        int plain = 0;
        int added = 0;
        while (plain < sums.length || (added < sums.length && sums[added] + weight <= capacity)) {
            boolean addedLeft = added < sums.length && sums[added] + weight <= capacity;
            long next;
            if (!addedLeft || (plain < sums.length && sums[plain] <= sums[added] + weight)) {
                next = sums[plain++];
            } else {
                next = sums[added++] + weight;
            }
            if (count == 0 || out[count - 1] != next) {
                out[count++] = next;
            }
        }
        return Arrays.copyOf(out, count);
    }

    /** What one {@link #fill} costs, in units of some hundred steps. */
    int asks() {
        return 1 + kinds.length * sums.length / 2_000;
    }

    /** The greatest sum that blanks reach within a capacity. */
    long reached(long capacity) {
        return sums[within(capacity)];
    }

    private int within(long capacity) {
        int found = Arrays.binarySearch(sums, capacity);
        return found >= 0 ? found : -found - 2;
    }

    /** Works the table out for blanks worth so much each, and at most so many of each. */
    void fill(double[] worthOf, int[] most) {
        Arrays.fill(worth, Double.NEGATIVE_INFINITY);
        worth[0] = 0;
        long reached = 0;
        for (int i = 0; i < kinds.length; i++) {
            int bound = Math.min(copies[i], most[kinds[i]]);
            if (worthOf[kinds[i]] > 0 && bound > 0) {
                reached += bound * weights[i];
                add(i, worthOf[kinds[i]], bound, within(reached));
            } else {
                Arrays.fill(took[i], (short) 0);
            }
        }
        int best = 0;
        for (int at = 0; at < sums.length; at++) {
            if (worth[at] > worth[best]) {
                best = at;
            }
            bestUpTo[at] = best;
        }
    }

    /**
     * From the greatest sum down that the kinds up to this one reach, so that a smaller one still stands for the kinds before; the lightest
     * come first, so that there are few of them.
     */
    private void add(int i, double each, int bound, int greatest) {
        int[] less = before[i];
        short[] taken = took[i];
        Arrays.fill(taken, (short) 0);
        for (int at = greatest; at >= 0; at--) {
            double best = worth[at];
            short copiesTaken = 0;
            int from = at;
            double gain = 0;
            for (int copy = 1; copy <= bound; copy++) {
                from = less[from];
                if (from < 0) {
                    break;
                }
                gain += each;
                if (worth[from] + gain > best) {
                    best = worth[from] + gain;
                    copiesTaken = (short) copy;
                }
            }
            worth[at] = best;
            taken[at] = copiesTaken;
        }
    }

    /** The most that fits a capacity is worth, after {@link #fill}. */
    double best(long capacity) {
        return worth[bestUpTo[within(capacity)]];
    }

    /** Which blanks those are, of all the question's kinds. */
    int[] blanks(long capacity, int allKinds) {
        int[] out = new int[allKinds];
        int at = bestUpTo[within(capacity)];
        for (int i = kinds.length - 1; i >= 0; i--) {
            int taken = took[i][at];
            out[kinds[i]] = taken;
            for (int copy = 0; copy < taken; copy++) {
                at = before[i][at];
            }
        }
        return out;
    }
}
