package turnalike.pieces.blanks;

import java.util.List;
import java.util.Random;
import turnalike.pieces.StudentLaw;

/**
 * What is known of the shares, finished mass over expected mass: a normal law of unknown mean and unknown scatter. Before anything is
 * finished the mean is 1, known as well as one piece would tell it, and the scatter the one stated, known as well as {@value #PRIOR_FREEDOM}
 * degrees of freedom would tell it; each finished piece corrects both. Source: the conjugate prior of the normal law, any textbook of
 * Bayesian statistics (from memory). In closed form; the intervals hold what they say for shops that scatter as the prior says.
 *
 * @param mean of the shares
 * @param weight how many pieces' worth is known of the mean
 * @param freedom degrees of freedom of the scatter
 * @param scatter the scatter of single shares about their mean, its root mean square as far as it is known
 */
public record ShareLaw(double mean, double weight, int freedom, double scatter) {
    /** As much as is claimed to be known of the scatter beforehand. Chosen, common practice, no source. */
    static final int PRIOR_FREEDOM = 4;

    /** As much as is claimed to be known beforehand of how heavy a shop turns. Chosen, common practice, no source. */
    static final double PRIOR_WEIGHT = 1;

    /** What share of the intervals holds the finished mass. */
    public static final double HELD = 0.9;

    public ShareLaw {
        if (!(mean > 0 && weight > 0 && freedom > 0 && scatter >= 0)) {
            throw new IllegalArgumentException("no law of shares with mean %s, weight %s, freedom %d and scatter %s"
                    .formatted(mean, weight, freedom, scatter));
        }
    }

    /**
     * {@return what is known once these shares have been seen}
     *
     * @param stated the scatter of single shares to go by beforehand, as a share; above zero
     * @param shares of the pieces finished so far; may be none
     */
    public static ShareLaw of(double stated, List<Double> shares) {
        int n = shares.size();
        double mean = shares.stream().mapToDouble(each -> each).average().orElse(1);
        double squares = shares.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        double weight = PRIOR_WEIGHT + n;
        int freedom = PRIOR_FREEDOM + n;
        double pull = PRIOR_WEIGHT * n / weight * (mean - 1) * (mean - 1);
        double scatter = Math.sqrt((PRIOR_FREEDOM * stated * stated + squares + pull) / freedom);
        return new ShareLaw((PRIOR_WEIGHT + n * mean) / weight, weight, freedom, scatter);
    }

    /** {@return half the width of the interval that holds the next share in {@link #HELD} of the cases} */
    public double halfWidth() {
        return StudentLaw.quantileWithin(HELD, freedom) * scatter * Math.sqrt(1 + 1 / weight);
    }

    /**
     * One shop as this law has it: its mean and its scatter, drawn at random.
     *
     * @param mean of its shares
     * @param scatter of single shares about it
     */
    record Shop(double mean, double scatter) {
        double share(Random random) {
            return mean + scatter * random.nextGaussian();
        }
    }

    /** Draws a shop: its variance by the scaled inverse χ², its mean given that. */
    Shop draw(Random random) {
        double squares = 0;
        for (int i = 0; i < freedom; i++) {
            double z = random.nextGaussian();
            squares += z * z;
        }
        double own = scatter * Math.sqrt(freedom / squares);
        return new Shop(mean + own / Math.sqrt(weight) * random.nextGaussian(), own);
    }
}
