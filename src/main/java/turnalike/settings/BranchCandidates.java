package turnalike.settings;

import java.util.Arrays;

/**
 * Few openings one of which must be chosen. Of {@code budget} openings that enter all of some zones, the best enters its share: take
 * openings by the number they can enter, until the best {@code budget} of the rest do not enter enough. Those taken are the leaders, and
 * how many they are depends on the zones counted. The search for a good set begins with zones that do not overlap and takes single ones in
 * or out as long as there are fewer leaders. (Derived here.)
 */
final class BranchCandidates {
    /** Only the openings that enter most zones matter to the count while the set changes by one at a time. */
    private static final int ENTERING_MOST = 50;

    private static final int MOST_LOOKED_AT = 64;
    private static final int ROUNDS = 4;

    private final int[] looked = new int[MOST_LOOKED_AT];
    private final int[] byGain = new int[Long.SIZE + 1];
    private final int[] falling = new int[MOST_LOOKED_AT];
    private int lookedAt;

    /** Sorts the level's candidates by those zones and returns how many lead. */
    int sort(SearchLevel level, long zones, int budget) {
        for (int i = 0; i < level.size; i++) {
            level.gain[i] = level.gain(i, zones);
        }
        level.sort();
        return level.leaders(Long.bitCount(zones), budget);
    }

    /** A set of zones with few leaders. */
    long choose(SearchLevel level, long start, long all, int budget) {
        look(level, start);
        long chosen = start;
        int best = score(level, start, budget);
        boolean better = true;
        for (int round = 0; better && round < ROUNDS; round++) {
            better = false;
            for (long rest = all; rest != 0; rest &= rest - 1) {
                long tried = chosen ^ Long.lowestOneBit(rest);
                int score = score(level, tried, budget);
                if (score < best) {
                    best = score;
                    chosen = tried;
                    better = true;
                }
            }
        }
        return chosen;
    }

    private void look(SearchLevel level, long start) {
        Arrays.fill(byGain, 0);
        for (int i = 0; i < level.size; i++) {
            level.gain[i] = level.gain(i, start);
            byGain[level.gain[i]]++;
        }
        int least = Long.SIZE;
        for (int above = byGain[least]; least > 0 && above < ENTERING_MOST; above += byGain[least]) {
            least--;
        }
        lookedAt = 0;
        for (int i = 0; i < level.size && lookedAt < MOST_LOOKED_AT; i++) {
            if (level.gain[i] >= least) {
                looked[lookedAt++] = i;
            }
        }
    }

    /** The leaders among those looked at, and within one more of them how far the rest fall short: the lower the better. */
    private int score(SearchLevel level, long zones, int budget) {
        Arrays.fill(byGain, 0);
        for (int i = 0; i < lookedAt; i++) {
            byGain[level.gain(looked[i], zones)]++;
        }
        int count = 0;
        for (int gain = Long.SIZE; gain >= 0; gain--) {
            for (int i = byGain[gain]; i > 0; i--) {
                falling[count++] = gain;
            }
        }
        int wanted = Long.bitCount(zones);
        int sum = 0;
        for (int i = 0; i < Math.min(budget, count); i++) {
            sum += falling[i];
        }
        int leaders = 0;
        while (leaders < count && sum >= wanted) {
            sum -= falling[leaders];
            if (leaders + budget < count) {
                sum += falling[leaders + budget];
            }
            leaders++;
        }
        return leaders * (Long.SIZE + 1) * budget + sum - wanted;
    }
}
