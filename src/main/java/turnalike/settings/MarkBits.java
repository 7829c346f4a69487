package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The marks as bits of one {@code long}, so that a set of marks is one number: for the exact search, hence for at most 64 marks.
 * Arrays are indexed by opening as in {@link Spans#openings}.
 */
final class MarkBits {
    /** More marks than this do not fit. */
    static final int MOST_MARKS = 64;

    final int marks;
    final int mostSteps;
    private final int pinned;
    /** The given marks: the two ends and what stands besides. */
    final long given;
    /** The marks that dividers must reach. */
    final long inner;
    /** Lower and higher mark of each pair. */
    final int[][] low;

    final int[][] high;
    /** Inner marks one step from an end mark. */
    final long[] fromEnd;
    /** Inner marks one step from a mark that is not an end. */
    final long[] fromMark;
    /**
     * The inner marks that {@link #fromMark} names, by connected part of the opening's own pairs. A part that holds no end
     * cannot have all its marks entered by its own steps: some other step must get there first. The marks of such parts
     * come last, each part followed by {@link #PART_END}; the {@link #free} ones before them are those of all other parts.
     */
    final int[][] entry;

    final int[] free;
    /** For each of {@link #entry}, the marks besides the ends that the opening steps there from. */
    final long[][] sources;

    static final int PART_END = -1;

    MarkBits(Spans spans) {
        if (spans.marks() > MOST_MARKS) {
            throw new IllegalArgumentException("at most %d marks fit, were %d".formatted(MOST_MARKS, spans.marks()));
        }
        marks = spans.marks();
        mostSteps = spans.mostSteps;
        pinned = spans.pinned;
        given = given(spans);
        long all = marks == Long.SIZE ? -1L : (1L << marks) - 1;
        inner = all & ~given;
        int count = spans.openings.size();
        low = new int[count][];
        high = new int[count][];
        fromEnd = new long[count];
        fromMark = new long[count];
        entry = new int[count][];
        free = new int[count];
        sources = new long[count][];
        for (int i = 0; i < count; i++) {
            add(i, spans.openings.get(i));
        }
    }

    private static long given(Spans spans) {
        long given = 0;
        for (int mark = 0; mark < spans.marks(); mark++) {
            if (spans.given[mark]) {
                given |= 1L << mark;
            }
        }
        return given;
    }

    private void add(int index, Opening opening) {
        low[index] = opening.low();
        high[index] = opening.high();
        for (int i = 0; i < opening.pairs(); i++) {
            enter(index, opening.low()[i], opening.high()[i]);
            enter(index, opening.high()[i], opening.low()[i]);
        }
        addEntries(index, opening);
    }

    private void addEntries(int index, Opening opening) {
        int[] found = new int[3 * opening.pairs()];
        int size = 0;
        List<Long> parts = connected(opening);
        for (long part : parts) {
            for (long rest = (part & given) == 0 ? 0 : part & fromMark[index]; rest != 0; rest &= rest - 1) {
                found[size++] = Long.numberOfTrailingZeros(rest);
            }
        }
        free[index] = size;
        for (long part : parts) {
            if ((part & given) == 0) {
                for (long rest = part; rest != 0; rest &= rest - 1) {
                    found[size++] = Long.numberOfTrailingZeros(rest);
                }
                found[size++] = PART_END;
            }
        }
        entry[index] = Arrays.copyOf(found, size);
        long[] joined = new long[marks];
        join(joined, index);
        sources[index] = Arrays.stream(entry[index])
                .mapToLong(mark -> mark == PART_END ? 0 : joined[mark] & ~given)
                .toArray();
    }

    private void enter(int index, int from, int to) {
        long bit = 1L << to & inner;
        if ((given >> from & 1) != 0) {
            fromEnd[index] |= bit;
        } else {
            fromMark[index] |= bit;
        }
    }

    private static List<Long> connected(Opening opening) {
        List<Long> parts = new ArrayList<>();
        for (int i = 0; i < opening.pairs(); i++) {
            long joined = 1L << opening.low()[i] | 1L << opening.high()[i];
            List<Long> apart = new ArrayList<>();
            for (long part : parts) {
                if ((part & joined) == 0) {
                    apart.add(part);
                } else {
                    joined |= part;
                }
            }
            apart.add(joined);
            parts = apart;
        }
        return parts;
    }

    /** A table of neighbours, by mark, as the pinned openings make it. */
    long[] pinned() {
        long[] neighbours = new long[marks];
        for (int pin = 0; pin < pinned; pin++) {
            join(neighbours, pin);
        }
        return neighbours;
    }

    /** Adds an opening's pairs to a table of neighbours. */
    void join(long[] neighbours, int opening) {
        int[] a = low[opening];
        int[] b = high[opening];
        for (int i = 0; i < a.length; i++) {
            neighbours[a[i]] |= 1L << b[i];
            neighbours[b[i]] |= 1L << a[i];
        }
    }

    static long neighbours(long[] neighbours, long set) {
        long out = 0;
        for (long rest = set; rest != 0; rest &= rest - 1) {
            out |= neighbours[Long.numberOfTrailingZeros(rest)];
        }
        return out;
    }

    /** The inner marks that no allowed number of steps reaches. */
    long unreached(long[] neighbours) {
        long reached = given;
        long latest = given;
        for (int step = 1; step <= mostSteps; step++) {
            latest = neighbours(neighbours, latest) & ~reached;
            if (latest == 0) {
                break;
            }
            reached |= latest;
        }
        return inner & ~reached;
    }
}
