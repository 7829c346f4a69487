package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.trace.Profile;

/** Half an ellipsoid at an end bulges as a flat end does that is seen from farther aside: taken for one, the piece came out a per cent short. */
class DomedEndTest {
    private static final double HALF = 0.45;

    private static final double RADIUS = 0.045;

    /** A cylinder, its start a dome so high, for each unit of its radius; flat where that is 0. */
    private static List<double[]> domed(double high) {
        List<double[]> circles = new ArrayList<>();
        for (int k = 0; k <= 120; k++) {
            double turn = Math.PI / 2 * k / 120;
            circles.add(new double[] {-HALF + high * RADIUS * (1 - Math.cos(turn)), RADIUS * Math.sin(turn)});
        }
        circles.add(new double[] {-HALF + high * RADIUS, RADIUS});
        circles.add(new double[] {HALF, RADIUS});
        return circles;
    }

    private static ViewFit.View view(double high, double lean) throws Unsure {
        return HullContour.fit(domed(high), lean, 0.08).fit(HullContour.AXIS);
    }

    @ParameterizedTest
    @CsvSource({"0, -1", "0, 0", "0, 1.5", "0.4, 0", "0.4, 1.5", "0.5, -1", "0.6, 0", "0.6, 1.5", "0.8, 0"})
    void a_dome_is_no_flat_end_and_a_flat_end_no_dome(double high, double lean) throws Unsure {
        ViewFit.View view = view(high, lean);
        assertThat(view.start().flat()).isEqualTo(high == 0);
        assertThat(view.end().flat()).isTrue();
        assertThat(Math.abs(view.tilt() - Math.toRadians(lean))).isLessThan(3 * view.tiltUncertainty());
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), 1000);
        // So long a piece, a thousand millimetres: a pixel is 0.8 mm.
        double pixel = outline.mmPerPixel();
        double thick = 1000 * RADIUS / (2 * HALF);
        List<Profile.Stretch> hidden = outline.hiddenStretches(1);
        double squares = 0;
        int count = 0;
        for (int k = 0; k < outline.count(); k++) {
            double place = outline.placeMm(k);
            boolean seen = hidden.stream()
                    .noneMatch(each ->
                            each.from().mm() <= place && place <= each.to().mm());
            if (seen && place > 2 * thick && place < 990) {
                squares += Math.pow((outline.radiusMm(k) - thick) / pixel, 2);
                count++;
            }
        }
        assertThat(Math.sqrt(squares / count)).isLessThan(0.46);
    }
}
