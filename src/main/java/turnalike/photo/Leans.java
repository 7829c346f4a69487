package turnalike.photo;

/**
 * The leans that are looked at round what is thought of it: far apart where ends are read, close together where what they say is added up.
 *
 * @param guess what is thought of it
 */
record Leans(ViewFit.TiltGuess guess) {
    /** To either side of the guess so many leans are read, so many of its standard deviations apart, and so many closer ones are weighed. */
    private static final int SIDE = 9;

    private static final double APART = 0.6;

    private static final int FINE_SIDE = 240;

    private static final double FINE = 0.02;

    int count() {
        return 2 * SIDE + 1;
    }

    /** Which of them is the guess. */
    int middle() {
        return SIDE;
    }

    /** One that is read, radians. */
    double lean(int k) {
        return guess.tilt() + (k - SIDE) * APART * guess.uncertainty();
    }

    int fineCount() {
        return 2 * FINE_SIDE + 1;
    }

    /** One that is weighed, radians. */
    double fine(int j) {
        return guess.tilt() + (j - FINE_SIDE) * FINE * guess.uncertainty();
    }

    /** What stands at a lean in a table of those that are weighed; beyond its ends what stands there. */
    double fineAt(double[] table, double lean) {
        double at = within((lean - guess.tilt()) / guess.uncertainty() / FINE + FINE_SIDE, table.length);
        int j = (int) at;
        return table[j] + (at - j) * (table[j + 1] - table[j]);
    }

    /** A lean between two of those that are read. */
    Between between(double lean) {
        double at = within((lean - guess.tilt()) / guess.uncertainty() / APART + SIDE, count());
        int k = (int) at;
        return new Between(k, at - k);
    }

    private static double within(double at, int count) {
        return Math.max(0, Math.min(count - 1 - 1e-9, at));
    }

    /**
     * A place in a table by leans.
     *
     * @param from the lean before
     * @param share how far on to the next
     */
    record Between(int from, double share) {
        double of(double[] table) {
            return table[from] + share * (table[from + 1] - table[from]);
        }

        /** Of a table by lean first. */
        double of(double[][] table, int k) {
            return table[from][k] + share * (table[from + 1][k] - table[from][k]);
        }
    }
}
