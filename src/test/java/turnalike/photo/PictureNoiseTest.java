package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Pictures drawn pixel by pixel: with noise everywhere, or with boards whose grain leaves even places. */
class PictureNoiseTest {
    private static final int WIDTH = 640;

    private static final int HEIGHT = 480;

    /** What stands at a pixel, as a code of 255. */
    private interface Codes {
        double at(int x, int y, SplittableRandom dice);
    }

    private static Picture picture(Codes codes) {
        SplittableRandom dice = new SplittableRandom(11);
        byte[] data = new byte[3 * WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double code = codes.at(x, y, dice);
                for (int c = 0; c < 3; c++) {
                    data[3 * (y * WIDTH + x) + c] = (byte) Math.max(0, Math.min(255, Math.round(code)));
                }
            }
        }
        return Picture.of(data, WIDTH, HEIGHT);
    }

    @Test
    void noise_is_told_in_codes() {
        for (double noise : new double[] {1, 4, 9}) {
            Picture noisy = picture((x, y, dice) -> 90 + noise * dice.nextGaussian());
            // The evenest tenth of squares strays a little less than the usual one.
            assertThat(PictureNoise.codes(noisy)).isBetween(0.85 * noise, 1.02 * noise);
        }
    }

    @Test
    void low_light_has_much_of_it_and_good_light_has_not() {
        assertThat(PictureNoise.isMuch(picture((x, y, dice) -> 60 + 4 * dice.nextGaussian())))
                .isTrue();
        assertThat(PictureNoise.isMuch(picture((x, y, dice) -> 60 + dice.nextGaussian())))
                .isFalse();
    }

    /** Noise is everywhere. */
    @Test
    void the_grain_of_a_board_that_leaves_even_places_is_no_noise() {
        Picture board = picture((x, y, dice) -> 120 + dice.nextGaussian() + (y % 96 < 64 && x % 7 < 2 ? 30 : 0));
        assertThat(PictureNoise.codes(board)).isLessThan(1.3);
    }

    @Test
    void made_smaller_a_pixel_is_the_mean_light_of_a_square_in_less_noise() {
        // Every other pixel black: half the light, not half the code.
        Picture chequered = picture((x, y, dice) -> (x + y) % 2 == 0 ? 200 : 0);
        Picture small = PictureNoise.reduced(chequered, 2);
        float[] light = new float[3];
        small.linear(WIDTH / 4, HEIGHT / 4, light);
        assertThat(small.width()).isEqualTo(WIDTH / 2);
        assertThat(small.height()).isEqualTo(HEIGHT / 2);
        assertThat((double) light[1]).isCloseTo(Gamma.linear(200) / 2, within(0.002));
        Picture noisy = picture((x, y, dice) -> 90 + 6 * dice.nextGaussian());
        assertThat(PictureNoise.codes(PictureNoise.reduced(noisy, 3)))
                .isCloseTo(PictureNoise.codes(noisy) / 3, within(0.3));
    }

    @Test
    void a_small_picture_is_made_no_smaller() {
        assertThat(PictureNoise.mostSmaller(picture((x, y, dice) -> 90))).isEqualTo(1);
        assertThat(PictureNoise.mostSmaller(Picture.of(new byte[3 * 1600 * 20], 1600, 20)))
                .isEqualTo(4);
        assertThat(PictureNoise.mostSmaller(Picture.of(new byte[3 * 20 * 4000], 20, 4000)))
                .isEqualTo(4);
    }

    @Test
    void its_edges_are_told_where_they_lie_in_the_picture_itself() {
        Profile profile = new Profile(
                Length.ofMm(10),
                List.of(
                        new Profile.Station(Length.ofMm(0), Length.ofMm(3), Length.ofMm(0.1)),
                        new Profile.Station(Length.ofMm(10), Length.ofMm(3), Length.ofMm(0.1))),
                List.of());
        PhotoTrace.Overlay lies = new PhotoTrace.Overlay(
                320,
                240,
                new PixelPoint(10, 20),
                new PixelPoint(110, 20),
                List.of(new PixelPoint(10, 12.5)),
                List.of(new PixelPoint(10, 27.5)));
        PhotoTrace.Traced small =
                new PhotoTrace.Traced(profile, profile, List.of(), 0.3, "scale", "view", lies, List.of("one"));
        PhotoTrace.Traced whole = PictureNoise.ofWhole(small, 2, picture((x, y, dice) -> 90));
        assertThat(whole.overlay().widthPixels()).isEqualTo(WIDTH);
        assertThat(whole.overlay().heightPixels()).isEqualTo(HEIGHT);
        assertThat(whole.overlay().end()).isEqualTo(new PixelPoint(220, 40));
        assertThat(whole.overlay().leftEdge()).containsExactly(new PixelPoint(20, 25));
        assertThat(whole.overlay().rightEdge()).containsExactly(new PixelPoint(20, 55));
        assertThat(whole.mmPerPixel()).isEqualTo(0.3);
        assertThat(whole.warnings()).hasSize(2).element(1).asString().contains("2 times smaller");
    }
}
