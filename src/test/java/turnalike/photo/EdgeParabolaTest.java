package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EdgeParabolaTest {
    /** Of a ball Y² is of second degree in X, exactly: here one of radius 0.2 whose middle stands 0.1 along. */
    private static final double RADIUS = 0.2;

    private static final double MIDDLE = 0.1;

    private static EdgeParabola ball(int count, double bumpAtMiddle) {
        double[] along = new double[count];
        double[] across = new double[count];
        // The cone of rays that graze it: ((1 + m·X)² − (1 + m² − r²)(1 + X²)) / (1 + m² − r²) is Y².
        double kept = 1 + MIDDLE * MIDDLE - RADIUS * RADIUS;
        for (int k = 0; k < count; k++) {
            along[k] = MIDDLE - 0.1 + 0.2 * k / (count - 1);
            double towards = 1 + MIDDLE * along[k];
            across[k] = Math.sqrt((towards * towards - kept * (1 + along[k] * along[k])) / kept);
        }
        across[count / 2] += bumpAtMiddle;
        return new EdgeParabola(along, across);
    }

    @Test
    void a_ray_that_grazes_a_ball_touches_it_at_its_radius() {
        EdgeParabola parabola = ball(41, 0);
        for (int i : new int[] {0, 7, 20, 40}) {
            parabola.fit(i, Math.max(0, i - 9), Math.min(40, i + 9));
            TangentRay ray = parabola.ray();
            assertThat(parabola.left()).as("at %s", i).isLessThan(1e-12);
            assertThat(Math.hypot(ray.radius(), ray.place() - MIDDLE))
                    .as("at %s", i)
                    .isCloseTo(RADIUS, within(1e-9));
        }
    }

    @Test
    void what_a_point_strays_by_is_told_across_the_edge() {
        EdgeParabola parabola = ball(41, 0.001);
        parabola.fit(20, 11, 29);
        assertThat(parabola.left()).isBetween(0.001 / 6, 0.001 / 3);
    }
}
