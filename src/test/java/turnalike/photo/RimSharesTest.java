package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RimSharesTest {
    private static final double BEND = 0.4;

    private static final double[] SHARES = {0.3, 0.2, 0.5};

    private static double[] sines() {
        double[] sines = new double[18];
        for (int k = 0; k < sines.length; k++) {
            sines[k] = 0.1 + 0.04 * k;
        }
        return sines;
    }

    private static RimShares seen() {
        double[] sines = sines();
        double[] light = new double[sines.length];
        for (int k = 0; k < light.length; k++) {
            light[k] = RimShares.value(SHARES, sines[k], BEND);
        }
        return new RimShares(sines, light);
    }

    @Test
    void the_light_of_three_shapes_is_taken_apart_again() {
        RimShares seen = seen();
        double[] fitted = seen.fitted(BEND);
        for (int a = 0; a < 3; a++) {
            // What comes before a lamp reaches is held towards even light.
            assertThat(fitted[a]).as("shape %s", a).isCloseTo(SHARES[a], within(0.02));
        }
        assertThat(seen.left(fitted, 0, 1)).isLessThan(1e-5);
    }

    @Test
    void what_is_left_is_told_whole_only_below_what_is_of_interest() {
        RimShares seen = seen();
        double[] wrong = seen.fitted(RimShares.NO_BEND);
        double whole = seen.left(wrong, 0.01, Double.POSITIVE_INFINITY);
        assertThat(whole).isGreaterThan(0.0101);
        assertThat(seen.left(wrong, 0.01, 2 * whole)).isEqualTo(whole);
        double most = (0.01 + whole) / 2;
        assertThat(seen.left(wrong, 0.01, most)).isBetween(most, whole);
    }
}
