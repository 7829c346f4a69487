package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.image.GrayU8;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GrownMaskTest {
    @Test
    void masks_grow_and_shrink_as_with_boofcv() {
        SplittableRandom dice = new SplittableRandom(5);
        for (int width : new int[] {1, 2, 3, 8, 9, 16, 31}) {
            for (int height : new int[] {1, 2, 3, 7, 20}) {
                for (int times = 1; times <= 4; times++) {
                    GrayU8 mask = mask(width, height, dice);
                    byte[] before = mask.data.clone();
                    assertThat(GrownMask.dilated(mask, times).data)
                            .as("%d by %d, %d times larger", width, height, times)
                            .isEqualTo(BinaryImageOps.dilate8(mask, times, null).data);
                    assertThat(GrownMask.eroded(mask, times).data)
                            .as("%d by %d, %d times smaller", width, height, times)
                            .isEqualTo(BinaryImageOps.erode8(mask, times, null).data);
                    assertThat(mask.data).isEqualTo(before);
                }
            }
        }
    }

    /** Large patches of either, so that something is left of both. */
    private static GrayU8 mask(int width, int height, SplittableRandom dice) {
        GrayU8 mask = new GrayU8(width, height);
        int patch = dice.nextInt(1, 9);
        boolean[] in = new boolean[width * height];
        for (int i = 0; i < in.length; i++) {
            in[i] = dice.nextDouble() < 0.6;
        }
        for (int i = 0; i < in.length; i++) {
            int x = i % width / patch * patch;
            int y = i / width / patch * patch;
            mask.data[i] = (byte) (in[y * width + x] ? 1 : 0);
        }
        return mask;
    }
}
