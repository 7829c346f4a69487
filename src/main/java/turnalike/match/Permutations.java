package turnalike.match;

/** Small tables of all orders and all choices, made once and shared. */
final class Permutations {
    /** The longest arc whose orders are listed in full: 10! keys still fit in memory, 11! would not. */
    static final int LONGEST = 10;

    private Permutations() {}

    /** All orders of 0 … count − 1 in lexicographic order, one row each. */
    static byte[][] of(int count) {
        return ALL[count];
    }

    static int factorial(int count) {
        return FACTORIALS[count];
    }

    /** C(n, k) as a double: exact to 2^53. */
    static double choose(int n, int k) {
        double ways = 1;
        for (int i = 1; i <= k; i++) {
            ways = ways * (n - k + i) / i;
        }
        return Math.rint(ways);
    }

    /** All masks of {@code n} bits with {@code k} set, ascending; n at most 30. */
    static int[] masks(int n, int k) {
        int[] masks = new int[(int) choose(n, k)];
        int filled = 0;
        for (int mask = 0; mask < 1 << n; mask++) {
            if (Integer.bitCount(mask) == k) {
                masks[filled++] = mask;
            }
        }
        return masks;
    }

    /**
     * All ways to deal 0 … count − 1 in pairs whose own order does not matter, the last one alone if count is odd: pair after pair, ascending
     * within each, one row each.
     */
    static byte[][] paired(int count) {
        return PAIRED[count];
    }

    /** {@link #paired} row after row, each entry as its cell in a table with a line of {@code count} to each pair. */
    static int[] pairedCells(int count) {
        return PAIRED_CELLS[count];
    }

    /** The length of {@link #paired}, for up to 13. */
    static int pairedCount(int count) {
        long ways = 1;
        for (int i = 2; i <= count; i++) {
            ways *= i;
        }
        return (int) (ways >> (count / 2));
    }

    private static final int[] FACTORIALS = {1, 1, 2, 6, 24, 120, 720, 5040, 40320, 362880, 3628800};

    /** Only arcs' halves are listed, so five is enough. */
    private static final byte[][][] ALL = new byte[6][][];

    static {
        ALL[0] = new byte[1][0];
        for (int count = 1; count < ALL.length; count++) {
            ALL[count] = withOneMore(ALL[count - 1], count);
        }
    }

    /** Sides are dealt in halves of six at most. */
    private static final byte[][][] PAIRED = new byte[7][][];

    static {
        PAIRED[0] = new byte[1][0];
        PAIRED[1] = new byte[1][1];
        for (int count = 2; count < PAIRED.length; count++) {
            PAIRED[count] = withPairInFront(PAIRED[count - 2], count);
        }
    }

    private static final int[][] PAIRED_CELLS = new int[PAIRED.length][];

    static {
        for (int count = 0; count < PAIRED.length; count++) {
            int[] cells = new int[PAIRED[count].length * count];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = i % count / 2 * count + PAIRED[count][i / count][i % count];
            }
            PAIRED_CELLS[count] = cells;
        }
    }

    private static byte[][] withPairInFront(byte[][] shorter, int count) {
        byte[][] all = new byte[pairedCount(count)][count];
        int row = 0;
        for (int low = 0; low < count; low++) {
            for (int high = low + 1; high < count; high++) {
                for (byte[] rest : shorter) {
                    all[row][0] = (byte) low;
                    all[row][1] = (byte) high;
                    for (int i = 2; i < count; i++) {
                        int past = rest[i - 2] < low ? rest[i - 2] : rest[i - 2] + 1;
                        all[row][i] = (byte) (past < high ? past : past + 1);
                    }
                    row++;
                }
            }
        }
        return all;
    }

    private static byte[][] withOneMore(byte[][] shorter, int count) {
        byte[][] all = new byte[shorter.length * count][count];
        int row = 0;
        for (int first = 0; first < count; first++) {
            for (byte[] rest : shorter) {
                all[row][0] = (byte) first;
                for (int i = 1; i < count; i++) {
                    all[row][i] = (byte) (rest[i - 1] < first ? rest[i - 1] : rest[i - 1] + 1);
                }
                row++;
            }
        }
        return all;
    }

    /** Deals the pieces out: those that the mask names by their place in {@code rest} to the one, the others to the other. */
    static void deal(int[] rest, int mask, int[] named, int[] others) {
        int toNamed = 0;
        int toOthers = 0;
        for (int i = 0; i < rest.length; i++) {
            if (((mask >>> i) & 1) == 1) {
                named[toNamed++] = rest[i];
            } else {
                others[toOthers++] = rest[i];
            }
        }
    }
}
