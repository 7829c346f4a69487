package turnalike.match;

import java.util.Arrays;

/**
 * A table of bits that says of a sum whether another may lie near it: each sum marks the small cell of the number line it falls in, and
 * every cell it could share with one that near. Cells are spread over the table, so several share a bit; what finds its bit unmarked has
 * surely none near, what finds it marked may.
 */
final class BloomFilter {
    /** 32 KiB stay in the nearest cache. */
    private static final int FEWEST_BITS = 12;

    private static final int MOST_BITS = 23;

    /** An odd constant near 2^32 over the golden ratio: multiplying by it spreads neighbouring cells over the table. */
    private static final int GOLDEN = 0x9E3779B9;

    private int[] bits = new int[1 << (FEWEST_BITS - 5)];
    private int bitsLog = FEWEST_BITS;
    private int cellLog;
    private int near;
    private int spread = GOLDEN;

    /**
     * Empties the table and spreads cells another way: with the same one, two sums that met by chance in one bit would meet there again.
     *
     * @param near how many steps apart still counts as near
     * @param sums how many will be marked, about
     * @param fine whether cells are hardly wider than what is near: they part most, but many sums lie near a border and mark two
     */
    void empty(int near, int sums, boolean fine) {
        this.near = near;
        int nearLog = 32 - Integer.numberOfLeadingZeros(near);
        // Cells many times as wide as what is near keep the borders rare, but there must be many more cells than bits.
        bitsLog = Math.max(FEWEST_BITS, Math.min(MOST_BITS, 36 - Integer.numberOfLeadingZeros(sums)));
        cellLog = Math.min(31, fine ? nearLog + 1 : Math.max(nearLog + 2, Math.min(nearLog + 6, 28 - bitsLog)));
        spread = spread * GOLDEN + 2; // stays odd
        int words = 1 << (bitsLog - 5);
        if (bits.length < words) {
            bits = new int[words];
        } else {
            Arrays.fill(bits, 0, words, 0);
        }
    }

    /** Marks the sums of a side that lie within the bounds, and some beside. */
    void mark(MirroredHalf side, int low, int high) {
        int[] table = bits;
        int[] tails = side.tails;
        int shift = 32 - bitsLog;
        int by = spread;
        int cell = cellLog;
        int twice = 2 * near;
        for (int h = 0; h < side.heads.length; h++) {
            int head = side.heads[h];
            int choice = h / side.headWays;
            if (head + side.tailHigh[choice] < low || head + side.tailLow[choice] > high) {
                continue;
            }
            int start = head - near;
            int end = (choice + 1) * side.tailWays;
            for (int t = choice * side.tailWays; t < end; t++) {
                int corner = start + tails[t];
                int one = corner >> cell;
                int other = (corner + twice) >> cell;
                int slot = (one * by) >>> shift;
                table[slot >>> 5] |= 1 << slot;
                if (one != other) {
                    slot = (other * by) >>> shift;
                    table[slot >>> 5] |= 1 << slot;
                }
            }
        }
    }

    void mark(Kept kept) {
        for (int i = 0; i < kept.count; i++) {
            set((kept.sums[i] - near) >> cellLog);
            set((kept.sums[i] + near) >> cellLog);
        }
    }

    private void set(int cell) {
        int slot = (cell * spread) >>> (32 - bitsLog);
        bits[slot >>> 5] |= 1 << slot;
    }

    /** Keeps the sums of a side within the bounds that find their bit marked, and perhaps some just beyond the bounds. */
    void sieve(MirroredHalf side, int low, int high, Kept kept) {
        int[] table = bits;
        int[] tails = side.tails;
        int shift = 32 - bitsLog;
        int by = spread;
        int cell = cellLog;
        kept.count = 0;
        for (int h = 0; h < side.heads.length; h++) {
            int head = side.heads[h];
            int choice = h / side.headWays;
            if (head + side.tailHigh[choice] < low || head + side.tailLow[choice] > high) {
                continue;
            }
            kept.makeRoom(side.tailWays);
            int[] sums = kept.sums;
            int[] ways = kept.ways;
            int n = kept.count;
            int from = choice * side.tailWays;
            int way = h * side.tailWays - from;
            int end = from + side.tailWays;
            for (int t = from; t < end; t++) {
                int sum = head + tails[t];
                int slot = ((sum >> cell) * by) >>> shift;
                if (((table[slot >>> 5] >>> slot) & 1) != 0) {
                    sums[n] = sum;
                    ways[n++] = way + t;
                }
            }
            kept.count = n;
        }
    }

    /** Throws out what finds its bit unmarked. */
    void sieve(Kept kept) {
        int n = 0;
        for (int i = 0; i < kept.count; i++) {
            int slot = ((kept.sums[i] >> cellLog) * spread) >>> (32 - bitsLog);
            if (((bits[slot >>> 5] >>> slot) & 1) != 0) {
                kept.sums[n] = kept.sums[i];
                kept.ways[n++] = kept.ways[i];
            }
        }
        kept.count = n;
    }

    /** Sums that passed the sieve, with the numbers of their ways. */
    static final class Kept {
        int[] sums = new int[0];
        int[] ways = new int[0];
        int count;

        private void makeRoom(int more) {
            if (sums.length < count + more) {
                int room = 2 * (count + more);
                sums = Arrays.copyOf(sums, room);
                ways = Arrays.copyOf(ways, room);
            }
        }

        /** Sum in the upper half, way in the lower, ascending. */
        long[] sorted() {
            long[] sorted = new long[count];
            for (int i = 0; i < count; i++) {
                sorted[i] = ((long) sums[i] << 32) | ways[i];
            }
            Arrays.sort(sorted);
            return sorted;
        }
    }
}
