package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.trace.Profile;

/** The lean from the rims of shoulders, in pictures whose view is known. */
class RingsTest {
    private static final List<double[]> SHOULDERS = List.of(
            new double[] {-0.3, -0.24, 0.03},
            new double[] {-0.24, -0.13, 0.05},
            new double[] {-0.13, -0.04, 0.036},
            new double[] {-0.04, 0.06, 0.052},
            new double[] {0.06, 0.17, 0.04},
            new double[] {0.17, 0.25, 0.05},
            new double[] {0.25, 0.31, 0.032});

    private static final List<double[]> FEW = List.of(
            new double[] {-0.3, -0.2, 0.05},
            new double[] {-0.2, -0.1, 0.03},
            new double[] {-0.1, 0.12, 0.05},
            new double[] {0.12, 0.31, 0.04});

    private static final List<double[]> PLAIN = List.of(new double[] {-0.3, 0.31, 0.045});

    private static final SteppedPiece.Look EVEN = new SteppedPiece.Look(1, 0.2);

    private static final Lens STRAIGHT = Lens.none(SteppedPiece.WIDTH, SteppedPiece.HEIGHT);

    private static ViewFit fit(SteppedPiece piece, ViewFit.TiltGuess guess) {
        return fit(piece.contour(0.05), new FocalGuess(SteppedPiece.FOCAL, 0.01, "the test"), guess);
    }

    private static ViewFit fit(double[][] contour, FocalGuess focal, ViewFit.TiltGuess guess) {
        return new ViewFit(
                contour[0],
                contour[1],
                new double[contour[0].length],
                SteppedPiece.WIDTH,
                SteppedPiece.HEIGHT,
                focal,
                guess);
    }

    /** What the rims say, read in a view that leans by so many degrees too much. */
    private static Rings read(SteppedPiece piece, double wrong) throws Unsure, IOException {
        return read(piece, wrong, 1.5);
    }

    /** The same, that view thought unsure by so many degrees. */
    private static Rings read(SteppedPiece piece, double wrong, double unsure) throws Unsure, IOException {
        double thought = Math.toRadians(piece.view().lean() + wrong);
        ViewFit fit = fit(piece, new ViewFit.TiltGuess(thought, 1e-4));
        Sight.AxisLine axis = fit.straightened(piece.view().axis(), 0, thought);
        ViewFit.View view = fit.seen(axis, 0, thought, new double[] {0, 1e-4}, EndEdge.SHARP, EndEdge.SHARP);
        ViewFit.View vague = view.withUncertainty(0.01, Math.toRadians(unsure));
        return Rings.of(piece.picture(), piece.view().lens(), view, vague, KnownSquares.NONE);
    }

    @ParameterizedTest
    @CsvSource({"0, 10, 1", "2, 75, -1", "-2, -40, 1.2", "1.5, 160, -1.2"})
    void shoulders_tell_how_far_a_piece_leans(double lean, double turn, double wrong) throws Unsure, IOException {
        SteppedPiece piece = new SteppedPiece(SHOULDERS, new SteppedPiece.Seen(lean, turn, STRAIGHT), EVEN);
        Rings rings = read(piece, wrong);
        assertThat(rings.count()).isGreaterThan(3);
        assertThat(Math.toDegrees(rings.tilt())).isCloseTo(lean, within(0.35));
    }

    @Test
    void a_lens_that_bends_bends_no_rim() throws Unsure, IOException {
        Lens barrel = new Lens(0.08, -0.01, SteppedPiece.WIDTH / 2.0, SteppedPiece.HEIGHT / 2.0);
        Rings rings = read(new SteppedPiece(SHOULDERS, new SteppedPiece.Seen(1, -25, barrel), EVEN), 1);
        assertThat(Math.toDegrees(rings.tilt())).isCloseTo(1, within(0.35));
    }

    @Test
    void a_shadow_across_a_shoulder_turns_no_view() throws Unsure, IOException {
        SteppedPiece.Look shaded = new SteppedPiece.Look(0.45, 0.2);
        Rings rings = read(new SteppedPiece(SHOULDERS, new SteppedPiece.Seen(0, 20, STRAIGHT), shaded), 1);
        assertThat(Math.toDegrees(rings.tilt())).isCloseTo(0, within(0.35));
    }

    /** One cylinder from end to end: no rim, but two sides that are parallel in the right view alone. */
    @Test
    void without_shoulders_a_cylinder_tells_by_its_sides() throws Unsure, IOException {
        SteppedPiece piece = new SteppedPiece(PLAIN, new SteppedPiece.Seen(1, 5, STRAIGHT), EVEN);
        Rings rings = read(piece, 1.5);
        assertThat(rings.count()).isEqualTo(1);
        assertThat(Math.toDegrees(rings.tilt())).isCloseTo(1, within(0.5));
        ViewFit fit = fit(piece, ViewFit.TiltGuess.BY_EYE);
        ViewFit.View ends = fit.fit(piece.view().axis());
        ViewFit.View both = fit.fit(piece.view().axis(), piece.picture(), STRAIGHT);
        assertThat(both.tiltUncertainty()).isLessThan(ends.tiltUncertainty());
        assertThat(Math.toDegrees(both.tilt())).isCloseTo(1, within(0.3));
    }

    /** A bead in thin slices: where it has rounded over and falls, no circle is seen but wherever the camera's rays graze. */
    @Test
    void a_bead_has_no_rim() throws Unsure {
        List<double[]> slices = new ArrayList<>();
        slices.add(new double[] {-0.3, 0.15, 0.035});
        for (int k = 0; k < 60; k++) {
            double from = 0.15 + 0.03 * (1 - Math.cos(Math.PI * k / 60));
            double to = 0.15 + 0.03 * (1 - Math.cos(Math.PI * (k + 1) / 60));
            slices.add(new double[] {from, to, 0.035 + 0.025 * Math.sin(Math.PI * (k + 0.5) / 60)});
        }
        slices.add(new double[] {0.21, 0.31, 0.035});
        SteppedPiece piece = new SteppedPiece(slices, new SteppedPiece.Seen(0, 15, STRAIGHT), EVEN);
        assertThat(rims(piece)).isEmpty();
        assertThat(rims(new SteppedPiece(SHOULDERS, piece.view(), EVEN))).hasSize(6);
    }

    private static List<Shoulders.Rim> rims(SteppedPiece piece) throws Unsure {
        ViewFit.View view =
                fit(piece, ViewFit.TiltGuess.BY_EYE).fit(piece.view().axis());
        double pixels = SteppedPiece.FOCAL * (view.end().apex() - view.start().apex());
        return Shoulders.of(RoundOutline.of(view.contour(), view.start(), view.end(), pixels / 2));
    }

    /** Up to its rim the thicker side was seen: a pixel is a millimetre here. */
    @Test
    void what_a_shoulder_hides_begins_at_its_rim() throws Unsure, IOException {
        double rim = 0.2;
        List<double[]> shouldered = List.of(new double[] {-0.3, rim, 0.045}, new double[] {rim, 0.31, 0.02});
        SteppedPiece piece = new SteppedPiece(shouldered, new SteppedPiece.Seen(0, 0, STRAIGHT), EVEN);
        ViewFit.View view =
                fit(piece, ViewFit.TiltGuess.BY_EYE).fit(piece.view().axis());
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), 610);
        double at = 610 * (rim + 0.3) / 0.61;
        List<Profile.Stretch> hidden = outline.hiddenStretches(1);
        assertThat(hidden).hasSize(1);
        assertThat(hidden.get(0).from().mm()).isBetween(at - 2, at + 1);
        assertThat(hidden.get(0).to().mm()).isGreaterThan(at + 8);
    }

    @Test
    void with_shoulders_the_lean_is_surer_and_nearer() throws Unsure, IOException {
        SteppedPiece piece = new SteppedPiece(SHOULDERS, new SteppedPiece.Seen(-1.5, 30, STRAIGHT), EVEN);
        // Thought to lean the other way, and too surely: that holds the ends back.
        ViewFit fit = fit(piece, new ViewFit.TiltGuess(Math.toRadians(1), Math.toRadians(1)));
        ViewFit.View ends = fit.fit(piece.view().axis());
        ViewFit.View both = fit.fit(piece.view().axis(), piece.picture(), STRAIGHT);
        assertThat(both.tiltUncertainty()).isLessThan(0.9 * ends.tiltUncertainty());
        assertThat(Math.abs(both.tilt() - Math.toRadians(-1.5)))
                .isLessThan(Math.abs(ends.tilt() - Math.toRadians(-1.5)))
                .isLessThan(Math.toRadians(0.45));
    }

    /** Shade on the start end's face: it bulges by three fifths more than it does, as no view would show it. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, -2})
    void an_end_that_no_view_explains_leads_no_rim_astray(double lean) throws Unsure, IOException {
        SteppedPiece piece = new SteppedPiece(FEW, new SteppedPiece.Seen(lean, 0, STRAIGHT), EVEN);
        double[][] contour = piece.contour(0.05);
        double middle = piece.view().axis().y();
        double apex = Arrays.stream(contour[0]).min().orElseThrow();
        double rim = apex;
        double widest = 0;
        for (int i = 0; i < contour[0].length; i++) {
            double out = Math.abs(contour[1][i] - middle);
            if (contour[0][i] < apex + 20 && out > widest) {
                widest = out;
                rim = contour[0][i];
            }
        }
        for (int i = 0; i < contour[0].length; i++) {
            contour[0][i] -= Math.max(0, rim - contour[0][i]) * 0.6;
        }
        FocalGuess focal = new FocalGuess(SteppedPiece.FOCAL, 0.03, "the test");
        ViewFit.View view =
                fit(contour, focal, ViewFit.TiltGuess.BY_EYE).fit(piece.view().axis(), piece.picture(), STRAIGHT);
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.35));
    }

    @Test
    void a_guess_is_strayed_from_by_its_spread() {
        Rings rings = new Rings(3, 0.01, 0.02, new double[][] {{400, 0}, {0, 10000}});
        assertThat(rings.strays(0.01, 0.02)).isCloseTo(0, within(1e-12));
        assertThat(rings.strays(0.01, 0.03)).isCloseTo(1, within(1e-9));
        assertThat(rings.strays(0.06, 0.02)).isCloseTo(1, within(1e-9));
    }

    /** Ends that were misread, and are thought sure of it, must not choose among a rim's leaps. */
    @ParameterizedTest
    @CsvSource({"1.7, 30", "-1.7, 75"})
    void rims_outweigh_what_was_misread(double wrong, double turn) throws Unsure, IOException {
        SteppedPiece piece = new SteppedPiece(SHOULDERS, new SteppedPiece.Seen(0.5, turn, STRAIGHT), EVEN);
        Rings rings = read(piece, wrong, 0.4);
        assertThat(Math.toDegrees(rings.tilt())).isCloseTo(0.5, within(0.5));
        double stated = Math.toDegrees(1 / Math.sqrt(rings.weight()[1][1]));
        assertThat(stated).isBetween(0.1, 0.5);
    }

    /** A rim so small that nothing was read along it. */
    @Test
    void a_ring_without_a_curve_says_nothing() {
        Ring ring = new Ring(0.1, 3, 1, 0.2, new double[] {0.4});
        double[] table = ring.likely();
        assertThat(ring.likely(table, 0.01)).isEqualTo(ring.likely(table, -0.02));
    }

    /** Two bends at which the light leaps much alike are both likely, and one far from both hardly. */
    @Test
    void a_ring_that_leaps_twice_leaves_both_open() {
        double[] curve = new double[41];
        for (int k = 0; k < curve.length; k++) {
            curve[k] = 0.2 + 0.4 * Math.exp(-0.5 * (k - 10) * (k - 10)) + 0.39 * Math.exp(-0.5 * (k - 30) * (k - 30));
        }
        Ring ring = new Ring(0.1, 50, 1, 0.3, curve);
        double[] table = ring.likely();
        double one = ring.likely(table, 10 * Ring.STEP / 50);
        double other = ring.likely(table, -10 * Ring.STEP / 50);
        assertThat(other / one).isBetween(0.3, 0.9);
        assertThat(ring.likely(table, 0) / one).isLessThan(0.1);
    }
}
