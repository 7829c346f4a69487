package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

/** Pictures that show much else than the piece, some of it running out of them. */
@Tag("long-sums")
class PickedPieceTest {
    private static final TurnedShape SPINDLE = PhotoTraceTest.spindle();

    private static final Color STEEL = new Color(150, 152, 156);

    private static final Color PAINT = new Color(44, 74, 60);

    private static final Color FLOOR = new Color(226, 172, 121);

    private static final Color WALL = new Color(226, 226, 223);

    /** What lies behind a piece, with a camera's noise. */
    private static BufferedImage behind(int width, int height, Color ground, Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(ground);
        pen.fillRect(0, 0, width, height);
        drawing.accept(pen);
        pen.dispose();
        SplittableRandom dice = new SplittableRandom(9);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                Color colour = new Color(image.getRGB(x, y));
                double grain = dice.nextGaussian();
                int red = (int) (colour.getRed() + grain + dice.nextGaussian());
                int green = (int) (colour.getGreen() + grain + dice.nextGaussian());
                int blue = (int) (colour.getBlue() + grain + dice.nextGaussian());
                image.setRGB(x, y, new Color(red, green, blue).getRGB());
            }
        }
        return image;
    }

    /** A lathe from above: its bed from rim to rim, the headstock at one, a centre at each end of a piece along the middle. */
    private static void lathe(Graphics2D pen) {
        pen.setColor(STEEL);
        pen.fillPolygon(new int[] {0, 480, 480, 0}, new int[] {118, 130, 152, 138}, 4);
        pen.fillPolygon(new int[] {0, 480, 480, 0}, new int[] {222, 238, 266, 252}, 4);
        pen.setColor(PAINT);
        pen.fillRect(0, 110, 20, 150);
        pen.fillRect(462, 130, 18, 100);
        pen.setColor(STEEL);
        pen.fillRect(20, 174, 18, 12);
        pen.fillRect(446, 174, 18, 12);
        pen.fillPolygon(new int[] {38, 38, 50}, new int[] {174, 186, 180}, 3);
        pen.fillPolygon(new int[] {446, 446, 432}, new int[] {174, 186, 180}, 3);
    }

    private static PhotoTrace trace(BufferedImage image, SmallPicture picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(picture.shape().length())),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(2 * Math.toDegrees(Math.atan(240 / picture.focal())))));
        return PhotoTrace.of(bytes.toByteArray(), wish, Effort.unlimited());
    }

    /** Root mean square of the radii that were seen, mm; the picture may show the piece the other way round. */
    private static double error(PhotoTrace trace, boolean turned) {
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        PhotoTrace.Traced traced = (PhotoTrace.Traced) trace;
        double squares = 0;
        int count = 0;
        for (Profile.Station each : traced.profile().stations()) {
            double place = each.place().mm();
            double slope = Math.abs(SPINDLE.at(Math.max(0, place - 1)) - SPINDLE.at(place + 1));
            boolean hidden = traced.profile().hidden().stream()
                    .anyMatch(part ->
                            part.from().mm() <= place && place <= part.to().mm());
            if (!hidden && slope < 1) {
                double truth = SPINDLE.at(turned ? SPINDLE.length() - place : place);
                squares += Math.pow(each.radius().mm() - truth, 2);
                count++;
            }
        }
        assertThat(count).isGreaterThan(traced.profile().stations().size() / 2);
        return Math.sqrt(squares / count);
    }

    @Test
    void a_piece_between_a_lathes_centres_is_traced() throws IOException {
        SmallPicture picture = SmallPicture.of(SPINDLE);
        BufferedImage image = behind(480, 360, new Color(120, 118, 112), PickedPieceTest::lathe);
        assertThat(error(trace(picture.drawn(image, false), picture), false)).isLessThan(0.5);
    }

    @Test
    void a_piece_standing_before_a_wall_is_traced() throws IOException {
        SmallPicture picture = new SmallPicture(SPINDLE, 1.25 * SPINDLE.length(), 500, 360, 480, 90, 0, 0, 0);
        BufferedImage image = behind(360, 480, WALL, pen -> {
            pen.setColor(FLOOR);
            pen.fillPolygon(new int[] {0, 360, 360, 0}, new int[] {342, 330, 480, 480}, 4);
        });
        assertThat(error(trace(picture.drawn(image, false), picture), false)).isLessThan(0.5);
    }

    /** Either could be meant. */
    @Test
    void of_two_things_in_a_lathe_that_could_be_traced_none_is() throws IOException {
        SmallPicture picture = SmallPicture.of(SPINDLE);
        BufferedImage image = behind(480, 360, new Color(120, 118, 112), PickedPieceTest::lathe);
        picture.moved(0, -88).drawn(picture.drawn(image, false), false);
        assertThat(trace(image, picture)).isInstanceOf(PhotoTrace.NotSure.class);
    }
}
