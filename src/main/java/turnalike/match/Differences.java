package turnalike.match;

/**
 * How unlike any two of some pieces are, the same both ways. Of so many as a table holds in little room each pair is asked once and kept; of more it is
 * asked whenever it is needed, so that thousands of pieces take no more room than their own figures.
 */
final class Differences {
    /** The table of that many takes 32 MB. */
    static final int MOST_KEPT = 2000;

    private final Unlikeness unlikeness;
    private final int count;

    /** Empty where pairs are asked anew. */
    private final double[][] table;

    private Differences(Unlikeness unlikeness, int count, double[][] table) {
        this.unlikeness = unlikeness;
        this.count = count;
        this.table = table;
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
