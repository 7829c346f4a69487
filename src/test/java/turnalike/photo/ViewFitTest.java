package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.units.Angle;

/** Lean and focal length from the contours of cylinders: each the hull of circles seen one by one, by no formula of the program's. */
class ViewFitTest {
    private static final int WIDTH = 1200;

    private static final int HEIGHT = 900;

    private static final double FOCAL = 1280;

    private static final Sight.AxisLine AXIS = new Sight.AxisLine(WIDTH / 2.0, HEIGHT / 2.0, 0.1);

    /** Half the length and the radius, over the distance from the camera. */
    private static final double HALF = 0.34;

    private static final double RADIUS = 0.024;

    /** Circles round the axis: place and radius. */
    private static List<double[]> cylinder(double chamfer, double dome) {
        List<double[]> circles = new ArrayList<>();
        circles.add(new double[] {HALF, RADIUS});
        if (dome > 0) {
            for (int k = 0; k <= 60; k++) {
                double turn = Math.PI / 2 * k / 60;
                circles.add(new double[] {-HALF + dome * (1 - Math.sin(turn)), RADIUS * Math.cos(turn)});
            }
        } else {
            circles.add(new double[] {-HALF, RADIUS - chamfer});
            circles.add(new double[] {-HALF + chamfer, RADIUS});
        }
        return circles;
    }

    private static ViewFit.View fit(List<double[]> circles, double leanDegrees, double noise) throws Unsure {
        double usual = Math.toDegrees(2 * Math.atan(WIDTH / 2.0 / FOCAL));
        FocalGuess guess = FocalGuess.of(Optional.of(Angle.ofDegrees(usual)), CameraData.NONE, WIDTH, HEIGHT);
        return fit(circles, FOCAL, leanDegrees, noise, guess);
    }

    /** Seen through a lens of so many pixels, of which so much is known. */
    static ViewFit.View fit(List<double[]> circles, double focal, double leanDegrees, double noise, FocalGuess guess)
            throws Unsure {
        return fit(circles, focal, leanDegrees, noise, guess, ViewFit.TiltGuess.BY_EYE);
    }

    /** The same, so much of the lean being known. */
    static ViewFit.View fit(
            List<double[]> circles,
            double focal,
            double leanDegrees,
            double noise,
            FocalGuess guess,
            ViewFit.TiltGuess tilt)
            throws Unsure {
        double[][] round = HullContour.of(circles, sight(focal, leanDegrees), noise);
        return new ViewFit(round[0], round[1], new double[round[0].length], WIDTH, HEIGHT, guess, tilt).fit(AXIS);
    }

    private static Sight sight(double focal, double leanDegrees) {
        return new Sight(focal, WIDTH, HEIGHT, AXIS, Math.toRadians(leanDegrees));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, 0, 2})
    void sawn_ends_tell_how_far_a_piece_leans(double lean) throws Unsure {
        ViewFit.View view = fit(cylinder(0, 0), lean, 0.05);
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.25));
        assertThat(view.start().edge()).isEqualTo(EndEdge.SHARP);
        assertThat(view.end().edge()).isEqualTo(EndEdge.SHARP);
        assertThat(view.start().place()).isCloseTo(-HALF, within(0.006));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, 0, 2})
    void a_chamfered_rim_is_seen_as_one_and_turns_no_view(double lean) throws Unsure {
        ViewFit.View view = fit(cylinder(0.17 * RADIUS, 0), lean, 0.05);
        assertThat(view.start().edge().face()).isCloseTo(0.83, within(0.02));
        assertThat(view.end().edge()).isEqualTo(EndEdge.SHARP);
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.6));
        assertThat(view.logFocal()).isCloseTo(0, within(0.02));
        assertThat(Math.toDegrees(view.tiltUncertainty())).isLessThan(0.8);
    }

    /** A rim sanded over by a quarter of a circle bulges by more than a sharp one: taken for that, it made the camera lean by two to four degrees. */
    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 2})
    void a_rounded_rim_is_seen_as_one_and_turns_no_view(double lean) throws Unsure {
        ViewFit.View view = fit(rounded(0.25), lean, 0.05);
        assertThat(view.start().edge().round()).isCloseTo(0.25, within(0.1));
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(1.0));
        assertThat(view.start().place()).isCloseTo(-HALF, within(0.02));
        assertThat(view.end().place()).isCloseTo(HALF, within(0.02));
        assertThat(view.start().place() - view.end().place()).isCloseTo(-2 * HALF, within(0.006 * HALF));
    }

    /** Both rims rounded over by that share of the radius. */
    private static List<double[]> rounded(double share) {
        List<double[]> circles = new ArrayList<>();
        double round = share * RADIUS;
        for (int k = 0; k <= 40; k++) {
            double turn = Math.PI / 2 * k / 40;
            double radius = RADIUS - round + round * Math.sin(turn);
            double in = round * (1 - Math.cos(turn));
            circles.add(new double[] {-HALF + in, radius});
            circles.add(new double[] {HALF - in, radius});
        }
        return circles;
    }

    /** The faces behind a chamfer and behind a rounding nearly three times as wide bulge alike; the one turns into the flank at a corner. */
    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 2})
    void a_chamfer_is_told_from_a_wide_rounding_by_its_corner(double lean) throws Unsure {
        ViewFit.View view = fit(cylinder(0.2 * RADIUS, 0), lean, 0.15);
        SquaredContour contour = view.contour();
        EndCap chamfered = EndCap.of(contour, true, EndEdge.chamfered(0.2));
        EndCap rounded = EndCap.of(contour, true, EndEdge.rounded(0.5));
        assertThat(rounded.strays()).isGreaterThan(2 * chamfered.strays());
        assertThat(view.start().edge().chamfer()).isCloseTo(0.2, within(0.05));
        // Through a longer lens the same picture is of a shorter piece.
        double length = (view.end().place() - view.start().place()) * Math.exp(view.logFocal());
        assertThat(length).isCloseTo(2 * HALF, within(0.003 * HALF));
    }

    @Test
    void a_rounding_is_told_from_a_chamfer_by_its_swing() throws Unsure {
        ViewFit.View view = fit(rounded(0.5), 1, 0.05);
        SquaredContour contour = view.contour();
        EndCap chamfered = EndCap.of(contour, true, EndEdge.chamfered(0.2));
        EndCap rounded = EndCap.of(contour, true, EndEdge.rounded(0.5));
        assertThat(chamfered.strays()).isGreaterThan(1.5 * rounded.strays());
        assertThat(view.start().edge().round()).isCloseTo(0.5, within(0.15));
    }

    /** A tenon that tapers towards its end is thinner at the rim than where the flank is read. */
    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 2})
    void a_tapered_end_turns_no_view(double lean) throws Unsure {
        List<double[]> circles = List.of(
                new double[] {-HALF, RADIUS},
                new double[] {-HALF + 2.5 * RADIUS, 1.25 * RADIUS},
                new double[] {HALF - 2.5 * RADIUS, 1.25 * RADIUS},
                new double[] {HALF, RADIUS});
        ViewFit.View view = fit(circles, lean, 0.05);
        assertThat(view.start().behind()).isCloseTo(RADIUS, within(0.012 * RADIUS));
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.3));
    }

    /** However it is explained, the lean stays within twice of what is stated. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 1.6})
    void a_domed_end_leaves_the_lean_open(double dome) throws Unsure {
        ViewFit.View view = fit(cylinder(0, dome * RADIUS), 1, 0.05);
        assertThat(Math.abs(view.tilt() - Math.toRadians(1))).isLessThan(2 * view.tiltUncertainty());
    }

    @Test
    void noise_makes_the_lean_less_sure() throws Unsure {
        assertThat(fit(cylinder(0, 0), 1, 0.3).tiltUncertainty())
                .isGreaterThan(1.3 * fit(cylinder(0, 0), 1, 0.05).tiltUncertainty());
    }

    /** A lump on one end's face, as a shadow beside it feigns: in some view it would be a flat end's bulge, far from all that is known. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.45, 0.6})
    void an_end_that_asks_for_an_odd_view_is_not_asked(double high) throws Unsure {
        List<double[]> circles = cylinder(0, 0);
        for (int k = 1; k <= 20; k++) {
            double share = k / 20.0;
            circles.add(new double[] {-HALF - high * RADIUS * share, RADIUS * Math.sqrt(1 - share * share)});
        }
        ViewFit.View view = fit(circles, 1, 0.05);
        double off = Math.abs(view.tilt() - Math.toRadians(1));
        assertThat(off).isLessThan(Math.max(Math.toRadians(1), 2 * view.tiltUncertainty()));
        assertThat(Math.toDegrees(off)).isLessThan(1.75);
        assertThat(view.logFocal()).isCloseTo(0, within(0.06));
    }

    /** As of a stout piece taken from near, each through another lens, the file saying nothing: sawn ends tell the lens from far off the guess. */
    @ParameterizedTest
    @ValueSource(doubles = {24, 35, 60})
    void sawn_ends_tell_a_lens_that_nothing_is_known_of(double equivalent) throws Unsure {
        double focal = equivalent / 36 * WIDTH;
        double half = 0.4 * WIDTH / focal;
        List<double[]> circles = List.of(
                new double[] {-half, 0.2 * half}, new double[] {0, 0.25 * half}, new double[] {half, 0.2 * half});
        FocalGuess guess = FocalGuess.of(Optional.empty(), CameraData.NONE, WIDTH, HEIGHT);
        ViewFit.View view = fit(circles, focal, 1, 0.05, guess);
        double off = Math.abs(Math.log(guess.pixels() / focal) + view.logFocal());
        assertThat(off).isLessThan(0.12).isLessThan(2 * view.focalUncertainty());
        assertThat(Math.abs(view.tilt() - Math.toRadians(1))).isLessThan(3 * view.tiltUncertainty());
    }

    /** One end chamfered and the lens unknown: each alone could feign the other. What is stated holds, but for one in some thirty. */
    @Test
    void a_chamfer_and_an_unknown_lens_are_told_apart() throws Unsure {
        int beyond = 0;
        int views = 0;
        for (double equivalent : new double[] {26, 38, 50}) {
            for (double chamfer : new double[] {0.12, 0.2}) {
                for (double lean : new double[] {-1, 0, 2}) {
                    for (double stout : new double[] {0.16, 0.24}) {
                        beyond += isBeyond(equivalent, chamfer, lean, stout) ? 1 : 0;
                        views++;
                    }
                }
            }
        }
        assertThat(views).isEqualTo(36);
        assertThat(beyond).isLessThan(3);
    }

    private static boolean isBeyond(double equivalent, double chamfer, double lean, double stout) throws Unsure {
        double focal = equivalent / 36 * WIDTH;
        double half = 0.4 * WIDTH / focal;
        double radius = stout * half;
        List<double[]> circles = List.of(
                new double[] {-half, radius * (1 - chamfer)},
                new double[] {-half + chamfer * radius, radius},
                new double[] {half, radius});
        FocalGuess guess = FocalGuess.of(Optional.empty(), CameraData.NONE, WIDTH, HEIGHT);
        ViewFit.View view = fit(circles, focal, lean, 0.1, guess);
        double far = Math.log(guess.pixels() * Math.exp(view.logFocal()) / focal);
        double leans = view.tilt() - Math.toRadians(lean);
        return Math.abs(far) > 2.5 * view.focalUncertainty() || Math.abs(leans) > 2.5 * view.tiltUncertainty();
    }

    /** Three degrees beside the true view, a whole end still bulges enough; one that something straight lies over does not in the true one. */
    @ParameterizedTest
    @ValueSource(doubles = {-3, 0, 3})
    void no_whole_end_bulges_too_little(double beside) throws Unsure {
        for (List<double[]> piece :
                List.of(cylinder(0, 0), cylinder(0.2 * RADIUS, 0), cylinder(0, RADIUS), rounded(0.5))) {
            double[][] round = HullContour.of(piece, sight(FOCAL, 0), 0.05);
            assertThat(bulgesTooLittle(round, beside)).isFalse();
        }
        double[][] covered = HullContour.of(cylinder(0, 0), sight(FOCAL, 0), 0.05);
        double least = Arrays.stream(covered[0]).min().orElseThrow();
        covered[0] = Arrays.stream(covered[0]).map(x -> Math.max(x, least + 15)).toArray();
        assertThat(bulgesTooLittle(covered, beside)).isTrue();
    }

    /** Of the start end, seen in a view that leans by so many degrees. */
    private static boolean bulgesTooLittle(double[][] round, double leanDegrees) throws Unsure {
        FocalGuess guess = new FocalGuess(FOCAL, 0.03, "a lens known to three per cent");
        ViewFit fit = new ViewFit(
                round[0], round[1], new double[round[0].length], WIDTH, HEIGHT, guess, ViewFit.TiltGuess.BY_EYE);
        double tilt = Math.toRadians(leanDegrees);
        SquaredContour there = fit.contour(fit.straightened(AXIS, 0, tilt), 0, tilt);
        return EndCap.face(there, true, EndEdge.SHARP).bulgesTooLittle();
    }
}
