package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

/** Against Hipparchus's decomposition, which goes by tridiagonal form and QL steps and shares nothing with rotations. */
class JacobiEigenTest {
    /** A share of the largest value: what a decomposition that loses the small ones still promises. */
    private static final double OF_LARGEST = 1e-13;

    @Test
    void the_values_are_hipparchuss_for_any_symmetric_matrix() {
        Seeds.each(300, random -> {
            double[][] matrix = symmetric(random, 1 + random.nextInt(4));
            JacobiEigen ours = JacobiEigen.of(matrix);
            double[] others = new EigenDecompositionSymmetric(new Array2DRowRealMatrix(matrix)).getEigenvalues();
            double largest = Math.max(Math.abs(others[0]), Math.abs(others[others.length - 1]));
            for (int k = 0; k < matrix.length; k++) {
                assertThat(ours.value(k)).isCloseTo(others[k], within(OF_LARGEST * largest));
            }
        });
    }

    @Test
    void each_vector_is_turned_into_its_value_times_itself_and_has_length_one() {
        Seeds.each(300, random -> {
            double[][] matrix = symmetric(random, 2 + random.nextInt(3));
            JacobiEigen ours = JacobiEigen.of(matrix);
            RealMatrix given = new Array2DRowRealMatrix(matrix);
            for (int k = 0; k < matrix.length; k++) {
                double[] vector = ours.vector(k);
                double[] image = given.operate(vector);
                double squares = 0;
                for (int i = 0; i < vector.length; i++) {
                    squares += vector[i] * vector[i];
                    assertThat(image[i])
                            .isCloseTo(ours.value(k) * vector[i], within(OF_LARGEST * given.getFrobeniusNorm()));
                }
                assertThat(squares).isCloseTo(1, within(1e-14));
            }
        });
    }

    /** As a beam's: the k-th row and column are smaller by a power of ten each, so that the values differ by many. */
    @Test
    void the_small_values_of_a_graded_matrix_keep_their_digits() {
        Seeds.each(300, random -> {
            double[] scale = {1, 1e-3, 1e-6};
            double[][] core = symmetric(random, 3);
            double[][] matrix = new double[3][3];
            for (int i = 0; i < 3; i++) {
                for (int k = 0; k < 3; k++) {
                    matrix[i][k] = scale[i] * scale[k] * ((i == k ? 4 : 0) + core[i][k]);
                }
            }
            JacobiEigen ours = JacobiEigen.of(matrix);
            // Their product is the determinant, which for three rows is told without any loss here: the core is far
            // from singular.
            double product = ours.value(0) * ours.value(1) * ours.value(2);
            assertThat(product / determinant(matrix)).isCloseTo(1, within(1e-13));
            assertThat(ours.value(2)).isBetween(1e-12, 1e-11);
        });
    }

    private static double determinant(double[][] m) {
        return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    }

    private static double[][] symmetric(Random random, int n) {
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k <= i; k++) {
                out[i][k] = 2 * random.nextDouble() - 1;
                out[k][i] = out[i][k];
            }
        }
        return out;
    }
}
