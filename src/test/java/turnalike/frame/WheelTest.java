package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;

class WheelTest {
    @Test
    void places_stand_evenly_from_zero() {
        Wheel wheel = new Wheel(8, Length.ofMm(60));
        assertThat(wheel.angle(0).degrees()).isZero();
        assertThat(wheel.angle(3).degrees()).isEqualTo(135);
        assertThatThrownBy(() -> wheel.angle(8)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_piece_pulls_with_mass_times_reach() {
        Wheel wheel = new Wheel(4, Length.ofMm(60));
        Moment moment = wheel.moment(1, Mass.ofGrams(100), wheel.reach(Length.ofMm(240)));
        assertThat(moment).isEqualTo(new Moment(30_000, Angle.ofDegrees(90)));
    }

    /**
     * Khurmi and Gupta, Theory of Machines, ch. 21, first example (FROM MEMORY and recomputed, per shared/references.md a): the book rounds
     * to 116 kg at 201.48°; exactly 116.10 kg at 201.31°.
     */
    @Test
    void the_textbook_case_is_balanced_by_the_textbook_mass() {
        Moment sum = Moment.sum(
                List.of(pull(200, 0.20, 0), pull(300, 0.15, 45), pull(240, 0.25, 120), pull(260, 0.30, 255)));
        assertThat(sum.xGMm()).isCloseTo(21.632e6, within(500.0));
        assertThat(sum.yGMm()).isCloseTo(8.439e6, within(500.0));
        Counterweight weight = sum.counterweight(Length.ofMm(200));
        assertThat(weight.mass().grams() / 1000).isCloseTo(116.10, within(0.005));
        assertThat(weight.at().degrees()).isCloseTo(201.31, within(0.005));
        assertThat(weight.removeAt().degrees()).isCloseTo(21.31, within(0.005));
    }

    @Test
    void the_counterweight_leaves_nothing_over() {
        Moment heavy = new Moment(1234, Angle.ofDegrees(300));
        Counterweight weight = heavy.counterweight(Length.ofMm(250));
        Moment added = new Moment(weight.mass().grams() * weight.radius().mm(), weight.at());
        assertThat(Moment.sum(List.of(heavy, added)).gMm()).isCloseTo(0, within(1e-9));
        assertThatThrownBy(() -> heavy.counterweight(Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void no_moment_has_no_direction_and_a_full_turn_is_none() {
        assertThat(new Moment(0, Angle.ofDegrees(77))).isEqualTo(Moment.NONE);
        assertThat(new Moment(5, Angle.ofDegrees(-90)).at().degrees()).isEqualTo(270);
        assertThat(Moment.sum(List.of())).isEqualTo(Moment.NONE);
    }

    @Test
    void a_wheel_has_a_place_at_least_and_a_hub_of_no_size_at_least() {
        assertThat(new Wheel(1, Length.ZERO).angle(0).degrees()).isZero();
        assertThat(new Wheel(3, Length.ZERO).reach(Length.ofMm(-5))).isEqualTo(Length.ofMm(-5));
        assertThatThrownBy(() -> new Wheel(0, Length.ZERO)).hasMessageContaining("at least 1 place");
        assertThatThrownBy(() -> new Wheel(1, Length.ofMm(-1))).hasMessageContaining("hub radius");
        assertThatThrownBy(() -> new Wheel(8, Length.ZERO).angle(-1)).hasMessageContaining("0 to 7");
        assertThatThrownBy(() -> new Wheel(8, Length.ZERO).angle(8)).hasMessageContaining("0 to 7, was 8");
    }

    /** Equal pieces read on a coarse scale: the mean square of the feigned unbalance is the floor's square. */
    @Test
    void the_noise_floor_is_the_spread_that_rounded_weighings_show() {
        Wheel wheel = new Wheel(12, Length.ofMm(60));
        List<Length> reaches = Collections.nCopies(12, Length.ofMm(300));
        Random random = new Random(3);
        double squares = 0;
        int rounds = 20_000;
        for (int round = 0; round < rounds; round++) {
            double x = 0;
            double y = 0;
            for (int k = 0; k < 12; k++) {
                double moment = (random.nextDouble() - 0.5) * 0.1 * 300;
                x += moment * Math.cos(wheel.angle(k).radians());
                y += moment * Math.sin(wheel.angle(k).radians());
            }
            squares += (x * x + y * y) / rounds;
        }
        double floor = Wheel.noiseFloorGMm(Mass.ofGrams(0.1), reaches);
        assertThat(floor).isCloseTo(30.0, within(1e-9));
        assertThat(Math.sqrt(squares)).isCloseTo(floor, within(0.02 * floor));
    }

    private static Moment pull(double kg, double m, double degrees) {
        return new Moment(kg * 1000 * m * 1000, Angle.ofDegrees(degrees));
    }
}
