package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import turnalike.units.Angle;

/** Ends from the contours of bodies that are circles seen one by one, by no formula of the program's; in units of the camera's distance. */
class RoundedEndTest {
    private static final double FOCAL = 1800;

    private static final double START = -0.34;

    /** One body, held squarely: from its start a form of so long, then a cylinder as wide as that ends. */
    private static ViewFit.View view(double length, DoubleUnaryOperator radius) throws Unsure {
        List<double[]> circles = new ArrayList<>();
        for (int k = 0; k <= 240; k++) {
            // The closer, the nearer to the pole.
            double share = k * k / 57600.0;
            circles.add(new double[] {START + length * share, radius.applyAsDouble(length * share)});
        }
        circles.add(new double[] {0.3, radius.applyAsDouble(length)});
        double angle = Math.toDegrees(2 * Math.atan(600 / FOCAL));
        FocalGuess guess = FocalGuess.of(Optional.of(Angle.ofDegrees(angle)), CameraData.NONE, 1200, 900);
        return ViewFitTest.fit(circles, FOCAL, 0, 0.05, guess, new ViewFit.TiltGuess(0, Math.toRadians(0.1)));
    }

    private static RoundedEnd end(double length, DoubleUnaryOperator radius) throws Unsure {
        SquaredContour contour = view(length, radius).contour();
        return RoundedEnd.of(contour, true, 0);
    }

    @Test
    void the_pole_of_a_ball_is_found_though_it_is_not_on_the_contour() throws Unsure {
        double round = 0.08;
        DoubleUnaryOperator ball = p -> Math.sqrt(Math.max(0, round * round - (p - round) * (p - round)));
        SquaredContour contour = view(round, ball).contour();
        double[][] edge = contour.points(true);
        RoundedEnd end = RoundedEnd.of(contour, true, 0);
        double pixel = 1 / FOCAL;
        // The outermost ray passes the axis well outside of the pole, and touches well inside.
        assertThat(edge[0][0]).isLessThan(START - 5 * pixel);
        assertThat(end.seen()).isGreaterThan(START + 5 * pixel);
        // The lean is known to a tenth of a degree, which is a pixel along here.
        assertThat(end.place()).isCloseTo(START, within(3 * pixel));
        assertThat(end.radius(end.place() + 4 * pixel)).isCloseTo(ball.applyAsDouble(4 * pixel), within(4 * pixel));
    }

    @Test
    void a_dome_that_is_no_ball_ends_where_it_does() throws Unsure {
        DoubleUnaryOperator dome = p -> 0.05 * Math.sqrt(1 - Math.pow(1 - Math.min(1, p / 0.03), 2));
        assertThat(end(0.03, dome).place()).isCloseTo(START, within(2.5 / FOCAL));
    }

    @Test
    void a_point_ends_where_it_is_seen() throws Unsure {
        assertThat(end(0.2, p -> 0.2 * p).place()).isCloseTo(START, within(1.5 / FOCAL));
    }

    @Test
    void a_sawn_end_is_the_same_form_without_depth() throws Unsure {
        assertThat(end(0.2, p -> 0.05).place()).isCloseTo(START, within(2 / FOCAL));
    }

    /** A foot's ball, its face from a tenth to half as wide: what is found and how far back it may stand hold the true end between them. */
    @Test
    void a_ball_sawn_off_flat_ends_within_what_is_left_open() throws Unsure {
        double pixel = 1 / FOCAL;
        for (double round : new double[] {0.02, 0.03, 0.05}) {
            for (int tenths = 1; tenths <= 5; tenths++) {
                double off = round * Math.sqrt(1 - tenths * tenths / 100.0);
                DoubleUnaryOperator ball = p -> Math.sqrt(Math.max(0, round * round - (p - off) * (p - off)));
                ViewFit.View view = view(off, ball);
                RoundedEnd end = RoundedEnd.of(view.contour(), true, 0);
                // Through a longer lens the same picture is of a shorter piece.
                double longer = Math.exp(view.logFocal());
                String which = "ball of %s, face of %d tenths: %s".formatted(round, tenths, end);
                assertThat(longer * end.place()).as(which).isLessThan(START + 4 * pixel);
                assertThat(longer * end.back()).as(which).isGreaterThan(START - 5 * pixel);
                assertThat(end.back() - end.place()).as(which).isLessThan(0.3 * round);
            }
        }
    }
}
