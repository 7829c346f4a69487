package turnalike.match;

/** Small tables of all orders and all choices, made once and shared. */
final class Orders {
    /** The longest arc whose orders are listed in full: 10! keys still fit in memory, 11! would not. */
    static final int LONGEST = 10;

    private Orders() {}

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

    private static final int[] FACTORIALS = {1, 1, 2, 6, 24, 120, 720, 5040, 40320, 362880, 3628800};

    /** Only arcs' halves are listed, so five is enough. */
    private static final byte[][][] ALL = new byte[6][][];

    static {
        ALL[0] = new byte[1][0];
        for (int count = 1; count < ALL.length; count++) {
            ALL[count] = withOneMore(ALL[count - 1], count);
        }
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
}
