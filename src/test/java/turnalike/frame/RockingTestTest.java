package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;

class RockingTestTest {
    /** Uniform disc of 10 kg and 0.4 m: I = 0.8 kg·m², U = 0.020 kg·m, T = 12.690 s (computed, shared/references.md a). */
    @Test
    void the_disc_of_the_references_swings_in_its_period_and_is_found_from_it() {
        double inertia = 0.8e9;
        Moment heavy = new Moment(20_000, Angle.ofDegrees(30));
        assertThat(RockingTest.periodS(inertia, heavy)).isCloseTo(12.690, within(0.0005));
        Moment found = RockingTest.unbalance(inertia, 12.690, Angle.ofDegrees(0), Angle.ofDegrees(30));
        assertThat(found.gMm()).isCloseTo(20_000, within(2.0));
        assertThat(found.at()).isEqualTo(heavy.at());
    }

    /** Uniform rod of 1 m swung from its end: T = 1.63823 s (computed, shared/references.md a); mass cancels. */
    @Test
    void a_rod_swung_from_its_end_keeps_the_textbook_period() {
        double massG = 600;
        Moment pull = new Moment(massG * 500, Angle.ofDegrees(0));
        assertThat(RockingTest.periodS(massG * 1e6 / 3, pull)).isCloseTo(1.63823, within(5e-6));
    }

    /** The whole pendulum equation integrated in small steps, as the second route to the correction for wide swings. */
    @Test
    void wide_swings_are_corrected() {
        double inertia = 5e8;
        Moment heavy = new Moment(15_000, Angle.ofDegrees(0));
        double periodS = integrated(inertia, heavy.gMm(), Math.toRadians(60));
        assertThat(RockingTest.unbalance(inertia, periodS, Angle.ofDegrees(60), Angle.ofDegrees(0))
                        .gMm())
                .isCloseTo(15_000, within(15.0));
    }

    @Test
    void a_ring_s_inertia_is_mass_times_radius_squared_and_nonsense_is_refused() {
        assertThat(RockingTest.ringInertiaGMm2(Mass.ofGrams(10), Length.ofMm(20)))
                .isEqualTo(4000);
        assertThatThrownBy(() -> RockingTest.unbalance(1, 0, Angle.ofDegrees(0), Angle.ofDegrees(0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RockingTest.unbalance(1, 1, Angle.ofDegrees(90), Angle.ofDegrees(0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Four times the time from the turning point to the bottom, by the leapfrog rule. */
    private static double integrated(double inertiaGMm2, double gMm, double amplitudeRad) {
        double step = 1e-5;
        double angle = amplitudeRad;
        double speed = 0;
        double stiffness = RockingTest.GRAVITY_MM_S2 * gMm / inertiaGMm2;
        double time = 0;
        while (angle > 0) {
            speed -= stiffness * Math.sin(angle) * step / (time == 0 ? 2 : 1);
            angle += speed * step;
            time += step;
        }
        return 4 * (time - angle / speed);
    }

    @Test
    void the_widest_and_the_smallest_swing_are_taken_and_no_other() {
        Angle rest = Angle.ofDegrees(200);
        // A swing of no width is not lengthened: 4π² I / (g T²).
        assertThat(RockingTest.unbalance(2e8, 3, Angle.ofDegrees(0), rest).gMm())
                .isCloseTo(4 * Math.PI * Math.PI * 2e8 / (9806.65 * 9), within(1e-6));
        assertThat(RockingTest.unbalance(2e8, 3, Angle.ofDegrees(60), rest).at())
                .isEqualTo(rest);
        for (double bad : new double[] {-1, 61}) {
            assertThatThrownBy(() -> RockingTest.unbalance(2e8, 3, Angle.ofDegrees(bad), rest))
                    .hasMessageContaining("amplitude");
        }
        for (double bad : new double[] {0, -1, Double.NaN}) {
            assertThatThrownBy(() -> RockingTest.unbalance(bad, 3, Angle.ofDegrees(0), rest))
                    .hasMessageContaining("inertia");
            assertThatThrownBy(() -> RockingTest.unbalance(2e8, bad, Angle.ofDegrees(0), rest))
                    .hasMessageContaining("period");
        }
    }

    @Test
    void the_working_says_what_is_left_out() {
        assertThat(RockingTest.working().how()).contains("U = 4π² I / (g T²)");
        assertThat(RockingTest.working().sureness()).contains("friction left out");
    }
}
