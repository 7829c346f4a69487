package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

/** A piece on the printed sheet or beside it, in small pictures made ray by ray: no length is given, and it comes back. */
class SheetTraceTest {
    /** What the sheet promises of a length, as a share. */
    private static final double LENGTH = 0.003;

    private static final TurnedShape PIECE = piece();

    private static final SheetPicture LYING =
            SheetPicture.of(PIECE).turned(5).leaning(-4, 7).bent(0.04);

    private static final SheetPicture BESIDE =
            SheetPicture.of(PIECE).moved(0, 150).from(700, 640).printedAt(0.97);

    private static final byte[] LYING_PNG = png(LYING);

    private static TurnedShape piece() {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 15});
        double at = TurnedShape.straight(points, 0, 24, 15, 15);
        at = TurnedShape.ellipse(points, at, 20, 15, 22);
        at = TurnedShape.ellipse(points, at, 30, 15, 9);
        at = TurnedShape.straight(points, at, 70, 15, 20);
        at = TurnedShape.wave(points, at, 40, 20, 12);
        TurnedShape.straight(points, at, 26, 12, 14);
        return TurnedShape.of(points);
    }

    private static byte[] png(SheetPicture picture) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(picture.image(), "png", bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static PhotoTrace trace(byte[] png, SheetPicture picture, Optional<Length> span, Optional<Length> bar) {
        // The angle of view is told a little wrong, as a camera tells it.
        Angle view = Angle.ofDegrees(1.004 * picture.viewDegrees());
        PhotoWish.OnSheet sheet = new PhotoWish.OnSheet(bar, Optional.empty(), Optional.empty());
        return PhotoTrace.of(png, new PhotoWish(span, Optional.empty(), Optional.of(view), sheet), Effort.unlimited());
    }

    private static void comesBack(PhotoTrace trace) {
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        PhotoTrace.Traced traced = (PhotoTrace.Traced) trace;
        double length = traced.profile().length().mm();
        assertThat(length / PIECE.length()).isCloseTo(1, within(LENGTH));
        double sum = 0;
        int count = 0;
        for (Profile.Station station : traced.profile().stations()) {
            double place = station.place().mm();
            boolean hidden = traced.profile().hidden().stream()
                    .anyMatch(stretch -> stretch.from().mm() <= place
                            && place <= stretch.to().mm());
            if (!hidden && place > 1 && place < length - 1) {
                double off = station.radius().mm() - PIECE.at(place * PIECE.length() / length);
                sum += off * off;
                count++;
            }
        }
        assertThat(count).isGreaterThan(300);
        assertThat(Math.sqrt(sum / count) / traced.mmPerPixel()).isLessThan(0.25);
        assertThat(traced.scaleFrom()).startsWith("the printed sheet");
        assertThat(traced.warnings()).isEmpty();
    }

    @Test
    void on_the_sheet_under_a_leaning_camera_with_a_bent_lens_no_length_is_needed() {
        comesBack(trace(LYING_PNG, LYING, Optional.empty(), Optional.empty()));
    }

    @Test
    void beside_a_sheet_printed_small_its_measured_bar_mends_the_scale() {
        comesBack(trace(png(BESIDE), BESIDE, Optional.empty(), Optional.of(Length.ofMm(97))));
    }

    @Test
    void a_length_and_the_sheet_check_each_other() {
        PhotoTrace wrong = trace(LYING_PNG, LYING, Optional.of(Length.ofMm(1.05 * PIECE.length())), Optional.empty());
        assertThat(wrong).isInstanceOf(PhotoTrace.NotSure.class);
        assertThat(((PhotoTrace.NotSure) wrong).reason()).isEqualTo(PhotoTrace.Reason.SHEET);
        assertThat(((PhotoTrace.NotSure) wrong).what())
                .contains("by the sheet it is")
                .contains("220.5 mm");
        PhotoTrace right = trace(LYING_PNG, LYING, Optional.of(Length.ofMm(PIECE.length())), Optional.empty());
        assertThat(((PhotoTrace.Traced) right).profile().length().mm()).isCloseTo(PIECE.length(), within(1e-9));
        assertThat(((PhotoTrace.Traced) right).scaleFrom()).startsWith("the overall length that was given; the sheet");
    }

    private static PhotoTrace between(PixelPoint start, PixelPoint end, Optional<Length> span) {
        PhotoWish wish = new PhotoWish(
                span,
                Optional.of(new PhotoWish.Ends(start, end)),
                Optional.of(Angle.ofDegrees(1.004 * LYING.viewDegrees())),
                PhotoWish.OnSheet.USUAL);
        return PhotoTrace.of(LYING_PNG, wish, Effort.unlimited());
    }

    @Test
    void ends_pointed_at_on_the_sheet_cut_the_piece_at_the_sheets_own_scale() {
        PhotoTrace.Overlay lies =
                ((PhotoTrace.Traced) trace(LYING_PNG, LYING, Optional.empty(), Optional.empty())).overlay();
        comesBack(between(lies.start(), lies.end(), Optional.empty()));
        PixelPoint middle = new PixelPoint(
                (lies.start().x() + lies.end().x()) / 2,
                (lies.start().y() + lies.end().y()) / 2);
        PhotoTrace.Traced half = (PhotoTrace.Traced) between(lies.start(), middle, Optional.empty());
        assertThat(half.profile().length().mm()).isCloseTo(PIECE.length() / 2, within(0.04 * PIECE.length()));
        double radius = half.profile()
                .stations()
                .get(half.profile().stations().size() / 2)
                .radius()
                .mm();
        assertThat(radius).isCloseTo(PIECE.at(half.profile().length().mm() / 2), within(1.0));
        // A length that is given is the one between the ends; the sheet checks it as it does the whole.
        PhotoTrace.Traced given = (PhotoTrace.Traced)
                between(lies.start(), middle, Optional.of(half.profile().length()));
        assertThat(given.profile().length().mm())
                .isCloseTo(half.profile().length().mm(), within(1e-6));
        assertThat(between(
                        lies.start(),
                        middle,
                        Optional.of(half.profile().length().times(1.1))))
                .isInstanceOf(PhotoTrace.NotSure.class);
    }
}
