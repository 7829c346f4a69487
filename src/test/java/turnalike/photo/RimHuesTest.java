package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Turned pieces on cloth with red and white checks, each with a shadow below. */
class RimHuesTest {
    private static final int WIDTH = 640;

    private static final int HEIGHT = 420;

    private static final double[] WOOD = {0.42, 0.27, 0.13};

    private static final double[] STEEL = {0.3, 0.3, 0.31};

    /** A piece or a centre, lying along the picture. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Bar(double[] light, int from, int to, int middle, double thick) {
        boolean isAt(int x, int y) {
            double half = thick * (1 + 0.25 * Math.sin((x - from) / 45.0));
            return x >= from && x < to && Math.abs(y - middle) < half;
        }
    }

    private static double[] cloth(int x, int y) {
        double across = (x * 0.8 + y * 0.6) / 44;
        double down = (y * 0.8 - x * 0.6) / 44;
        int red = (int) Math.floor(across) & 1;
        red += (int) Math.floor(down) & 1;
        return red == 0
                ? new double[] {0.75, 0.76, 0.8}
                : red == 1 ? new double[] {0.6, 0.35, 0.39} : new double[] {0.45, 0.05, 0.06};
    }

    private static BodyFinder.Body found(Bar... bars) throws IOException, Unsure {
        return BodyFinder.find(drawn(bars), Optional.empty());
    }

    private static CoarsePicture drawn(Bar... bars) throws IOException, Unsure {
        SplittableRandom dice = new SplittableRandom(11);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double[] light = cloth(x, y);
                double shade = 1;
                for (Bar bar : List.of(bars)) {
                    shade = bar.isAt(x, y - 9) ? 0.5 : shade;
                }
                for (Bar bar : List.of(bars)) {
                    if (bar.isAt(x, y)) {
                        light = bar.light;
                        shade = 1 - 0.5 * Math.pow((y - bar.middle) / (1.3 * bar.thick), 2);
                    }
                }
                int rgb = 0;
                for (double part : light) {
                    int code = (int) Math.round(Gamma.code(part * shade) + 1.5 * dice.nextGaussian());
                    rgb = rgb << 8 | Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return CoarsePicture.of(Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), 1));
    }

    private static void runsFromTo(BodyFinder.Body body, int from, int to, int middle) {
        double start = body.x() + body.from() * Math.cos(body.angle());
        double end = body.x() + body.to() * Math.cos(body.angle());
        assertThat(Math.min(start, end)).isCloseTo(from, within(3.0));
        assertThat(Math.max(start, end)).isCloseTo(to, within(3.0));
        assertThat(body.y() + (320 - body.x()) * Math.tan(body.angle())).isCloseTo(middle, within(1.5));
        assertThat(body.widest()).isCloseTo(20 * 1.25, within(2.5));
    }

    @Test
    void a_piece_is_found_on_checked_cloth() throws IOException, Unsure {
        runsFromTo(found(new Bar(WOOD, 90, 560, 200, 20)), 90, 560, 200);
    }

    @Test
    void it_is_found_between_centres_that_run_out_of_the_picture() throws IOException, Unsure {
        runsFromTo(
                found(
                        new Bar(STEEL, 0, 120, 200, 12),
                        new Bar(STEEL, 540, WIDTH, 200, 12),
                        new Bar(WOOD, 120, 540, 200, 20)),
                120,
                540,
                200);
    }

    @Test
    void two_pieces_there_are_refused() {
        assertThatExceptionOfType(Unsure.class)
                .isThrownBy(() -> found(new Bar(WOOD, 90, 560, 120, 20), new Bar(WOOD, 90, 560, 300, 20)));
    }

    @Test
    void a_piece_that_runs_out_of_the_picture_is_refused() {
        assertThatExceptionOfType(Unsure.class).isThrownBy(() -> found(new Bar(WOOD, 200, WIDTH, 200, 20)));
    }

    @Test
    void bare_cloth_is_refused() {
        assertThatExceptionOfType(Unsure.class).isThrownBy(() -> found());
    }

    @Test
    void part_of_a_piece_is_known_by_what_goes_on_beyond_it() throws IOException, Unsure {
        CoarsePicture picture = drawn(new Bar(WOOD, 90, 560, 200, 20));
        BodyFinder.Body whole = BodyFinder.find(picture, Optional.empty());
        assertThat(BeyondEnds.lookLike(picture, whole)).isFalse();
        BodyFinder.Body part = new BodyFinder.Body(
                whole.mask(), whole.x(), whole.y(), whole.angle(), whole.from() + 60, whole.to(), whole.widest());
        assertThat(BeyondEnds.lookLike(picture, part)).isTrue();
    }
}
