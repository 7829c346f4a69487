package turnalike.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelSpacingTest {
    @Test
    void labels_that_stand_apart_already_do_not_move() {
        assertThat(LabelSpacing.apart(List.of(10.0, 20.0, 35.0), 5, 0, 100)).containsExactly(10, 20, 35);
        assertThat(LabelSpacing.apart(List.of(), 5, 0, 100)).isEmpty();
    }

    @Test
    void two_on_one_place_move_apart_evenly() {
        assertThat(LabelSpacing.apart(List.of(50.0, 50.0), 4, 0, 100)).containsExactly(48, 52);
    }

    @Test
    void too_little_room_is_shared_out() {
        assertThat(LabelSpacing.apart(List.of(5.0, 5.0, 5.0), 10, 0, 12)).containsExactly(0, 6, 12);
    }

    /** Brute force over a grid of half millimetres, on which the best of so few labels lies or which it beats. */
    @Test
    void moves_no_farther_than_the_best_of_all_places_on_a_grid() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            int n = 2 + random.nextInt(3);
            List<Double> wanted = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                wanted.add(random.nextInt(21) / 2.0);
            }
            Collections.sort(wanted);
            double[] places = LabelSpacing.apart(wanted, 3, 0, 10);
            for (int i = 1; i < n; i++) {
                assertThat(places[i] - places[i - 1]).as("seed %d", seed).isGreaterThanOrEqualTo(3 - 1e-9);
            }
            assertThat(places[0]).isGreaterThanOrEqualTo(-1e-9);
            assertThat(places[n - 1]).isLessThanOrEqualTo(10 + 1e-9);
            double best = bestOnGrid(wanted, 0, new double[n]);
            assertThat(cost(wanted, places)).as("seed %d", seed).isLessThanOrEqualTo(best + 1e-9);
        }
    }

    @Test
    void cost_reaches_the_optimum_found_by_hand() {
        // Three at 5: the middle stays, the others go 3 aside.
        double[] places = LabelSpacing.apart(List.of(5.0, 5.0, 5.0), 3, 0, 10);
        assertThat(cost(List.of(5.0, 5.0, 5.0), places)).isCloseTo(18, within(1e-9));
    }

    private static double bestOnGrid(List<Double> wanted, int i, double[] places) {
        if (i == places.length) {
            return cost(wanted, places);
        }
        double best = Double.POSITIVE_INFINITY;
        for (double at = i == 0 ? 0 : places[i - 1] + 3; at <= 10; at += 0.5) {
            places[i] = at;
            best = Math.min(best, bestOnGrid(wanted, i + 1, places));
        }
        return best;
    }

    private static double cost(List<Double> wanted, double[] places) {
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += (places[i] - wanted.get(i)) * (places[i] - wanted.get(i));
        }
        return sum;
    }
}
