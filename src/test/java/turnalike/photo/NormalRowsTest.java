package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The equations added up several unknowns at once, against one product after the other and another way of solving. */
class NormalRowsTest {
    private static final int UNKNOWNS = EdgeModel.UNKNOWNS;

    @Test
    void the_unknowns_solve_the_equations() {
        SplittableRandom dice = new SplittableRandom(7);
        double[] by = new double[31 * UNKNOWNS];
        double[] off = new double[31];
        for (int k = 0; k < off.length; k++) {
            off[k] = dice.nextGaussian();
            for (int a = 0; a < UNKNOWNS; a++) {
                by[k * UNKNOWNS + a] = dice.nextGaussian();
            }
        }
        double damping = 0.01;
        double[][] rows = new double[UNKNOWNS][UNKNOWNS + 1];
        NormalRows normal = new NormalRows();
        normal.add(by, off);
        for (int a = 0; a < UNKNOWNS; a++) {
            normal.hold(a, 0.1 * a, 0.3);
            rows[a][a] = 0.1 * a;
            rows[a][UNKNOWNS] = -0.1 * a * 0.3;
            for (int k = 0; k < off.length; k++) {
                rows[a][UNKNOWNS] += by[k * UNKNOWNS + a] * off[k];
                for (int b = 0; b < UNKNOWNS; b++) {
                    rows[a][b] += by[k * UNKNOWNS + a] * by[k * UNKNOWNS + b];
                }
            }
            rows[a][a] *= 1 + damping;
        }
        double[] expected = LeastSquares.solve(rows);
        double[] solved = normal.solved(damping);
        for (int a = 0; a < UNKNOWNS; a++) {
            assertThat(solved[a]).as("unknown %s", a).isCloseTo(expected[a], within(1e-10));
        }
    }
}
