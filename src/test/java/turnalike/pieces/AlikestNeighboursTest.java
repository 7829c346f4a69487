package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Runs of neighbours against all runs looked at one by one, in whole grams so that nothing is rounded. */
class AlikestNeighboursTest {
    private static int first(double[] ascendingG, int many) {
        return AlikestNeighbours.first(
                ascendingG, many, from -> ascendingG[from + many - 1] - ascendingG[from], AlikestNeighbours.SAME_G);
    }

    @Test
    void no_run_is_narrower_and_none_as_narrow_nearer_the_median_or_as_near_lighter() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            int count = 1 + random.nextInt(40);
            int many = 1 + random.nextInt(count);
            double[] masses = random.ints(count, 90, 90 + 1 + random.nextInt(30))
                    .sorted()
                    .asDoubleStream()
                    .toArray();
            double medianTwice = masses[(count - 1) / 2] + masses[count / 2];
            int best = 0;
            for (int from = 1; from + many <= count; from++) {
                double width = masses[from + many - 1] - masses[from];
                double least = masses[best + many - 1] - masses[best];
                double off = Math.abs(masses[from + many - 1] + masses[from] - medianTwice);
                double nearest = Math.abs(masses[best + many - 1] + masses[best] - medianTwice);
                if (width < least || (width == least && off < nearest)) {
                    best = from;
                }
            }
            assertThat(first(masses, many)).as("seed %d", seed).isEqualTo(best);
        }
    }

    @Test
    void widths_and_places_that_only_rounding_tells_apart_are_the_same() {
        // The middle lies at 1.1: 0.1 to 0.3 and 1.0 to 1.2 are as narrow but for the last bit, and so are the runs as
        // near.
        assertThat(first(new double[] {0.1, 0.3, 1.0, 1.2, 1.9, 2.1}, 2)).isEqualTo(2);
        assertThat(first(new double[] {0.9 - 1e-12, 0.9, 1.1, 1.1}, 2)).isZero();
    }

    @Test
    void there_is_no_run_of_none_or_of_more_than_there_are() {
        assertThatThrownBy(() -> first(new double[] {1, 2}, 3)).hasMessageContaining("1 to 2");
        assertThatThrownBy(() -> first(new double[] {1, 2}, 0)).hasMessageContaining("was 0");
    }
}
