package turnalike.settings;

import java.util.Arrays;

/**
 * What a part of a plan still lacks, as zones each of which some new opening must enter.
 *
 * <p>Take the openings chosen so far and a mark u they leave unreached. In any plan that goes on from here, the way to u has a last step
 * with a new opening, into some mark b; from b the openings already chosen lead on to u in t steps. As all steps together are at most K,
 * t ≤ K-1, and t ≤ K-2 unless that last new step starts at an end. So a new opening must enter u's <em>zone</em>: the marks within K-1
 * such steps of u from an end, or within K-2 from any other mark. When the zones of several unreached marks do not overlap, each
 * needs an entry of its own; that many entries must come from the openings still to be chosen. (Derived here; for K without bound the
 * zones are the connected parts, and it is the bound known for the labelling spanning tree.)
 */
final class Zones {
    private final MarkBits bits;
    /** By unreached mark: the zone for steps from any mark, and the wider one for steps from an end. */
    private final long[] near;

    private final long[] far;
    /** By mark: the number of the chosen zone it lies in, or -1. */
    private final int[] nearZone;

    private final int[] farZone;
    private int count;

    /** The zones the opening last asked about can enter, as bits. */
    long entered;

    Zones(MarkBits bits) {
        this.bits = bits;
        this.near = new long[bits.marks];
        this.far = new long[bits.marks];
        this.nearZone = new int[bits.marks];
        this.farZone = new int[bits.marks];
    }

    /** Finds the zones anew, small ones first, and returns how many do not overlap. */
    int find(long[] neighbours, long unreached) {
        Arrays.fill(nearZone, -1);
        Arrays.fill(farZone, -1);
        for (long rest = unreached; rest != 0; rest &= rest - 1) {
            around(neighbours, Long.numberOfTrailingZeros(rest));
        }
        count = 0;
        long taken = 0;
        long left = unreached;
        for (int size = 1; left != 0; size++) {
            for (long rest = left; rest != 0; rest &= rest - 1) {
                int mark = Long.numberOfTrailingZeros(rest);
                if ((far[mark] & taken) != 0) {
                    left &= ~(1L << mark);
                } else if (Long.bitCount(far[mark]) <= size) {
                    left &= ~(1L << mark);
                    taken |= far[mark];
                    take(mark);
                }
            }
        }
        return count;
    }

    /** Finds one mark's zone alone. */
    void around(long[] neighbours, int mark) {
        long inside = 1L << mark;
        long before = 0;
        for (int step = 1; step < bits.mostSteps; step++) {
            before = inside;
            inside |= MarkBits.neighbours(neighbours, inside);
            if (before == inside) {
                break;
            }
        }
        near[mark] = before;
        far[mark] = inside;
    }

    private void take(int mark) {
        for (long rest = far[mark]; rest != 0; rest &= rest - 1) {
            farZone[Long.numberOfTrailingZeros(rest)] = count;
        }
        for (long rest = near[mark]; rest != 0; rest &= rest - 1) {
            nearZone[Long.numberOfTrailingZeros(rest)] = count;
        }
        count++;
    }

    /** Whether the opening can enter the zone of that unreached mark. */
    boolean enters(int opening, int mark) {
        return (bits.fromEnd[opening] & far[mark]) != 0 || (bits.fromMark[opening] & near[mark]) != 0;
    }

    /**
     * How many of the chosen zones the opening can enter at most, and {@link #entered} which. A part of its pairs that nothing has
     * reached yet cannot enter all its marks by itself; when each of its marks stands alone for a zone, one entry is lost.
     */
    int gain(int opening) {
        long once = 0;
        long again = 0;
        for (long rest = bits.fromEnd[opening]; rest != 0; rest &= rest - 1) {
            int zone = farZone[Long.numberOfTrailingZeros(rest)];
            if (zone >= 0) {
                long bit = 1L << zone;
                again |= once & bit;
                once |= bit;
            }
        }
        int[][] parts = bits.parts[opening];
        for (int[] part : parts) {
            for (int mark : part) {
                int zone = nearZone[mark];
                if (zone >= 0) {
                    long bit = 1L << zone;
                    again |= once & bit;
                    once |= bit;
                }
            }
        }
        entered = once;
        int gain = Long.bitCount(once);
        boolean[] needsEntry = bits.needsEntry[opening];
        for (int i = 0; i < parts.length; i++) {
            if (needsEntry[i] && eachAlone(parts[i], again)) {
                gain--;
            }
        }
        return gain;
    }

    private boolean eachAlone(int[] part, long again) {
        for (int mark : part) {
            int zone = nearZone[mark];
            if (zone < 0 || (again >> zone & 1) != 0) {
                return false;
            }
        }
        return true;
    }
}
