package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

/** The bound on a row itself, told of a row far above the best so that nothing clamps it, against every order of small rows. */
class RowBoundTest {
    private static final int UNCLAMPED = 2;

    /** Pieces as points: in a plane, or differences without any order to them. */
    private static double[][] differences(int n, Random random) {
        double[][] out = new double[n][n];
        boolean plane = random.nextBoolean();
        double[] x = random.doubles(n).toArray();
        double[] y = random.doubles(n).toArray();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                out[i][j] = plane ? Math.hypot(x[i] - x[j], y[i] - y[j]) : random.nextDouble();
                out[j][i] = out[i][j];
            }
        }
        return out;
    }

    /** The shortest path over {@code places} of the pieces, by trying every order. */
    private static double shortest(double[][] difference, int places) {
        double best = Double.POSITIVE_INFINITY;
        for (int first = 0; first < difference.length; first++) {
            best = Math.min(best, from(difference, first, 1 << first, places - 1, best, 0));
        }
        return best;
    }

    private static double from(double[][] difference, int at, int used, int left, double best, double total) {
        if (left == 0 || total >= best) {
            return Math.min(best, total + (left == 0 ? 0 : Double.POSITIVE_INFINITY));
        }
        double least = best;
        for (int next = 0; next < difference.length; next++) {
            if ((used >> next & 1) == 0) {
                least = from(difference, next, used | 1 << next, left - 1, least, total + difference[at][next]);
            }
        }
        return least;
    }

    @Test
    void it_is_never_above_the_best_row_and_within_a_tenth_of_it_on_the_whole() {
        double[] share = new double[2];
        Seeds.each(300, random -> {
            int n = 3 + random.nextInt(5);
            double[][] difference = differences(n, random);
            double best = shortest(difference, n);
            double bound = RowBound.ofAll(DifferencesTest.kept(difference), UNCLAMPED * best);
            assertThat(bound).isLessThanOrEqualTo(best * (1 + 1e-9)).isGreaterThan(0.75 * best);
            share[0] += bound / best;
            share[1]++;
        });
        assertThat(share[0] / share[1]).isBetween(0.97, 1 + 1e-9);
    }

    /** Along a line the least spanning tree is the best row: met without any price. */
    @Test
    void pieces_that_differ_in_one_measure_meet_it() {
        double[] at = {4, 0, 9, 1, 6.5};
        double[][] difference = new double[5][5];
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                difference[i][j] = Math.abs(at[i] - at[j]);
            }
        }
        assertThat(RowBound.ofAll(DifferencesTest.kept(difference), 18)).isCloseTo(9, within(1e-9));
        assertThat(RowBound.ofAll(DifferencesTest.kept(difference), 9)).isEqualTo(9);
        assertThat(RowBound.ofAll(DifferencesTest.kept(difference), 8.5))
                .as("no more than a row that was found")
                .isEqualTo(8.5);
    }

    /**
     * Four alike pieces about one that is 1 from each, 2 from one another: the least tree, a star, is 4 long; every row is 2 + 2 + 1 + 1 = 6.
     * Only the prices find that out.
     */
    @Test
    void the_prices_raise_a_star_to_the_row_it_allows() {
        double[][] star = new double[5][5];
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                star[i][j] = i == j ? 0 : i == 0 || j == 0 ? 1 : 2;
            }
        }
        assertThat(shortest(star, 5)).isEqualTo(6);
        assertThat(RowBound.ofAll(DifferencesTest.kept(star), 12)).isBetween(5.9, 6 + 1e-9);
    }

    @Test
    void two_pieces_have_but_one_row() {
        assertThat(RowBound.ofAll(DifferencesTest.kept(new double[][] {{0, 3}, {3, 0}}), 3))
                .isEqualTo(3);
    }

    @Test
    void that_of_some_of_the_pieces_is_never_above_their_best_row() {
        double[] share = new double[2];
        Seeds.each(200, random -> {
            int n = 3 + random.nextInt(4);
            int places = 2 + random.nextInt(n - 1);
            double[][] difference = differences(n, random);
            double best = shortest(difference, places);
            double bound = RowBound.ofSome(DifferencesTest.kept(difference), places);
            assertThat(bound).isPositive().isLessThanOrEqualTo(best * (1 + 1e-12));
            share[0] += bound / best;
            share[1]++;
        });
        assertThat(share[0] / share[1]).isGreaterThan(0.8);
    }

    /** Joints of 1, 2 and 4 along a line: two places take the shortest, three the two shortest. */
    @Test
    void that_of_some_is_the_shortest_joints_of_the_least_tree() {
        double[][] difference = {{0, 4, 5, 7}, {4, 0, 1, 3}, {5, 1, 0, 2}, {7, 3, 2, 0}};
        assertThat(RowBound.ofSome(DifferencesTest.kept(difference), 1)).isZero();
        assertThat(RowBound.ofSome(DifferencesTest.kept(difference), 2)).isEqualTo(1);
        assertThat(RowBound.ofSome(DifferencesTest.kept(difference), 3)).isEqualTo(3);
        assertThat(RowBound.ofSome(DifferencesTest.kept(difference), 4)).isEqualTo(7);
    }
}
