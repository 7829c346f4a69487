package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

/** Invented balusters seen from far off, a millimetre to a pixel: square, or round, at both ends. */
class FlatSectionsTest {
    private static final double SIDE = 70;

    /** Light from the right front; a surface turned by so much, from facing the camera to the right. */
    private static double lit(double turned) {
        return 0.2 + 0.8 * Math.max(0, Math.cos(turned - 0.7));
    }

    /** Low light from the side: the border of the piece's own shadow runs along it, much as an arris does. */
    private static double litFromTheSide(double turned) {
        return 0.08
                + 0.9 * Math.max(0, Math.cos(turned - 1.6))
                + 0.25 * Math.pow(Math.max(0, Math.cos(turned - 0.2)), 40);
    }

    /** What is seen of a square turned so: its half width, and the light at a share of it. */
    private static double light(double share, double half, double turn, boolean square, DoubleUnaryOperator lamp) {
        if (!square) {
            return lamp.applyAsDouble(Math.asin(share));
        }
        double arris = half * (Math.cos(turn) - Math.sin(turn)) / (Math.cos(turn) + Math.sin(turn));
        return share * half < arris ? lamp.applyAsDouble(-turn) : lamp.applyAsDouble(Math.PI / 2 - turn);
    }

    private static PhotoTrace.Traced traced(double turn, boolean square, DoubleUnaryOperator lamp) throws IOException {
        int width = 900;
        int height = 300;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(3);
        double wide = SIDE / 2 * (Math.cos(turn) + Math.sin(turn));
        double[] wood = {0.42, 0.24, 0.11};
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                boolean end = x < 250 || x >= 650;
                double half = end ? wide : 24 - 6 * Math.cos((x - 250) / 400.0 * 2 * Math.PI);
                double across = y + 0.5 - 150;
                double inside = x < 100 || x >= 800 ? 0 : Math.max(0, Math.min(1, half - Math.abs(across) + 0.5));
                double share = Math.max(-1, Math.min(1, across / half));
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    double value =
                            inside * wood[c] * light(share, half, turn, end && square, lamp) + (1 - inside) * 0.55;
                    int code = (int) Math.round(Gamma.code(value) + 1.5 * dice.nextGaussian());
                    rgb = (rgb << 8) | Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        PhotoWish wish =
                new PhotoWish(Optional.of(Length.ofMm(700)), Optional.empty(), Optional.of(Angle.ofDegrees(4)));
        PhotoTrace trace = PhotoTrace.of(bytes.toByteArray(), wish, Effort.unlimited());
        assertThat(trace).as("%s", trace).isInstanceOf(PhotoTrace.Traced.class);
        return (PhotoTrace.Traced) trace;
    }

    private static void bothEndsAreSquare(double degrees) throws IOException {
        PhotoTrace.Traced traced = traced(Math.toRadians(degrees), true, FlatSectionsTest::lit);
        assertThat(traced.squares()).hasSize(2);
        Profile.Stretch first = traced.squares().get(0);
        assertThat(first.from().mm()).isCloseTo(0, within(3.0));
        assertThat(first.to().mm()).isCloseTo(150, within(3.0));
        Profile.Station middle = traced.profile().stations().stream()
                .filter(each -> each.place().mm() >= 75)
                .findFirst()
                .orElseThrow();
        // Within what it says itself, twice: half the side, not half of what is seen across.
        assertThat(middle.radius().mm())
                .isCloseTo(SIDE / 2, within(2 * middle.uncertainty().mm()));
        assertThat(middle.uncertainty().mm()).isLessThan(0.05 * SIDE);
        assertThat(traced.warnings()).anyMatch(each -> each.contains("taken for a square"));
    }

    @Test
    void a_flat_that_faces_the_camera_is_half_a_side() throws IOException {
        bothEndsAreSquare(0);
    }

    @Test
    void two_flats_with_an_arris_between_tell_the_side_and_not_what_is_seen_across() throws IOException {
        bothEndsAreSquare(20);
        bothEndsAreSquare(35);
    }

    @Test
    void a_round_end_lit_from_one_side_is_no_square() throws IOException {
        isRound(traced(0, false, FlatSectionsTest::lit));
    }

    @Test
    void a_round_end_along_which_its_own_shadow_begins_and_a_shine_runs_is_no_square() throws IOException {
        isRound(traced(0, false, FlatSectionsTest::litFromTheSide));
    }

    private static void isRound(PhotoTrace.Traced traced) {
        assertThat(traced.squares()).isEmpty();
        assertThat(traced.warnings()).noneMatch(each -> each.contains("square of") || each.contains("be square"));
    }

    @Test
    void in_light_that_falls_alike_on_everything_an_end_that_may_be_square_is_no_square() throws IOException {
        PhotoTrace.Traced traced = traced(0, false, turned -> 0.7);
        assertThat(traced.squares()).isEmpty();
    }
}
