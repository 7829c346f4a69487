package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Angle;

class UnbalanceLawTest {
    @Test
    void the_normal_and_chi_square_probabilities_are_those_of_another_library() {
        for (double z = -9; z <= 9; z += 0.0137) {
            assertThat(NormalLaw.below(z)).isCloseTo(0.5 * Erf.erfc(-z / Math.sqrt(2)), within(2e-15));
        }
        for (int freedom : new int[] {1, 2, 3, 4, 7, 12, 39}) {
            ChiSquaredDistribution other = new ChiSquaredDistribution(freedom);
            for (double p : new double[] {0.02, 0.3, 0.5, 0.9, 0.98}) {
                double x = other.inverseCumulativeProbability(p);
                assertThat(NormalLaw.chiSquareAbove(x, freedom)).isCloseTo(1 - p, within(1e-8));
                assertThat(NormalLaw.chiSquareQuantile(p, freedom)).isCloseTo(x, within(1e-5 * x));
            }
        }
    }

    /** About nothing and alike in both directions the size follows Rayleigh's law: 1 − e^(−r²/2s²), with the mean s·√(π/2). */
    @Test
    void alike_in_both_directions_about_nothing_it_is_rayleigh_s() {
        UnbalanceLaw law = new UnbalanceLaw(Moment.NONE, new Spread(9, 0, 9), Spread.NONE, 1);
        for (double r : new double[] {0.1, 1, 3, 8, 14}) {
            assertThat(law.within(r)).isCloseTo(1 - Math.exp(-r * r / 18), within(1e-7));
        }
        assertThat(law.expectedGMm()).isCloseTo(3 * Math.sqrt(Math.PI / 2), within(1e-6));
        assertThat(law.quantileGMm(0.95)).isCloseTo(3 * Math.sqrt(-2 * Math.log(0.05)), within(1e-5));
        assertThat(law.rmsGMm()).isCloseTo(Math.sqrt(18), within(1e-12));
    }

    @Test
    void along_one_line_only_it_is_a_normal_deviate_s_size() {
        UnbalanceLaw law = new UnbalanceLaw(Moment.NONE, Spread.along(0.6, 0.8, 5), Spread.NONE, 1);
        assertThat(law.within(5)).isCloseTo(0.6826894921, within(1e-4));
        assertThat(law.expectedGMm()).isCloseTo(5 * Math.sqrt(2 / Math.PI), within(1e-3));
    }

    @Test
    void without_scatter_it_is_what_it_is() {
        UnbalanceLaw law = new UnbalanceLaw(new Moment(40, Angle.ofDegrees(20)), Spread.NONE, Spread.NONE, 1);
        assertThat(law.within(39.9)).isZero();
        assertThat(law.within(40.1)).isEqualTo(1);
        assertThat(law.expectedGMm()).isEqualTo(40);
        assertThat(law.quantileGMm(0.5)).isCloseTo(40, within(1e-6));
        UnbalanceLaw nothing = new UnbalanceLaw(Moment.NONE, Spread.NONE, Spread.NONE, 1);
        assertThat(nothing.expectedGMm()).isZero();
        assertThat(nothing.quantileGMm(0.95)).isCloseTo(0, within(1e-9));
    }

    /** Any mean and any spread, against draws of two normal deviates; with an estimate, against draws of its variance too. */
    @Test
    void any_other_is_what_draws_of_it_give() {
        Seeds.each(6, random -> {
            Spread known = Spread.along(random.nextGaussian(), random.nextGaussian(), 3)
                    .plus(Spread.along(random.nextGaussian(), random.nextGaussian(), 2));
            boolean guessed = random.nextBoolean();
            Spread estimated = guessed ? new Spread(6, 2, 9) : Spread.NONE;
            int freedom = 4 + random.nextInt(6);
            Moment mean = new Moment(12 * random.nextDouble(), Angle.ofDegrees(360 * random.nextDouble()));
            UnbalanceLaw law = new UnbalanceLaw(mean, known, estimated, freedom);
            int draws = 40_000;
            double low = law.quantileGMm(0.05);
            double high = law.quantileGMm(0.95);
            double sum = 0;
            int below = 0;
            int above = 0;
            for (int i = 0; i < draws; i++) {
                double square = 0;
                for (int k = 0; k < freedom; k++) {
                    double z = random.nextGaussian();
                    square += z * z;
                }
                Spread all = known.plus(estimated.times(freedom / square));
                double u = random.nextGaussian();
                double v = random.nextGaussian();
                double x = Math.sqrt(all.xx()) * u;
                double y =
                        all.xy() / Math.sqrt(all.xx()) * u + Math.sqrt(all.yy() - all.xy() * all.xy() / all.xx()) * v;
                double size = Math.hypot(mean.xGMm() + x, mean.yGMm() + y);
                sum += size;
                below += size < low ? 1 : 0;
                above += size > high ? 1 : 0;
            }
            if (!guessed) { // what is expected takes the estimate as it is
                assertThat(law.expectedGMm()).isCloseTo(sum / draws, within(0.15));
            }
            assertThat(1.0 * below / draws).isCloseTo(0.05, within(0.007));
            assertThat(1.0 * above / draws).isCloseTo(0.05, within(0.007));
        });
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Spread(-1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spread(1, Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UnbalanceLaw(Moment.NONE, Spread.NONE, Spread.NONE, 0))
                .isInstanceOf(IllegalArgumentException.class);
        UnbalanceLaw law = new UnbalanceLaw(Moment.NONE, Spread.NONE, Spread.NONE, 1);
        assertThatThrownBy(() -> law.quantileGMm(1)).isInstanceOf(IllegalArgumentException.class);
    }
}
