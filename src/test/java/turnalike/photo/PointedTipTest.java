package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ends that taper to a point, as a lens of three quarters of a pixel leaves them: what is thinner is not seen. */
class PointedTipTest {
    private static final double FOCAL = 1800;

    /** Both sides from the end inward, X falling: half as wide as that, pixels by pixels from the last place that is seen. */
    private static double[][][] sides(double seen, DoubleUnaryOperator half) {
        double[][][] sides = new double[2][2][];
        for (int side = 0; side < 2; side++) {
            List<double[]> points = new ArrayList<>();
            for (double inward = 0; inward < 60; inward += 0.7) {
                points.add(
                        new double[] {seen - inward / FOCAL, (side == 0 ? 1 : -1) * half.applyAsDouble(inward) / FOCAL
                        });
            }
            sides[side] = new double[2][points.size()];
            for (int k = 0; k < points.size(); k++) {
                double[] point = points.get(points.size() - 1 - k);
                sides[side][0][k] = point[0];
                sides[side][1][k] = point[1];
            }
        }
        return sides;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.6, 1})
    void the_point_is_where_its_sides_meet(double rise) {
        double lost = 1.3 / rise;
        Optional<RoundedEnd> tip =
                PointedTip.of(sides(0.25, in -> rise * (in + lost) - (in < 1 ? 0.8 : 0)), false, FOCAL);
        assertThat(tip).isPresent();
        assertThat(tip.orElseThrow().place()).isCloseTo(0.25 + lost / FOCAL, within(0.3 / FOCAL));
        // What was not seen is said to be open.
        assertThat(tip.orElseThrow().back()).isCloseTo(0.25, within(1e-9));
        double inside = 4 / FOCAL;
        double place = tip.orElseThrow().place();
        assertThat(tip.orElseThrow().radius(place - inside)).isCloseTo(rise * inside, within(0.1 * rise * inside));
    }

    @Test
    void a_ball_has_none() {
        assertThat(PointedTip.of(sides(0.25, in -> Math.sqrt(Math.max(0, 2 * 14 * in - in * in))), false, FOCAL))
                .isEmpty();
    }

    @Test
    void a_cone_sawn_off_where_that_is_seen_has_none() {
        assertThat(PointedTip.of(sides(0.25, in -> in == 0 ? 0 : 4 + 0.5 * in), false, FOCAL))
                .isEmpty();
    }

    @Test
    void a_thin_spigot_has_none() {
        assertThat(PointedTip.of(sides(0.25, in -> Math.min(5, 3 * in)), false, FOCAL))
                .isEmpty();
    }
}
