package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A piece of a board's own colour that lies on the board, lit from one side so that its shadow lies on the other. */
class MirrorBodyTest {
    private static final int WIDTH = 640;

    private static final int HEIGHT = 360;

    private static final double MIDDLE = 180;

    private static final int START = 90;

    private static final int END = 560;

    /** How far the shadow lies below and on. */
    private static final int SHADOW = 14;

    /** The piece's half width along the picture, 0 where it is not. */
    private static double half(double x) {
        if (x < START || x > END) {
            return 0;
        }
        double bead = Math.max(0, 1 - Math.abs(x - 300) / 18);
        return 18 + 6 * Math.sin((x - START) / 90) + 8 * Math.sqrt(bead);
    }

    /** From 0 in the light to 1 in the shadow's middle, which is soft at its rim. */
    private static double shade(double x, double y) {
        double in = half(x - SHADOW) - Math.abs(y - MIDDLE - SHADOW);
        return Math.max(0, Math.min(1, in / 8));
    }

    private static Optional<CoarsePicture> made = Optional.empty();

    private static synchronized CoarsePicture picture() throws IOException, Unsure {
        CoarsePicture picture = made.isPresent() ? made.orElseThrow() : drawn();
        made = Optional.of(picture);
        return picture;
    }

    private static CoarsePicture drawn() throws IOException, Unsure {
        SplittableRandom dice = new SplittableRandom(3);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        double[] wood = {0.34, 0.21, 0.11};
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double across = (y - MIDDLE) / Math.max(1e-9, half(x));
                double grain = Math.sin((y + 0.05 * x) * 0.9) > 0.8 ? 0.82 : 1;
                double light = Math.abs(across) < 1
                        ? 0.45 + Math.sqrt(Math.max(0, 1 - Math.pow(0.5 * (across + 0.6), 2) * 1.4))
                        : grain * (1 - 0.6 * shade(x, y));
                int rgb = 0;
                for (double part : wood) {
                    int code = (int) Math.round(Gamma.code(light * part) + 1.5 * dice.nextGaussian());
                    rgb = rgb << 8 | Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return CoarsePicture.of(Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), 1));
    }

    private static BodyFinder.Body body(double middle, double from, double to, double widest) {
        return new BodyFinder.Body(new byte[WIDTH * HEIGHT], 320, middle, 0, from - 320, to - 320, widest);
    }

    @Test
    void a_piece_taken_with_its_shadow_is_parted_from_it() throws IOException, Unsure {
        BodyFinder.Body mended =
                MirrorBody.of(picture(), body(MIDDLE + SHADOW / 2.0, START, END + SHADOW, 32 + SHADOW / 2.0));
        assertThat(mended.y()).isCloseTo(MIDDLE, within(1.0));
        assertThat(mended.x() + mended.from()).isCloseTo(START, within(3.0));
        assertThat(mended.x() + mended.to()).isCloseTo(END, within(3.0));
        double strays = 0;
        for (int x = START + 5; x < END - 5; x++) {
            int high = 0;
            for (int y = 0; y < HEIGHT; y++) {
                high += mended.mask()[y * WIDTH + x];
            }
            strays += Math.abs(high / 2.0 - half(x)) / (END - START);
        }
        assertThat(strays).isLessThan(1.5);
    }

    @Test
    void a_piece_found_too_short_is_followed_to_its_ends() throws IOException, Unsure {
        BodyFinder.Body mended = MirrorBody.of(picture(), body(MIDDLE + 5, START + 90, END - 60, 30));
        assertThat(mended.x() + mended.from()).isCloseTo(START, within(3.0));
        assertThat(mended.x() + mended.to()).isCloseTo(END, within(3.0));
    }

    @Test
    void a_body_whose_edges_mirror_one_another_stays_as_it_is() throws IOException, Unsure {
        BodyFinder.Body right = body(MIDDLE, START, END, 32);
        assertThat(MirrorBody.of(picture(), right)).isSameAs(right);
    }
}
