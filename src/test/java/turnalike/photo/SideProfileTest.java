package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What of exact bodies one edge sees, in units of the distance from the camera to the axis; all of them stand left of the axis' foot. */
class SideProfileTest {
    private static final double FOCAL = 1200;

    private static final double PIXEL = 1 / FOCAL;

    private static final double FROM = -0.34;

    private static final double TO = -0.1;

    private static final int COUNT = 481;

    private static final EndCap OPEN = new EndCap(false, false, 0, 0, 0, 1, EndEdge.SHARP, 9, 9, 0);

    /** Y where the contour of a body stands over X: no ray that runs nearer to the axis misses all of it. */
    private static double contour(DoubleUnaryOperator radius, double along) {
        double most = 0;
        for (double place = FROM; place <= TO; place += 0.25 * PIXEL) {
            double depth = place / along;
            double r = radius.applyAsDouble(place);
            most = Math.max(most, (r * r - (depth - 1) * (depth - 1)) / (depth * depth));
        }
        return Math.sqrt(most);
    }

    /** The edge of a body, a point each pixel of its length, each off by so many pixels of noise. */
    private static EdgeChain chain(DoubleUnaryOperator radius, double noise, long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        List<double[]> points = new ArrayList<>();
        double x = FROM;
        double y = contour(radius, x);
        for (double along = FROM; along < TO; along += 0.1 * PIXEL) {
            double across = contour(radius, along);
            for (double apart = Math.hypot(along - x, across - y);
                    apart >= PIXEL;
                    apart = Math.hypot(along - x, across - y)) {
                x += PIXEL / apart * (along - x);
                y += PIXEL / apart * (across - y);
                points.add(
                        new double[] {x + noise * PIXEL * dice.nextGaussian(), y + noise * PIXEL * dice.nextGaussian()
                        });
            }
        }
        return new EdgeChain(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray(),
                0,
                points.size(),
                FOCAL);
    }

    /** How much of a stretch is told hidden, from 0 to 1. */
    private static double share(DoubleUnaryOperator body, double noise, long seed, double from, double to) {
        EdgeChain chain = chain(body, noise, seed);
        SideProfile profile = SideProfile.of(chain, new double[chain.size()], OPEN, OPEN, FROM, TO, COUNT, FOCAL);
        int all = 0;
        int hidden = 0;
        for (int k = 0; k < COUNT; k++) {
            double place = FROM + (TO - FROM) * k / (COUNT - 1);
            if (place >= from && place <= to) {
                all++;
                hidden += profile.isHidden(k) ? 1 : 0;
            }
        }
        return (double) hidden / all;
    }

    /** A thin rod, and on it a thick bead whose flanks round over all the way down to the rod. */
    private static double bead(double place) {
        double off = (place + 0.22) / 0.04;
        return Math.max(0.03, 0.1 * Math.sqrt(Math.max(0, 1 - off * off)));
    }

    /** A thin rod, a thick one from the middle on. */
    private static double shoulder(double place) {
        return place < -0.22 ? 0.03 : 0.1;
    }

    // Where each is hidden was reckoned from its exact contour.

    @Test
    void a_flank_that_rounds_over_is_seen_however_noisy_its_slopes() {
        double quiet = 0;
        double noisy = 0;
        for (int seed = 0; seed < 6; seed++) {
            quiet += share(SideProfileTest::bead, 0.1, seed, -0.25, -0.187) / 6;
            noisy += share(SideProfileTest::bead, 0.25, seed, -0.25, -0.187) / 6;
        }
        assertThat(quiet).isLessThan(0.1);
        assertThat(noisy).isLessThan(0.1);
    }

    @Test
    void what_stands_behind_a_bead_is_hidden_on_both_sides_of_it() {
        for (int seed = 0; seed < 6; seed++) {
            assertThat(share(SideProfileTest::bead, 0.1, seed, -0.264, -0.2535)).isGreaterThan(0.9);
            assertThat(share(SideProfileTest::bead, 0.1, seed, -0.1835, -0.18)).isGreaterThan(0.9);
            assertThat(share(SideProfileTest::bead, 0.1, seed, -0.33, -0.269)).isLessThan(0.04);
            assertThat(share(SideProfileTest::bead, 0.1, seed, -0.175, -0.11)).isLessThan(0.04);
        }
    }

    @Test
    void what_stands_behind_a_shoulder_is_hidden() {
        for (int seed = 0; seed < 6; seed++) {
            assertThat(share(SideProfileTest::shoulder, 0.1, seed, -0.242, -0.222))
                    .isGreaterThan(0.9);
            assertThat(share(SideProfileTest::shoulder, 0.1, seed, -0.33, -0.246))
                    .isLessThan(0.04);
            assertThat(share(SideProfileTest::shoulder, 0.1, seed, -0.216, -0.11))
                    .isLessThan(0.04);
        }
    }
}
