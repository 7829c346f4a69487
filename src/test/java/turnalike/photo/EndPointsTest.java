package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EndPointsTest {
    private static final double RIM = 0.1;

    private static final double ASKED = 0.94 * RIM;

    /** An edge that runs out along an end's face and then along the flank, a hundred points to each. */
    private static double[][] edge(double way) {
        double[][] edge = new double[2][200];
        for (int k = 0; k < 200; k++) {
            edge[0][k] = k < 100 ? -0.3 : -0.3 + 0.002 * (k - 100);
            edge[1][k] = way * Math.min(RIM, RIM * k / 100);
        }
        return edge;
    }

    @Test
    void the_points_of_the_face_are_taken_with_what_the_rims_form_says_there() {
        SeenRim shape = SeenRim.of(RIM / Math.hypot(1, RIM), EndEdge.SHARP, 0.3);
        EndPoints points = EndPoints.of(new double[][][] {edge(1), edge(-1)}, true, -0.3, ASKED, 0.2, shape, 4000);
        assertThat(points.count()).isEqualTo(2 * 95);
        for (int k = 0; k < points.count(); k++) {
            double y = points.across(k);
            assertThat(y).isBetween(0.0, ASKED);
            assertThat(points.along(k)).isEqualTo(-0.3);
            assertThat(points.term(k)).isEqualTo(shape.at(y) - shape.at(0));
            assertThat(points.slope(k)).isCloseTo(shape.at(y + 0.25 / 4000) - shape.at(y - 0.25 / 4000), within(1e-12));
        }
    }

    @Test
    void an_edge_is_left_where_it_runs_too_far_inward() {
        double[][] slanting = edge(1);
        for (int k = 0; k < 100; k++) {
            slanting[0][k] = -0.3 + 0.002 * k;
        }
        SeenRim shape = SeenRim.of(RIM / Math.hypot(1, RIM), EndEdge.SHARP, 0.3);
        EndPoints points = EndPoints.of(new double[][][] {slanting}, true, -0.3, RIM, 0.05, shape, 4000);
        assertThat(points.count()).isBetween(25, 26);
    }
}
