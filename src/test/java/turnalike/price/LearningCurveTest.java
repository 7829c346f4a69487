package turnalike.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Cases of the documentation of the R package learningCurve (Crawford's reading, of the single piece). */
class LearningCurveTest {
    @Test
    void powers_are_those_published() {
        assertThat(new LearningCurve(1, 0.8).exponent()).isCloseTo(-0.3219281, within(5e-8));
        assertThat(new LearningCurve(1, 0.85).exponent()).isCloseTo(-0.2344653, within(5e-8));
        assertThat(new LearningCurve(1, 0.9).exponent()).isCloseTo(-0.1520031, within(5e-8));
    }

    @Test
    void a_piece_far_on_and_all_up_to_it() {
        LearningCurve curve = new LearningCurve(100, 0.85);
        assertThat(curve.at(125)).isCloseTo(32.23647, within(5e-6));
        assertThat(curve.total(1, 125)).isCloseTo(5201.085, within(5e-4));
    }

    @Test
    void from_one_piece_in_the_middle_to_a_later_one() {
        double first = 100 / new LearningCurve(1, 0.85).at(100);
        assertThat(new LearningCurve(first, 0.85).at(125)).isCloseTo(94.90257, within(5e-6));
    }

    @Test
    void a_block_of_pieces() {
        double first = 125 / new LearningCurve(1, 0.75).at(201);
        // The published figure stands three in ten million above the sum piece by piece; by what rounding is not told.
        assertThat(new LearningCurve(first, 0.75).total(201, 500)).isCloseTo(30350.48, within(0.01));
    }

    @Test
    void nothing_learned_and_nothing_to_do() {
        assertThat(new LearningCurve(40, 1).at(10_000)).isEqualTo(40);
        assertThat(new LearningCurve(40, 0.9).total(5, 4)).isZero();
        assertThatThrownBy(() -> new LearningCurve(0, 0.9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LearningCurve(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
