package turnalike.settings;

import java.util.Arrays;
import java.util.List;

/** A window of distances that one opening serves, and the pairs of marks that lie such a distance apart. */
final class Opening {
    private final double shortestMm;
    private final int[] low;
    private final int[] high;

    /** @param pairs as (distance in mm, lower mark, higher mark), the shortest first; may be none for a pinned opening */
    Opening(List<double[]> pairs) {
        shortestMm = pairs.isEmpty() ? 0 : pairs.get(0)[0];
        low = pairs.stream().mapToInt(pair -> (int) pair[1]).toArray();
        high = pairs.stream().mapToInt(pair -> (int) pair[2]).toArray();
    }

    /** The shortest distance in the window that stands between two marks. */
    double shortestMm() {
        return shortestMm;
    }

    int pairs() {
        return low.length;
    }

    /** The lower mark of each pair; shared, not to be changed: the searches read it too often to copy it. */
    int[] low() {
        return low;
    }

    /** The higher mark of each pair; shared likewise. */
    int[] high() {
        return high;
    }

    /** Whether the opening steps straight from a given mark. */
    boolean fromGiven(boolean[] given) {
        return Arrays.stream(low).anyMatch(mark -> given[mark])
                || Arrays.stream(high).anyMatch(mark -> given[mark]);
    }
}
