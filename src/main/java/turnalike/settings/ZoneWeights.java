package turnalike.settings;

import java.util.Arrays;

/**
 * Weights of the zones by which a node of the search is refuted: when the {@code budget} candidates worth most, each the weight of the
 * zones it can enter, are together worth less than all zones, no {@code budget} of them enter all. And a candidate that with the best
 * others would fall short belongs to no such choice.
 *
 * <p>That holds for any weights that are not negative. Good ones come from the Lagrangian relaxation of the set covering by subgradient
 * steps (Beasley, European Journal of Operational Research 31, 1987; from memory): zones that the best candidates enter more than once
 * lose weight, zones that none enters gain. Most steps look only at the candidates that are nearly the best; all are weighed anew before
 * anything is concluded. The zones may overlap. Weights are integers, so the comparison is exact.
 */
final class ZoneWeights {
    /** The weights of all zones add up to about this at first, so that rounding matters little. */
    private static final int TOTAL = 40_000;
    /** No zone weighs more, so that 64 zones entered by as many openings stay within an int. */
    private static final int MOST = 1 << 18;

    /** How often all candidates are weighed anew; found by trial on turnings of 34 to 46 marks, as are the numbers below. */
    private static final int ROUNDS = 3;
    /** At the root the time does not count. */
    private static final int ROUNDS_AT_ROOT = 30;

    private static final int STEPS_PER_ROUND = 8;
    private static final int FEW = 40;
    private static final double NEARLY_THE_BEST = 0.7;

    /** A step aims at weights that refute the node by this share of the total. */
    private static final double BEYOND = 0.05;
    /** Whole steps waver about the best weights; shorter ones refute more. */
    private static final double STEP = 0.7;

    private final int[] weight = new int[Long.SIZE];
    private final int[] times = new int[Long.SIZE];
    private final int[] few = new int[FEW];
    private long zones;

    /** The weight of those zones together. */
    int of(long set) {
        int sum = 0;
        for (long rest = set; rest != 0; rest &= rest - 1) {
            sum += weight[Long.numberOfTrailingZeros(rest)];
        }
        return sum;
    }

    /** What the zones a candidate can enter weigh. */
    private int gain(SearchLevel level, int index) {
        return gain(level, index, -1L);
    }

    /** What those of the zones that are among {@code among} weigh. */
    int gain(SearchLevel level, int index, long among) {
        int sum = of(level.certain[index] & among);
        long[] losses = level.losses;
        int end = level.lossesTo[index];
        for (int at = level.lossesFrom[index]; at < end; at++) {
            int least = Integer.MAX_VALUE;
            for (; losses[at] != 0; at++) {
                int loss = of(losses[at] & among);
                least = Math.min(least, loss);
                sum += loss;
            }
            sum -= least;
        }
        return sum;
    }

    /** Begins anew with the weights of the level before. */
    void takeOver(ZoneWeights before) {
        System.arraycopy(before.weight, 0, weight, 0, weight.length);
    }

    /** Begins with the weights that were found for a sister node, mostly good ones, and the level before's where it has none. */
    void keepBeside(ZoneWeights before) {
        for (long rest = before.zones & ~zones; rest != 0; rest &= rest - 1) {
            int zone = Long.numberOfTrailingZeros(rest);
            weight[zone] = before.weight[zone];
        }
    }

    /** Turns to other zones, all weights kept in proportion; all the same where there are none yet. */
    void turnTo(long these) {
        zones = these;
        long total = of(these);
        for (long rest = these; rest != 0; rest &= rest - 1) {
            int zone = Long.numberOfTrailingZeros(rest);
            weight[zone] =
                    total == 0 ? TOTAL / Long.bitCount(these) : (int) Math.rint((double) weight[zone] * TOTAL / total);
        }
    }

    /**
     * Drops the level's candidates that cannot belong to {@code budget} which enter all zones.
     *
     * @return false when no {@code budget} can, as far as the weights tell
     */
    boolean sift(SearchLevel level, int budget, boolean atRoot) {
        TopK best = new TopK(budget);
        int rounds = atRoot ? ROUNDS_AT_ROOT : ROUNDS;
        for (int round = 0; ; round++) {
            int total = of(zones);
            best.clear();
            for (int i = 0; i < level.size; i++) {
                level.gain[i] = gain(level, i);
                best.offer(i, level.gain[i]);
            }
            if (best.sum() < total) {
                return false;
            }
            int needed = total - best.sumButOne();
            int nearly = (int) (NEARLY_THE_BEST * best.least());
            boolean done = round == rounds || !step(level, best, total);
            level.drop(needed);
            if (done) {
                return level.size > 0;
            }
            improve(level, best, nearly);
        }
    }

    private void improve(SearchLevel level, TopK best, int nearly) {
        int size = 0;
        for (int i = 0; i < level.size && size < FEW; i++) {
            if (level.gain[i] >= nearly) {
                few[size++] = i;
            }
        }
        for (int step = 0; step < STEPS_PER_ROUND; step++) {
            int total = of(zones);
            best.clear();
            for (int i = 0; i < size; i++) {
                best.offer(few[i], gain(level, few[i]));
            }
            if (best.sum() < total || !step(level, best, total)) {
                return;
            }
        }
    }

    /** One step; false when the best candidates enter each zone just once, so that no weights refute them. */
    private boolean step(SearchLevel level, TopK best, int total) {
        Arrays.fill(times, 0);
        for (int rank = 0; rank < best.size(); rank++) {
            count(level, best.index(rank));
        }
        int norm = 0;
        for (long rest = zones; rest != 0; rest &= rest - 1) {
            int over = times[Long.numberOfTrailingZeros(rest)] - 1;
            norm += over * over;
        }
        if (norm == 0) {
            return false;
        }
        double length = STEP * (best.sum() - total + BEYOND * total) / norm;
        for (long rest = zones; rest != 0; rest &= rest - 1) {
            int zone = Long.numberOfTrailingZeros(rest);
            double stepped = Math.rint(weight[zone] - length * (times[zone] - 1));
            weight[zone] = (int) Math.max(0, Math.min(MOST, stepped));
        }
        return true;
    }

    /** Counts the zones a candidate enters, less those it loses. */
    private void count(SearchLevel level, int index) {
        for (long rest = level.entered[index]; rest != 0; rest &= rest - 1) {
            times[Long.numberOfTrailingZeros(rest)]++;
        }
        for (int at = level.lossesFrom[index]; at < level.lossesTo[index]; at++) {
            long lost = level.losses[at];
            for (; level.losses[at] != 0; at++) {
                lost = of(level.losses[at]) < of(lost) ? level.losses[at] : lost;
            }
            for (long rest = lost; rest != 0; rest &= rest - 1) {
                times[Long.numberOfTrailingZeros(rest)]--;
            }
        }
    }
}
