package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

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

/** A spindle in the light of a bench lamp: a twentieth of the light, and noise as a sensor has it then. */
@Tag("long-sums")
class LowLightTraceTest {
    private static final SmallPicture PICTURE = new SmallPicture(
            PhotoTraceTest.spindle(), 1.35 * PhotoTraceTest.spindle().length(), 1330, 1280, 960, 7, 0, 0, 0);

    private static final double LIGHT = 0.05;

    /** The noise's square in linear light: so much of the light, and so much in the dark. */
    private static final double BY_LIGHT = 2e-3;

    private static final double IN_THE_DARK = 1e-4;

    private static byte[] inLowLight() throws IOException {
        SplittableRandom dice = new SplittableRandom(17);
        BufferedImage image = PICTURE.image();
        for (int y = 0; y < image.getHeight(); y++) {
            double[] before = new double[3];
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = 0;
                for (int shift = 16; shift >= 0; shift -= 8) {
                    double light = LIGHT * Gamma.linear(image.getRGB(x, y) >> shift & 255);
                    // A camera's own smoothing leaves neighbours alike.
                    double stray = 0.75 * dice.nextGaussian() + 0.66 * before[shift / 8];
                    before[shift / 8] = stray;
                    double noisy = light + stray * Math.sqrt(BY_LIGHT * light + IN_THE_DARK);
                    rgb = rgb << 8 | (int) Math.round(Gamma.code(Math.max(0, noisy)));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    @Test
    void a_picture_full_of_noise_is_traced_made_smaller_and_says_so() throws IOException {
        double length = PICTURE.shape().length();
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(length)),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(PICTURE.viewDegrees())));
        PhotoTrace trace = PhotoTrace.of(inLowLight(), wish, Effort.unlimited());
        assertThat(trace).isInstanceOf(PhotoTrace.Traced.class);
        PhotoTrace.Traced traced = (PhotoTrace.Traced) trace;
        assertThat(traced.warnings()).anyMatch(each -> each.startsWith("there is much grain in the picture"));
        assertThat(traced.overlay().widthPixels()).isEqualTo(PICTURE.width());
        double squares = 0;
        int count = 0;
        for (Profile.Station station : traced.profile().stations()) {
            double place = station.place().mm();
            // As sure as a pixel of the picture as given tells no radius of this one.
            assertThat(station.uncertainty().mm()).isGreaterThan(0.25 * traced.mmPerPixel());
            boolean hidden = traced.profile().hidden().stream()
                    .anyMatch(
                            gap -> gap.from().mm() <= place && place <= gap.to().mm());
            boolean inside = place > 5 && place < length - 5;
            double rise =
                    inside ? PICTURE.shape().at(place + 2) - PICTURE.shape().at(place - 2) : 9;
            if (!hidden && Math.abs(rise) < 4) {
                squares += Math.pow((station.radius().mm() - PICTURE.shape().at(place)) / traced.mmPerPixel(), 2);
                count++;
            }
        }
        assertThat(count).isGreaterThan(400);
        assertThat(Math.sqrt(squares / count)).isLessThan(0.5);
    }
}
