package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Whether a lathe's centres are told from the piece between them. */
class OneHueTest {
    private static final int COUNT = 200;

    /** Steel is as white as its lamp, and the picture's noise strays by a little. */
    private static final double[] STEEL = {0.325, 0.345};

    private static int[] within(double[] wood, double[] ends, IntToDoubleFunction half) {
        double[][] sides = new double[2][COUNT];
        double[][] hue = new double[2][COUNT];
        for (int t = 0; t < COUNT; t++) {
            boolean isWood = 30 <= t && t < 170;
            sides[0][t] = half.applyAsDouble(t);
            sides[1][t] = sides[0][t];
            for (int c = 0; c < 2; c++) {
                hue[c][t] = (isWood ? wood : ends)[c] + 0.004 * Math.sin(t * 1.7 + c);
            }
        }
        return new OneHue(sides, hue).within(0, COUNT - 1);
    }

    /** A cone's point meets the piece at either end, and widens to more than the piece. */
    private static double betweenCentres(int t) {
        return 30 <= t && t < 170 ? 12 : Math.min(15, 1 + 0.8 * Math.max(29 - t, t - 170));
    }

    @Test
    void centres_are_left_out_however_thick_they_grow() {
        assertThat(within(new double[] {0.42, 0.24}, STEEL, OneHueTest::betweenCentres))
                .containsExactly(30, 169);
        // Maple is nearly as white as steel.
        assertThat(within(new double[] {0.375, 0.275}, STEEL, OneHueTest::betweenCentres))
                .containsExactly(30, 169);
    }

    @Test
    void a_tenon_with_a_shine_on_it_is_the_piece() {
        double[] wood = {0.42, 0.24};
        double[] shining = {(0.42 + 1 / 3.0) / 2, (0.24 + 1 / 3.0) / 2};
        assertThat(within(wood, shining, t -> 30 <= t && t < 170 ? 12 : 6)).containsExactly(0, COUNT - 1);
    }

    @Test
    void what_is_as_thick_as_the_piece_is_the_piece() {
        assertThat(within(new double[] {0.42, 0.24}, STEEL, t -> 12)).containsExactly(0, COUNT - 1);
    }

    @Test
    void a_white_piece_keeps_its_ends() {
        assertThat(within(new double[] {0.345, 0.32}, STEEL, OneHueTest::betweenCentres))
                .containsExactly(0, COUNT - 1);
    }
}
