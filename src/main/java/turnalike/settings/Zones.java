package turnalike.settings;

/**
 * What a part of a plan still lacks, as zones each of which some new opening must enter.
 *
 * <p>Take the openings chosen so far and a mark u they leave unreached. In any plan that goes on from here, the way to u has a last step
 * with a new opening, into some mark b; from b the openings already chosen lead on to u in t steps. As all steps together are at most K,
 * t ≤ K-1 if that last new step starts at an end, t ≤ K-2 if it starts at a mark one step out, and t ≤ K-3 from anywhere else. So a new
 * opening must enter u's <em>zone</em>, the marks within so many steps of u. (Derived here; for K without bound the zones are the
 * connected parts, and it is the bound known for the labelling spanning tree.)
 *
 * <p>Sets of zones are bits, by the unreached mark each is around.
 */
final class Zones {
    private final MarkBits bits;
    /** By mark b: the unreached marks whose zones a step into b enters, from an end. */
    private final long[] far;
    /** The same for a step from a mark one step out. */
    private final long[] near;
    /** The same for a step from any other mark. */
    private final long[] close;
    /** By mark: all marks within K-1 steps. */
    private final long[] around;
    /** By place in {@link MarkBits#entry}: the zones entered there by the opening at hand. */
    private final long[] there;
    /** Marks that may yet be one step out. */
    private long oneStep;

    Zones(MarkBits bits) {
        this.bits = bits;
        this.far = new long[bits.marks];
        this.near = new long[bits.marks];
        this.close = new long[bits.marks];
        this.around = new long[bits.marks];
        int most = 0;
        for (int[] entry : bits.entry) {
            most = Math.max(most, entry.length);
        }
        this.there = new long[most];
    }

    /** Finds the zones anew for that level's openings chosen and those that may still be. */
    void find(SearchLevel level, long unreached) {
        oneStep = MarkBits.neighbours(level.neighbours, bits.given);
        for (int i = 0; i < level.size; i++) {
            oneStep |= bits.fromEnd[level.candidates[i]];
        }
        for (int mark = 0; mark < bits.marks; mark++) {
            spread(level.neighbours, unreached, mark);
        }
    }

    private void spread(long[] neighbours, long unreached, int mark) {
        long inside = 1L << mark;
        long before = 0;
        long twoBefore = 0;
        for (int step = 1; step < bits.mostSteps; step++) {
            twoBefore = before;
            before = inside;
            inside |= MarkBits.neighbours(neighbours, inside);
            if (before == inside) {
                twoBefore = step < bits.mostSteps - 1 ? inside : twoBefore;
                break;
            }
        }
        around[mark] = inside;
        far[mark] = inside & unreached;
        near[mark] = before & unreached;
        close[mark] = twoBefore & unreached;
    }

    /** Zones that do not overlap, small ones first, as many as fit. */
    long apart(long unreached) {
        long apart = 0;
        long taken = 0;
        long left = unreached;
        for (int size = 1; left != 0; size++) {
            for (long rest = left; rest != 0; rest &= rest - 1) {
                int mark = Long.numberOfTrailingZeros(rest);
                if ((around[mark] & taken) != 0) {
                    left &= ~(1L << mark);
                } else if (Long.bitCount(around[mark]) <= size) {
                    left &= ~(1L << mark);
                    taken |= around[mark];
                    apart |= 1L << mark;
                }
            }
        }
        return apart;
    }

    /**
     * Sets which zones the level's candidate of that index can enter. Where a part of its pairs holds no end,
     * the mark of the part that comes first on the ways from the ends is not struck by the part's own steps. Which it is is open; but the
     * zones that the opening enters at that mark and nowhere else are lost to it. {@link SearchLevel#losses} lists them mark by mark,
     * for the parts where every mark has some: whichever comes first, the least of them is lost.
     */
    void enter(SearchLevel level, int index) {
        int opening = level.candidates[index];
        long once = 0;
        long again = 0;
        for (long rest = bits.fromEnd[opening]; rest != 0; rest &= rest - 1) {
            long zones = far[Long.numberOfTrailingZeros(rest)];
            again |= once & zones;
            once |= zones;
        }
        int[] entry = bits.entry[opening];
        long[] sources = bits.sources[opening];
        for (int i = 0; i < entry.length; i++) {
            int mark = entry[i];
            if (mark != MarkBits.PART_END) {
                long zones = (sources[i] & oneStep) != 0 ? near[mark] : close[mark];
                there[i] = zones;
                again |= once & zones;
                once |= zones;
            }
        }
        level.entered[index] = once;
        level.certain[index] = once & ~losses(level, entry, bits.free[opening], again);
    }

    private long losses(SearchLevel level, int[] entry, int free, long again) {
        long[] losses = level.losses;
        int end = level.lossesEnd;
        long lost = 0;
        int part = end;
        long ofPart = 0;
        for (int i = free; i < entry.length; i++) {
            long alone = entry[i] == MarkBits.PART_END ? 0 : there[i] & ~again;
            if (alone != 0) {
                ofPart |= alone;
                losses[end++] = alone;
                continue;
            }
            if (entry[i] == MarkBits.PART_END) {
                lost |= ofPart;
                losses[end++] = 0;
            } else {
                end = part;
                while (entry[i] != MarkBits.PART_END) {
                    i++;
                }
            }
            part = end;
            ofPart = 0;
        }
        level.lossesEnd = end;
        return lost;
    }
}
