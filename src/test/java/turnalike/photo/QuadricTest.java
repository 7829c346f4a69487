package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against closed forms of the contour: a ball's and a cone's. */
class QuadricTest {
    private static final double AT = -0.3;

    private static final double RADIUS = 0.05;

    /** A ball's contour is where the ray passes its middle by the radius: (1 + X² + Y²)(1 + m² − r²) = (1 + m·X)². */
    private static double[] ball(double apex) {
        double room = 1 + AT * AT - RADIUS * RADIUS;
        // Y² over X, and over X − apex.
        double c0 = 1 / room - 1;
        double c1 = 2 * AT / room;
        double c2 = AT * AT / room - 1;
        return new double[] {c0 + c1 * apex + c2 * apex * apex, c1 + 2 * c2 * apex, c2};
    }

    @Test
    void a_balls_contour_tells_the_ball() {
        Quadric ball = Quadric.of(ball(-0.35), -0.35);
        assertThat(ball.pole(-0.35)).isCloseTo(AT - RADIUS, within(1e-12));
        for (double p = AT - 0.04; p < AT + 0.04; p += 0.01) {
            double radius = Math.sqrt(RADIUS * RADIUS - (p - AT) * (p - AT));
            assertThat(ball.radius(p)).isCloseTo(radius, within(1e-12));
            // r·r′ of a ball is how far its middle is off.
            assertThat(ball.rise(p)).isCloseTo(AT - p, within(1e-12));
        }
    }

    @Test
    void a_ball_is_sawn_off_where_the_near_point_of_the_faces_rim_stands_farthest_out() {
        double place = AT - 0.03;
        double face = Math.sqrt(RADIUS * RADIUS - 0.03 * 0.03);
        double apex = place / (1 - face);
        assertThat(Quadric.of(ball(apex), apex).sawn(apex)).isCloseTo(place, within(1e-9));
    }

    @Test
    void the_curve_is_found_in_points_and_where_they_stray_that_is_told() {
        double apex = -0.35;
        double[] curve = ball(apex);
        double[][] edge = new double[2][200];
        for (int k = 0; k < 200; k++) {
            double x = apex + 0.0003 * (k + 1);
            edge[0][k] = k == 0 ? apex : x;
            double beside = edge[0][k] - apex;
            edge[1][k] = Math.sqrt(Math.max(0, curve[0] + beside * (curve[1] + beside * curve[2])));
        }
        double[] found = new double[3];
        double strays = Quadric.fitted(new double[][][] {edge, edge}, true, 20, 60, found);
        assertThat(strays).isLessThan(1e-9);
        assertThat(Quadric.of(found, apex).radius(AT)).isCloseTo(RADIUS, within(1e-6));
        for (int k = 0; k < 200; k += 2) {
            edge[1][k] += 1e-3;
        }
        assertThat(Quadric.fitted(new double[][][] {edge, edge}, true, 20, 60, found))
                .isBetween(2e-4, 6e-4);
    }
}
