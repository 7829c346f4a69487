package turnalike.match;

import java.util.Arrays;
import turnalike.effort.Effort;

/**
 * Finds an order of one arc and an order of another whose moments cancel a given moment best: meeting in the middle. Instead of comparing
 * every order of the one with every order of the other, the orders of the first arc are marked in a table of bits by the small cell of the
 * plane their moment falls in; only orders of the second arc that meet a marked cell go on, and so back and forth until few are left,
 * which are compared in full. Nothing within the radius is lost: a moment marks every cell it could share with one that near. Derived
 * here; the idea of listing halves is Horowitz and Sahni's (J. ACM 21 (1974) 277–292, from memory).
 */
final class CancellingOrders {
    /** Told of each pair within the radius; answers with the radius, in g·mm, that pairs must lie within from now on. */
    interface Found {
        double pair(double leftGMm, int[] piecesOnA, int[] piecesOnB);
    }

    /** Each key is off by half a step per piece, twenty pieces at most, and by one borrowed from the lower half. */
    private static final long SLACK_STEPS = 12;

    /** A cell is at least this many radii wide, so that few moments lie near a border. */
    private static final long CELL_RADII = 1024;

    /** Where few orders are left, finer cells part more of them. */
    private static final long FINE_CELL_RADII = 4;

    /** 2^25 bits are 4 MiB; fewer would be quicker to reach, but let too much through for arcs of ten. */
    private static final int MOST_BITS = 25;

    private final double[] momentsGMm;
    private final PlaceDirections compass;
    private final double stepGMm;
    private final long[][] packed;

    private long[] bits = new long[1 << 10];
    private int bitsLog;
    private int cellLog;
    private long spread;
    private long nearSteps;
    private Kept keptA = new Kept();
    private Kept keptB = new Kept();
    private Kept spare = new Kept();

    /** @param momentsGMm mass × reach of each piece */
    CancellingOrders(double[] momentsGMm, PlaceDirections compass) {
        this.momentsGMm = momentsGMm;
        this.compass = compass;
        stepGMm = step(momentsGMm);
        packed = new long[compass.places][momentsGMm.length];
        for (int place = 0; place < compass.places; place++) {
            for (int piece = 0; piece < momentsGMm.length; piece++) {
                packed[place][piece] =
                        pack(momentsGMm[piece] * compass.cos[place], momentsGMm[piece] * compass.sin[place]);
            }
        }
    }

    /** The widest radius that {@link #search} can look within without comparing nearly everything with everything. */
    double widestGMm(ArcOrders a, ArcOrders b) {
        return (double) (1L << (32 - bitsFor(a, b) / 2)) / 8 * stepGMm;
    }

    /**
     * Tells {@code found} every pair with |given + order of a + order of b| below the radius, which it may narrow as it is told.
     *
     * @param radiusGMm wider than {@link #widestGMm} costs time, up to all pairs
     * @return whether the search came to its end before the effort did
     */
    boolean search(
            ArcOrders a,
            ArcOrders b,
            double givenXGMm,
            double givenYGMm,
            double radiusGMm,
            Effort effort,
            Found found) {
        long given = pack(givenXGMm, givenYGMm);
        nearSteps = Math.min((long) Math.ceil(radiusGMm / stepGMm) + SLACK_STEPS, 1L << 32);
        spread = GOLDEN;
        bitsLog = bitsFor(a, b);
        respread(CELL_RADII);
        clear(bitsLog);
        if (!a.list(packed, given, 1, effort, this::mark)) {
            return false;
        }
        keptB.count = 0;
        if (!b.list(packed, 0, -1, effort, (head, tails, count, first) -> sieve(head, tails, count, first, keptB))) {
            return false;
        }
        if (keptB.count == 0) {
            return true;
        }
        respread(FINE_CELL_RADII);
        mark(keptB);
        keptA.count = 0;
        if (!a.list(packed, given, 1, effort, (head, tails, count, first) -> sieve(head, tails, count, first, keptA))) {
            return false;
        }
        narrow();
        compare(a, b, givenXGMm, givenYGMm, radiusGMm, found);
        return true;
    }

    private static int bitsFor(ArcOrders a, ArcOrders b) {
        int ordersLog = 32 - Integer.numberOfLeadingZeros(Math.max(a.orders(), b.orders()));
        return Math.max(10, Math.min(MOST_BITS, ordersLog + 3));
    }

    /** Sieves the two kept lists against one another while that still thins them out. */
    private void narrow() {
        while ((long) keptA.count * keptB.count > 4096) {
            int before = keptA.count + keptB.count;
            respread(FINE_CELL_RADII);
            mark(keptA);
            keptB = sieved(keptB);
            respread(FINE_CELL_RADII);
            mark(keptB);
            keptA = sieved(keptA);
            if (keptA.count + keptB.count > before * 0.9) {
                return;
            }
        }
    }

    private Kept sieved(Kept kept) {
        Kept out = spare;
        out.count = 0;
        out.makeRoom(kept.count);
        for (int i = 0; i < kept.count; i++) {
            out.keys[out.count] = kept.keys[i];
            out.orders[out.count] = kept.orders[i];
            out.count += marked(kept.keys[i]);
        }
        spare = kept;
        return out;
    }

    private void compare(ArcOrders a, ArcOrders b, double givenXGMm, double givenYGMm, double radiusGMm, Found found) {
        double nowGMm = radiusGMm;
        long near = nearSteps;
        int[] onA = new int[a.size()];
        int[] onB = new int[b.size()];
        for (int i = 0; i < keptA.count; i++) {
            for (int j = 0; j < keptB.count; j++) {
                long apart = keptA.keys[i] - keptB.keys[j];
                int y = (int) apart;
                int x = (int) ((apart - y) >> 32);
                if (Math.abs((long) x) > near || Math.abs((long) y) > near) {
                    continue;
                }
                a.order(keptA.orders[i], onA);
                b.order(keptB.orders[j], onB);
                double leftGMm = left(a, onA, b, onB, givenXGMm, givenYGMm);
                if (leftGMm < nowGMm) {
                    nowGMm = found.pair(leftGMm, onA, onB);
                    near = Math.min(nearSteps, (long) Math.ceil(nowGMm / stepGMm) + SLACK_STEPS);
                }
            }
        }
    }

    private double left(ArcOrders a, int[] onA, ArcOrders b, int[] onB, double xGMm, double yGMm) {
        double x = xGMm;
        double y = yGMm;
        for (int i = 0; i < onA.length; i++) {
            x += momentsGMm[onA[i]] * compass.cos[a.places[i]];
            y += momentsGMm[onA[i]] * compass.sin[a.places[i]];
        }
        for (int i = 0; i < onB.length; i++) {
            x += momentsGMm[onB[i]] * compass.cos[b.places[i]];
            y += momentsGMm[onB[i]] * compass.sin[b.places[i]];
        }
        return Math.sqrt(x * x + y * y);
    }

    /**
     * Six standard deviations of the moments make one whole turn of the 32-bit counter. Moments farther apart than that wrap round and may
     * look near; the full comparison throws them out again.
     */
    private static double step(double[] momentsGMm) {
        double mean = 0;
        for (double moment : momentsGMm) {
            mean += moment / momentsGMm.length;
        }
        double squares = 0;
        for (double moment : momentsGMm) {
            squares += (moment - mean) * (moment - mean) / momentsGMm.length;
        }
        // Like pieces differ by nothing but rounding; the floor keeps the fixed-point figures inside a long.
        return Math.max(6 * Math.sqrt(squares), Math.abs(mean) * 1e-6 + Double.MIN_NORMAL) / 4294967296.0;
    }

    private long pack(double xGMm, double yGMm) {
        return (Math.round(xGMm / stepGMm) << 32) + Math.round(yGMm / stepGMm);
    }

    private void clear(int log) {
        bitsLog = log;
        int words = 1 << (log - 6);
        if (bits.length < words) {
            bits = new long[words];
        } else {
            Arrays.fill(bits, 0, words, 0);
        }
    }

    private void mark(Kept kept) {
        clear(bitsLog);
        mark(0, kept.keys, kept.count, 0);
    }

    /** Marks each cell that a moment within {@link #nearSteps} could fall in: mostly one, near a border two or four. */
    private void mark(long head, long[] tails, int count, int firstOrder) {
        long[] table = bits;
        long cells = cellMask();
        int shift = 64 - bitsLog;
        long reach = (nearSteps << 32) + nearSteps;
        long twice = 2 * reach;
        long start = head - reach;
        long by = spread;
        for (int i = 0; i < count; i++) {
            long corner = start + tails[i];
            long low = corner & cells;
            long high = (corner + twice) & cells;
            int slot = (int) ((low * by) >>> shift);
            table[slot >>> 6] |= 1L << slot;
            if (low != high) {
                set(high);
                set((low & HIGH_HALF) | (high & ~HIGH_HALF));
                set((high & HIGH_HALF) | (low & ~HIGH_HALF));
            }
        }
    }

    private void sieve(long head, long[] tails, int count, int firstOrder, Kept kept) {
        long cells = cellMask();
        int shift = 64 - bitsLog;
        kept.makeRoom(count);
        long[] table = bits;
        long[] keys = kept.keys;
        int[] orders = kept.orders;
        long by = spread;
        int n = kept.count;
        for (int i = 0; i < count; i++) {
            long key = head + tails[i];
            int slot = (int) (((key & cells) * by) >>> shift);
            if (((table[slot >>> 6] >>> slot) & 1) != 0) {
                keys[n] = key;
                orders[n++] = firstOrder + i;
            }
        }
        kept.count = n;
    }

    private int marked(long key) {
        int slot = (int) (((key & cellMask()) * spread) >>> (64 - bitsLog));
        return (int) ((bits[slot >>> 6] >>> slot) & 1);
    }

    private void set(long cell) {
        int slot = (int) ((cell * spread) >>> (64 - bitsLog));
        bits[slot >>> 6] |= 1L << slot;
    }

    private long cellMask() {
        long low = cellLog >= 32 ? 0 : (0xFFFFFFFFL << cellLog) & 0xFFFFFFFFL;
        return (low << 32) | low;
    }

    private static final long HIGH_HALF = 0xFFFFFFFF00000000L;

    /**
     * Sets up the next sieving: finer cells where the radius allows, and another spreading of cells over the table. With the same one, two
     * orders that met by chance in one slot would meet there again.
     */
    private void respread(long cellRadii) {
        int roomy = logAbove(nearSteps * cellRadii);
        int needed = logAbove(nearSteps * FINE_CELL_RADII);
        cellLog = Math.min(32, Math.max(needed, Math.min(roomy, 31 - bitsLog / 2)));
        spread = spread * GOLDEN + 2; // stays odd
    }

    private static int logAbove(long steps) {
        return 64 - Long.numberOfLeadingZeros(steps);
    }

    /** An odd constant near 2^64 over the golden ratio: multiplying by it spreads neighbouring cells over the table. */
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    /** Orders that passed the sieve, with their keys. */
    private static final class Kept {
        long[] keys = new long[0];
        int[] orders = new int[0];
        int count;

        /** Room for {@code more}, and one slot beyond, as every key is written before it is judged. */
        void makeRoom(int more) {
            if (keys.length <= count + more) {
                int room = 2 * (count + more) + 1;
                keys = Arrays.copyOf(keys, room);
                orders = Arrays.copyOf(orders, room);
            }
        }
    }
}
