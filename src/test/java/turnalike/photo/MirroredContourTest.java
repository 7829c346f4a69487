package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MirroredContourTest {
    private static final double RADIUS = 40;

    private static final int FROM = 100;

    private static final int TO = 700;

    private static final Sight SIGHT = new Sight(1000, 800, 600, new Sight.AxisLine(400, 300, 0), 0);

    @Test
    void what_stands_out_on_one_side_alone_is_taken_away() {
        MirroredContour.Mended laid =
                MirroredContour.of(contour(100, 180, 9), Lens.none(800, 600)).orElseThrow();
        double[][] mended = {laid.x(), laid.y()};
        for (int k = 0; k < mended[0].length; k++) {
            if (mended[0][k] > FROM + 5 && mended[0][k] < TO - 5) {
                assertThat(Math.abs(mended[1][k] - 300))
                        .as("at %s", mended[0][k])
                        .isBetween(RADIUS - 0.5, RADIUS + 0.5);
            }
        }
        // Points a pixel apart, round the way that a walk goes: to the right along the upper edge.
        assertThat(mended[0]).hasSizeBetween(2 * (TO - FROM) + 140, 2 * (TO - FROM) + 170);
        double right = 0;
        for (int k = 1; k < mended[0].length; k++) {
            if (mended[1][k] < 270 && mended[1][k - 1] < 270) {
                right += mended[0][k] - mended[0][k - 1];
            }
        }
        assertThat(right).isGreaterThan(500);
        for (int k = 0; k < mended[0].length; k++) {
            boolean there = mended[1][k] > 330 && mended[0][k] > FROM + 5 && mended[0][k] < 175;
            boolean elsewhere = mended[1][k] < 270 || mended[0][k] > 185;
            assertThat(laid.anew()[k] ? !elsewhere : !there)
                    .as("at %s, %s", mended[0][k], mended[1][k])
                    .isTrue();
        }
    }

    @Test
    void where_the_other_edge_is_the_surer_one_it_counts_though_it_stands_farther_out() {
        MirroredContour.Mended laid =
                MirroredContour.of(contour(300, 380, -9), Lens.none(800, 600)).orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < laid.x().length; k++) {
            if (laid.x()[k] > FROM + 5 && laid.x()[k] < TO - 5) {
                least = Math.min(least, Math.abs(laid.y()[k] - 300));
            }
        }
        assertThat(least).isCloseTo(RADIUS, within(0.5));
    }

    @Test
    void what_is_found_nowhere_does_not_bear_the_image_out() {
        MirroredContour.Mended laid =
                MirroredContour.of(contour(100, 180, 9), Lens.none(800, 600)).orElseThrow();
        double[] doubts = new double[laid.x().length];
        assertThat(laid.isBorneOut(new EdgeFit.Fitted(laid.x(), laid.y(), doubts, 0.8, 0.05, 0, 60)))
                .isTrue();
        for (int k = 0; k < doubts.length; k++) {
            doubts[k] = laid.anew()[k] ? 2 : 0;
        }
        assertThat(laid.isBorneOut(new EdgeFit.Fitted(laid.x(), laid.y(), doubts, 0.8, 0.05, 0, 60)))
                .isFalse();
    }

    @Test
    void edges_that_are_mirror_images_are_let_be() {
        assertThat(MirroredContour.of(contour(100, 180, 1), Lens.none(800, 600)))
                .isEmpty();
    }

    @Test
    void where_edges_stand_apart_over_most_of_the_length_nobody_knows_which_is_true() {
        assertThat(MirroredContour.of(contour(150, 500, 9), Lens.none(800, 600)))
                .isEmpty();
    }

    /** A straight bar's contour, whose lower edge stands out farther between two places. */
    private static SquaredContour contour(int from, int to, double out) {
        List<double[]> points = new ArrayList<>();
        for (int x = FROM; x < TO; x++) {
            points.add(new double[] {x, 300 - RADIUS});
        }
        for (double y = 300 - RADIUS; y < 300 + RADIUS; y++) {
            points.add(new double[] {TO, y});
        }
        for (int x = TO; x > FROM; x--) {
            points.add(new double[] {x, 300 + RADIUS + (x >= from && x <= to ? out : 0)});
        }
        for (double y = 300 + RADIUS; y > 300 - RADIUS; y--) {
            points.add(new double[] {FROM, y});
        }
        double[] xs = points.stream().mapToDouble(point -> point[0]).toArray();
        double[] ys = points.stream().mapToDouble(point -> point[1]).toArray();
        double[] doubts = points.stream()
                .mapToDouble(point -> Math.abs(point[1] - 300) == RADIUS ? 0.05 : 0.4)
                .toArray();
        return new SquaredContour(SIGHT, xs, ys, doubts);
    }
}
