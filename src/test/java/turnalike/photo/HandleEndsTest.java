package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A handle, bowed along its length and well rounded over at both ends: what is right behind a rim is seen from a flank that runs neither level nor straight. */
class HandleEndsTest {
    private static final int WIDTH = 1200;

    private static final int HEIGHT = 900;

    private static final double FOCAL = 1280;

    private static final Sight.AxisLine AXIS = new Sight.AxisLine(WIDTH / 2.0, HEIGHT / 2.0, 0.1);

    /** Half the length, and the radius right behind the rims, over the distance from the camera. */
    private static final double HALF = 0.34;

    private static final double RIM = 0.04;

    /** Circles of a handle so much thicker in its middle; its rims are rounded over by such a share. */
    private static List<double[]> handle(double round, double thicker) {
        List<double[]> circles = new ArrayList<>();
        double ball = round * RIM;
        for (int k = 0; k <= 40; k++) {
            double turn = Math.PI / 2 * k / 40;
            double in = ball * (1 - Math.cos(turn));
            double radius = RIM - ball + ball * Math.sin(turn);
            circles.add(new double[] {-HALF + in, radius});
            circles.add(new double[] {HALF - in, radius});
        }
        for (int k = -100; k <= 100; k++) {
            double share = k / 100.0;
            circles.add(new double[] {(HALF - ball) * share, RIM + thicker * RIM * (1 - share * share)});
        }
        return circles;
    }

    private static Sight sight(double leanDegrees) {
        return new Sight(FOCAL, WIDTH, HEIGHT, AXIS, Math.toRadians(leanDegrees));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.2, 0", "0.5, 0", "0, 0.5", "0.2, 0.5", "0.5, 0.5"})
    void a_flank_is_followed_out_to_where_the_rounding_begins(double round, double thicker) {
        double[][] points = HullContour.of(handle(round, thicker), sight(0), 0.03);
        SquaredContour contour = new SquaredContour(sight(0), points[0], points[1], new double[points[0].length]);
        for (boolean start : new boolean[] {true, false}) {
            EndCap cap = EndCap.of(contour, start, round > 0 ? EndEdge.rounded(round) : EndEdge.SHARP);
            assertThat(cap.behind()).isCloseTo(RIM, within(0.015 * RIM));
            assertThat(cap.disagreement()).isCloseTo(0, within(0.03));
        }
    }

    /** Whichever view one begins at, the rims as they are measured in it ask for much the same one: only what each view costs tells them apart. */
    @ParameterizedTest
    @CsvSource({"-3, 0.3", "-1, 0.3", "0, 0.3", "2, 0.3", "3, 0.3", "-2.5, 0", "-1, 0", "2, 0", "3, 0"})
    void rounded_ends_tell_how_far_a_piece_leans(double lean, double thicker) throws Unsure {
        ViewFit.View view = HullContour.fit(handle(0.45, thicker), sight(lean), WIDTH, HEIGHT, 0.05)
                .fit(AXIS);
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.6));
        assertThat(Math.abs(view.tilt() - Math.toRadians(lean))).isLessThan(2 * view.tiltUncertainty());
        // Through a longer lens the same picture is of a shorter piece.
        double length = (view.end().place() - view.start().place()) * Math.exp(view.logFocal());
        assertThat(length).isCloseTo(2 * HALF, within(0.003 * 2 * HALF));
    }

    @Test
    void a_bow_is_found_by_its_points() {
        FittedBow bow = new FittedBow(3, 2);
        for (double x = 2; x <= 6; x += 0.25) {
            bow.add(x, 1 + 0.5 * x - 0.2 * x * x);
        }
        FittedBow.Bow found = bow.bow();
        assertThat(found.at(7)).isCloseTo(1 + 0.5 * 7 - 0.2 * 49, within(1e-9));
        assertThat(found.slopeAt(7)).isCloseTo(0.5 - 0.4 * 7, within(1e-9));
        assertThat(found.strays()).isCloseTo(0, within(1e-6));
        bow.add(4, 100);
        assertThat(bow.bow().strays()).isGreaterThan(10);
    }
}
