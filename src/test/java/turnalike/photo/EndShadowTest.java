package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Angle;
import turnalike.units.Length;

/** Something of the piece's own colour lies beside one of its ends. */
class EndShadowTest {
    private static PhotoTrace traced(int x, int y, int wide, int high) throws IOException {
        SmallPicture picture = SmallPicture.of(PhotoTraceTest.spindle());
        BufferedImage image = picture.image();
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(image.getRGB(300, 180)));
        pen.fillOval(x, y, wide, high);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(PhotoTraceTest.spindle().length())),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(picture.viewDegrees())));
        return PhotoTrace.of(bytes.toByteArray(), wish, Effort.unlimited());
    }

    /** By both halves its end stood so far off that radii strayed by 2.5 pixels. */
    @Test
    void beside_one_half_of_a_rim_the_other_half_tells_where_it_ends() throws IOException {
        PhotoTrace trace = traced(440, 186, 16, 16);
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        PhotoTrace.Traced traced = (PhotoTrace.Traced) trace;
        TurnedShape shape = PhotoTraceTest.spindle();
        double squares = 0;
        int count = 0;
        for (Profile.Station station : traced.profile().stations()) {
            double place = station.place().mm();
            if (place > 1 && place < shape.length() - 1) {
                double off = (station.radius().mm() - shape.at(place)) / traced.mmPerPixel();
                squares += off * off;
                count++;
            }
        }
        assertThat(Math.sqrt(squares / count)).isLessThan(0.25);
    }

    @Test
    void where_neither_half_tells_it_is_not_sure() throws IOException {
        PhotoTrace trace = traced(444, 176, 12, 12);
        assertThat(trace).isInstanceOf(PhotoTrace.NotSure.class);
        PhotoTrace.NotSure refusal = (PhotoTrace.NotSure) trace;
        assertThat(refusal.reason()).isEqualTo(PhotoTrace.Reason.LIKE_GROUND);
        assertThat(refusal.what()).contains("not alike on both sides");
    }
}
