package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published table first, then by the same chain what the watch's own limits promise. */
class RunLengthsTest {
    /**
     * Average run lengths of a two-sided cumulative sum, k = 0.5. Source: J. M. Lucas and R. B. Crosier, Technometrics 24 (1982)
     * 199–205, table 1 (from memory); the shift in sigmas. The two sides combine as 1/L = 1/L₊ + 1/L₋.
     */
    @ParameterizedTest
    @CsvSource({
        "4, 0, 168", "4, 0.25, 74.2", "4, 0.5, 26.6", "4, 0.75, 13.3", "4, 1, 8.38", "4, 1.5, 4.75", "4, 2, 3.34",
        "4, 2.5, 2.62", "4, 3, 2.19", "4, 4, 1.71", "5, 0, 465", "5, 0.25, 139", "5, 0.5, 38.0", "5, 0.75, 17.0",
        "5, 1, 10.4", "5, 1.5, 5.75", "5, 2, 4.01", "5, 2.5, 3.11", "5, 3, 2.57", "5, 4, 2.01"
    })
    void the_published_average_run_lengths_come_out(double limit, double shift, double published) {
        double up = new RunLengths(0.5, limit, shift, 100).average();
        double down = new RunLengths(0.5, limit, -shift, 100).average();
        assertThat(1 / (1 / up + 1 / down)).isCloseTo(published, within(0.006 * published));
    }

    /** By drawing scores: the same table's first figure by another route. */
    @Test
    void simulation_agrees_with_the_chain() {
        Random random = new Random(77);
        int trials = 4000;
        double total = 0;
        for (int trial = 0; trial < trials; trial++) {
            double up = 0;
            double down = 0;
            while (up <= 4 && down <= 4) {
                double score = random.nextGaussian();
                up = Math.max(0, up + score - 0.5);
                down = Math.max(0, down - score - 0.5);
                total++;
            }
        }
        // A run length's deviation is near its mean, so of 4,000 the mean is known to 168/√4000 = 2.7.
        assertThat(total / trials).isCloseTo(168, within(8.0));
    }

    /**
     * The scores of steady work are independent and standard normal, so the chance of a false signal is the chain's. Up and down added, and
     * the single scores', it can only come out too large.
     */
    @Test
    void at_most_one_stable_set_in_twenty_brings_a_signal() {
        int looks = SelfStarting.SET - SelfStarting.FIRST;
        double sums = 2 * new RunLengths(SelfStarting.SLACK, SelfStarting.LIMIT, 0, 400).passedWithin(looks);
        double finer = 2 * new RunLengths(SelfStarting.SLACK, SelfStarting.LIMIT, 0, 800).passedWithin(looks);
        double single = looks * 2 * new NormalDistribution().cumulativeProbability(-SelfStarting.APART);
        assertThat(sums).isCloseTo(finer, within(2e-4));
        assertThat(finer + single).isBetween(0.035, 0.045);
    }
}
