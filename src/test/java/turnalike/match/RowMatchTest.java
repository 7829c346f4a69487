package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.units.Mass;

class RowMatchTest {
    @Test
    void finds_what_plain_enumeration_finds() {
        Seeds.each(60, random -> {
            int pieces = 1 + random.nextInt(7);
            int places = 1 + random.nextInt(pieces);
            RowProblem problem = random(random, pieces, places, 4);
            RowPlacement placement = RowMatch.solve(problem, Effort.ofAsks(0));
            assertSound(problem, placement);
            assertThat(placement.bestProven()).isTrue();
            assertThat(placement.totalDifference()).isCloseTo(smallest(problem), within(1e-9));
        });
    }

    @Test
    void the_bound_is_never_above_and_the_search_never_below_the_exact_row() {
        Seeds.each(20, random -> {
            RowProblem problem = random(random, 12, random.nextBoolean() ? 12 : 9, 50);
            double[][] difference = Unlikeness.table(problem.unlikeness(), 12);
            int places = problem.places();
            SetRule rule = rule(problem);
            double exact = RowMatch.solve(problem, Effort.ofAsks(0)).totalDifference();
            RowSearch search = new RowSearch(DifferencesTest.kept(difference), rule);
            double found = search.total(search.solve(0, 200, Effort.unlimited()));
            double bound = places == 12
                    ? RowBound.ofAll(DifferencesTest.kept(difference), found)
                    : RowBound.ofSome(DifferencesTest.kept(difference), places);
            assertThat(found).isBetween(exact - 1e-9, exact * 1.02 + 1e-9);
            assertThat(bound).isBetween(places == 12 ? 0.8 * exact : 0, exact + 1e-9);
        });
    }

    @Test
    void pieces_that_differ_in_one_measure_stand_in_its_order_and_that_is_proven_for_any_number() {
        Random random = new Random(7);
        double[] length = random.doubles(80).toArray();
        RowProblem problem = new RowProblem(
                Collections.nCopies(80, Mass.ofGrams(100)), (a, b) -> Math.abs(length[a] - length[b]), 80, 2);
        RowPlacement placement = RowMatch.solve(problem, Effort.ofAsks(3000));
        assertSound(problem, placement);
        double span = span(length);
        assertThat(placement.totalDifference()).isCloseTo(span, within(1e-9));
        assertThat(placement.bestProven()).isTrue();
    }

    @Test
    void a_long_row_is_close_to_its_bound() {
        RowProblem problem = random(new Random(1), 60, 60, 50);
        RowPlacement placement = RowMatch.solve(problem, Effort.ofAsks(1500));
        assertSound(problem, placement);
        assertThat(placement.totalDifference()).isLessThan(1.02 * placement.bound());
    }

    @Test
    void spares_are_used_where_they_are_more_alike() {
        RowProblem problem = random(new Random(2), 60, 20, 50);
        RowPlacement placement = RowMatch.solve(problem, Effort.ofAsks(300));
        assertSound(problem, placement);
        assertThat(placement.spares()).hasSize(40);
        List<Integer> first = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            first.add(i);
        }
        assertThat(placement.totalDifference()).isLessThan(0.8 * total(problem, first));
    }

    /** Alike in mass says nothing of alike to the eye: exchanging one piece at a time never comes to those that lie together. */
    @Test
    void those_that_look_alike_are_found_among_many_that_do_not() {
        int pieces = 600;
        double[] length = new Random(6).doubles(pieces, 0, 1000).toArray();
        RowProblem problem = new RowProblem(
                IntStream.range(0, pieces)
                        .mapToObj(i -> Mass.ofGrams(i % 2 == 0 ? 100 : 130))
                        .toList(),
                (a, b) -> Math.abs(length[a] - length[b]),
                6,
                2);
        RowPlacement placement = RowMatch.solve(problem, Effort.ofAsks(3));
        // Six at random lie some 700 apart, six neighbours of the 300 of one weight some 17.
        assertThat(placement.totalDifference()).isLessThan(17);
        assertThat(placement.order().stream().map(piece -> piece % 2).distinct())
                .hasSize(1);
    }

    @Test
    void too_few_pieces_are_a_problem() {
        RowProblem problem = random(new Random(3), 3, 4, 5);
        assertThat(problem.problems()).hasSize(1);
        assertThatThrownBy(() -> RowMatch.solve(problem, Effort.unlimited()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void more_than_can_be_weighed_against_one_another_is_a_problem_that_says_what_to_do() {
        assertThat(nothingMeasured(10_000, 400).problems()).isEmpty();
        assertThat(nothingMeasured(10_003, 400).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("pieces");
            assertThat(problem.mend()).startsWith("take 3 out");
        });
        assertThat(nothingMeasured(500, 401).problems()).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("places");
            assertThat(problem.mend()).contains("400");
        });
    }

    private static RowProblem nothingMeasured(int pieces, int places) {
        return new RowProblem(Collections.nCopies(pieces, Mass.ofGrams(100)), (a, b) -> 0, places, 2);
    }

    private static double span(double[] length) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double l : length) {
            low = Math.min(low, l);
            high = Math.max(high, l);
        }
        return high - low;
    }

    private static SetRule rule(RowProblem problem) {
        double[] massesG = problem.masses().stream().mapToDouble(Mass::grams).toArray();
        return new SetRule(massesG, problem.places(), problem.tolerancePct() / 100);
    }

    private static void assertSound(RowProblem problem, RowPlacement placement) {
        assertThat(placement.workings()).singleElement().satisfies(working -> assertThat(working.sureness())
                .startsWith(
                        placement.bestProven()
                                ? "no other choice or order that passes"
                                : "the best found; none can be below"));
        List<Integer> all = new ArrayList<>(placement.order());
        all.addAll(placement.spares());
        Collections.sort(all);
        for (int i = 0; i < problem.masses().size(); i++) {
            assertThat(all.get(i)).isEqualTo(i);
        }
        assertThat(all).hasSameSizeAs(problem.masses());
        assertThat(placement.order()).hasSize(problem.places());
        assertThat(placement.totalDifference()).isCloseTo(total(problem, placement.order()), within(1e-9));
        assertThat(placement.bound()).isLessThanOrEqualTo(placement.totalDifference());
    }

    private static double total(RowProblem problem, List<Integer> order) {
        double sum = 0;
        for (int i = 1; i < order.size(); i++) {
            sum += problem.unlikeness().between(order.get(i - 1), order.get(i));
        }
        return sum;
    }

    /** Every order of every choice; passing or, when none passes, with the smallest share. */
    private static double smallest(RowProblem problem) {
        SetRule rule = rule(problem);
        double[] smallest = {Double.POSITIVE_INFINITY};
        every(new ArrayList<>(), problem, order -> {
            int[] set = order.stream().mapToInt(i -> i).toArray();
            if (rule.passes(set)) {
                smallest[0] = Math.min(smallest[0], total(problem, order));
            }
        });
        return smallest[0];
    }

    private static void every(List<Integer> order, RowProblem problem, Consumer<List<Integer>> use) {
        if (order.size() == problem.places()) {
            use.accept(order);
            return;
        }
        for (int i = 0; i < problem.masses().size(); i++) {
            if (!order.contains(i)) {
                order.add(i);
                every(order, problem, use);
                order.remove(order.size() - 1);
            }
        }
    }

    /** Pieces differing in two lengths, a diameter and the mass, as a job's tolerances weigh them. */
    private static RowProblem random(Random random, int pieces, int places, double tolerancePct) {
        double[][] measures = new double[pieces][4];
        List<Mass> masses = new ArrayList<>();
        for (double[] piece : measures) {
            for (int i = 0; i < piece.length; i++) {
                piece[i] = random.nextGaussian();
            }
            masses.add(Mass.ofGrams(100 + 2 * piece[3]));
        }
        Unlikeness unlikeness = (a, b) -> {
            double sum = 0;
            for (int i = 0; i < 4; i++) {
                sum += (i < 2 ? 3 : 4 - i) * Math.abs(measures[a][i] - measures[b][i]);
            }
            return sum;
        };
        return new RowProblem(masses, unlikeness, places, tolerancePct);
    }
}
