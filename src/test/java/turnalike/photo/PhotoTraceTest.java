package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

@Tag("long-sums")
class PhotoTraceTest {
    private static final TurnedShape SPINDLE = made();

    /** One and the same, so that its pictures are made once. */
    static TurnedShape spindle() {
        return SPINDLE;
    }

    private static TurnedShape made() {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 20});
        double at = TurnedShape.straight(points, 0, 40, 20, 20);
        at = TurnedShape.ellipse(points, at, 24, 20, 27);
        at = TurnedShape.ellipse(points, at, 40, 20, 14);
        at = TurnedShape.straight(points, at, 130, 20, 26);
        at = TurnedShape.wave(points, at, 60, 26, 15);
        at = TurnedShape.ellipse(points, at, 70, 15, 21);
        TurnedShape.straight(points, at, 36, 15, 18);
        return TurnedShape.of(points);
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static PhotoWish wish(SmallPicture picture) {
        return new PhotoWish(
                Optional.of(Length.ofMm(picture.shape().length())),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(picture.viewDegrees())));
    }

    private static PhotoTrace.Traced traced(byte[] bytes, PhotoWish wish) {
        PhotoTrace trace = PhotoTrace.of(bytes, wish, Effort.unlimited());
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        return (PhotoTrace.Traced) trace;
    }

    private static PhotoTrace.Reason refused(byte[] bytes) {
        PhotoTrace trace = PhotoTrace.of(bytes, PhotoWish.ofSpan(Length.ofMm(400)), Effort.unlimited());
        assertThat(trace).isInstanceOf(PhotoTrace.NotSure.class);
        PhotoTrace.NotSure refusal = (PhotoTrace.NotSure) trace;
        assertThat(refusal.what()).isNotBlank();
        assertThat(refusal.mend()).isNotBlank();
        return refusal.reason();
    }

    /** {rms, share}: root mean square of the radius' error where it was seen, in pixels, and how much of it lies within the stated uncertainty. */
    private static double[] error(PhotoTrace.Traced traced, TurnedShape shape, boolean backward) {
        double sum = 0;
        int count = 0;
        int within = 0;
        for (Profile.Station station : traced.profile().stations()) {
            double place = station.place().mm();
            boolean hidden = traced.profile().hidden().stream()
                    .anyMatch(stretch -> stretch.from().mm() <= place
                            && place <= stretch.to().mm());
            if (!hidden && place > 1 && place < shape.length() - 1) {
                double off = station.radius().mm() - shape.at(backward ? shape.length() - place : place);
                sum += off * off;
                within += Math.abs(off) <= station.uncertainty().mm() ? 1 : 0;
                count++;
            }
        }
        assertThat(count).isGreaterThan(traced.profile().stations().size() * 6 / 10);
        return new double[] {Math.sqrt(sum / count) / traced.mmPerPixel(), (double) within / count};
    }

    private static void comesBack(SmallPicture picture, double mostPixels) throws IOException {
        PhotoTrace.Traced traced = traced(png(picture.image()), wish(picture));
        double[] error = error(traced, picture.shape(), false);
        assertThat(error[0]).isLessThan(mostPixels);
        // The light comes from the camera: both rims darken alike, which no difference between them tells; shoulders
        // count too.
        assertThat(error[1]).isGreaterThan(0.42);
        assertThat(traced.profile().length().mm()).isEqualTo(picture.shape().length());
        assertThat(traced.mmPerPixel())
                .isBetween(0.98 * picture.distance() / picture.focal(), 1.02 * picture.distance() / picture.focal());
    }

    @Test
    void a_spindle_lying_level_comes_back_to_a_quarter_pixel() throws IOException {
        comesBack(SmallPicture.of(spindle()), 0.25);
    }

    @Test
    void a_slanting_spindle_beside_the_middle_comes_back() throws IOException {
        comesBack(SmallPicture.of(spindle()).turned(-24).moved(20, 35), 0.25);
    }

    /** Threads share the runs of the contour's points; which thread takes which hangs on how many there are. */
    @Test
    void however_many_threads_share_the_work_the_answer_is_the_same_to_the_last_bit() throws Exception {
        SmallPicture picture = SmallPicture.of(spindle()).turned(7).tilted(2);
        byte[] jpeg = PhotoRender.jpeg(picture.image(), 0.92f);
        List<PhotoTrace> traces = new ArrayList<>();
        for (int threads : new int[] {1, 2, 5}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                traces.add(pool.submit(() -> traced(jpeg, wish(picture))).get());
            } finally {
                pool.shutdown();
            }
        }
        assertThat(traces.get(1)).isEqualTo(traces.get(0));
        assertThat(traces.get(2)).isEqualTo(traces.get(0));
    }

    @Test
    void a_leaning_spindle_is_set_upright_by_its_ends() throws IOException {
        SmallPicture picture = SmallPicture.of(spindle()).tilted(5);
        comesBack(picture, 0.35);
    }

    @Test
    void a_standing_spindle_begins_at_its_top() throws IOException {
        SmallPicture flat = SmallPicture.of(spindle());
        SmallPicture picture = new SmallPicture(flat.shape(), flat.distance(), flat.focal(), 360, 480, 90, 0, 0, 0);
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(flat.shape().length())),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(flat.viewDegrees())));
        assertThat(error(traced(png(picture.image()), wish), flat.shape(), false)[0])
                .isLessThan(0.25);
    }

    /** All eight are set upright to the pixel, by a picture that no turning leaves as it was; the usual ones of a telephone are traced too. */
    @Test
    void a_picture_stored_on_its_side_is_set_upright_as_the_camera_says() throws IOException, Unsure {
        SmallPicture picture = SmallPicture.of(spindle()).turned(-24).moved(20, 35);
        BufferedImage upright = picture.image();
        for (int orientation = 1; orientation <= 8; orientation++) {
            byte[] bytes =
                    PhotoRender.withFocal(PhotoRender.jpeg(stored(upright, orientation), 0.95f), 37, orientation);
            PictureFile file = PictureFile.read(bytes);
            Picture read =
                    Picture.decode(bytes, file, CameraData.of(file.exif()).orientation());
            assertThat(off(read, upright)).as("orientation %s", orientation).isLessThan(MOST_OFF);
            int other = orientation % 8 + 1;
            assertThat(off(Picture.decode(bytes, file, other), upright))
                    .as("orientation %s read as %s", orientation, other)
                    .isGreaterThan(2 * MOST_OFF);
            if (orientation == 6 || orientation == 8) {
                PhotoTrace.Traced traced = traced(bytes, wish(picture));
                assertThat(traced.overlay().widthPixels()).isEqualTo(upright.getWidth());
                assertThat(error(traced, picture.shape(), false)[0])
                        .as("orientation %s", orientation)
                        .isLessThan(0.4);
            }
        }
    }

    /** By how many of 255 steps a colour may be off on average: what a good JPEG loses. */
    private static final double MOST_OFF = 2;

    /** By how many of 255 steps the colours are off on average; all of them where the size is another. */
    private static double off(Picture read, BufferedImage upright) {
        if (read.width() != upright.getWidth() || read.height() != upright.getHeight()) {
            return 255;
        }
        float[] codes = new float[3];
        double sum = 0;
        for (int y = 0; y < read.height(); y++) {
            for (int x = 0; x < read.width(); x++) {
                read.codes(x, y, codes);
                Color colour = new Color(upright.getRGB(x, y));
                sum += Math.abs(codes[0] - colour.getRed())
                        + Math.abs(codes[1] - colour.getGreen())
                        + Math.abs(codes[2] - colour.getBlue());
            }
        }
        return sum / 3 / read.width() / read.height();
    }

    private static BufferedImage stored(BufferedImage upright, int orientation) {
        int w = upright.getWidth();
        int h = upright.getHeight();
        boolean swapped = orientation >= 5;
        BufferedImage stored = new BufferedImage(swapped ? h : w, swapped ? w : h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int[] to = stored(orientation, x, y, w, h);
                stored.setRGB(to[0], to[1], upright.getRGB(x, y));
            }
        }
        return stored;
    }

    /** Where the EXIF standard's eight orientations put the upright picture's pixel: 6 has its first row at the right side, and so on. */
    private static int[] stored(int orientation, int x, int y, int w, int h) {
        return switch (orientation) {
            case 2 -> new int[] {w - 1 - x, y};
            case 3 -> new int[] {w - 1 - x, h - 1 - y};
            case 4 -> new int[] {x, h - 1 - y};
            case 5 -> new int[] {y, x};
            case 6 -> new int[] {y, w - 1 - x};
            case 7 -> new int[] {h - 1 - y, w - 1 - x};
            case 8 -> new int[] {h - 1 - y, x};
            default -> new int[] {x, y};
        };
    }

    @Test
    void the_start_end_is_where_the_wish_says() throws IOException {
        SmallPicture picture = SmallPicture.of(spindle());
        PhotoWish turned = new PhotoWish(
                wish(picture).span(),
                Optional.of(new PhotoWish.Ends(new PixelPoint(440, 180), new PixelPoint(40, 180))),
                wish(picture).view());
        assertThat(error(traced(png(picture.image()), turned), picture.shape(), true)[0])
                .isLessThan(0.25);
    }

    @Test
    void without_a_length_it_asks_for_one() throws IOException {
        PhotoWish nothing = new PhotoWish(Optional.empty(), Optional.empty(), Optional.empty());
        PhotoTrace trace = PhotoTrace.of(png(SmallPicture.of(spindle()).image()), nothing, Effort.unlimited());
        assertThat(((PhotoTrace.NotSure) trace).reason()).isEqualTo(PhotoTrace.Reason.NO_SCALE);
    }

    @Test
    void a_piece_that_runs_out_of_the_picture_is_refused() throws IOException {
        assertThat(refused(png(SmallPicture.of(spindle()).moved(90, 0).image())))
                .isEqualTo(PhotoTrace.Reason.CUT_OFF);
    }

    /** A sheet of the ground's colour lies over one end: no round end is seen so straight from within the piece's length. */
    @Test
    void a_piece_of_which_something_covers_an_end_is_refused() throws IOException {
        BufferedImage image = SmallPicture.of(spindle()).image();
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(image.getRGB(5, 5)));
        pen.fillRect(420, 0, 60, image.getHeight());
        pen.dispose();
        assertThat(refused(png(image))).isEqualTo(PhotoTrace.Reason.NOT_ROUND);
    }

    @Test
    void two_pieces_are_refused() throws IOException {
        BufferedImage image = SmallPicture.of(spindle()).moved(0, -60).image();
        SmallPicture.of(spindle()).moved(0, 60).drawn(image, false);
        assertThat(refused(png(image))).isEqualTo(PhotoTrace.Reason.TWO_PIECES);
    }

    @Test
    void an_empty_picture_holds_no_piece() throws IOException {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(180, 178, 170));
        pen.fillRect(0, 0, 400, 300);
        assertThat(refused(png(image))).isEqualTo(PhotoTrace.Reason.NO_PIECE);
        pen.setColor(new Color(90, 50, 20));
        pen.fillOval(120, 80, 150, 150);
        assertThat(refused(png(image))).isEqualTo(PhotoTrace.Reason.NO_PIECE);
        pen.dispose();
    }

    /** The program's own page with a drawing on it: whatever is found there, much of it would have to hide. */
    @Test
    void a_screen_is_no_piece() throws IOException {
        try (InputStream page = PhotoTraceTest.class.getResourceAsStream("/turnalike/photo/page.png")) {
            assertThat(refused(Objects.requireNonNull(page).readAllBytes()))
                    .isIn(PhotoTrace.Reason.NOT_ROUND, PhotoTrace.Reason.LIKE_GROUND);
        }
    }

    @Test
    void a_picture_in_the_dark_is_refused() throws IOException {
        BufferedImage image = SmallPicture.of(spindle()).image();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int dim = 0;
                for (int shift = 16; shift >= 0; shift -= 8) {
                    dim |= (((rgb >> shift) & 255) / 16) << shift;
                }
                image.setRGB(x, y, dim);
            }
        }
        assertThat(refused(png(image))).isEqualTo(PhotoTrace.Reason.TOO_DARK);
    }

    @Test
    void a_blurred_picture_is_refused() throws IOException {
        BufferedImage image = SmallPicture.of(spindle()).image();
        for (int round = 0; round < 16; round++) {
            BufferedImage soft = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
            new java.awt.image.ConvolveOp(
                            new java.awt.image.Kernel(3, 3, new float[] {
                                1 / 9f, 1 / 9f, 1 / 9f, 1 / 9f, 1 / 9f, 1 / 9f, 1 / 9f, 1 / 9f, 1 / 9f
                            }),
                            java.awt.image.ConvolveOp.EDGE_NO_OP,
                            null)
                    .filter(image, soft);
            image = soft;
        }
        assertThat(refused(png(image))).isEqualTo(PhotoTrace.Reason.BLURRED);
    }

    @Test
    void spent_effort_ends_it() throws IOException {
        SmallPicture picture = SmallPicture.of(spindle());
        PhotoTrace trace = PhotoTrace.of(png(picture.image()), wish(picture), Effort.ofAsks(1));
        assertThat(((PhotoTrace.NotSure) trace).reason()).isEqualTo(PhotoTrace.Reason.STOPPED);
    }
}
