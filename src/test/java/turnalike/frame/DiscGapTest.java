package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The distance of two discs against closed forms, and against points strewn over both in space. */
class DiscGapTest {
    @Test
    void discs_across_one_line_are_as_far_apart_as_their_places_on_it() {
        DiscGap level = new DiscGap(0, 0);
        assertThat(level.mm(10, 3, 17, 5)).isCloseTo(7, within(1e-9));
        DiscGap set = new DiscGap(0, 20);
        assertThat(set.mm(10, 3, 17, 5)).isCloseTo(Math.hypot(7, 12), within(1e-9));
        assertThat(set.mm(10, 9, 17, 15)).as("set off by less than both radii").isCloseTo(7, within(1e-9));
    }

    @Test
    void discs_across_square_axes_stand_their_edges_off_each_others_faces() {
        DiscGap square = new DiscGap(Math.PI / 2, 0);
        assertThat(square.mm(10, 3, 40, 4)).isCloseTo(Math.hypot(40 - 3, 10 - 4), within(1e-6));
        assertThat(square.mm(2, 3, 2, 4)).as("one through the other").isCloseTo(0, within(1e-5));
    }

    /** Points of a disc across an axis that lies level at an angle, so high. */
    private static List<double[]> disc(double angle, double height, double s, double radius) {
        List<double[]> out = new ArrayList<>();
        for (int ring = 0; ring <= 20; ring++) {
            for (int k = 0; k < 90; k++) {
                double aside = radius * ring / 20 * Math.cos(Math.PI * k / 45);
                double up = radius * ring / 20 * Math.sin(Math.PI * k / 45);
                out.add(new double[] {
                    s * Math.cos(angle) - aside * Math.sin(angle),
                    s * Math.sin(angle) + aside * Math.cos(angle),
                    height + up
                });
            }
        }
        return out;
    }

    private static double nearest(List<double[]> one, List<double[]> other) {
        double best = Double.POSITIVE_INFINITY;
        for (double[] p : one) {
            for (double[] q : other) {
                best = Math.min(
                        best,
                        (p[0] - q[0]) * (p[0] - q[0]) + (p[1] - q[1]) * (p[1] - q[1]) + (p[2] - q[2]) * (p[2] - q[2]));
            }
        }
        return Math.sqrt(best);
    }

    /** Near and far, crossing and clear, one above the other and level. */
    @Test
    void strewn_points_come_as_near_and_no_nearer() {
        Random random = new Random(20261129);
        int apart = 0;
        int above = 0;
        for (int round = 0; round < 24; round++) {
            double angle = Math.PI * random.nextDouble();
            double offset = random.nextInt(3) == 0 ? 0 : 40 * random.nextDouble();
            double s1 = 5 + 40 * random.nextDouble();
            double s2 = 5 + 40 * random.nextDouble();
            double r1 = 1 + 15 * random.nextDouble();
            double r2 = 1 + 15 * random.nextDouble();
            DiscGap discs = new DiscGap(angle, offset);
            double told = discs.mm(s1, r1, s2, r2);
            double seen = nearest(disc(0, 0, s1, r1), disc(angle, offset, s2, r2));
            assertThat(seen).as("round %d", round).isGreaterThan(told - 1e-6).isLessThan(told + 0.8);
            assertThat(discs.atLeastMm(s1, r1, s2, r2)).as("round %d", round).isLessThan(told + 1e-6);
            apart += told > 1 ? 1 : 0;
            above += offset > r1 + r2 ? 1 : 0;
        }
        assertThat(apart).isGreaterThan(8);
        assertThat(above).isGreaterThan(3);
    }
}
