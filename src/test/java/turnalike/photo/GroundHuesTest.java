package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A bar of light wood on white cloth with slanting red stripes: each stripe that meets the bar is ground up to the bar's edge. */
class GroundHuesTest {
    private static final int WIDTH = 800;

    private static final int HEIGHT = 500;

    private static final int UPPER = 200;

    private static final int LOWER = 260;

    private static final int START = 60;

    private static final Color WOOD = new Color(176, 124, 74);

    private static BufferedImage drawn(Color stripes) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(226, 228, 233));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(stripes);
        pen.setStroke(new BasicStroke(22));
        for (int x = -HEIGHT; x < WIDTH; x += 60) {
            pen.drawLine(x, HEIGHT, x + HEIGHT, 0);
        }
        pen.setColor(WOOD);
        pen.fillRect(START, UPPER, WIDTH - 2 * START, LOWER - UPPER);
        pen.dispose();
        return image;
    }

    /** How many of the pixels just beside the bar are told as piece, and just within it as ground. */
    private static int mistaken(Color stripes) throws IOException, Unsure {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(drawn(stripes), "png", bytes);
        Picture picture = Picture.decode(bytes.toByteArray(), PictureFile.read(bytes.toByteArray()), 1);
        CoarsePicture coarse = CoarsePicture.of(picture);
        byte[] mask = new byte[WIDTH * HEIGHT];
        for (int y = UPPER; y < LOWER; y++) {
            for (int x = START; x < WIDTH - START; x++) {
                mask[y * WIDTH + x] = 1;
            }
        }
        LocalColours colours = new LocalColours(picture, coarse, mask);
        float[] colour = new float[3];
        int mistaken = 0;
        for (int x = START + 20; x < WIDTH - START - 20; x++) {
            for (int edge : new int[] {UPPER, LOWER}) {
                int out = edge == UPPER ? -1 : 1;
                int last = edge == UPPER ? UPPER : LOWER - 1;
                mistaken += colours.share(x, last + out, colour) > 0.5 ? 1 : 0;
                mistaken += colours.share(x, last + 2 * out, colour) > 0.5 ? 1 : 0;
                mistaken += colours.share(x, last, colour) < 0.5 ? 1 : 0;
            }
        }
        return mistaken;
    }

    @Test
    void stripes_of_red_on_white_are_both_ground() throws IOException, Unsure {
        assertThat(mistaken(new Color(178, 48, 52))).isZero();
    }

    @Test
    void so_are_stripes_of_brick() throws IOException, Unsure {
        assertThat(mistaken(new Color(160, 88, 70))).isZero();
    }
}
