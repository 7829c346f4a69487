package turnalike.settings;

import java.util.Arrays;

/**
 * One level of {@link FewestSearch}: the neighbours made by the openings chosen so far, and the openings that may come next. All the
 * arrays are made once and used again at every node of that level.
 */
final class SearchLevel {
    /** By mark, the marks one step away with the openings chosen. */
    final long[] neighbours;
    /** The openings that may still be chosen here, {@link #size} of them. */
    final int[] candidates;

    int size;
    /** The same, those first that can enter most zones; {@link #kept} of them are left. */
    final int[] sorted;

    final int[] gain;
    /** For each sorted one, the zones it can enter. */
    final long[] entered;

    int kept;
    private final int[] rawGain;
    private final long[] rawEntered;
    private final int[] byGain = new int[Long.SIZE + 1];
    private final int[] place = new int[Long.SIZE + 1];

    SearchLevel(int marks, int openings) {
        neighbours = new long[marks];
        candidates = new int[openings];
        sorted = new int[openings];
        gain = new int[openings];
        entered = new long[openings];
        rawGain = new int[openings];
        rawEntered = new long[openings];
    }

    /**
     * Sorts the candidates by how many zones they can enter, and leaves out each that cannot belong to {@code budget} openings that
     * enter all: with the best others it would still fall short.
     *
     * @return whether {@code budget} openings can enter that many zones at all
     */
    boolean sort(Zones zones, int count, int budget) {
        Arrays.fill(byGain, 0);
        for (int i = 0; i < size; i++) {
            rawGain[i] = zones.gain(candidates[i]);
            rawEntered[i] = zones.entered;
            byGain[rawGain[i]]++;
        }
        if (greatest(byGain, count, budget) < count) {
            return false;
        }
        int needed = Math.max(0, count - greatest(byGain, count, budget - 1));
        kept = 0;
        for (int g = count; g >= needed; g--) {
            place[g] = kept;
            kept += byGain[g];
        }
        for (int i = 0; i < size; i++) {
            if (rawGain[i] >= needed) {
                int at = place[rawGain[i]]++;
                sorted[at] = candidates[i];
                gain[at] = rawGain[i];
                entered[at] = rawEntered[i];
            }
        }
        return true;
    }

    /** How many of the sorted ones, from the first, can be the best of {@code budget} that enter that many zones. */
    int leaders(int count, int budget) {
        int sum = 0;
        for (int i = 0; i < Math.min(budget, kept); i++) {
            sum += gain[i];
        }
        int leaders = 0;
        while (leaders < kept && sum >= count) {
            sum -= gain[leaders];
            if (leaders + budget < kept) {
                sum += gain[leaders + budget];
            }
            leaders++;
        }
        return leaders;
    }

    /** The zone that the fewest of the kept ones can enter. */
    int scarcestZone(int count) {
        Arrays.fill(place, 0, count, 0);
        for (int i = 0; i < kept; i++) {
            for (long rest = entered[i]; rest != 0; rest &= rest - 1) {
                place[Long.numberOfTrailingZeros(rest)]++;
            }
        }
        int scarcest = 0;
        for (int zone = 1; zone < count; zone++) {
            if (place[zone] < place[scarcest]) {
                scarcest = zone;
            }
        }
        return scarcest;
    }

    int entering(int zone) {
        int entering = 0;
        for (int i = 0; i < kept; i++) {
            entering += (int) (entered[i] >> zone & 1);
        }
        return entering;
    }

    /** Moves those that enter the zone to the front; the order is otherwise kept, the gains are not moved along. */
    void bringForward(int zone) {
        int front = 0;
        for (int i = 0; i < kept; i++) {
            if ((entered[i] >> zone & 1) != 0) {
                int opening = sorted[i];
                long zones = entered[i];
                System.arraycopy(sorted, front, sorted, front + 1, i - front);
                System.arraycopy(entered, front, entered, front + 1, i - front);
                sorted[front] = opening;
                entered[front] = zones;
                front++;
            }
        }
    }

    /**
     * Hands a child those sorted ones after the chosen that may go on with it: {@code budget} of them must enter the zones that the
     * chosen one cannot.
     *
     * @return false when no {@code budget} of them can
     */
    boolean handOn(SearchLevel child, int chosen, int count, int budget) {
        long all = count == Long.SIZE ? -1L : (1L << count) - 1;
        long left = all & ~entered[chosen];
        int size = Long.bitCount(left);
        Arrays.fill(byGain, 0, size + 1, 0);
        for (int i = chosen + 1; i < kept; i++) {
            byGain[Long.bitCount(entered[i] & left)]++;
        }
        if (greatest(byGain, size, budget) < size) {
            return false;
        }
        int needed = size - greatest(byGain, size, budget - 1);
        child.size = 0;
        for (int i = chosen + 1; i < kept; i++) {
            if (Long.bitCount(entered[i] & left) >= needed) {
                child.candidates[child.size++] = sorted[i];
            }
        }
        return true;
    }

    /** The greatest sum of {@code budget} values, given how many there are of each value up to {@code most}. */
    static int greatest(int[] howMany, int most, int budget) {
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
