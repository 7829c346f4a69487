package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

/** A picture of an invented spindle of 400 mm, about one millimetre a pixel, in which somebody points at ends. */
class PointedEndsTest {
    private static final TurnedShape SPINDLE = made();

    private static TurnedShape made() {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 20});
        double at = TurnedShape.straight(points, 0, 100, 20, 20);
        at = TurnedShape.ellipse(points, at, 40, 20, 28);
        at = TurnedShape.straight(points, at, 160, 20, 14);
        TurnedShape.straight(points, at, 100, 14, 14);
        return TurnedShape.of(points);
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static PhotoTrace traced(BufferedImage image, double spanMm, double... ends) throws IOException {
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(spanMm)),
                Optional.of(new PhotoWish.Ends(new PixelPoint(ends[0], ends[1]), new PixelPoint(ends[2], ends[3]))),
                Optional.of(Angle.ofDegrees(SmallPicture.of(SPINDLE).viewDegrees())));
        return PhotoTrace.of(png(image), wish, Effort.unlimited());
    }

    private static double radius(Profile profile, double mm) {
        Profile.Station near = profile.stations().get(0);
        for (Profile.Station each : profile.stations()) {
            if (Math.abs(each.place().mm() - mm) < Math.abs(near.place().mm() - mm)) {
                near = each;
            }
        }
        return near.radius().mm();
    }

    @Test
    void between_ends_pointed_at_well_within_the_piece_only_that_part_is_taken() throws IOException {
        // 60 mm in from the start: on the axis that stands 140 mm left of the middle, at its near side a little
        // further.
        PhotoTrace trace = traced(SmallPicture.of(SPINDLE).image(), 340, 240 - 140 / (1 - 20.0 / 500), 180, 448, 180);
        PhotoTrace.Traced found = (PhotoTrace.Traced) trace;
        assertThat(found.profile().length().mm()).isCloseTo(340, within(1e-6));
        assertThat(found.profile().stations().get(0).place().mm()).isZero();
        for (double at = 5; at < 330; at += 5) {
            if (at < 30 || at > 95) {
                assertThat(radius(found.profile(), at)).isCloseTo(SPINDLE.at(at + 60), within(0.5));
            }
        }
        assertThat(found.warnings().get(0)).contains("between the ends pointed at");
    }

    @Test
    void of_two_pieces_the_one_that_is_pointed_at_is_taken() throws IOException {
        BufferedImage image = SmallPicture.of(SPINDLE).moved(0, -60).image();
        SmallPicture.of(SPINDLE).moved(0, 60).drawn(image, false);
        PhotoTrace.Traced found = (PhotoTrace.Traced) traced(image, 400, 36, 120, 444, 120);
        assertThat(found.overlay().start().y()).isCloseTo(120, within(5.0));
        assertThat(found.profile().length().mm()).isCloseTo(400, within(1e-9));
        assertThat(radius(found.profile(), 120)).isCloseTo(28, within(0.5));
    }

    @Test
    void ends_pointed_at_where_nothing_lies_are_refused_in_words() throws IOException {
        PhotoTrace trace = traced(SmallPicture.of(SPINDLE).image(), 400, 36, 300, 444, 330);
        assertThat(((PhotoTrace.NotSure) trace).reason()).isEqualTo(PhotoTrace.Reason.NO_PIECE);
        assertThat(((PhotoTrace.NotSure) trace).what()).contains("pointed at");
    }

    @Test
    void an_end_pointed_at_beyond_the_piece_is_refused() throws IOException {
        PhotoTrace trace = traced(SmallPicture.of(SPINDLE).image(), 400, 36, 180, 476, 180);
        assertThat(((PhotoTrace.NotSure) trace).what()).contains("ends short of the end pointed at");
    }

    @Test
    void a_copy_is_upright_small_and_has_nothing_of_the_cameras_data() throws IOException {
        byte[] jpeg = PhotoRender.jpeg(SmallPicture.of(SPINDLE).image(), 0.9f);
        // Turned a quarter, as its camera says.
        PhotoCopy copy = PhotoCopy.of(PhotoRender.withFocal(jpeg, 36, 6)).orElseThrow();
        assertThat(copy.width()).isEqualTo(360);
        assertThat(copy.height()).isEqualTo(480);
        assertThat(new String(copy.jpeg(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        assertThat(new String(PhotoRender.withFocal(jpeg, 36, 6), StandardCharsets.ISO_8859_1))
                .contains("Exif");
        BufferedImage large = new BufferedImage(3000, 1000, BufferedImage.TYPE_INT_RGB);
        java.util.Random dice = new java.util.Random(3);
        for (int y = 0; y < 1000; y++) {
            for (int x = 0; x < 3000; x++) {
                large.setRGB(x, y, dice.nextInt(1 << 24));
            }
        }
        PhotoCopy of = PhotoCopy.of(PhotoRender.jpeg(large, 0.5f)).orElseThrow();
        assertThat(of.width()).isEqualTo(PhotoCopy.LONGEST);
        assertThat(of.fullWidth()).isEqualTo(3000);
        assertThat(of.jpeg().length).isLessThanOrEqualTo(PhotoCopy.MOST_BYTES);
        assertThat(PhotoCopy.of(new byte[] {1, 2, 3})).isEmpty();
    }
}
