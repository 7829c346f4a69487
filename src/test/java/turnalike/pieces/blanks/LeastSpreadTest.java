package turnalike.pieces.blanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class LeastSpreadTest {
    @Test
    void no_other_choice_of_so_many_lies_closer_together() {
        Seeds.each(300, random -> {
            int n = 1 + random.nextInt(10);
            int count = 1 + random.nextInt(n);
            List<Double> masses = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                masses.add(100.0 + random.nextInt(30));
            }
            LeastSpread found = LeastSpread.of(masses, count);
            double least = Double.POSITIVE_INFINITY;
            for (int choice = 0; choice < 1 << n; choice++) {
                if (Integer.bitCount(choice) == count) {
                    least = Math.min(least, spread(masses, choice));
                }
            }
            int chosen = found.chosen().stream().mapToInt(each -> 1 << each).sum();
            assertThat(found.chosen()).hasSize(count).doesNotHaveDuplicates();
            assertThat(found.spreadG()).isEqualTo(least, within(1e-12));
            assertThat(spread(masses, chosen)).isEqualTo(least, within(1e-12));
        });
    }

    private static double spread(List<Double> masses, int choice) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < masses.size(); i++) {
            if ((choice >> i & 1) == 1) {
                least = Math.min(least, masses.get(i));
                most = Math.max(most, masses.get(i));
            }
        }
        return most - least;
    }

    /** By hand: two of each mass; the median of the eight is 103.1, nearest to it lie the pieces of 102.4 g and, moved, those of 103.8 g. */
    @Test
    void of_choices_equally_narrow_the_one_nearest_the_middle_of_all_is_taken() {
        List<Double> masses = new ArrayList<>(List.of(100.1, 109.3, 102.4, 103.8, 100.1, 109.3, 102.4, 103.8));
        assertThat(LeastSpread.of(masses, 2).chosen()).containsExactly(2, 6);
        masses.addAll(List.of(110.2, 111.2));
        assertThat(LeastSpread.of(masses, 2).chosen()).containsExactly(3, 7);
        // Gaps of a tenth are equal though a double holds none of them exactly.
        assertThat(LeastSpread.of(List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7), 3).chosen())
                .containsExactly(2, 3, 4);
        // What lies closer together is taken wherever it lies.
        assertThat(LeastSpread.of(List.of(90.0, 90.1, 100.0, 100.2, 100.4, 100.6), 2)
                        .chosen())
                .containsExactly(0, 1);
    }

    @Test
    void too_few_are_all_taken_and_none_is_none() {
        assertThat(LeastSpread.of(List.of(3.0, 1.0), 5)).isEqualTo(new LeastSpread(List.of(0, 1), 2));
        assertThat(LeastSpread.of(List.of(), 5)).isEqualTo(new LeastSpread(List.of(), 0));
    }
}
