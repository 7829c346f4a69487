package turnalike.stock;

/**
 * How many blanks come to nothing, by what was told beforehand and what has been seen since: a Beta law. Before anything is seen its mean is
 * the rate told, known as well as {@value #PRIOR_BLANKS} blanks would tell it. Source: the Beta-binomial law, any textbook of probability
 * (from memory). Exact to rounding.
 *
 * @param told the share of blanks expected to be lost, 0 to 0.9
 * @param lost how many were
 * @param good how many came out good
 */
public record LossRecord(double told, int lost, int good) {
    /** As many blanks as the rate told beforehand counts for. Chosen, common practice, no source. */
    public static final int PRIOR_BLANKS = 20;

    public LossRecord {
        if (!(told >= 0 && told <= 0.9 && lost >= 0 && good >= 0)) {
            throw new IllegalArgumentException(
                    "no loss record of %s told, %d lost and %d good".formatted(told, lost, good));
        }
    }

    /** {@return the share of the next blanks to expect lost} */
    public double rate() {
        return (PRIOR_BLANKS * told + lost) / (PRIOR_BLANKS + lost + good);
    }

    /**
     * {@return the chance that at least so many of the next blanks come out good}
     *
     * @param needed good pieces wanted of them, 0 or more
     * @param blanks how many are turned, 0 or more
     */
    public double chance(int needed, int blanks) {
        double bad = PRIOR_BLANKS * told + lost;
        double sound = PRIOR_BLANKS * (1 - told) + good;
        if (needed <= 0) {
            return 1;
        }
        if (needed > blanks) {
            return 0;
        }
        if (bad == 0) {
            return 1; // told that none is lost, and none was
        }
        // The chance that exactly k of them are lost, from k = 0 on: C(n,k) B(k + bad, n - k + sound) / B(bad, sound).
        double exactly = 1;
        for (int i = 0; i < blanks; i++) {
            exactly *= (sound + i) / (bad + sound + i);
        }
        double sum = exactly;
        for (int k = 0; k < blanks - needed; k++) {
            exactly *= (double) (blanks - k) / (k + 1) * (bad + k) / (sound + blanks - k - 1);
            sum += exactly;
        }
        return Math.min(1, sum);
    }
}
