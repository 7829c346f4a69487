package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentLawTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 8, 9, 30, 31, 400, 10_004})
    void agrees_with_another_implementation(int freedom) {
        TDistribution other = new TDistribution(freedom);
        for (double t : new double[] {0.01, 0.5, 1, 2, 5, 20}) {
            double inside = 2 * other.cumulativeProbability(t) - 1;
            assertThat(StudentLaw.within(t, freedom)).isEqualTo(inside, within(1e-9));
        }
        assertThat(StudentLaw.quantileWithin(0.9, freedom))
                .isEqualTo(other.inverseCumulativeProbability(0.95), within(1e-6));
    }
}
