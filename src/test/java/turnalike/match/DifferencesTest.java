package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.units.Mass;

/** Rows of a few pieces, whose differences are kept, and of thousands, whose differences are asked anew. */
class DifferencesTest {
    static Differences kept(double[][] table) {
        return Differences.of((i, j) -> table[i][j], table.length);
    }

    private static Unlikeness random(int pieces, long seed) {
        Random random = new Random(seed);
        double[][] figures = new double[pieces][3];
        for (double[] each : figures) {
            Arrays.setAll(each, i -> random.nextGaussian());
        }
        // Not the same to the last bit both ways: what is kept is asked one way only.
        return (i, j) -> IntStream.range(0, 3)
                        .mapToDouble(k -> Math.abs(figures[i][k] - figures[j][k]))
                        .sum()
                * (i > j ? 1 : 1 + 1e-15);
    }

    @Test
    void a_row_is_the_same_whether_differences_are_kept_or_asked_anew() {
        for (long seed = 0; seed < 5; seed++) {
            int pieces = 60;
            Unlikeness unlikeness = random(pieces, seed);
            Differences kept = Differences.of(unlikeness, pieces);
            Differences anew = Differences.of(unlikeness, pieces, 0);
            assertThat(anew.largest()).isEqualTo(kept.largest());
            assertThat(RowBound.ofSome(anew, 20)).isEqualTo(RowBound.ofSome(kept, 20));
            double[] masses = new Random(seed).doubles(pieces, 95, 105).toArray();
            SetRule rule = new SetRule(masses, 20, 0.05);
            assertThat(new RowSearch(anew, rule).solve(0, 50, Effort.unlimited()))
                    .isEqualTo(new RowSearch(kept, rule).solve(0, 50, Effort.unlimited()));
            RowSorts sorts = new RowSorts(
                    IntStream.range(0, pieces).mapToObj(i -> i % 3).toList(),
                    IntStream.range(0, 20).mapToObj(i -> i % 3).toList());
            assertThat(RowBound.ofSorts(anew, sorts)).isEqualTo(RowBound.ofSorts(kept, sorts));
            SortRules rules = new SortRules(masses, sorts, 0.05);
            assertThat(new SortedRowSearch(anew, sorts, rules).solve(0, 50, Effort.unlimited()))
                    .isEqualTo(new SortedRowSearch(kept, sorts, rules).solve(0, 50, Effort.unlimited()));
        }
    }

    /** As many are kept as a table of 2,000 pieces has room for; those asked for longest ago go. */
    @Test
    void all_differences_from_one_piece_are_those_of_its_pairs_and_asked_once_as_long_as_they_are_kept() {
        int pieces = 1_000_000;
        int[] asked = new int[1];
        Differences anew = Differences.of(
                (i, j) -> {
                    asked[0]++;
                    return Math.abs(i - j) * 0.5;
                },
                pieces);
        double[] from = anew.from(3).clone();
        assertThat(from).hasSize(pieces).startsWith(1.5, 1, 0.5, 0, 0.5);
        int once = asked[0];
        assertThat(once).isEqualTo(pieces - 1);
        assertThat(anew.from(3)).isEqualTo(from);
        assertThat(asked[0]).isEqualTo(once);
        for (int other = 4; other < 7; other++) {
            anew.from(other);
        }
        assertThat(anew.from(3)).isEqualTo(from);
        assertThat(asked[0]).isEqualTo(4 * once);
        anew.from(7);
        anew.from(4);
        assertThat(asked[0]).isEqualTo(6 * once);
        Differences kept = kept(new double[][] {{0, 1, 2}, {1, 0, 3}, {2, 3, 0}});
        assertThat(kept.from(1)).containsExactly(1, 0, 3);
    }

    @Test
    void a_row_is_chosen_from_ten_thousand_pieces_whose_table_would_not_fit() {
        int pieces = 10_000;
        int places = 12;
        double[] length = new Random(4).doubles(pieces, 0, 1000).toArray();
        RowProblem problem = new RowProblem(
                Collections.nCopies(pieces, Mass.ofGrams(100)), (i, j) -> Math.abs(length[i] - length[j]), places, 2);
        RowPlacement placed = RowMatch.solve(problem, Effort.ofAsks(40));
        assertThat(new HashSet<>(placed.order())).hasSize(places);
        assertThat(placed.spares()).hasSize(pieces - places);
        double total = 0;
        for (int i = 1; i < places; i++) {
            total += Math.abs(
                    length[placed.order().get(i)] - length[placed.order().get(i - 1)]);
        }
        assertThat(placed.totalDifference()).isCloseTo(total, within(1e-9));
        // As far as the least joints of all, summed another way: neighbours in length are the least spanning tree.
        double[] sorted = length.clone();
        Arrays.sort(sorted);
        double[] joints = IntStream.range(1, pieces)
                .mapToDouble(i -> sorted[i] - sorted[i - 1])
                .sorted()
                .toArray();
        assertThat(placed.bound())
                .isCloseTo(Arrays.stream(joints).limit(places - 1).sum(), within(1e-9));
        // Any twelve of them differ by hundreds; twelve that lie together by a hundredth of that.
        assertThat(total).isLessThan(3);
    }

    @Test
    void what_is_no_difference_is_refused_either_way() {
        for (int mostKept : new int[] {0, 10}) {
            assertThatThrownBy(() -> Differences.of((i, j) -> -1, 3, mostKept).largest())
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must be 0 or more");
        }
        assertThat(Differences.of((i, j) -> 7, 3, 0).between(2, 2)).isZero();
        assertThat(List.of(Differences.of((i, j) -> 7, 3, 0)
                        .among(new int[] {0, 2})
                        .between(0, 1)))
                .containsExactly(7.0);
    }
}
