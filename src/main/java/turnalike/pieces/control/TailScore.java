package turnalike.pieces.control;

import turnalike.pieces.StudentLaw;

/**
 * Student's t as the normal score of the same tail: t and the score are exceeded equally often. The normal chance is a series of positive
 * terms. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.10 (from memory). The test holds it against distributions
 * worked out another way.
 */
final class TailScore {
    /** Beyond, a double no longer tells the chance from 1. */
    static final double MOST = 8;

    private static final int HALVINGS = 45;
    private static final double SMALL = 1e-17;

    private TailScore() {}

    /** The score, with the sign of t and no further than {@link #MOST} from 0; at least one degree of freedom. */
    static double of(double t, int freedom) {
        if (freedom < 1) {
            throw new IllegalArgumentException("at least one degree of freedom, was " + freedom);
        }
        double chance = StudentLaw.within(Math.abs(t), freedom);
        double low = 0;
        double high = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (within(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.copySign((low + high) / 2, t);
    }

    /** The chance that a normal score lies between -z and z. */
    private static double within(double z) {
        double term = z;
        double sum = z;
        for (int i = 3; term > SMALL * sum; i += 2) {
            term *= z * z / i;
            sum += term;
        }
        return Math.min(1, Math.sqrt(2 / Math.PI) * Math.exp(-z * z / 2) * sum);
    }
}
