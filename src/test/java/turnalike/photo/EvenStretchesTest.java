package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The outline of a post with a wide stretch that ends in rounded shoulders, seen from far off, where the contour is the outline. */
class EvenStretchesTest {
    private static final double LENGTH = 300;

    private static final double HALF = 20;

    private static final double THIN = 12;

    private static final double ROUNDED = 2.8;

    private static final double FAR = 20_000;

    private static double radius(double place) {
        double beyond = Math.max(0, Math.max(60 - place, place - 160));
        if (beyond >= ROUNDED) {
            return THIN;
        }
        return THIN + (HALF - THIN) * Math.sqrt(1 - beyond * beyond / ROUNDED / ROUNDED);
    }

    private static RoundOutline outline(double perMm, List<SquaredContour> seen) throws Unsure {
        int width = (int) (1.1 * LENGTH * perMm);
        List<double[]> corners = new ArrayList<>();
        for (double place = 0; place <= LENGTH; place += 0.1) {
            corners.add(new double[] {width / 2.0 + (place - LENGTH / 2) * perMm, 300 * perMm - radius(place) * perMm});
        }
        for (double place = LENGTH; place >= 0; place -= 0.1) {
            corners.add(new double[] {width / 2.0 + (place - LENGTH / 2) * perMm, 300 * perMm + radius(place) * perMm});
        }
        double[][] round = HullContour.everyPixel(corners);
        Sight.AxisLine axis = new Sight.AxisLine(width / 2.0, 300 * perMm, 0);
        Sight sight = new Sight(FAR * perMm, width, (int) (600 * perMm), axis, 0);
        SquaredContour contour = new SquaredContour(sight, round[0], round[1], new double[round[0].length]);
        seen.add(contour);
        return RoundOutline.of(
                contour, EndCap.of(contour, true, EndEdge.SHARP), EndCap.of(contour, false, EndEdge.SHARP), LENGTH);
    }

    /** The same piece in few and in many pixels: what is turned is as thick, the shoulders' rounds are none of it. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 14})
    void a_rounded_shoulder_belongs_to_its_stretch(double perMm) throws Unsure {
        List<SquaredContour> seen = new ArrayList<>();
        RoundOutline outline = outline(perMm, seen);
        EvenStretches even = new EvenStretches(outline, seen.get(0));
        List<int[]> wide = even.find().stream()
                .filter(each -> outline.radiusMm((each[0] + each[1]) / 2) > 15)
                .toList();
        assertThat(wide).hasSize(1);
        assertThat(outline.placeMm(wide.get(0)[0])).isCloseTo(60, within(1.5));
        assertThat(outline.placeMm(wide.get(0)[1])).isCloseTo(160, within(1.5));
        double beside = even.widestBeside(even.find(), new boolean[outline.count()], wide.get(0));
        assertThat(beside).isCloseTo(THIN, within(0.3));
    }
}
