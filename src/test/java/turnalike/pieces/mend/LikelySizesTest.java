package turnalike.pieces.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LikelySizesTest {
    /** By hand: x and y of deviations 3 and 4, x + y read as 10 exactly: 10·9/25 and 10·16/25, and what is left is 12/5 for both. */
    @Test
    void a_sum_is_shared_by_variance() {
        LikelySizes sizes = new LikelySizes(3, 4);
        sizes.read(new double[] {1, 1}, 10, 0);
        assertThat(sizes.mean(0)).isCloseTo(3.6, within(1e-12));
        assertThat(sizes.mean(1)).isCloseTo(6.4, within(1e-12));
        assertThat(sizes.deviation(0)).isCloseTo(2.4, within(1e-12));
        assertThat(sizes.deviation(1)).isCloseTo(2.4, within(1e-12));
    }

    @Test
    void what_was_read_exactly_stays_and_the_order_does_not_matter() {
        LikelySizes one = new LikelySizes(1, 2, 0.5);
        LikelySizes other = new LikelySizes(1, 2, 0.5);
        double[] first = {1, 0, 0};
        double[] second = {0.4, -1, 2};
        one.read(first, 0.7, 0);
        one.read(second, 1.1, 0.3);
        one.read(first, 0.7, 0);
        other.read(second, 1.1, 0.3);
        other.read(first, 0.7, 0);
        assertThat(one.mean(0)).isEqualTo(0.7);
        assertThat(one.deviation(0)).isZero();
        for (int i = 0; i < 3; i++) {
            assertThat(one.mean(i)).isCloseTo(other.mean(i), within(1e-12));
            assertThat(one.deviation(i)).isCloseTo(other.deviation(i), within(1e-12));
        }
        assertThatThrownBy(() -> new LikelySizes(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_reading_beyond_four_deviations_is_no_size() {
        LikelySizes sizes = new LikelySizes(3, 4);
        // The sum's deviation is 5, with the reading's own 12 it is 13.
        assertThat(sizes.isLikely(new double[] {1, 1}, 51.9, 12)).isTrue();
        assertThat(sizes.isLikely(new double[] {1, 1}, -52.1, 12)).isFalse();
    }

    /** Drawn at random: of truths so read, the mean is off by the deviation told. */
    @Test
    void the_deviation_is_that_of_the_truth_about_the_mean() {
        Random random = new Random(17);
        double squares = 0;
        double told = 0;
        int draws = 4000;
        for (int draw = 0; draw < draws; draw++) {
            double[] truth = {0.13 * random.nextGaussian(), 0.13 * random.nextGaussian(), 0.02 * random.nextGaussian()};
            double[] mass = {1.5, 0.4, 140};
            double[] balance = {0.8, -0.3, 0};
            LikelySizes sizes = new LikelySizes(0.13, 0.13, 0.02);
            sizes.read(mass, dot(mass, truth), 0);
            sizes.read(balance, dot(balance, truth) + 0.05 * random.nextGaussian(), 0.05);
            squares += Math.pow(sizes.mean(0) - truth[0], 2) / draws;
            told = sizes.deviation(0);
        }
        assertThat(Math.sqrt(squares)).isCloseTo(told, within(0.04 * told));
        assertThat(told).isLessThan(0.12);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
