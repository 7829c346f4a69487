package turnalike.pieces.control;

import turnalike.units.Working;

/**
 * How often the self-starting watch sees a change that begins after ten steady pieces, within the ten that follow. Simulated, 20,000 sets
 * each, right to a per cent; the test simulates anew with other seeds. At the same rate of false alarms neither the moving average of the
 * same scores nor the change point by likelihood sees a drift more often: see the test.
 */
public final class Power {
    /** A drift of 0, 1, 2 … sigmas over ten pieces, in per cent. */
    private static final double[] DRIFT_PCT = {1.4, 6.2, 33.0, 77.4, 97.1, 99.9, 100};

    private static final double JUMP_PCT = 64.7;

    private Power() {}

    /** {@return in how many of 100 sets a lasting jump of two sigmas is seen} */
    public static double jumpOfTwoSigmaPct() {
        return JUMP_PCT;
    }

    /**
     * {@return in how many of 100 sets a drift is seen before its tenth piece is past; between whole sigmas in a straight line, beyond six
     * as for six}
     *
     * @param sigmas how far the drift goes over ten pieces, zero or above
     */
    public static double driftPct(double sigmas) {
        if (!(sigmas >= 0)) {
            throw new IllegalArgumentException("a drift goes zero sigmas or more, was " + sigmas);
        }
        int below = (int) Math.min(sigmas, DRIFT_PCT.length - 2);
        double share = Math.min(sigmas - below, 1);
        return DRIFT_PCT[below] + (DRIFT_PCT[below + 1] - DRIFT_PCT[below]) * share;
    }

    /** {@return how the self-starting watch tells a change} */
    public static Working working() {
        return new Working(
                "change in the work",
                "each piece from the fifth on against all before it, as Student's t, turned into a normal score; sums of the scores less"
                        + " 0.5, up and down, speak beyond 5.55, one score beyond 3.7",
                "D. M. Hawkins, The Statistician 36 (1987) 299–315, from memory",
                "assumes pieces that scatter by chance alone, independently and normally; at most one stable set in twenty of up to 40"
                        + " pieces brings a signal, by Markov chain; the normal law's extremes are the weak point");
    }

    /** {@return how the run rules tell a change} */
    public static Working workingOfRuns() {
        return new Working(
                "change in the work",
                "run rules on the limits drawn, looked for anew after every piece",
                "Western Electric's handbook; L. S. Nelson, Journal of Quality Technology 16 (1984), from memory",
                "each piece looked at is one more chance of a false signal: see how often they come");
    }
}
