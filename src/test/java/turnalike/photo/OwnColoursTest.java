package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class OwnColoursTest {
    private static final int WIDTH = 300;

    private static final int HEIGHT = 200;

    private static final double[] GROUND = {0.5, 0.5, 0.5};

    private static final double[] WOOD = {0.4, 0.22, 0.1};

    /** A bar of a colour, 160 by 30 pixels, darker towards its long sides by so much; past a dark cove it may go on. */
    private static CoarsePicture bar(double[] colour, double round, boolean goesOn) throws IOException, Unsure {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(3);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double across = (y - 100) / 15.0;
                boolean in = x >= 60 && x < 220 && Math.abs(across) < 1;
                boolean more = x >= 220 && x < 270 && Math.abs(across) < 1 && goesOn;
                double light = (1 - round * across * across) * (more && x < 226 ? 0.1 : 1);
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    int code = (int)
                            Math.round(Gamma.code(in || more ? light * colour[c] : GROUND[c]) + dice.nextGaussian());
                    rgb = rgb << 8 | Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return CoarsePicture.of(Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), 1));
    }

    @Test
    void a_round_piece_of_another_colour_is_found_from_end_to_end() throws IOException, Unsure {
        assertThat(OwnColours.of(bar(WOOD, 0.6, false))).isNotEmpty();
        BodyFinder.Body body = OwnColours.of(bar(WOOD, 0.6, false)).get(0).done();
        assertThat(Math.abs(Math.sin(body.angle()))).isLessThan(0.01);
        assertThat(body.to() - body.from()).isBetween(156.0, 164.0);
        assertThat(body.widest()).isBetween(13.5, 16.5);
    }

    @Test
    void a_flat_bar_is_no_piece() throws IOException, Unsure {
        assertThat(OwnColours.of(bar(WOOD, 0, false))).isEmpty();
    }

    @Test
    void the_ground_in_less_light_is_a_shadow() throws IOException, Unsure {
        double[] shade = {0.2, 0.2, 0.2};
        assertThat(OwnColours.of(bar(shade, 0.4, false))).isEmpty();
    }

    @Test
    void what_goes_on_beyond_its_end_is_not_the_whole() throws IOException, Unsure {
        assertThat(OwnColours.of(bar(WOOD, 0.6, true)))
                .allSatisfy(each ->
                        assertThat(each.done().to() - each.done().from()).isGreaterThan(200));
    }
}
