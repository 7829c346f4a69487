package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FarFromGroundTest {
    private static final double[] SPREAD = {0.01, 0.01, 0.01};

    /** A level grey ground of the root of light 0.6, and one row of pixels on it. */
    private static float[][] distances(double[]... colours) {
        int count = colours.length;
        byte[] none = new byte[3 * count];
        float[][] planes = new float[3][count];
        double[] places = new double[count];
        for (int x = 0; x < count; x++) {
            places[x] = (double) x / count - 0.5;
            for (int c = 0; c < 3; c++) {
                planes[c][x] = (float) colours[x][c];
            }
        }
        CoarsePicture picture = CoarsePicture.of(Picture.of(none, count, 1)).with(planes);
        double[][] surface = {{0.6, 0, 0}, {0.6, 0, 0}, {0.6, 0, 0}};
        float[][] found = new float[2][count];
        new FarFromGround(picture, places, SPREAD).row(0, surface, found[0], found[1]);
        return found;
    }

    @Test
    void a_shadow_is_far_by_light_and_not_by_hue() {
        float[][] found = distances(new double[] {0.6, 0.6, 0.6}, new double[] {0.48, 0.48, 0.48});
        assertThat(found[0][0]).isCloseTo(0, within(1e-4f));
        assertThat(found[1][0]).isCloseTo(0, within(1e-4f));
        assertThat(found[0][1]).isCloseTo(0, within(1e-4f));
        assertThat(found[1][1]).as("a fifth of the light is missing").isCloseTo(1, within(1e-4f));
    }

    @Test
    void another_hue_is_far_by_both_and_so_is_what_no_shadow_darkens() {
        float[][] found = distances(new double[] {0.66, 0.6, 0.54}, new double[] {0.03, 0.03, 0.03});
        assertThat(found[0][0]).isCloseTo((float) (Math.sqrt(2) * 6), within(0.01f));
        assertThat(found[1][0]).isCloseTo((float) (Math.sqrt(2) * 6), within(0.01f));
        // Of black nobody knows the hue: darker than the deepest shadow.
        assertThat(found[0][1]).isCloseTo((float) (Math.sqrt(3) * 4.2), within(0.01f));
        assertThat(found[1][1]).isCloseTo((float) Math.sqrt(3 * 21 * 21 + 9), within(0.01f));
    }
}
