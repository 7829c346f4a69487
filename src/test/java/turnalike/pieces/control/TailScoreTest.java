package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

/** Held against Hipparchus' distributions, which go by continued fractions and approximations of their own. */
class TailScoreTest {
    @Test
    void a_score_has_the_tail_of_its_t() {
        NormalDistribution normal = new NormalDistribution();
        for (int freedom = 1; freedom <= 60; freedom++) {
            TDistribution student = new TDistribution(freedom);
            for (double t = -9; t <= 9; t += 0.37) {
                double score = TailScore.of(t, freedom);
                double tail = student.cumulativeProbability(-Math.abs(t));
                assertThat(normal.cumulativeProbability(-Math.abs(score)))
                        .as("t %s of %d", t, freedom)
                        .isCloseTo(tail, within(1e-6 * tail + 1e-14));
                assertThat(Math.signum(score)).isEqualTo(Math.signum(t));
            }
        }
    }

    @Test
    void a_score_ends_at_eight_and_needs_a_degree_of_freedom() {
        assertThat(TailScore.of(1e9, 50)).isCloseTo(8, within(1e-9));
        assertThat(TailScore.of(-1e300, 7)).isCloseTo(-8, within(1e-9));
        assertThat(TailScore.of(0, 3)).isCloseTo(0, within(1e-9));
        assertThatThrownBy(() -> TailScore.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
