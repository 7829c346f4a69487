package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.OptionalInt;

/**
 * Which member of one run is which of a later one, after somebody else's edits: those that are the same to the letter, in order, as many as
 * can be (a longest common subsequence); and between two of these, as many changed ones as there were before, one for one.
 */
final class Alignment {
    private final int[] later;

    private Alignment(int[] later) {
        this.later = later;
    }

    static Alignment of(JsonNode before, JsonNode after) {
        int n = before.size();
        int m = after.size();
        int[][] common = new int[n + 1][m + 1];
        for (int i = n - 1; i >= 0; i--) {
            for (int j = m - 1; j >= 0; j--) {
                common[i][j] = before.get(i).equals(after.get(j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        int[] later = new int[n];
        int i = 0;
        int j = 0;
        int gapI = 0;
        int gapJ = 0;
        while (i < n || j < m) {
            boolean same = i < n && j < m && before.get(i).equals(after.get(j));
            if (same) {
                pair(later, gapI, i, gapJ, j);
                later[i] = j + 1;
                i++;
                j++;
                gapI = i;
                gapJ = j;
            } else if (j == m || (i < n && common[i + 1][j] >= common[i][j + 1])) {
                i++;
            } else {
                j++;
            }
        }
        pair(later, gapI, n, gapJ, m);
        return new Alignment(later);
    }

    /** Between two members that stayed: as many as there were are the same ones, changed; else nobody knows. */
    private static void pair(int[] later, int fromI, int toI, int fromJ, int toJ) {
        if (toI - fromI == toJ - fromJ) {
            for (int k = 0; fromI + k < toI; k++) {
                later[fromI + k] = fromJ + k + 1;
            }
        }
    }

    /** The later number of the member numbered so before; empty when it is gone or cannot be told. */
    OptionalInt find(int number) {
        int found = number >= 1 && number <= later.length ? later[number - 1] : 0;
        return found == 0 ? OptionalInt.empty() : OptionalInt.of(found);
    }
}
