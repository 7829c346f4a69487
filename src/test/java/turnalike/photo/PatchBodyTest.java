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

/** A stout bar on blue card, and at its left end something thinner: a tenon with a shine all over it, or a lathe's centre. */
class PatchBodyTest {
    private static final int WIDTH = 640;

    private static final int HEIGHT = 360;

    private static final int TIP = 60;

    private static final int SHOULDER = 130;

    private static final int END = 570;

    private static final double[] MAHOGANY = {0.30, 0.11, 0.06};

    private static BodyFinder.Body found(double... thin) throws IOException, Unsure {
        SplittableRandom dice = new SplittableRandom(7);
        double[] card = {0.04, 0.06, 0.14};
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int off = Math.abs(y - HEIGHT / 2);
                boolean bar = x >= SHOULDER && x < END && off < 40;
                boolean beyond = x >= TIP && x < SHOULDER && off < 22;
                double[] light = bar ? MAHOGANY : beyond ? thin : card;
                int rgb = 0;
                for (double part : light) {
                    int code = (int) Math.round(Gamma.code(part) + dice.nextGaussian());
                    rgb = rgb << 8 | Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        Picture picture = Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), 1);
        return BodyFinder.find(CoarsePicture.of(picture), Optional.empty());
    }

    private static double start(BodyFinder.Body body) {
        return body.x() + body.from() * Math.cos(body.angle());
    }

    private static double end(BodyFinder.Body body) {
        return body.x() + body.to() * Math.cos(body.angle());
    }

    @Test
    void a_thin_tenon_with_a_shine_on_it_belongs_to_the_piece() throws IOException, Unsure {
        BodyFinder.Body body = found(MAHOGANY[0] + 0.12, MAHOGANY[1] + 0.12, MAHOGANY[2] + 0.12);
        assertThat(Math.min(start(body), end(body))).isCloseTo(TIP, within(3.0));
        assertThat(Math.max(start(body), end(body))).isCloseTo(END, within(3.0));
    }

    @Test
    void a_centre_of_steel_does_not() throws IOException, Unsure {
        BodyFinder.Body body = found(0.3, 0.3, 0.31);
        assertThat(Math.min(start(body), end(body))).isCloseTo(SHOULDER, within(3.0));
        assertThat(Math.max(start(body), end(body))).isCloseTo(END, within(3.0));
    }
}
