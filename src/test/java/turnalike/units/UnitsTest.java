package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class UnitsTest {
    @Test
    void no_length_is_not_a_number() {
        assertThatThrownBy(() -> Length.ofMm(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.ofMm(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Mass.ofGrams(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Density.ofKgPerM3(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void minus_zero_is_zero() {
        assertThat(Length.ofMm(-0.0)).isEqualTo(Length.ZERO);
        assertThat(Angle.ofDegrees(-0.0)).isEqualTo(Angle.ofDegrees(0));
    }

    @Test
    void an_ounce_is_a_sixteenth_of_a_pound() {
        assertThat(Mass.ofOunces(16).grams()).isEqualTo(453.59237);
        assertThat(Mass.ofGrams(453.59237).ounces()).isEqualTo(16);
    }

    @Test
    void an_angle_comes_round_into_one_turn() {
        assertThat(Angle.ofDegrees(-90).aroundOnce().degrees()).isEqualTo(270);
        assertThat(Angle.ofDegrees(720).aroundOnce().degrees()).isZero();
        assertThat(Angle.ofDegrees(-1e-20).aroundOnce().degrees()).isZero();
    }

    @Test
    void a_problem_reads_as_where_what_mend() {
        assertThat(new Problem("member 3 (bead): crown", "must exceed the root", "make it larger").line())
                .isEqualTo("member 3 (bead): crown: must exceed the root; make it larger");
    }
}
