package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A foot whose ball is sawn off where no ray comes, drawn out to the length that was given and read again, by no formula of the program's. */
class EndsUnseenTest {
    private static final double LENGTH = 300;

    private static double radius(double place) {
        return 20 + 6 * Math.sin(place / 17);
    }

    /** What is read at a place of a piece that ends so much before what was taken for its ends: all of it is stretched between them. */
    private static double read(double place, double startCut, double endCut) {
        double seen = startCut + LENGTH + endCut;
        double stretch = LENGTH / seen;
        return stretch * radius(place / stretch - startCut);
    }

    @Test
    void what_is_left_open_is_what_a_cut_of_that_depth_makes_of_radii_all_along() {
        EndsUnseen start = new EndsUnseen(1 / 0.41, 0, LENGTH);
        EndsUnseen end = new EndsUnseen(0, 1 / 0.41, LENGTH);
        for (double place = 5; place < LENGTH; place += 7) {
            double slope = (radius(place + 0.01) - radius(place - 0.01)) / 0.02;
            assertThat(start.openMm(place, radius(place), slope))
                    .isCloseTo(Math.abs(read(place, 1, 0) - radius(place)), within(0.02));
            assertThat(end.openMm(place, radius(place), slope))
                    .isCloseTo(Math.abs(read(place, 0, 1) - radius(place)), within(0.02));
        }
    }

    /** Half of the ends reach to the pole, the others are sawn off anywhere in what is unseen: two places in three lie within what is stated, and few beyond twice. */
    @Test
    void two_in_three_lie_within() {
        SplittableRandom dice = new SplittableRandom(5);
        int within = 0;
        int twice = 0;
        int count = 4000;
        for (int i = 0; i < count; i++) {
            double unseen = 1 + 3 * dice.nextDouble();
            double cut = dice.nextBoolean() ? 0 : unseen * dice.nextDouble();
            double place = LENGTH * dice.nextDouble();
            double slope = (radius(place + 0.01) - radius(place - 0.01)) / 0.02;
            double open = new EndsUnseen(0, unseen, LENGTH).openMm(place, radius(place), slope);
            double off = Math.abs(read(place, 0, cut) - radius(place));
            within += off <= open ? 1 : 0;
            twice += off <= 2 * open ? 1 : 0;
        }
        assertThat((double) within / count).isBetween(0.62, 0.78);
        assertThat((double) twice / count).isGreaterThan(0.85);
    }
}
