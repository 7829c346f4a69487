package turnalike.settings;

import java.util.Arrays;

/**
 * One level of {@link FewestSearch}: the neighbours made by the openings chosen so far, and the openings that may come next with the
 * zones each can enter. All the arrays are made once and used again at every node of that level.
 */
final class SearchLevel {
    /** By mark, the marks one step away with the openings chosen. */
    final long[] neighbours;
    /** The openings that may still be chosen here, {@link #size} of them; the arrays below go by the same index. */
    final int[] candidates;

    int size;
    /** The zones it can enter. */
    final long[] entered;
    /** Those of them that {@link #losses} does not name. */
    final long[] certain;
    /** Where its losses begin and end. */
    final int[] lossesFrom;

    final int[] lossesTo;
    /** Zones by mark of a part, every part's ended by a 0: one of the marks is not entered by the opening itself. */
    final long[] losses;

    int lossesEnd;
    /** What it is worth, by the weights or the set of zones last asked about. */
    final int[] gain;
    /** The candidates' indices in the order of branching. */
    final int[] order;

    final ZoneWeights weights;
    private final long[] keys;
    private final int[] howMany = new int[Long.SIZE];
    private final int[] handed;

    SearchLevel(MarkBits bits, int openings) {
        neighbours = new long[bits.marks];
        candidates = new int[openings];
        entered = new long[openings];
        certain = new long[openings];
        lossesFrom = new int[openings];
        lossesTo = new int[openings];
        losses = new long
                [Arrays.stream(bits.entry).mapToInt(entry -> entry.length).sum()];
        gain = new int[openings];
        order = new int[openings];
        keys = new long[openings];
        handed = new int[openings];
        weights = new ZoneWeights();
    }

    /** Finds the zones and which of them each candidate can enter. */
    void enter(Zones zones, long unreached) {
        zones.find(this, unreached);
        lossesEnd = 0;
        for (int i = 0; i < size; i++) {
            lossesFrom[i] = lossesEnd;
            zones.enter(this, i);
            lossesTo[i] = lossesEnd;
        }
    }

    /** Drops the candidates that are worth less. */
    void drop(int needed) {
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (gain[i] >= needed) {
                gain[kept] = gain[i];
                candidates[kept] = candidates[i];
                entered[kept] = entered[i];
                certain[kept] = certain[i];
                lossesFrom[kept] = lossesFrom[i];
                lossesTo[kept] = lossesTo[i];
                kept++;
            }
        }
        size = kept;
    }

    /** How many of those zones the candidate can enter at most. */
    int gain(int index, long zones) {
        int gain = Long.bitCount(entered[index] & zones);
        int end = lossesTo[index];
        for (int at = lossesFrom[index]; at < end; at++) {
            int least = Integer.MAX_VALUE;
            for (; losses[at] != 0; at++) {
                least = Math.min(least, Long.bitCount(losses[at] & zones));
            }
            gain -= least;
        }
        return gain;
    }

    /** Orders the candidates by gain, the greatest first. */
    void sort() {
        for (int i = 0; i < size; i++) {
            keys[i] = (long) -gain[i] << Integer.SIZE | i;
        }
        Arrays.sort(keys, 0, size);
        for (int i = 0; i < size; i++) {
            order[i] = (int) keys[i];
        }
    }

    /** How many, from the first in order, can be the best of {@code budget} that enter that many zones. */
    int leaders(int zones, int budget) {
        int sum = 0;
        for (int i = 0; i < Math.min(budget, size); i++) {
            sum += gain[order[i]];
        }
        int leaders = 0;
        while (leaders < size && sum >= zones) {
            sum -= gain[order[leaders]];
            if (leaders + budget < size) {
                sum += gain[order[leaders + budget]];
            }
            leaders++;
        }
        return leaders;
    }

    /** The zone that the fewest candidates can enter. */
    int scarcest(long zones) {
        Arrays.fill(howMany, 0);
        for (int i = 0; i < size; i++) {
            for (long rest = entered[i]; rest != 0; rest &= rest - 1) {
                howMany[Long.numberOfTrailingZeros(rest)]++;
            }
        }
        int scarcest = Long.numberOfTrailingZeros(zones);
        for (long rest = zones; rest != 0; rest &= rest - 1) {
            int zone = Long.numberOfTrailingZeros(rest);
            if (howMany[zone] < howMany[scarcest]) {
                scarcest = zone;
            }
        }
        return scarcest;
    }

    /** How many candidates can enter that zone, as counted by {@link #scarcest}. */
    int entering(int zone) {
        return howMany[zone];
    }

    /** Moves those that can enter the zone to the front; the order is otherwise kept. */
    void bringForward(int zone) {
        int front = 0;
        for (int i = 0; i < size; i++) {
            int index = order[i];
            if ((entered[index] >> zone & 1) != 0) {
                System.arraycopy(order, front, order, front + 1, i - front);
                order[front++] = index;
            }
        }
    }

    /**
     * Hands a child those candidates after the chosen one, in order, that may go on with it: {@code budget} of them must enter the zones
     * that the chosen one cannot.
     *
     * @return false when no {@code budget} of them can
     */
    boolean handOn(SearchLevel child, int chosen, long zones, int budget) {
        long left = zones & ~entered[order[chosen]];
        child.size = 0;
        if (budget == 1) {
            for (int i = chosen + 1; i < size; i++) {
                if ((left & ~entered[order[i]]) == 0) {
                    child.candidates[child.size++] = candidates[order[i]];
                }
            }
            return child.size > 0 || left == 0;
        }
        int total = weights.of(left);
        TopK best = new TopK(budget);
        for (int i = chosen + 1; i < size; i++) {
            handed[i] = weights.gain(this, order[i], left);
            best.offer(i, handed[i]);
        }
        if (best.sum() < total) {
            return false;
        }
        int needed = total - best.sumButOne();
        for (int i = chosen + 1; i < size; i++) {
            if (handed[i] >= needed) {
                child.candidates[child.size++] = candidates[order[i]];
            }
        }
        return true;
    }
}
