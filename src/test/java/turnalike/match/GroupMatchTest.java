package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.units.Mass;

class GroupMatchTest {
    @Test
    void a_group_of_fewer_than_two_is_refused() {
        Unlikeness none = (a, b) -> 0;
        for (int size : new int[] {-1, 0, 1}) {
            assertThatThrownBy(() -> GroupMatch.groups(4, size, none, Effort.ofAsks(0)))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> GroupMatch.one(4, size, none, Effort.ofAsks(0)))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void exact_groups_are_what_plain_enumeration_finds() {
        Seeds.each(60, random -> {
            int pieces = 2 + random.nextInt(7);
            int size = 2 + random.nextInt(3);
            double[][] d = random(random, pieces);
            Grouping grouping = GroupMatch.groups(pieces, size, (a, b) -> d[a][b], Effort.ofAsks(0));
            assertSound(grouping, pieces, size, d);
            assertThat(grouping.groups()).hasSize(pieces / size);
            assertThat(grouping.bestProven()).isTrue();
            assertThat(grouping.totalDifference()).isCloseTo(smallest(d, size), within(1e-9));
        });
    }

    @Test
    void the_four_most_alike_are_found_among_many() {
        Seeds.each(10, random -> {
            double[][] d = random(random, 40);
            Grouping grouping = GroupMatch.one(40, 4, (a, b) -> d[a][b], Effort.ofAsks(0));
            assertSound(grouping, 40, 4, d);
            double best = Double.POSITIVE_INFINITY;
            for (int a = 0; a < 40; a++) {
                for (int b = 0; b < a; b++) {
                    for (int c = 0; c < b; c++) {
                        for (int e = 0; e < c; e++) {
                            best = Math.min(best, d[a][b] + d[a][c] + d[a][e] + d[b][c] + d[b][e] + d[c][e]);
                        }
                    }
                }
            }
            assertThat(grouping.totalDifference()).isCloseTo(best, within(1e-9));
            assertThat(grouping.spares()).hasSize(36);
        });
    }

    @Test
    void twins_find_one_another_in_a_large_lot() {
        // Pieces 2k and 2k + 1 are all but alike, and far from the rest.
        Random random = new Random(1);
        double[] at = new double[61];
        for (int i = 0; i < at.length; i++) {
            at[i] = i / 2 * 10 + random.nextDouble();
        }
        Grouping grouping = GroupMatch.groups(61, 2, (a, b) -> Math.abs(at[a] - at[b]), Effort.ofAsks(200));
        assertThat(grouping.groups()).hasSize(30).allMatch(pair -> pair.get(0) / 2 == pair.get(1) / 2);
        assertThat(grouping.spares()).containsExactly(60);
    }

    @Test
    void twenty_pieces_still_make_proven_pairs() {
        double[][] d = random(new Random(9), 20);
        Grouping grouping = GroupMatch.groups(20, 2, (a, b) -> d[a][b], Effort.ofAsks(0));
        assertSound(grouping, 20, 2, d);
        assertThat(grouping.bestProven()).isTrue();
    }

    @Test
    void the_next_set_is_the_largest_group_of_spares_within_the_tolerance() {
        List<Mass> spares = grams(80, 100, 101, 101.5, 120, 121);
        NextSet next = NextSet.of(spares, 5, 2, Optional.empty());
        assertThat(next.pieces()).containsExactly(1, 2, 3);
        assertThat(next.missing()).isEqualTo(2);
        for (double aim : new double[] {next.aimFrom().grams(), next.aimTo().grams()}) {
            List<Double> set = List.of(100.0, 101.0, 101.5, aim, aim);
            double mean = set.stream().mapToDouble(m -> m).sum() / 5;
            assertThat((Collections.max(set) - Collections.min(set)) / mean).isLessThanOrEqualTo(0.02);
        }
        assertThat(NextSet.of(List.of(), 5, 2, Optional.empty()).missing()).isEqualTo(5);
    }

    private static List<Mass> grams(double... massesG) {
        List<Mass> masses = new ArrayList<>();
        for (double massG : massesG) {
            masses.add(Mass.ofGrams(massG));
        }
        return masses;
    }

    private static double[][] random(Random random, int pieces) {
        double[] x = random.doubles(pieces).toArray();
        double[] y = random.doubles(pieces).toArray();
        return Unlikeness.table((a, b) -> Math.abs(x[a] - x[b]) + Math.abs(y[a] - y[b]), pieces);
    }

    private static void assertSound(Grouping grouping, int pieces, int size, double[][] d) {
        List<Integer> all = new ArrayList<>(grouping.spares());
        double total = 0;
        for (List<Integer> group : grouping.groups()) {
            assertThat(group).hasSize(size);
            all.addAll(group);
            for (int a : group) {
                for (int b : group) {
                    total += a < b ? d[a][b] : 0;
                }
            }
        }
        assertThat(all).hasSize(pieces).doesNotHaveDuplicates();
        assertThat(grouping.totalDifference()).isCloseTo(total, within(1e-9));
    }

    /** Every order cut into groups from the front. */
    private static double smallest(double[][] d, int size) {
        return smallest(d, size, new ArrayList<>());
    }

    private static double smallest(double[][] d, int size, List<Integer> order) {
        if (order.size() == d.length / size * size) {
            double total = 0;
            for (int i = 0; i < order.size(); i++) {
                for (int j = i / size * size; j < i; j++) {
                    total += d[order.get(i)][order.get(j)];
                }
            }
            return total;
        }
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < d.length; i++) {
            if (!order.contains(i)) {
                order.add(i);
                smallest = Math.min(smallest, smallest(d, size, order));
                order.remove(order.size() - 1);
            }
        }
        return smallest;
    }
}
