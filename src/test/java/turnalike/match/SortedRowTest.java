package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.units.Mass;

/** Rows whose places want sorts of pieces. */
class SortedRowTest {
    private static final List<String> NAMES = List.of("A", "B", "C");

    private record Case(RowProblem problem, RowSorts sorts) {
        double[] massesG() {
            return problem.masses().stream().mapToDouble(Mass::grams).toArray();
        }
    }

    private static Case random(Random random, int pieces, int places) {
        List<Integer> ofPieces = new ArrayList<>();
        List<Integer> ofPlaces = new ArrayList<>();
        int sorts = 1 + random.nextInt(3);
        double[] massesG = new double[pieces];
        double[][] at = new double[pieces][2];
        for (int i = 0; i < pieces; i++) {
            ofPieces.add(random.nextInt(sorts));
            massesG[i] = 100 + 40 * ofPieces.get(i) + 2 * random.nextGaussian();
            at[i] = new double[] {random.nextGaussian(), random.nextGaussian()};
        }
        List<Integer> open = new ArrayList<>(ofPieces);
        Collections.shuffle(open, random);
        ofPlaces.addAll(open.subList(0, places));
        List<Mass> masses = new ArrayList<>();
        for (double grams : massesG) {
            masses.add(Mass.ofGrams(grams));
        }
        Unlikeness unlikeness = (a, b) -> Math.abs(at[a][0] - at[b][0]) + Math.abs(at[a][1] - at[b][1]);
        return new Case(new RowProblem(masses, unlikeness, places, 2), new RowSorts(ofPieces, ofPlaces));
    }

    @Test
    void finds_what_plain_enumeration_finds_and_the_bound_is_never_above_it() {
        Seeds.each(60, random -> {
            int pieces = 2 + random.nextInt(6);
            Case each = random(random, pieces, 1 + random.nextInt(pieces));
            SortRules rules = new SortRules(each.massesG(), each.sorts, 0.02);
            double[][] difference = Unlikeness.table(each.problem.unlikeness(), pieces);
            double least = least(each, rules, difference, new ArrayList<>(), 0);
            RowPlacement placed = RowMatch.solve(each.problem, each.sorts, NAMES, Effort.ofAsks(0));
            assertThat(placed.totalDifference()).isCloseTo(least, within(1e-9));
            assertThat(placed.bestProven()).isTrue();
            assertSound(each, rules, placed);
            assertThat(RowBound.ofSorts(DifferencesTest.kept(difference), each.sorts))
                    .isLessThanOrEqualTo(least + 1e-9);
        });
    }

    @Test
    void where_any_weights_pass_the_search_comes_close_to_the_least() {
        Seeds.each(60, random -> {
            int pieces = 2 + random.nextInt(6);
            Case each = random(random, pieces, 1 + random.nextInt(pieces));
            SortRules rules = new SortRules(each.massesG(), each.sorts, 0.5);
            double[][] difference = Unlikeness.table(each.problem.unlikeness(), pieces);
            double least = least(each, rules, difference, new ArrayList<>(), 0);
            SortedRowSearch search = new SortedRowSearch(DifferencesTest.kept(difference), each.sorts, rules);
            int[] found = search.solve(0, 300, Effort.unlimited());
            assertThat(search.total(found)).isBetween(least - 1e-9, 1.02 * least + 1e-9);
        });
    }

    @Test
    void long_rows_are_sound_and_better_than_pieces_as_they_come() {
        Seeds.each(3, random -> {
            Case each = random(random, 90, 60);
            SortRules rules = new SortRules(each.massesG(), each.sorts, 0.02);
            RowPlacement placed = RowMatch.solve(each.problem, each.sorts, NAMES, Effort.ofAsks(60));
            assertSound(each, rules, placed);
            assertThat(placed.bound()).isPositive().isLessThanOrEqualTo(placed.totalDifference());
            double[][] difference = Unlikeness.table(each.problem.unlikeness(), 90);
            SortedRowSearch search = new SortedRowSearch(DifferencesTest.kept(difference), each.sorts, rules);
            List<Integer> come = new ArrayList<>();
            for (int place = 0; place < 60; place++) {
                int sort = each.sorts.ofPlaces().get(place);
                come.add(each.sorts.pieces(sort).stream()
                        .filter(piece -> !come.contains(piece))
                        .findFirst()
                        .orElseThrow());
            }
            double asTheyCome = search.total(come.stream().mapToInt(i -> i).toArray());
            assertThat(placed.totalDifference()).isLessThan(0.6 * asTheyCome);
        });
    }

    /** Pieces alike in mass look nothing like one another, and a thousand spares hide those that do. */
    @Test
    void a_row_is_found_among_many_spares_that_lie_together() {
        Random random = new Random(5);
        int pieces = 1500;
        List<Integer> ofPieces = new ArrayList<>();
        List<Mass> masses = new ArrayList<>();
        double[][] at = new double[pieces][2];
        for (int i = 0; i < pieces; i++) {
            ofPieces.add(i % 2);
            masses.add(Mass.ofGrams(100 + 40 * (i % 2) + 3 * random.nextGaussian()));
            at[i] = new double[] {random.nextDouble(), random.nextDouble()};
        }
        Unlikeness unlikeness = (a, b) -> Math.abs(at[a][0] - at[b][0]) + Math.abs(at[a][1] - at[b][1]);
        List<Integer> together = new ArrayList<>();
        List<Integer> inTurn = new ArrayList<>();
        for (int place = 0; place < 16; place++) {
            together.add(place / 8);
            inTurn.add(place % 2);
        }
        for (List<Integer> ofPlaces : List.of(together, inTurn)) {
            RowSorts sorts = new RowSorts(ofPieces, ofPlaces);
            Case each = new Case(new RowProblem(masses, unlikeness, 16, 5), sorts);
            RowPlacement placed = RowMatch.solve(each.problem, sorts, NAMES, Effort.ofAsks(0));
            assertSound(each, new SortRules(each.massesG(), sorts, 0.05), placed);
            assertThat(placed.totalDifference()).isLessThan(1.2 * chain(each, unlikeness));
        }
    }

    /** The best of twenty rows that take the nearest piece of the sort wanted each time, at most 2.5 % off the sort's usual mass. */
    private static double chain(Case each, Unlikeness unlikeness) {
        double best = Double.POSITIVE_INFINITY;
        double[] massesG = each.massesG();
        for (int first = 0; first < 1500; first += 75) {
            List<Integer> row = new ArrayList<>(List.of(first - first % 2));
            double total = 0;
            for (int place = 1; place < each.problem.places(); place++) {
                int sort = each.sorts.ofPlaces().get(place);
                int last = row.get(place - 1);
                int next = -1;
                for (int piece = sort; piece < massesG.length; piece += 2) {
                    boolean usual = Math.abs(massesG[piece] / (100 + 40 * sort) - 1) <= 0.0245;
                    if (usual
                            && !row.contains(piece)
                            && (next < 0 || unlikeness.between(last, piece) < unlikeness.between(last, next))) {
                        next = piece;
                    }
                }
                total += unlikeness.between(last, next);
                row.add(next);
            }
            best = Math.min(best, total);
        }
        return best;
    }

    private static void assertSound(Case each, SortRules rules, RowPlacement placed) {
        for (int place = 0; place < placed.order().size(); place++) {
            assertThat(each.sorts.ofPieces().get(placed.order().get(place)))
                    .isEqualTo(each.sorts.ofPlaces().get(place));
        }
        assertThat(placed.order()).doesNotHaveDuplicates().hasSize(each.problem.places());
        assertThat(rules.passes(placed.order().stream().mapToInt(i -> i).toArray()))
                .isTrue();
    }

    private static double least(Case each, SortRules rules, double[][] difference, List<Integer> order, double so) {
        if (order.size() == each.problem.places()) {
            boolean passes = rules.passes(order.stream().mapToInt(i -> i).toArray());
            return passes ? so : Double.POSITIVE_INFINITY;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int piece = 0; piece < each.massesG().length; piece++) {
            boolean fits = each.sorts
                    .ofPieces()
                    .get(piece)
                    .equals(each.sorts.ofPlaces().get(order.size()));
            if (!fits || order.contains(piece)) {
                continue;
            }
            double joint = order.isEmpty() ? 0 : difference[order.get(order.size() - 1)][piece];
            order.add(piece);
            least = Math.min(least, least(each, rules, difference, order, so + joint));
            order.remove(order.size() - 1);
        }
        return least;
    }
}
