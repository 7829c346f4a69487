package turnalike.match;

import java.util.Arrays;
import java.util.LinkedHashMap;

/**
 * How unlike any two of some pieces are, the same both ways. Of so many as a table holds in little room each pair is asked once and kept; of more it is
 * asked whenever it is needed, but for all differences from one piece, which are kept of those asked last in as much room as such a table takes: a search
 * that tries every spare beside the same few pieces again and again asks for little else. Not for several threads at a time.
 */
final class Differences {
    /** The table of that many takes 32 MB. */
    static final int MOST_KEPT = 2000;

    /** A place between two others asks for those of both. */
    private static final int FEWEST_ROWS = 2;

    private final Unlikeness unlikeness;
    private final int count;

    /** Empty where pairs are asked anew. */
    private final double[][] table;

    /** Those of no piece, beyond a row's ends. */
    private final double[] none;

    /** By piece, that asked for last at the end. */
    private final LinkedHashMap<Integer, double[]> rows = new LinkedHashMap<>(16, 0.75f, true);

    private Differences(Unlikeness unlikeness, int count, double[][] table) {
        this.unlikeness = unlikeness;
        this.count = count;
        this.table = table;
        none = new double[count];
    }

    /**
     * {@return those of the first {@code count} pieces}
     *
     * @throws IllegalArgumentException when a difference is negative or not finite; where none is kept, when that one is asked for
     */
    static Differences of(Unlikeness unlikeness, int count) {
        return of(unlikeness, count, MOST_KEPT);
    }

    /** The same with another number of pieces up to which they are kept. */
    static Differences of(Unlikeness unlikeness, int count, int mostKept) {
        return new Differences(
                unlikeness, count, count <= mostKept ? Unlikeness.table(unlikeness, count) : new double[0][]);
    }

    int count() {
        return count;
    }

    double between(int piece, int other) {
        if (table.length > 0) {
            return table[piece][other];
        }
        // Asked as for the table, so that both say the same to the bit.
        return piece == other ? 0 : Unlikeness.sound(unlikeness, Math.max(piece, other), Math.min(piece, other));
    }

    /**
     * {@return how unlike every piece is to the one at a place of a row; beyond its ends not at all; not to be written to}
     *
     * @param row pieces in order
     * @param place may lie before the first or after the last
     */
    double[] beside(int[] row, int place) {
        return place < 0 || place >= row.length ? none : from(row[place]);
    }

    /**
     * {@return how unlike every piece is to this one, by number}
     *
     * @param piece whose; not to be written to
     */
    double[] from(int piece) {
        if (table.length > 0) {
            return table[piece];
        }
        double[] kept = rows.get(piece);
        if (kept != null) {
            return kept;
        }
        double[] made = new double[count];
        Arrays.setAll(made, other -> between(piece, other));
        rows.put(piece, made);
        if (rows.size() > Math.max(FEWEST_ROWS, MOST_KEPT * MOST_KEPT / count)) {
            rows.remove(rows.keySet().iterator().next());
        }
        return made;
    }

    double largest() {
        double largest = 0;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                largest = Math.max(largest, between(i, j));
            }
        }
        return largest;
    }

    /** Those of some of the pieces, numbered by where they stand in the list. */
    Differences among(int[] own) {
        return new Differences((i, j) -> between(own[i], own[j]), own.length, new double[0][]);
    }
}
