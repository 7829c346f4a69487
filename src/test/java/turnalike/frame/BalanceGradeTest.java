package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.units.Mass;

class BalanceGradeTest {
    /**
     * First row: printed as 12 g·mm in a tooling catalogue's page on balancing (WIDIA), 12.03 by the formula: VERIFIED. Second: "20 µm at 3000
     * rev/min", FROM MEMORY. The rest computed from the same formula. All per shared/references.md a.
     */
    @ParameterizedTest
    @CsvSource({
        "6.3, 2, 10000, 12.03",
        "6.3, 1, 3000, 20.05",
        "2.5, 50, 3600, 331.56",
        "6.3, 15, 120, 7519.8",
        "16, 20, 60, 50928",
        "40, 20, 60, 127320"
    })
    void permissible_unbalance_is_the_published_one(double grade, double kg, double revPerMin, double gMm) {
        Mass mass = Mass.ofGrams(1000 * kg);
        // The published constant 9549 is rounded from 9549.2966, 3 parts in 100,000.
        assertThat(new BalanceGrade(grade).permissibleGMm(mass, revPerMin)).isCloseTo(gMm, within(4e-4 * gMm));
        assertThat(BalanceGrade.met(gMm, mass, revPerMin).mmPerS()).isCloseTo(grade, within(4e-4 * grade));
    }

    @Test
    void a_grade_of_nothing_is_refused() {
        assertThatThrownBy(() -> new BalanceGrade(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_grade_that_is_no_number_above_zero_is_refused() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new BalanceGrade(bad)).hasMessageContaining("balance grade");
        }
    }
}
