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

    /** Each squares the error: after three it is below a double's. */
    private static final int STEPS = 3;

    /** Less than this above the score, and rounding decides. */
    private static final double LEAST = 1e-15;

    private static final double SMALL = 1e-17;

    private TailScore() {}

    /** The score, with the sign of t and no further than {@link #MOST} from 0; at least one degree of freedom. */
    static double of(double t, int freedom) {
        if (freedom < 1) {
            throw new IllegalArgumentException("at least one degree of freedom, was " + freedom);
        }
        double chance = StudentLaw.within(Math.abs(t), freedom);
        double z = start((1 - chance) / 2);
        for (int i = 0; i < STEPS; i++) {
            double density = Math.sqrt(2 / Math.PI) * Math.exp(-z * z / 2);
            z = Math.max(0, Math.min(MOST, z + (chance - within(z)) / density));
        }
        return Math.copySign(z, t);
    }

    /**
     * The score that is exceeded with that chance, to 5·10⁻⁴: where Newton's steps begin. Source:
     * Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.23 (from memory).
     */
    private static double start(double above) {
        if (!(above > LEAST)) {
            return MOST;
        }
        double t = Math.sqrt(-2 * Math.log(above));
        double over = 2.515517 + t * (0.802853 + t * 0.010328);
        double under = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
        return Math.max(0, Math.min(MOST, t - over / under));
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
