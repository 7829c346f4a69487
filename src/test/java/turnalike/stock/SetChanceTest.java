package turnalike.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;

class SetChanceTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** The chance that n normal deviates lie within w of one another: n ∫ φ(x) (Φ(x + w) − Φ(x))ⁿ⁻¹ dx, by the trapezium rule. */
    private static double rangeWithin(int n, double w) {
        double sum = 0;
        double step = 0.01;
        for (double x = -9; x <= 9; x += step) {
            double inside = NORMAL.cumulativeProbability(x + w) - NORMAL.cumulativeProbability(x);
            sum += step * n * NORMAL.density(x) * Math.pow(inside, n - 1);
        }
        return sum;
    }

    @Test
    void without_spares_the_chance_is_that_of_the_range() {
        double[][] cases = {{2, 0.01, 2}, {5, 0.01, 2}, {12, 0.005, 2}, {12, 0.0125, 4}, {30, 0.004, 2}};
        for (double[] each : cases) {
            int n = (int) each[0];
            double exact = rangeWithin(n, each[2] / 100 / each[1]);
            assertThat(new SetChance(n, each[1], each[2], 40).ofGood(n))
                    .as("%d pieces", n)
                    .isEqualTo(exact, within(0.025));
        }
    }

    /** Every run of neighbours of freshly drawn pieces, looked at one set after the other. */
    private static double byBrute(int count, int good, double deviation, double pct) {
        Random random = new Random(4);
        int passed = 0;
        int draws = 20_000;
        for (int draw = 0; draw < draws; draw++) {
            double[] masses = random.doubles(good).toArray();
            Arrays.setAll(masses, i -> 200 * (1 + deviation * NORMAL.inverseCumulativeProbability(masses[i])));
            Arrays.sort(masses);
            boolean passes = false;
            for (int from = 0; from + count <= good; from++) {
                double mean =
                        Arrays.stream(masses, from, from + count).average().orElseThrow();
                passes |= masses[from + count - 1] - masses[from] <= pct / 100 * mean;
            }
            passed += passes ? 1 : 0;
        }
        return (double) passed / draws;
    }

    @Test
    void with_spares_the_best_of_all_pieces_counts() {
        assertThat(new SetChance(6, 0.0125, 2, 40).ofGood(9)).isEqualTo(byBrute(6, 9, 0.0125, 2), within(0.025));
        assertThat(new SetChance(12, 0.0125, 3, 40).ofGood(16)).isEqualTo(byBrute(12, 16, 0.0125, 3), within(0.025));
        assertThat(new SetChance(4, 0.1, 5, 40).ofGood(14)).isEqualTo(byBrute(4, 14, 0.1, 5), within(0.025));
    }

    @Test
    void lost_blanks_leave_fewer_to_choose_from() {
        SetChance chances = new SetChance(8, 0.0125, 3, 40);
        BinomialDistribution good = new BinomialDistribution(13, 0.9);
        double sum = 0;
        for (int sound = 8; sound <= 13; sound++) {
            sum += good.probability(sound) * chances.ofGood(sound);
        }
        assertThat(chances.ofBlanks(13, 0.1)).isEqualTo(sum, within(1e-12));
        assertThat(chances.ofBlanks(13, 0)).isEqualTo(chances.ofGood(13));
        assertThat(chances.ofBlanks(7, 0.1)).isZero();
    }

    @Test
    void the_fewest_blanks_give_the_chance_and_one_less_does_not() {
        SetChance chances = new SetChance(8, 0.0125, 3, 40);
        int blanks = chances.blanksFor(0.95, 0.1).orElseThrow();
        assertThat(chances.ofBlanks(blanks, 0.1)).isGreaterThanOrEqualTo(0.95);
        assertThat(chances.ofBlanks(blanks - 1, 0.1)).isLessThan(0.95);
        assertThat(new SetChance(30, 0.1, 1, 40).blanksFor(0.95, 0.1)).isEmpty();
    }

    @Test
    void equal_pieces_always_pass_and_one_piece_differs_from_nothing() {
        assertThat(new SetChance(12, 0, 0, 40).ofGood(12)).isEqualTo(1);
        assertThat(new SetChance(1, 0.1, 0, 40).ofGood(1)).isEqualTo(1);
        assertThat(new SetChance(3, 0.1, 0, 40).ofGood(30)).isZero();
        assertThatThrownBy(() -> new SetChance(0, 0.1, 2, 40)).hasMessageContaining("0 pieces");
    }
}
