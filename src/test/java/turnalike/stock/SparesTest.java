package turnalike.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class SparesTest {
    /** The chance of at least that many good ones by Hipparchus 4.0.3, through its regularized beta function. */
    private static double byHipparchus(int blanks, int good, double lossRate) {
        return 1 - new BinomialDistribution(blanks, 1 - lossRate).cumulativeProbability(good - 1);
    }

    private static void agreesWithHipparchus(int good, double lossRate) {
        Spares spares = Spares.of(good, lossRate);
        int n = spares.blanks();
        assertThat(spares.chance())
                .as("%s good at %s", good, lossRate)
                .isEqualTo(byHipparchus(n, good, lossRate), within(1e-9))
                .isGreaterThanOrEqualTo(0.95 - 1e-12);
        if (n > good) {
            assertThat(byHipparchus(n - 1, good, lossRate))
                    .as("one blank fewer than %s for %s good at %s", n, good, lossRate)
                    .isLessThan(0.95 + 1e-9);
        }
    }

    @Test
    void the_fewest_blanks_are_hipparchus_s_for_everyday_counts() {
        for (int good = 1; good <= 60; good++) {
            for (double lossRate : new double[] {0, 0.01, 0.05, 0.1, 0.25, 0.5, 0.9}) {
                agreesWithHipparchus(good, lossRate);
            }
        }
    }

    @Test
    void the_fewest_blanks_are_hipparchus_s_at_random() {
        Seeds.each(300, random -> agreesWithHipparchus(1 + random.nextInt(2000), 0.9 * random.nextDouble()));
    }

    @Test
    void the_largest_counts_and_losses_do_not_underflow() {
        for (int good : new int[] {5_000, 9_999, 10_000}) {
            for (double lossRate : new double[] {0, 1e-9, 0.05, 0.5, 0.9}) {
                agreesWithHipparchus(good, lossRate);
            }
        }
    }

    /** By whole numbers: with a loss rate of a/100, the chance times 100^n is an integer. */
    @Test
    void the_fewest_blanks_are_those_of_exact_whole_number_arithmetic() {
        Seeds.each(200, random -> {
            int good = 1 + random.nextInt(40);
            int lossPct = random.nextInt(91);
            Spares spares = Spares.of(good, lossPct / 100.0);
            int expected = good;
            while (reaches(expected, good, lossPct).signum() < 0) {
                expected++;
            }
            assertThat(spares.blanks()).as("%s good at %s %%", good, lossPct).isEqualTo(expected);
        });
    }

    /** The sign of P(at least good of n) - 95/100. */
    private static BigInteger reaches(int n, int good, int lossPct) {
        BigInteger sum = BigInteger.ZERO;
        BigInteger choose = BigInteger.ONE;
        for (int lost = 0; lost <= n - good; lost++) {
            sum = sum.add(choose.multiply(BigInteger.valueOf(lossPct).pow(lost))
                    .multiply(BigInteger.valueOf(100L - lossPct).pow(n - lost)));
            choose = choose.multiply(BigInteger.valueOf(n - lost)).divide(BigInteger.valueOf(lost + 1L));
        }
        BigInteger hundred = BigInteger.valueOf(100);
        return sum.multiply(hundred).subtract(BigInteger.valueOf(95).multiply(hundred.pow(n)));
    }

    @Test
    void a_chance_of_exactly_ninety_five_percent_is_enough() {
        assertThat(Spares.of(1, 0.05).blanks()).isEqualTo(1);
        assertThat(Spares.of(1, Math.nextUp(0.05)).blanks()).isEqualTo(2);
    }

    /** Loss rates found by halving until two neighbouring doubles straddle the chance: the nearest ties there are. */
    @Test
    void near_ties_are_settled_as_decimal_arithmetic_settles_them() {
        for (int good : new int[] {2, 12, 40, 1000}) {
            int blanks = good + 1 + good / 8;
            double enough = 0;
            double tooMuch = 0.9;
            while (Math.nextUp(enough) < tooMuch) {
                double middle = (enough + tooMuch) / 2;
                if (FewestBlanks.reaches(good, middle, blanks, 0.95)) {
                    enough = middle;
                } else {
                    tooMuch = middle;
                }
            }
            assertThat(byHipparchus(blanks, good, enough)).isEqualTo(0.95, within(1e-9));
            assertThat(Spares.of(good, enough).blanks()).isEqualTo(blanks);
            assertThat(Spares.of(good, tooMuch).blanks()).isEqualTo(blanks + 1);
        }
    }

    @Test
    void nothing_lost_needs_no_spares() {
        Spares spares = Spares.of(12, 0);
        assertThat(spares.blanks()).isEqualTo(12);
        assertThat(spares.spares()).isZero();
        assertThat(spares.chance()).isEqualTo(1);
        assertThat(spares.expectedGood()).isEqualTo(12);
    }

    /** By hand for 12 at 5 %: 13 give 0.8646 = 0.95^13 + 13 x 0.05 x 0.95^12, 14 give 0.9699. */
    @Test
    void a_dozen_at_five_percent_takes_two_spares() {
        Spares spares = Spares.of(12, 0.05);
        assertThat(spares.blanks()).isEqualTo(14);
        double p = 0.05;
        double q = 0.95;
        double byHand = Math.pow(q, 14) + 14 * p * Math.pow(q, 13) + 91 * p * p * Math.pow(q, 12);
        assertThat(spares.chance()).isEqualTo(byHand, within(1e-14));
        assertThat(spares.expectedGood()).isEqualTo(13.3, within(1e-12));
        assertThat(spares.working().how()).contains("5 %").contains("n = 14").contains("13.3 good");
    }

    @Test
    void more_pieces_or_more_loss_never_take_fewer_blanks() {
        Seeds.each(200, random -> {
            int good = 1 + random.nextInt(300);
            double lossRate = 0.8 * random.nextDouble();
            int blanks = Spares.of(good, lossRate).blanks();
            assertThat(Spares.of(good + 1, lossRate).blanks()).isGreaterThan(blanks);
            assertThat(Spares.of(good, lossRate + 0.1).blanks()).isGreaterThanOrEqualTo(blanks);
        });
    }

    @Test
    void the_working_writes_the_loss_rate_as_it_was_given() {
        assertThat(Spares.of(1, 0).working().how()).contains("chance of 0 %");
        assertThat(Spares.of(1, 0.1).working().how()).contains("chance of 10 %");
        assertThat(Spares.of(1, 0.0725).working().how()).contains("chance of 7.25 %");
        assertThat(Spares.of(1, 1e-9).working().how()).contains("chance of 0.0000001 %");
    }

    @Test
    void counts_and_rates_out_of_range_are_refused() {
        assertThat(Spares.read(0, 0.05).isValue()).isFalse();
        assertThat(Spares.read(10_001, 0.05).isValue()).isFalse();
        assertThat(Spares.read(12, 0.91).isValue()).isFalse();
        assertThat(Spares.read(12, 5).isValue()).isFalse();
        assertThat(Spares.read(12, -0.01).isValue()).isFalse();
        assertThat(Spares.read(12, Double.NaN).isValue()).isFalse();
        assertThatThrownBy(() -> Spares.of(0, 0.05)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void counts_and_rates_at_the_ends_of_their_range_are_taken() {
        assertThat(Spares.read(1, 0).get().blanks()).isEqualTo(1);
        assertThat(Spares.of(10_000, 0).good()).isEqualTo(10_000);
        assertThat(Spares.of(1, 0.9).lossRate()).isEqualTo(0.9);
        // 1 - 0.9^n reaches 0.95 at n = 29: 0.9^28 = 0.0523, 0.9^29 = 0.0471.
        assertThat(Spares.of(1, 0.9).blanks()).isEqualTo(29);
        assertThat(Spares.of(1, 0.9).spares()).isEqualTo(28);
        assertThat(Spares.of(1, 0.9).expectedGood()).isEqualTo(2.9, within(1e-12));
    }

    @Test
    void the_working_tells_the_spares_and_their_chance() {
        assertThat(Spares.of(12, 0.05).working().how())
                .isEqualTo(
                        "the smallest n for which n blanks, each lost with a chance of 5 %, give at least 12 good pieces in 95 of 100"
                                + " such jobs (exact binomial): n = 14, so 2 to spare; they are enough with a chance of 96.99 % and give 13.3"
                                + " good pieces on average");
    }
}
