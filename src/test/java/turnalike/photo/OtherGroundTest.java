package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

/** A piece on a card that does not fill the picture, and one with a shadow of its own hue. */
@Tag("long-sums")
class OtherGroundTest {
    /** Farther off than others: the card is a strip of the picture. */
    private static final SmallPicture PICTURE =
            new SmallPicture(PhotoTraceTest.spindle(), 640, 500, 480, 360, 3, 0, 6, 20);

    /** What {@link SmallPicture} mixes its edges with. */
    private static final Color CARD = new Color(195, 198, 203);

    /** On tiles with dark joints, the card's rim slanting. */
    private static BufferedImage onTiles(Color tiles) {
        int w = PICTURE.width();
        int h = PICTURE.height();
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(tiles);
        pen.fillRect(0, 0, w, h);
        pen.setColor(tiles.darker());
        pen.setStroke(new BasicStroke(4));
        for (int k = -h; k < w; k += 70) {
            pen.drawLine(k, 0, k + h / 3, h);
            pen.drawLine(0, k, w, k + w / 4);
        }
        pen.setColor(CARD);
        pen.fillPolygon(new Polygon(new int[] {42, w - 40, w - 26, 30}, new int[] {130, 142, 264, 252}, 4));
        pen.dispose();
        return noisy(image);
    }

    private static BufferedImage noisy(BufferedImage image) {
        SplittableRandom dice = new SplittableRandom(3);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                Color colour = new Color(image.getRGB(x, y));
                int stray = (int) Math.round(dice.nextGaussian());
                image.setRGB(
                        x,
                        y,
                        new Color(
                                        clamped(colour.getRed() + stray),
                                        clamped(colour.getGreen() + stray),
                                        clamped(colour.getBlue() + stray))
                                .getRGB());
            }
        }
        return image;
    }

    private static int clamped(int code) {
        return Math.max(0, Math.min(255, code));
    }

    private static PhotoTrace trace(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(PICTURE.shape().length())),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(PICTURE.viewDegrees())));
        return PhotoTrace.of(bytes.toByteArray(), wish, Effort.unlimited());
    }

    /** Root mean square of the radius' error in pixels, away from ends and shoulders. */
    private static double error(PhotoTrace trace) {
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        PhotoTrace.Traced traced = (PhotoTrace.Traced) trace;
        double squares = 0;
        int count = 0;
        for (Profile.Station station : traced.profile().stations()) {
            double place = station.place().mm();
            boolean hidden = traced.profile().hidden().stream()
                    .anyMatch(
                            gap -> gap.from().mm() <= place && place <= gap.to().mm());
            boolean inside = place > 4 && place < PICTURE.shape().length() - 4;
            double rise =
                    inside ? PICTURE.shape().at(place + 1) - PICTURE.shape().at(place - 1) : 9;
            if (!hidden && Math.abs(rise) < 2) {
                squares += Math.pow((station.radius().mm() - PICTURE.shape().at(place)) / traced.mmPerPixel(), 2);
                count++;
            }
        }
        assertThat(count).isGreaterThan(300);
        return Math.sqrt(squares / count);
    }

    @Test
    void a_piece_on_a_card_that_lies_on_tiles_is_found_on_the_card() throws IOException {
        for (Color tiles : new Color[] {new Color(160, 130, 92), new Color(92, 100, 96), new Color(60, 40, 30)}) {
            assertThat(error(trace(PICTURE.drawn(onTiles(tiles), false))))
                    .as(tiles.toString())
                    .isLessThan(0.3);
        }
    }

    /** The light that still falls there is of another hue than the lamp's that does not. */
    private static BufferedImage shaded(Color shadow) {
        int w = PICTURE.width();
        int h = PICTURE.height();
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(CARD);
        pen.fillRect(0, 0, w, h);
        pen.setColor(shadow);
        pen.fillOval(50, 168, 100, 38);
        pen.fillOval(90, 182, 240, 42);
        pen.dispose();
        return noisy(image);
    }

    @Test
    void a_shadow_of_another_hue_is_taken_off_the_piece() throws IOException {
        assertThat(error(trace(PICTURE.drawn(shaded(new Color(90, 90, 110)), false))))
                .isLessThan(0.3);
    }
}
