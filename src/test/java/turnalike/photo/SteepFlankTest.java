package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A leg that ends in a bun sawn off at its foot: read a little farther in, the foot came out a quarter too wide, and the end pixels off. */
class SteepFlankTest {
    private static final double HALF = 0.45;

    private static final double RADIUS = 0.06;

    private static final double LEG = 0.03;

    /** Half an ellipsoid as deep as that share of its radius, its foot so wide, before a leg that runs on to the other end. */
    private static List<double[]> bun(double foot, double deep) {
        List<double[]> circles = new ArrayList<>();
        double from = Math.sqrt(1 - foot * foot);
        for (int k = 0; k <= 200; k++) {
            double across = from * (1 - k / 200.0);
            double place = -HALF + deep * RADIUS * (from - across);
            circles.add(new double[] {place, RADIUS * Math.sqrt(1 - across * across)});
        }
        circles.add(new double[] {HALF, LEG});
        return circles;
    }

    @ParameterizedTest
    @CsvSource({"0.62, 1, 0", "0.62, 1, 2", "0.7, 0.8, -1.5", "0.5, 1.4, 1"})
    void the_rim_of_the_foot_is_found_in_the_right_view(double foot, double deep, double lean) throws Unsure {
        ViewFit fit = HullContour.fit(bun(foot, deep), lean, 0.05);
        double tilt = Math.toRadians(lean);
        SquaredContour contour = fit.contour(HullContour.AXIS, 0, tilt);
        EndCap cap = EndCap.of(contour, true, EndEdge.STEEP);
        assertThat(cap.behind()).isCloseTo(foot * RADIUS, within(0.03 * foot * RADIUS));
        assertThat(cap.disagreement()).isCloseTo(0, within(0.04));
        assertThat(cap.place()).isCloseTo(-HALF, within(0.6 / HullContour.FOCAL));
        // As a level flank's the rim would be too wide by far, and the end too far in.
        EndCap level = EndCap.of(contour, true, EndEdge.SHARP);
        assertThat(level.behind()).isGreaterThan(1.08 * foot * RADIUS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 1.5})
    void a_sawn_bun_tells_the_lean(double lean) throws Unsure {
        ViewFit.View view = HullContour.fit(bun(0.65, 1), lean, 0.05).fit(HullContour.AXIS);
        assertThat(view.start().edge()).isEqualTo(EndEdge.STEEP);
        assertThat(view.start().flat()).isTrue();
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.5));
        double length = (view.end().place() - view.start().place()) * Math.exp(view.logFocal());
        assertThat(length).isCloseTo(2 * HALF, within(0.003 * 2 * HALF));
    }

    @Test
    void a_level_flank_is_no_steep_one() throws Unsure {
        List<double[]> cylinder = List.of(new double[] {-HALF, LEG}, new double[] {HALF, LEG});
        EndCap cap = EndCap.of(
                HullContour.fit(cylinder, 1, 0.05).contour(HullContour.AXIS, 0, Math.toRadians(1)),
                true,
                EndEdge.STEEP);
        assertThat(cap.flat()).isFalse();
        assertThat(cap.misfit()).isInfinite();
    }
}
