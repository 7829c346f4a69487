package turnalike.settings;

import java.util.Arrays;

/**
 * What the sum of steps cannot be below once some openings are chosen and a given number are still to come.
 *
 * <p>Every mark costs at least one step, each that is not one step from an end at least one more, and each that is more than two steps
 * out one more again. So the sum is at least 3m - (marks at one step) - (marks at one or two). An opening to come adds to the first its
 * steps from an end; to the second also its steps from marks at one step, known ones and ones that openings to come will make so. The
 * additions are summed as if none overlapped, so the bound holds and may be low. (Derived here.)
 */
final class SumBound {
    private final MarkBits bits;
    /** By mark: the most marks that a single opening joins to it. */
    private final int[] mostJoined;

    private final int[] worth;
    private final int[] byWorth;

    SumBound(MarkBits bits, int[] candidates) {
        this.bits = bits;
        this.worth = new int[candidates.length];
        this.byWorth = new int[2 * bits.marks * bits.marks + 1];
        this.mostJoined = new int[bits.marks];
        for (int opening : candidates) {
            long[] neighbours = new long[bits.marks];
            bits.join(neighbours, opening);
            for (int mark = 0; mark < bits.marks; mark++) {
                mostJoined[mark] = Math.max(mostJoined[mark], Long.bitCount(neighbours[mark]));
            }
        }
    }

    /**
     * Keeps, at the front of the level's candidates, those that a plan with at most that sum may still use.
     *
     * @return how many are kept; 0 when no such plan can follow
     */
    int keep(SearchLevel level, int budget, int mostSum) {
        long[] neighbours = level.neighbours;
        int[] candidates = level.candidates;
        int size = level.size;
        long one = MarkBits.neighbours(neighbours, bits.given) & bits.inner;
        long two = (one | MarkBits.neighbours(neighbours, one)) & bits.inner;
        int m = Long.bitCount(bits.inner);
        boolean third = bits.mostSteps >= 3;
        int lacking = third
                ? 3 * m - Long.bitCount(one) - Long.bitCount(two) - mostSum
                : 2 * m - Long.bitCount(one) - mostSum;
        if (lacking <= 0) {
            return size;
        }
        int most = 0;
        Arrays.fill(byWorth, 0);
        for (int i = 0; i < size; i++) {
            int opening = candidates[i];
            worth[i] = Long.bitCount(bits.fromEnd[opening] & ~one)
                    + (third ? atTwo(neighbours, opening, one, two, budget) : 0);
            byWorth[worth[i]]++;
            most = Math.max(most, worth[i]);
        }
        if (greatest(byWorth, most, budget) < lacking) {
            return 0;
        }
        int needed = lacking - greatest(byWorth, most, budget - 1);
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (worth[i] >= needed) {
                candidates[kept++] = candidates[i];
            }
        }
        return kept;
    }

    private int atTwo(long[] neighbours, int opening, long sources, long two, int budget) {
        long outside = bits.inner & ~two;
        long entered = bits.fromEnd[opening];
        int[] low = bits.low[opening];
        int[] high = bits.high[opening];
        for (int i = 0; i < low.length; i++) {
            if ((sources >> low[i] & 1) != 0) {
                entered |= 1L << high[i];
            }
            if ((sources >> high[i] & 1) != 0) {
                entered |= 1L << low[i];
            }
        }
        int gain = Long.bitCount(entered & outside);
        for (long rest = bits.fromEnd[opening] & ~sources; rest != 0; rest &= rest - 1) {
            int mark = Long.numberOfTrailingZeros(rest);
            gain += Math.min(
                    Long.bitCount(outside), Long.bitCount(neighbours[mark] & outside) + budget * mostJoined[mark]);
        }
        return gain;
    }

    /** The greatest sum of {@code budget} values, given how many there are of each value up to {@code most}. */
    private static int greatest(int[] howMany, int most, int budget) {
        int sum = 0;
        int left = budget;
        for (int value = most; value > 0 && left > 0; value--) {
            int taken = Math.min(left, howMany[value]);
            sum += taken * value;
            left -= taken;
        }
        return sum;
    }
}
