package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a cylinder says of a view that is wrong; and what says nothing: a taper, a swelling. */
class StraightRunTest {
    private static final int WIDTH = 1600;

    private static final int HEIGHT = 1200;

    private static final double FOCAL = 1400;

    private static final Sight.AxisLine AXIS = new Sight.AxisLine(WIDTH / 2.0, HEIGHT / 2.0, 0);

    private static final double HALF = 0.4;

    private static final double RADIUS = 0.05;

    /** A body that is nowhere hollow, seen by a camera that leans by so much and taken for one held square. */
    private static List<StraightRun> runs(List<double[]> circles, double lean) throws Unsure {
        Sight sight = new Sight(FOCAL, WIDTH, HEIGHT, AXIS, Math.toRadians(lean));
        ViewFit fit = HullContour.fit(circles, sight, WIDTH, HEIGHT, 0.05);
        Sight.AxisLine axis = fit.straightened(AXIS, 0, 0);
        SquaredContour contour = fit.contour(axis, 0, 0);
        EndCap start = EndCap.of(contour, true, EndEdge.SHARP);
        EndCap end = EndCap.of(contour, false, EndEdge.SHARP);
        return StraightRun.of(RoundOutline.of(contour, start, end, 400), contour.sight(), KnownSquares.NONE);
    }

    private static List<double[]> body(double atStart, double inMiddle, double atEnd) {
        List<double[]> circles = new ArrayList<>();
        for (int k = -200; k <= 200; k++) {
            double share = k / 200.0;
            double straight = (atStart + atEnd) / 2 + (atEnd - atStart) / 2 * share;
            circles.add(new double[] {HALF * share, straight + inMiddle * (1 - share * share)});
        }
        return circles;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2, -0.7, 0, 1, 2.5})
    void a_cylinder_widens_by_as_much_as_the_view_leans_too_little(double lean) throws Unsure {
        List<StraightRun> runs = runs(body(RADIUS, 0, RADIUS), lean);
        assertThat(runs).hasSize(1);
        StraightRun run = runs.get(0);
        assertThat(Math.toDegrees(run.widens())).isCloseTo(lean, within(0.1 + 0.05 * Math.abs(lean)));
        assertThat(Math.toDegrees(run.doubt())).isBetween(0.3, 1.0);
        double right = run.likely(Math.toRadians(lean));
        assertThat(right).isGreaterThan(3 * run.likely(Math.toRadians(lean + 3)));
        assertThat(right).isGreaterThan(3 * run.likely(Math.toRadians(lean - 3)));
    }

    @Test
    void a_taper_makes_no_view_the_likelier() throws Unsure {
        List<StraightRun> runs = runs(body(RADIUS, 0, 1.3 * RADIUS), 0);
        assertThat(runs).hasSize(1);
        assertThat(runs.get(0).likely(0)).isCloseTo(runs.get(0).likely(Math.toRadians(3)), within(1e-3));
    }

    /** Somewhere a swelling runs level, whatever the view: that is no cylinder. */
    @Test
    void a_swelling_says_nothing() throws Unsure {
        assertThat(runs(body(RADIUS, 0.006, RADIUS), 0)).isEmpty();
        assertThat(runs(body(RADIUS, 0.02, RADIUS), 1.5)).isEmpty();
    }
}
