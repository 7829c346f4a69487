package turnalike.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class LossRecordTest {
    /** The binomial's chance averaged over the Beta law, by the midpoints of 4000 equally likely rates. */
    private static double byAverage(LossRecord record, int needed, int blanks) {
        double bad = LossRecord.PRIOR_BLANKS * record.told() + record.lost();
        double sound = LossRecord.PRIOR_BLANKS * (1 - record.told()) + record.good();
        BetaDistribution rates = new BetaDistribution(bad, sound);
        double sum = 0;
        int steps = 4000;
        for (int i = 0; i < steps; i++) {
            double rate = rates.inverseCumulativeProbability((i + 0.5) / steps);
            sum += new BinomialDistribution(blanks, rate).cumulativeProbability(blanks - needed) / steps;
        }
        return sum;
    }

    @Test
    void the_chance_is_the_binomials_over_all_rates() {
        Random random = new Random(5);
        for (int i = 0; i < 12; i++) {
            LossRecord record = new LossRecord(0.02 + 0.3 * random.nextDouble(), random.nextInt(6), random.nextInt(40));
            int blanks = 1 + random.nextInt(30);
            int needed = 1 + random.nextInt(blanks);
            assertThat(record.chance(needed, blanks))
                    .as("%s, %d of %d", record, needed, blanks)
                    .isEqualTo(byAverage(record, needed, blanks), within(1e-4));
        }
    }

    @Test
    void a_record_pulls_the_rate_towards_what_was_seen() {
        assertThat(new LossRecord(0.05, 0, 0).rate()).isEqualTo(0.05, within(1e-12));
        assertThat(new LossRecord(0.05, 10, 10).rate()).isEqualTo(11.0 / 40, within(1e-12));
        Seeds.each(200, random -> {
            LossRecord record = new LossRecord(0.3 * random.nextDouble(), random.nextInt(5), random.nextInt(50));
            int blanks = random.nextInt(50);
            int needed = random.nextInt(50);
            double chance = record.chance(needed, blanks);
            assertThat(chance).isBetween(0.0, 1.0);
            assertThat(record.chance(needed, blanks + 1)).isGreaterThanOrEqualTo(chance - 1e-12);
            assertThat(record.chance(needed + 1, blanks)).isLessThanOrEqualTo(chance + 1e-12);
        });
    }

    @Test
    void nothing_needed_is_sure_and_more_than_there_are_is_impossible() {
        LossRecord record = new LossRecord(0.05, 1, 3);
        assertThat(record.chance(0, 0)).isEqualTo(1);
        assertThat(record.chance(3, 2)).isEqualTo(0);
        assertThat(new LossRecord(0, 0, 9).chance(5, 5)).isEqualTo(1);
        assertThatThrownBy(() -> new LossRecord(0.95, 0, 0)).hasMessageContaining("0.95");
    }
}
