package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class LinearProgramTest {
    /** The best corner of all: each is where two of the limits, the axes among them, are met. */
    private static double bestCorner(double[][] rows, double[] limits, double[] worth) {
        List<double[]> lines = new ArrayList<>();
        for (int i = 0; i < rows.length; i++) {
            lines.add(new double[] {rows[i][0], rows[i][1], limits[i]});
        }
        lines.add(new double[] {-1, 0, 0});
        lines.add(new double[] {0, -1, 0});
        double best = 0;
        for (double[] one : lines) {
            for (double[] other : lines) {
                double det = one[0] * other[1] - one[1] * other[0];
                double x = (one[2] * other[1] - one[1] * other[2]) / det;
                double y = (one[0] * other[2] - one[2] * other[0]) / det;
                boolean allowed = Math.abs(det) > 1e-9
                        && lines.stream().allMatch(line -> line[0] * x + line[1] * y <= line[2] + 1e-7);
                best = allowed ? Math.max(best, worth[0] * x + worth[1] * y) : best;
            }
        }
        return best;
    }

    @Test
    void the_best_is_the_best_corner() {
        Seeds.each(500, random -> {
            double[][] rows = new double[3 + random.nextInt(5)][];
            double[] limits = new double[rows.length];
            for (int i = 0; i < rows.length; i++) {
                rows[i] = new double[] {random.nextInt(7) - 3, random.nextInt(7) - 3};
                limits[i] = random.nextInt(4); // many are zero, so that corners fall together
            }
            rows[0] = new double[] {1, 0};
            rows[1] = new double[] {0, 1};
            limits[0] = 3;
            limits[1] = 4;
            double[] worth = {random.nextInt(7) - 3, random.nextInt(7) - 3};
            double expected = bestCorner(rows, limits, worth);
            double[][] kept = Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
            double[] keptLimits = limits.clone();
            double[] keptWorth = worth.clone();
            double[] x = LinearProgram.solve(rows, limits, worth);
            assertThat(keptWorth[0] * x[0] + keptWorth[1] * x[1]).isEqualTo(expected, within(1e-9));
            assertThat(x[0]).isNotNegative();
            assertThat(x[1]).isNotNegative();
            for (int i = 0; i < kept.length; i++) {
                assertThat(kept[i][0] * x[0] + kept[i][1] * x[1]).isLessThanOrEqualTo(keptLimits[i] + 1e-9);
            }
        });
    }

    /** Goes round in circles by the steepest column alone: E. Beale's example of 1955, from memory, best value 0.05. */
    @Test
    void an_example_that_could_go_round_in_circles_ends() {
        double[][] rows = {{0.25, -60, -0.04, 9}, {0.5, -90, -0.02, 3}, {0, 0, 1, 0}};
        double[] x = LinearProgram.solve(rows, new double[] {0, 0, 1}, new double[] {0.75, -150, 0.02, -6});
        assertThat(0.75 * x[0] - 150 * x[1] + 0.02 * x[2] - 6 * x[3]).isEqualTo(0.05, within(1e-9));
    }

    @Test
    void what_has_no_greatest_value_is_refused() {
        assertThatThrownBy(() -> LinearProgram.solve(new double[][] {{-1, 1}}, new double[] {2}, new double[] {1, 0}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("variable 0");
        assertThat(LinearProgram.solve(new double[][] {{1}}, new double[] {2}, new double[] {-1}))
                .containsExactly(0);
    }
}
