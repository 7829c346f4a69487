package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Masses are told as the scale shows them. */
class WeighingScaleTest {
    private static WeighingScale of(double step) {
        return new WeighingScale(Mass.ofGrams(step));
    }

    private static Mass g(double grams) {
        return Mass.ofGrams(grams);
    }

    @Test
    void it_shows_the_decimals_of_its_step() {
        assertThat(of(5).decimals()).isZero();
        assertThat(of(1).decimals()).isZero();
        assertThat(of(2.5).decimals()).isEqualTo(1);
        assertThat(of(0.5).decimals()).isEqualTo(1);
        assertThat(of(0.1).decimals()).isEqualTo(1);
        assertThat(of(0.25).decimals()).isEqualTo(2);
        assertThat(of(0.01).decimals()).isEqualTo(2);
        assertThat(of(1e-6).decimals()).isEqualTo(3);
        assertThat(of(0).decimals()).as("one that shows every step").isEqualTo(1);
        // A tenth of an ounce is no round figure of grams: no decimals are made up for it.
        assertThat(of(2.8349523125).decimals()).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> of(-0.1));
    }

    @Test
    void one_that_shows_ounces_tells_masses_in_them() {
        WeighingScale tenths = new WeighingScale(Mass.ofOunces(0.1), MassUnit.OUNCE);
        assertThat(tenths.reading(Mass.ofOunces(8.4))).isEqualTo("8.4 oz");
        assertThat(tenths.reckoned(Mass.ofOunces(8.43))).isEqualTo("8.43 oz");
        assertThat(tenths.difference(Mass.ofOunces(8.4), Mass.ofOunces(8))).isEqualTo("0.4 oz");
        assertThat(tenths.atLeast(Mass.ofOunces(8.41)).ounces()).isCloseTo(8.5, within(1e-9));
        assertThat(tenths.stepInWords()).isEqualTo("0.1 oz");
        assertThat(tenths.other(Mass.ofOunces(8.4))).isEqualTo("238 g");
        assertThat(tenths.large(Mass.ofOunces(24.8))).isEqualTo("1 lb 8.8 oz");
        assertThat(new WeighingScale(Mass.ofOunces(0.05), MassUnit.OUNCE).decimals())
                .isEqualTo(2);
        // A table in ounces of a job whose scale is told in grams.
        assertThat(of(0.1).in(MassUnit.OUNCE).reading(g(240))).isEqualTo("8.47 oz");
        assertThat(of(1).in(MassUnit.OUNCE).reading(g(240))).isEqualTo("8.5 oz");
        assertThat(of(2.8349523).in(MassUnit.OUNCE).reading(g(240))).isEqualTo("8.5 oz");
    }

    @Test
    void a_difference_is_that_of_the_two_figures_told() {
        assertThat(of(5).difference(g(50), g(42.5))).isEqualTo("7 g");
        assertThat(of(5).difference(g(42), g(42.4))).isEqualTo("0 g");
        assertThat(of(1).difference(g(57), g(57.5))).isEqualTo("0.5 g");
        assertThat(of(0.1).difference(g(243.4), g(243.5))).isEqualTo("0.1 g");
    }

    @Test
    void a_reading_is_no_finer_than_the_scale_and_what_is_reckoned_has_one_decimal_more() {
        assertThat(of(1).reading(g(243.4))).isEqualTo("243 g");
        assertThat(of(0.1).reading(g(243.4))).isEqualTo("243.4 g");
        assertThat(of(0.1).reading(g(243))).isEqualTo("243.0 g");
        assertThat(of(1).reckoned(g(243.46))).isEqualTo("243.5 g");
        assertThat(of(1).reckoned(g(243))).isEqualTo("243 g");
        assertThat(of(5).reckoned(g(243.46))).isEqualTo("243 g");
        assertThat(of(2).reckoned(g(243.46))).isEqualTo("243 g");
        assertThat(of(0.5).reckoned(g(243.46))).isEqualTo("243.5 g");
        assertThat(of(0).reckoned(g(243.46))).isEqualTo("243.46 g");
        assertThat(of(0.1).reckoned(g(243.1))).isEqualTo("243.1 g");
        assertThat(of(0.1).reckoned(g(243.15))).isEqualTo("243.15 g");
        assertThat(of(0.001).reckoned(g(243.12345))).isEqualTo("243.123 g");
    }

    @Test
    void what_is_to_be_read_lies_at_its_steps_inward_of_the_range() {
        assertThat(of(1).atLeast(g(243.01))).isEqualTo(g(244));
        assertThat(of(1).atMost(g(246.99))).isEqualTo(g(246));
        assertThat(of(5).atLeast(g(241))).isEqualTo(g(245));
        // A step that no double holds exactly is still met by its own multiples.
        assertThat(of(0.1).figure(of(0.1).atLeast(g(0.1 + 0.2)))).isEqualTo("0.3");
        assertThat(of(0.1).figure(of(0.1).atMost(g(0.3)))).isEqualTo("0.3");
        assertThat(of(0).atLeast(g(243.01))).isEqualTo(g(243.01));
        assertThat(of(0).atMost(g(243.01))).isEqualTo(g(243.01));
    }

    /** What it shows alike may still differ by nearly a step. */
    @Test
    void what_it_does_not_show_is_under_a_step_and_not_nothing() {
        WeighingScale tenths = new WeighingScale(Mass.ofOunces(0.1), MassUnit.OUNCE);
        assertThat(tenths.apart(Mass.ofOunces(0.2))).isEqualTo("0.2 oz");
        assertThat(tenths.apart(Mass.ofOunces(0.02))).isEqualTo("under 0.1 oz");
        assertThat(of(5).apart(g(0))).isEqualTo("under 5 g");
        assertThat(of(0).apart(g(0))).isEqualTo("under 0.1 g");
        assertThat(of(0.1).in(MassUnit.OUNCE).apart(g(0))).isEqualTo("under 0.01 oz");
        assertThat(of(1).scatter(g(0.3))).isEqualTo("0.3 g");
        assertThat(of(1).scatter(g(0.003))).isEqualTo("under 1 g");
    }

    @Test
    void ounces_are_no_finer_either() {
        assertThat(of(0.1).other(g(66.1))).isEqualTo("2.33 oz");
        assertThat(of(1).other(g(66.1))).isEqualTo("2.3 oz");
    }
}
