package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;

/** Of a cylinder whose one edge was found somewhere else than it is, and is known to be unsure. */
class RoundOutlineTest {
    private static final int WIDTH = 1200;

    private static final int HEIGHT = 900;

    private static final double FOCAL = 1200;

    /** The cylinder is so wide in the picture, in pixels from its axis, and one edge is seen so much too near to it. */
    private static final double WIDE = 40;

    private static final double WRONG = 3;

    /** From the picture's middle 300 pixels to either side; the lower edge is unsure by so much. */
    private static RoundOutline outline(double wrong, double doubt) throws Unsure {
        List<double[]> points = new ArrayList<>();
        double y = HEIGHT / 2.0;
        for (int x = 300; x <= 900; x++) {
            points.add(new double[] {x, y - WIDE, 0.05});
        }
        for (double across = -WIDE + 1; across < WIDE - wrong; across++) {
            points.add(new double[] {900, y + across, 0.05});
        }
        for (int x = 900; x >= 300; x--) {
            points.add(new double[] {x, y + WIDE - wrong, doubt});
        }
        for (double across = WIDE - wrong - 1; across > -WIDE; across--) {
            points.add(new double[] {300, y + across, 0.05});
        }
        double[][] lines = new double[3][points.size()];
        for (int i = 0; i < points.size(); i++) {
            for (int c = 0; c < 3; c++) {
                lines[c][i] = points.get(i)[c];
            }
        }
        Sight sight = new Sight(FOCAL, WIDTH, HEIGHT, new Sight.AxisLine(WIDTH / 2.0, y, 0), 0);
        SquaredContour contour = new SquaredContour(sight, lines[0], lines[1], lines[2]);
        return RoundOutline.of(
                contour, EndCap.of(contour, true, EndEdge.SHARP), EndCap.of(contour, false, EndEdge.SHARP), 300);
    }

    /** A cylinder's rays touch it: r over the root of 1 − r² is how wide it is seen. */
    private static double seen(double pixels) {
        double across = pixels / FOCAL;
        return FOCAL * across / Math.sqrt(1 + across * across);
    }

    private static double pixels(RoundOutline outline, double mm) {
        return mm / outline.mmPerPixel();
    }

    @Test
    void the_surer_edge_counts_by_how_much_surer_it_is() throws Unsure {
        RoundOutline even = outline(WRONG, 0.05);
        RoundOutline uneven = outline(WRONG, 0.61);
        int middle = even.count() / 2;
        assertThat(pixels(even, even.radiusMm(middle))).isCloseTo(seen(WIDE - WRONG / 2), within(0.05));
        // One over the squares of 0.08 and 0.64: the lower edge counts by a sixty-fifth.
        assertThat(pixels(uneven, uneven.radiusMm(middle))).isCloseTo(seen(WIDE - WRONG / 65), within(0.05));
    }

    @Test
    void what_two_edges_leave_open_is_half_of_their_difference_or_less() throws Unsure {
        RoundOutline even = outline(WRONG, 0.05);
        RoundOutline uneven = outline(WRONG, 0.61);
        int middle = even.count() / 2;
        assertThat(pixels(even, even.openMm(middle))).isCloseTo(WRONG / 2, within(0.05));
        assertThat(pixels(uneven, uneven.openMm(middle))).isCloseTo(WRONG * 8 / 65, within(0.05));
        assertThat(pixels(uneven, uneven.apartMm(middle))).isCloseTo(WRONG, within(0.1));
    }

    @Test
    void how_much_of_the_length_rests_on_one_edge_is_told() throws Unsure {
        assertThat(outline(WRONG, 0.05).oneSidedShare(2.5)).isZero();
        assertThat(outline(WRONG, 0.61).oneSidedShare(2.5)).isGreaterThan(0.9);
        assertThat(outline(WRONG, 0.61).worseDoubt(100)).isCloseTo(0.61, within(1e-9));
    }

    /** A shoulder 20 pixels high, far to the left of the camera; below it a shadow fills the corner behind it, so that the lower edge shows a slope. */
    @Test
    void a_corner_that_a_shadow_fills_on_one_side_is_told_as_not_seen() throws Unsure {
        RoundOutline both = shoulder(false);
        RoundOutline one = shoulder(true);
        assertThat(firstHalf(both.hiddenStretches(0.5))).isNotEmpty();
        assertThat(firstHalf(both.hiddenByEither(0.5))).isNotEmpty();
        assertThat(firstHalf(one.hiddenStretches(0.5))).isEmpty();
        assertThat(firstHalf(one.hiddenByEither(0.5))).singleElement().satisfies(stretch -> {
            // The shoulder stands where a quarter of the length is past.
            assertThat(stretch.from().mm()).isLessThan(75);
            assertThat(stretch.to().mm()).isBetween(60.0, 85.0);
        });
    }

    @Test
    void what_one_edge_alone_hides_is_told_apart() throws Unsure {
        RoundOutline both = shoulder(false);
        RoundOutline one = shoulder(true);
        int hidden = 0;
        for (int k = 0; k < one.count() / 2; k++) {
            assertThat(both.isHidden(k) && both.isHiddenByOne(k)).isFalse();
            hidden += one.isHiddenByOne(k) ? 1 : 0;
        }
        assertThat(hidden).isBetween(4, 40);
    }

    /** The shoulder's; the piece's own end is another matter. */
    private static List<Profile.Stretch> firstHalf(List<Profile.Stretch> stretches) {
        return stretches.stream().filter(each -> each.to().mm() < 150).toList();
    }

    private static RoundOutline shoulder(boolean filled) throws Unsure {
        double y = HEIGHT / 2.0;
        List<double[]> corners = new ArrayList<>(List.of(
                new double[] {300, y - WIDE + 20},
                new double[] {450, y - WIDE + 20},
                new double[] {450, y - WIDE},
                new double[] {900, y - WIDE},
                new double[] {900, y + WIDE},
                new double[] {450, y + WIDE}));
        corners.add(new double[] {filled ? 400 : 450, y + WIDE - 20});
        corners.add(new double[] {300, y + WIDE - 20});
        double[][] round = HullContour.everyPixel(corners);
        double[] doubts = new double[round[0].length];
        Arrays.fill(doubts, 0.05);
        Sight sight = new Sight(FOCAL, WIDTH, HEIGHT, new Sight.AxisLine(WIDTH / 2.0, y, 0), 0);
        SquaredContour contour = new SquaredContour(sight, round[0], round[1], doubts);
        return RoundOutline.of(
                contour, EndCap.of(contour, true, EndEdge.SHARP), EndCap.of(contour, false, EndEdge.SHARP), 300);
    }
}
