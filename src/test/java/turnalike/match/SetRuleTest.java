package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class SetRuleTest {
    @Test
    void visits_each_passing_set_once_and_no_other() {
        Seeds.each(200, random -> {
            int pieces = 1 + random.nextInt(9);
            int places = 1 + random.nextInt(pieces);
            double[] massesG = new double[pieces];
            for (int i = 0; i < pieces; i++) {
                massesG[i] = 1 + random.nextInt(random.nextBoolean() ? 100 : 8);
            }
            double wanted = random.nextDouble() * random.nextDouble() * 2;
            SetRule rule = new SetRule(massesG, places, wanted);
            double smallest = Double.POSITIVE_INFINITY;
            for (int mask : Permutations.masks(pieces, places)) {
                smallest = Math.min(smallest, share(massesG, mask));
            }
            Set<Integer> passing = new HashSet<>();
            for (int mask : Permutations.masks(pieces, places)) {
                if (share(massesG, mask) <= Math.max(wanted, smallest) + 1e-11) {
                    passing.add(mask);
                }
            }
            Set<Integer> visited = new HashSet<>();
            boolean ended = rule.each(set -> {
                int mask = 0;
                for (int piece : set) {
                    mask |= 1 << piece;
                }
                return visited.add(mask);
            });
            assertThat(ended).as("no set twice").isTrue();
            assertThat(visited).isEqualTo(passing);
            assertThat(rule.count(1000)).isEqualTo(passing.size());
            assertThat(rule.warnings(100 * wanted).isEmpty()).isEqualTo(smallest <= wanted + 1e-11);
        });
    }

    private static double share(double[] massesG, int mask) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        double sum = 0;
        for (int i = 0; i < massesG.length; i++) {
            if (((mask >>> i) & 1) == 1) {
                low = Math.min(low, massesG[i]);
                high = Math.max(high, massesG[i]);
                sum += massesG[i];
            }
        }
        return (high - low) * Integer.bitCount(mask) / sum;
    }
}
