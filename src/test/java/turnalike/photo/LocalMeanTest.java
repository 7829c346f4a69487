package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boofcv.alg.filter.binary.ThresholdImageOps;
import boofcv.struct.ConfigLength;
import boofcv.struct.image.GrayU8;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LocalMeanTest {
    @Test
    void what_is_dark_is_so_for_boofcv_too() {
        SplittableRandom dice = new SplittableRandom(11);
        for (int square : new int[] {3, 21, 31}) {
            float part = square == 3 ? 1 : 0.95f;
            LocalMean mean = new LocalMean(square, part);
            for (int width : new int[] {square, square + 1, 97}) {
                for (int height : new int[] {square, square + 2, 140}) {
                    GrayU8 picture = new GrayU8(width, height);
                    for (int i = 0; i < picture.data.length; i++) {
                        // Dark and light patches that stray, and full light.
                        int patch = (i % width / 9 + i / width / 13) % 3;
                        picture.data[i] = (byte) Math.min(255, 40 + 110 * patch + dice.nextInt(30));
                    }
                    // As the one who looks for squares asks it: within a rim.
                    GrayU8 dark = new GrayU8(width + 2, height + 2).subimage(1, 1, width + 1, height + 1);
                    mean.process(picture, dark);
                    GrayU8 asked = ThresholdImageOps.localMean(
                            picture, null, ConfigLength.fixed(square), part, true, null, null, null);
                    assertThat(dark.clone().data)
                            .as("%d by %d, squares of %d", width, height, square)
                            .isEqualTo(asked.data);
                }
            }
        }
    }

    @Test
    void squares_too_small_or_too_large_to_be_exact_are_refused() {
        assertThatThrownBy(() -> new LocalMean(1, 1)).hasMessage("no width for a local mean: 1");
        assertThatThrownBy(() -> new LocalMean(33, 1)).hasMessage("no width for a local mean: 33");
    }
}
