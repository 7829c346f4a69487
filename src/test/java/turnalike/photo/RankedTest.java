package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Ranks against putting all in order. */
class RankedTest {
    @Test
    void each_rank_is_what_stands_there_in_order() {
        SplittableRandom dice = new SplittableRandom(5);
        for (int round = 0; round < 300; round++) {
            int count = 1 + dice.nextInt(60);
            float[] values = new float[count + 3];
            for (int i = 0; i < values.length; i++) {
                // Often the same value, as in a burnt picture.
                values[i] = dice.nextInt(4) == 0 ? 1 : (float) dice.nextDouble();
            }
            int rank = dice.nextInt(count);
            float[] sorted = Arrays.copyOf(values, count);
            Arrays.sort(sorted);
            assertThat(Ranked.of(values.clone(), count, rank))
                    .as("rank %s of %s", rank, Arrays.toString(values))
                    .isEqualTo(sorted[rank]);
            assertThat(Ranked.ofMany(Arrays.copyOf(values, count), rank))
                    .as("rank %s of many %s", rank, Arrays.toString(values))
                    .isEqualTo(sorted[rank]);
        }
    }

    @Test
    void zero_stands_first_whatever_its_sign() {
        assertThat(Ranked.ofMany(new float[] {3, -0f, 1e9f, 0}, 1)).isZero();
        assertThat(Ranked.ofMany(new float[] {3, -0f, 1e9f, 0}, 2)).isEqualTo(3);
    }
}
