package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Edges of exact bodies, in units of the distance from the camera to the axis, drawn as rays a pixel apart. */
class EdgeChainTest {
    private static final double FOCAL = 1200;

    private static final double PIXEL = 1 / FOCAL;

    private static EdgeChain chain(List<double[]> points) {
        return new EdgeChain(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray(),
                0,
                points.size(),
                FOCAL);
    }

    private static double noise(SplittableRandom dice) {
        return 0.1 * PIXEL * dice.nextGaussian();
    }

    /** Its shoulder faces the camera at a glance: over it one sees the rim's far half, a pixel or so beyond where it stands. */
    private static List<double[]> stepped(double place, double thick, double thin, SplittableRandom dice) {
        List<double[]> points = new ArrayList<>();
        // A cylinder is seen as wide as its tangent rays: r over the root of 1 − r².
        double wide = thick / Math.sqrt(1 - thick * thick);
        double narrow = thin / Math.sqrt(1 - thin * thin);
        for (double along = place - 60 * PIXEL; along < place; along += PIXEL) {
            points.add(new double[] {along, wide + noise(dice)});
        }
        double last = place;
        for (double across = wide - PIXEL; across > narrow; across -= PIXEL) {
            // The rim's far half: (1 + G)z² − 2z + 1 − r² = 0, the larger root.
            double squares = 1 + across * across;
            double depth = (1 + Math.sqrt(1 - squares * (1 - thick * thick))) / squares;
            last = place / depth;
            points.add(new double[] {last + noise(dice), across});
        }
        for (double along = last + PIXEL; along < last + 60 * PIXEL; along += PIXEL) {
            points.add(new double[] {along, narrow + noise(dice)});
        }
        return points;
    }

    @Test
    void along_a_shoulder_nothing_is_seen_of_where_the_piece_steps() {
        SplittableRandom dice = new SplittableRandom(7);
        for (int round = 0; round < 20; round++) {
            double place = -(20 + 40 * dice.nextDouble()) * PIXEL;
            List<EdgeChain.Gap> steps =
                    chain(stepped(place, 0.032, 0.016, dice)).steps();
            assertThat(steps).hasSize(1);
            // The rim's arc is round at its top: it runs on for some two pixels before it is steep.
            assertThat(steps.get(0).before()).isBetween(place - 2 * PIXEL, place + 2.5 * PIXEL);
            assertThat(steps.get(0).after()).isBetween(steps.get(0).before(), place + 5 * PIXEL);
        }
    }

    @Test
    void a_slope_that_is_seen_is_no_shoulder() {
        SplittableRandom dice = new SplittableRandom(8);
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            double rise = Math.max(0, Math.min(20, 1.2 * (i - 50)));
            points.add(new double[] {(i - 60) * PIXEL, (20 + rise) * PIXEL + noise(dice)});
        }
        assertThat(chain(points).steps()).isEmpty();
    }

    @Test
    void the_ends_of_an_edge_are_no_shoulders() {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            points.add(new double[] {0.1, i * PIXEL});
        }
        for (int i = 0; i < 60; i++) {
            points.add(new double[] {0.1 + i * PIXEL, 20 * PIXEL});
        }
        for (int i = 20; i > 0; i--) {
            points.add(new double[] {0.1 + 60 * PIXEL, i * PIXEL});
        }
        assertThat(chain(points).steps()).isEmpty();
    }
}
