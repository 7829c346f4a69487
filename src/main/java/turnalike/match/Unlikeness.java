package turnalike.match;

/** How unlike two pieces are to the eye. The same both ways and never negative; 0 for a piece and itself. */
@FunctionalInterface
public interface Unlikeness {
    /** The difference of the pieces with those numbers, counted from 0 in the list they came in. */
    double between(int piece, int other);

    /** All differences among the first {@code count} pieces, asked once each. */
    static double[][] table(Unlikeness unlikeness, int count) {
        double[][] table = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                double difference = unlikeness.between(i, j);
                if (!(difference >= 0) || difference == Double.POSITIVE_INFINITY) {
                    throw new IllegalArgumentException(
                            "difference of pieces %d and %d must be 0 or more, was %s".formatted(i, j, difference));
                }
                table[i][j] = difference;
                table[j][i] = difference;
            }
        }
        return table;
    }
}
