package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A bar of wood across the picture, lit from above: down to its lower edge at 400 it darkens. */
class LocalColoursTest {
    private static final int SIZE = 1800;

    private static final int UPPER = 300;

    private static final int LOWER = 400;

    /** Its shaded strip. */
    private static final int SHADED = 4;

    private static LocalColours colours(Color ground, double shade) throws IOException, Unsure {
        Color maple = new Color(205, 178, 142);
        BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(ground);
        pen.fillRect(0, 0, SIZE, SIZE);
        pen.setColor(maple);
        pen.fillRect(100, UPPER, SIZE - 200, LOWER - UPPER);
        pen.setColor(new Color(
                (int) Gamma.code(shade * Gamma.linear(maple.getRed())),
                (int) Gamma.code(shade * Gamma.linear(maple.getGreen())),
                (int) Gamma.code(shade * Gamma.linear(maple.getBlue()))));
        pen.fillRect(100, LOWER - SHADED, SIZE - 200, SHADED);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        Picture picture = Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), 1);
        CoarsePicture coarse = CoarsePicture.of(picture);
        byte[] mask = new byte[coarse.width() * coarse.height()];
        for (int y = 0; y < coarse.height(); y++) {
            for (int x = 0; x < coarse.width(); x++) {
                double at = (y + 0.5) * coarse.block();
                double along = (x + 0.5) * coarse.block();
                mask[y * coarse.width() + x] =
                        (byte) (at > UPPER && at < LOWER && along > 100 && along < SIZE - 100 ? 1 : 0);
            }
        }
        return new LocalColours(picture, coarse, mask);
    }

    @Test
    void before_the_black_of_its_own_shadow_the_shaded_side_is_still_the_piece() throws IOException, Unsure {
        LocalColours colours = colours(new Color(16, 16, 17), 0.2);
        float[] colour = new float[3];
        for (int x = 200; x < 1500; x += 7) {
            assertThat(colours.share(x, LOWER - 2, colour)).isGreaterThan(0.5);
            assertThat(colours.share(x, LOWER + 3, colour)).isLessThan(0.5);
            assertThat(colours.share(x, UPPER + 3, colour)).isGreaterThan(0.5);
            assertThat(colours.share(x, UPPER - 3, colour)).isLessThan(0.5);
        }
    }

    @Test
    void on_white_card_neither_the_shaded_side_nor_a_shadow_crosses_over() throws IOException, Unsure {
        LocalColours colours = colours(new Color(240, 240, 242), 0.35);
        float[] colour = new float[3];
        for (int x = 200; x < 1500; x += 7) {
            assertThat(colours.share(x, LOWER - 2, colour)).isGreaterThan(0.5);
            assertThat(colours.share(x, LOWER + 3, colour)).isLessThan(0.5);
        }
    }
}
