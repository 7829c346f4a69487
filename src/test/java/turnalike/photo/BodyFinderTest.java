package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A pale bar on a ground of uneven light, on which something of another hue lies. */
class BodyFinderTest {
    private static final int WIDTH = 720;

    private static final int HEIGHT = 540;

    private static final int START = 160;

    static final int LONG = 400;

    private static final int END = START + LONG;

    private static final int MIDDLE = 240;

    /** The linear light at a pixel. */
    private interface Lit {
        double[] at(int x, int y);
    }

    /** With noise of a code, and of so much in the light of the ground, which keeps its hue. */
    private static CoarsePicture picture(double uneven, Lit lit) {
        SplittableRandom dice = new SplittableRandom(5);
        byte[] data = new byte[3 * WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double[] light = lit.at(x, y);
                double share = isBar(x, y) ? 1 : 1 + uneven * dice.nextGaussian();
                for (int c = 0; c < 3; c++) {
                    double code = Gamma.code(share * light[c]) + dice.nextGaussian();
                    data[3 * (y * WIDTH + x) + c] = (byte) Math.max(0, Math.min(255, Math.round(code)));
                }
            }
        }
        return CoarsePicture.of(Picture.of(data, WIDTH, HEIGHT));
    }

    private static boolean isBar(int x, int y) {
        return x >= START && x < END && Math.abs(y - MIDDLE) < 28;
    }

    private static double[] light(double red, double green, double blue) {
        return new double[] {red, green, blue};
    }

    static CoarsePicture stained() {
        return picture(0.12, BodyFinderTest::stained);
    }

    /** A stain from the bar to what lies below it, out of the picture. */
    private static double[] stained(int x, int y) {
        if (isBar(x, y)) {
            return light(0.62, 0.6, 0.55);
        }
        boolean red = Math.hypot(x - 250, y - HEIGHT) < 150;
        boolean stain = Math.abs(x - 260) < 60 && y > MIDDLE && y < HEIGHT - 100;
        return red ? light(0.2, 0.02, 0.02) : stain ? light(0.092, 0.08, 0.083) : light(0.08, 0.085, 0.09);
    }

    @Test
    void what_a_stain_of_another_hue_joins_to_the_piece_is_apart_in_light() throws Unsure {
        CoarsePicture picture = stained();
        assertThatThrownBy(() -> BodyFinder.find(picture, Optional.empty()))
                .hasMessageContaining("runs out of the picture");
        BodyFinder.Body body = BodyFinder.otherwise(picture);
        assertThat(body.to() - body.from()).isCloseTo(END - START, within(6.0));
        assertThat(Math.toDegrees(body.angle())).isCloseTo(0, within(1.0));
        assertThat(body.widest()).isCloseTo(28, within(3.0));
    }

    /** Of the light on a dark red cloth green and blue are a hundredth. */
    @Test
    void a_small_piece_on_a_dark_red_cloth_is_not_in_the_dark() throws Unsure {
        CoarsePicture picture = picture(
                0.02,
                (x, y) -> x >= START && x < END && Math.abs(y - MIDDLE) < 8
                        ? light(0.6, 0.4, 0.25)
                        : light(0.12, 0.006, 0.007));
        BodyFinder.Body body = BodyFinder.find(picture, Optional.empty());
        assertThat(body.to() - body.from()).isCloseTo(END - START, within(6.0));
    }
}
