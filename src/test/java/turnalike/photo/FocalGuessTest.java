package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import turnalike.units.Angle;

class FocalGuessTest {
    private static final CameraData LENS = new CameraData(1, OptionalDouble.of(26));

    @Test
    void an_equivalent_by_width_and_one_by_diagonal_are_both_within_its_uncertainty() {
        FocalGuess guess = FocalGuess.of(Optional.empty(), LENS, 4000, 3000);
        double byWidth = 26.0 / 36 * 4000;
        double byDiagonal = 26 / Math.hypot(36, 24) * 5000;
        assertThat(Math.abs(Math.log(guess.pixels() / byWidth))).isLessThan(guess.uncertainty());
        assertThat(Math.abs(Math.log(guess.pixels() / byDiagonal))).isLessThan(guess.uncertainty());
        assertThat(FocalGuess.of(Optional.empty(), LENS, 3000, 4000).pixels()).isEqualTo(guess.pixels());
    }

    @Test
    void a_given_angle_counts_more_than_the_cameras_data() {
        FocalGuess guess = FocalGuess.of(Optional.of(Angle.ofDegrees(90)), LENS, 4000, 3000);
        assertThat(guess.pixels()).isCloseTo(2000, within(1e-9));
    }

    @Test
    void without_either_a_usual_lens_is_taken_and_hardly_relied_on() {
        FocalGuess guess = FocalGuess.of(Optional.empty(), CameraData.NONE, 4000, 3000);
        assertThat(guess.pixels()).isBetween(3800.0, 4100.0);
        assertThat(guess.uncertainty()).isBetween(0.3, 0.4);
    }
}
