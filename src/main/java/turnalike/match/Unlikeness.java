package turnalike.match;

/** How unlike two pieces are to the eye. The same both ways and never negative; 0 for a piece and itself. */
@FunctionalInterface
public interface Unlikeness {
    /**
     * {@return the difference of two pieces, 0 when they are alike; finite, and never negative}
     *
     * @param piece its number, counted from 0 in the list they came in
     * @param other the other's number, counted likewise
     */
    double between(int piece, int other);

    /**
     * {@return all differences among the first {@code count} pieces, each asked once: the one of pieces i and j stands in row i, column j
     * and in row j, column i}
     *
     * @param unlikeness of any two of them
     * @param count how many pieces
     * @throws IllegalArgumentException when a difference is negative or not finite
     */
    static double[][] table(Unlikeness unlikeness, int count) {
        double[][] table = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                double difference = sound(unlikeness, i, j);
                table[i][j] = difference;
                table[j][i] = difference;
            }
        }
        return table;
    }

    /**
     * {@return the difference of two pieces}
     *
     * @param unlikeness of any two
     * @param piece the number of one
     * @param other the other's
     * @throws IllegalArgumentException when it is negative or not finite
     */
    static double sound(Unlikeness unlikeness, int piece, int other) {
        double difference = unlikeness.between(piece, other);
        if (!(difference >= 0) || difference == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "difference of pieces %d and %d must be 0 or more, was %s".formatted(piece, other, difference));
        }
        return difference;
    }
}
