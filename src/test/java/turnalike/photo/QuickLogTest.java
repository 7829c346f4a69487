package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class QuickLogTest {
    @Test
    void it_is_javas_own_to_the_thirteenth_digit() {
        SplittableRandom dice = new SplittableRandom(7);
        assertThat(QuickLog.of(1)).isCloseTo(0, within(1e-13));
        for (int k = 0; k < 20_000; k++) {
            double value = Math.exp(7 * dice.nextDouble() * dice.nextDouble());
            assertThat(QuickLog.of(value)).as("%s", value).isCloseTo(Math.log(value), within(1e-13));
        }
    }
}
