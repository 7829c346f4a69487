package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Drawn contours, closed, about a pixel from point to point, the piece below where they run to the right. */
class HollowCornersTest {
    /** A shoulder: level at 40 up to 100, straight down to 30 there, or up, and on; its corners rounded off so far by averaging. */
    private static double[][] shoulder(double foot, double rounded, double noise, long seed) {
        List<double[]> points = new ArrayList<>();
        line(points, 20, 100, 100, 100);
        line(points, 100, 100, 100, 100 - foot);
        line(points, 100, 100 - foot, 180, 100 - foot);
        line(points, 180, 100 - foot, 180, 160);
        line(points, 180, 160, 20, 160);
        line(points, 20, 160, 20, 100);
        SplittableRandom dice = new SplittableRandom(seed);
        double[][] contour = new double[3][points.size()];
        for (int i = 0; i < points.size(); i++) {
            double weights = 0;
            for (int k = -12; k <= 12; k++) {
                double[] near = points.get(Math.floorMod(i + k, points.size()));
                double weight = Math.exp(-k * k * 0.25 / (2 * rounded * rounded));
                contour[0][i] += weight * near[0];
                contour[1][i] += weight * near[1];
                weights += weight;
            }
            contour[0][i] = contour[0][i] / weights + noise * dice.nextGaussian();
            contour[1][i] = contour[1][i] / weights + noise * dice.nextGaussian();
            contour[2][i] = 0.05;
        }
        return contour;
    }

    private static void line(List<double[]> points, double x, double y, double toX, double toY) {
        double length = Math.hypot(toX - x, toY - y);
        for (double at = 0; at < length; at += 0.5) {
            points.add(new double[] {x + at / length * (toX - x), y + at / length * (toY - y)});
        }
    }

    private static double nearest(double[][] contour, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < contour[0].length; i++) {
            least = Math.min(least, Math.hypot(contour[0][i] - x, contour[1][i] - y));
        }
        return least;
    }

    @Test
    void the_foot_of_a_shoulder_is_where_its_sides_meet() {
        for (int seed = 0; seed < 20; seed++) {
            double[][] contour = shoulder(12, 1.2, 0.05, seed);
            assertThat(nearest(contour, 100, 100)).isGreaterThan(0.5);
            double rim = nearest(contour, 100, 88);
            HollowCorners.sharpen(contour[0], contour[1], contour[2], 0.6);
            assertThat(nearest(contour, 100, 100)).isLessThan(0.4);
            // The rim above it may be round: nobody sees that it is not.
            assertThat(nearest(contour, 100, 88)).isEqualTo(rim);
            for (int i = 0; i < contour[0].length; i++) {
                if (contour[1][i] > 98 && contour[1][i] < 102 && contour[0][i] > 90 && contour[0][i] < 99) {
                    assertThat(contour[1][i]).isBetween(99.7, 100.3);
                }
            }
        }
    }

    @Test
    void what_is_moved_is_less_sure_by_half_of_that() {
        double[][] before = shoulder(12, 1.2, 0.05, 3);
        double[][] contour = shoulder(12, 1.2, 0.05, 3);
        HollowCorners.sharpen(contour[0], contour[1], contour[2], 0.6);
        int moved = 0;
        for (int i = 0; i < contour[0].length; i++) {
            double by = Math.hypot(contour[0][i] - before[0][i], contour[1][i] - before[1][i]);
            assertThat(contour[2][i]).isCloseTo(Math.hypot(0.05, by / 2), within(1e-9));
            moved += by > 0 ? 1 : 0;
        }
        assertThat(moved).isBetween(4, 14);
    }

    @Test
    void a_round_and_its_noise_stay_as_they_are() {
        SplittableRandom dice = new SplittableRandom(5);
        int count = 600;
        double[][] contour = new double[3][count];
        for (int i = 0; i < count; i++) {
            double turn = 2 * Math.PI * i / count;
            double ripple = 100 + 4 * Math.sin(6 * turn);
            contour[0][i] = 200 + ripple * Math.cos(turn) + 0.1 * dice.nextGaussian();
            contour[1][i] = 200 + ripple * Math.sin(turn) + 0.1 * dice.nextGaussian();
        }
        double[][] before = {contour[0].clone(), contour[1].clone()};
        HollowCorners.sharpen(contour[0], contour[1], contour[2], 0.6);
        assertThat(contour[0]).isEqualTo(before[0]);
        assertThat(contour[1]).isEqualTo(before[1]);
    }

    @Test
    void a_contour_too_short_for_corners_is_left_alone() {
        double[][] few = {{1, 2, 2, 1}, {1, 1, 2, 2}, {0, 0, 0, 0}};
        HollowCorners.sharpen(few[0], few[1], few[2], 1);
        assertThat(few[0]).containsExactly(1, 2, 2, 1);
    }
}
