package turnalike.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.interpolation.HermiteInterpolator;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.MonotoneCubic.Point;
import turnalike.units.Length;

class MonotoneCubicTest {
    @Test
    void passes_through_its_points_with_one_slope_from_both_sides() {
        Seeds.each(100, random -> {
            List<Point> points = points(random);
            List<Polynomial> pieces = MonotoneCubic.through(points);
            for (int i = 0; i < pieces.size(); i++) {
                Polynomial piece = pieces.get(i);
                assertThat(piece.startRadiusMm())
                        .isCloseTo(points.get(i).radius().mm(), within(1e-12));
                assertThat(piece.endRadiusMm())
                        .isCloseTo(points.get(i + 1).radius().mm(), within(1e-9));
                if (i > 0) {
                    Polynomial before = pieces.get(i - 1);
                    assertThat(piece.slope(0))
                            .isCloseTo(before.slope(before.length().mm()), within(1e-9));
                }
            }
        });
    }

    @Test
    void never_overshoots_its_points() {
        Seeds.each(100, random -> {
            List<Point> points = points(random);
            List<Polynomial> pieces = MonotoneCubic.through(points);
            for (int i = 0; i < pieces.size(); i++) {
                double a = points.get(i).radius().mm();
                double b = points.get(i + 1).radius().mm();
                for (int k = 0; k <= 50; k++) {
                    double r = pieces.get(i).radiusMm(pieces.get(i).length().mm() * k / 50);
                    assertThat(r).isBetween(Math.min(a, b) - 1e-9, Math.max(a, b) + 1e-9);
                }
            }
        });
    }

    /**
     * Inner slopes by the printed rule for PCHIP: chords 1 then 3 with steps 2 then 1, w1 = 2·1+2, w2 = 1+2·2, so
     * (4+5)/(4/1+5/3) = 27/17; first end (2·2+1)·1−2·3 over 3 = −1/3, cut to 0 as it opposes its chord; last end
     * ((2·1+2)·3−1·1)/3 = 11/3.
     */
    @Test
    void takes_the_slopes_of_pchip() {
        List<Polynomial> pieces = MonotoneCubic.through(List.of(point(0, 1), point(2, 3), point(3, 6)));
        assertThat(pieces.get(0).slope(0)).isZero();
        assertThat(pieces.get(0).slope(2)).isCloseTo(27.0 / 17, within(1e-12));
        assertThat(pieces.get(1).slope(0)).isCloseTo(27.0 / 17, within(1e-12));
        assertThat(pieces.get(1).slope(1)).isCloseTo(11.0 / 3, within(1e-12));
    }

    /** The formula for the ends takes the slope of the parabola through the three nearest points: of 1 + x + x² it is 1 + 2x. */
    @Test
    void at_its_ends_it_has_the_slope_of_the_parabola_through_three_points() {
        List<Polynomial> pieces = MonotoneCubic.through(List.of(point(0, 1), point(2, 7), point(5, 31)));
        assertThat(pieces.get(0).slope(0)).isCloseTo(1, within(1e-12));
        assertThat(pieces.get(1).slope(3)).isCloseTo(11, within(1e-12));
    }

    @Test
    void is_level_where_the_points_turn_and_cuts_an_end_that_would_overshoot() {
        List<Polynomial> pieces = MonotoneCubic.through(List.of(point(0, 5), point(1, 6), point(2, 1)));
        assertThat(pieces.get(0).slope(1)).isZero();
        // three-point end slope is (3·1 − 1·(−5))/2 = 4, more than three times its chord of 1
        assertThat(pieces.get(0).slope(0)).isCloseTo(3, within(1e-12));
    }

    /** Between two points the cubic is Hermite's: the same values as Hipparchus gives for the same ends and slopes. */
    @Test
    void each_piece_is_hermites_cubic() {
        Seeds.each(50, random -> {
            for (Polynomial piece : MonotoneCubic.through(points(random))) {
                double length = piece.length().mm();
                HermiteInterpolator hermite = new HermiteInterpolator();
                hermite.addSamplePoint(0, new double[] {piece.radiusMm(0)}, new double[] {piece.slope(0)});
                hermite.addSamplePoint(
                        length, new double[] {piece.radiusMm(length)}, new double[] {piece.slope(length)});
                for (int k = 0; k <= 10; k++) {
                    double x = length * k / 10;
                    assertThat(piece.radiusMm(x)).isCloseTo(hermite.value(x)[0], within(1e-9));
                }
            }
        });
    }

    @Test
    void two_points_are_a_straight_line() {
        Polynomial piece =
                MonotoneCubic.through(List.of(point(0, 4), point(10, 9))).get(0);
        assertThat(piece.radiusMm(3)).isCloseTo(5.5, within(1e-12));
    }

    @Test
    void one_point_is_no_curve() {
        assertThatThrownBy(() -> MonotoneCubic.through(List.of(point(0, 4))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Point point(double x, double r) {
        return new Point(Length.ofMm(x), Length.ofMm(r));
    }

    private static List<Point> points(Random random) {
        List<Point> points = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < 2 + random.nextInt(8); i++) {
            points.add(point(at, random.nextInt(4) == 0 ? 5 : 1 + 20 * random.nextDouble()));
            at += 0.1 + 20 * random.nextDouble();
        }
        return points;
    }
}
