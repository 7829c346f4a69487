package turnalike.match;

import turnalike.effort.Effort;

/**
 * All orders of some pieces on as many places, as keys to be listed one after another without ever being stored. A key is the order's
 * moment in fixed point, both components packed in one long, so that adding two moments is one addition. The arc is halved: for every
 * choice of the pieces on the first half, each order there is added to each order of the others on the second half.
 */
final class ArcOrders {
    /** Does something with the keys {@code head + tails[0 … count − 1]}, whose orders are numbered from {@code firstOrder}. */
    interface Use {
        void keys(long head, long[] tails, int count, int firstOrder);
    }

    /** A list so long takes over a millisecond. */
    private static final int MANY = 300_000;

    final int[] places;
    final int[] pieces;
    private final int headSize;
    private final int tailSize;
    private final int[] choices;
    private final long[] heads;
    private final long[] tails;

    ArcOrders(int size) {
        places = new int[size];
        pieces = new int[size];
        headSize = size / 2;
        tailSize = size - headSize;
        choices = Permutations.masks(size, headSize);
        heads = new long[Permutations.factorial(headSize)];
        tails = new long[Permutations.factorial(tailSize)];
    }

    int size() {
        return places.length;
    }

    /** How many orders there are. */
    int orders() {
        return Permutations.factorial(places.length);
    }

    /**
     * Lists all orders, asking {@code effort} now and then where there are many; whether it came to the end.
     *
     * @param packed the moment of each piece at each place, [place][piece]
     * @param start added to every key
     * @param sign 1 for the moments themselves, −1 for their opposites
     */
    boolean list(long[][] packed, long start, int sign, Effort effort, Use use) {
        int firstOrder = 0;
        int[] chosen = new int[places.length];
        boolean many = orders() >= MANY;
        for (int choice : choices) {
            if (many && effort.spent()) {
                return false;
            }
            split(choice, chosen);
            sums(packed, chosen, 0, headSize, sign, heads);
            sums(packed, chosen, headSize, tailSize, sign, tails);
            for (long head : heads) {
                use.keys(start + head, tails, tails.length, firstOrder);
                firstOrder += tails.length;
            }
        }
        return true;
    }

    /** Which piece stands at each of {@link #places} in that order. */
    void order(int number, int[] pieceAt) {
        int[] chosen = new int[places.length];
        split(choices[number / (heads.length * tails.length)], chosen);
        byte[] head = Permutations.of(headSize)[(number / tails.length) % heads.length];
        byte[] tail = Permutations.of(tailSize)[number % tails.length];
        for (int i = 0; i < headSize; i++) {
            pieceAt[i] = chosen[head[i]];
        }
        for (int i = 0; i < tailSize; i++) {
            pieceAt[headSize + i] = chosen[headSize + tail[i]];
        }
    }

    /** The pieces of the first half, then those of the second. */
    private void split(int choice, int[] chosen) {
        int inHead = 0;
        int inTail = headSize;
        for (int i = 0; i < pieces.length; i++) {
            if (((choice >>> i) & 1) == 1) {
                chosen[inHead++] = pieces[i];
            } else {
                chosen[inTail++] = pieces[i];
            }
        }
    }

    private void sums(long[][] packed, int[] chosen, int from, int count, int sign, long[] into) {
        byte[][] all = Permutations.of(count);
        for (int row = 0; row < all.length; row++) {
            byte[] order = all[row];
            long sum = 0;
            for (int i = 0; i < count; i++) {
                sum += packed[places[from + i]][chosen[from + order[i]]];
            }
            into[row] = sign * sum;
        }
    }
}
