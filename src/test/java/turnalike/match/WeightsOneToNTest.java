package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;

/** The published family of weights 1, 2, …, n; sources in the data file. */
class WeightsOneToNTest {
    @Test
    void proven_optima_and_their_number_are_the_published_ones() throws IOException {
        for (Row row : rows()) {
            if (row.n <= 15) {
                Count count = new Count();
                boolean ended = exact(row.n, false)
                        .search(all(row.n), Math.max(2 * row.optimum, 1e-5), Effort.unlimited(), count);
                assertThat(ended).isTrue();
                assertThat(count.smallest)
                        .as("n = %d", row.n)
                        .isCloseTo(row.optimum, within(5.1e-6 * row.optimum + 1e-12));
                assertThat(count.orders).as("orders for n = %d", row.n).isEqualTo(row.count);
            }
        }
    }

    @Test
    void mirrored_pairs_find_the_published_optima_and_their_number_too() throws IOException {
        for (Row row : rows()) {
            if (row.n <= 17) {
                Count count = new Count();
                boolean ended = new ExactPairs(weights(row.n), new PlaceDirections(row.n), 0, 0, false)
                        .search(all(row.n), Math.max(1.5 * row.optimum, 1e-8), Effort.unlimited(), count);
                assertThat(ended).isTrue();
                assertThat(count.smallest)
                        .as("n = %d", row.n)
                        .isCloseTo(row.optimum, within(5.1e-6 * row.optimum + 1e-12));
                assertThat(count.orders).as("orders for n = %d", row.n).isEqualTo(row.count);
            }
        }
    }

    @Test
    void the_search_alone_proves_the_optimum_where_heavy_and_light_are_swapped_too() throws IOException {
        for (Row row : rows()) {
            if (row.n <= 17) {
                WheelSearch search = new WheelSearch(ring(row.n), 0, true);
                search.run(Effort.unlimited());
                assertThat(search.proven).isTrue();
                assertThat(search.leftGMm)
                        .as("n = %d", row.n)
                        .isCloseTo(row.optimum, within(5.1e-6 * row.optimum + 1e-12));
            }
        }
    }

    @Test
    void the_arrangements_listed_have_the_unbalance_listed() throws IOException {
        for (Row row : rows()) {
            if (!row.arrangement.isEmpty()) {
                assertThat(ring(row.n)
                                .leftGMm(row.arrangement.stream()
                                        .mapToInt(i -> i)
                                        .toArray()))
                        .as("n = %d", row.n)
                        .isCloseTo(row.optimum, within(5.1e-6 * row.optimum + 1e-12));
            }
        }
    }

    @Test
    void nothing_is_left_over_for_every_n_that_is_no_prime_power() {
        for (int n : new int[] {6, 10, 12, 14, 15, 18, 20, 21, 22, 24, 26, 28, 30, 33, 100, 360}) {
            WheelSearch search = new WheelSearch(ring(n), 0, true);
            search.run(Effort.ofAsks(0));
            assertThat(search.leftGMm).as("n = %d", n).isLessThan(1e-9 * n);
            assertThat(search.proven).isTrue();
        }
    }

    /**
     * k equal pieces in n holes balance if and only if k and n − k are both sums of prime divisors of n (Sivek, Integers 10 (2010)
     * 365–368; citation VERIFIED, statement FROM MEMORY per shared/references.md b).
     */
    @Test
    void equal_pieces_in_some_of_the_holes_balance_when_the_theorem_says_so() {
        for (int n = 2; n <= 12; n++) {
            for (int k = 0; k <= n; k++) {
                double[] weights = new double[n];
                Arrays.fill(weights, 0, k, 1);
                Arrays.fill(weights, k, n, 1e-3); // a piece weighs something; the difference must balance
                WheelSearch search = new WheelSearch(ring(weights), 0, true);
                search.run(Effort.unlimited());
                assertThat(search.leftGMm < 1e-9)
                        .as("%d of %d", k, n)
                        .isEqualTo(sumOfPrimeDivisors(k, n) && sumOfPrimeDivisors(n - k, n));
            }
        }
    }

    private static boolean sumOfPrimeDivisors(int sum, int n) {
        if (sum <= 0) {
            return sum == 0;
        }
        for (int prime = 2; prime <= n; prime++) {
            boolean divides = n % prime == 0;
            for (int d = 2; d < prime; d++) {
                divides &= prime % d != 0;
            }
            if (divides && sumOfPrimeDivisors(sum - prime, n)) {
                return true;
            }
        }
        return false;
    }

    private static ExactOrders exact(int n, boolean once) {
        return new ExactOrders(weights(n), new PlaceDirections(n), 0, 0, once);
    }

    static WheelArrays ring(int n) {
        return ring(weights(n));
    }

    static WheelArrays ring(double... weights) {
        double[] alike = new double[weights.length];
        Arrays.fill(alike, 1);
        return new WheelArrays(
                alike, weights, new PlaceDirections(weights.length), new SetRule(alike, weights.length, 1), 0, 0);
    }

    private static double[] weights(int n) {
        double[] weights = new double[n];
        Arrays.setAll(weights, i -> i + 1);
        return weights;
    }

    private static int[] all(int n) {
        int[] all = new int[n];
        Arrays.setAll(all, i -> i);
        return all;
    }

    /** Counts the orders that reach the smallest unbalance yet. */
    private static final class Count implements ExactOrders.Found {
        double smallest = Double.POSITIVE_INFINITY;
        int orders;

        @Override
        public double order(double leftGMm, int[] pieceAt) {
            if (leftGMm < smallest - 1e-9) {
                smallest = leftGMm;
                orders = 0;
            }
            orders++;
            return smallest + 1e-9;
        }
    }

    private record Row(int n, double optimum, int count, List<Integer> arrangement) {}

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(WeightsOneToNTest.class.getResourceAsStream("weights-one-to-n.csv")),
                StandardCharsets.UTF_8))) {
            for (String line :
                    lines.lines().filter(l -> !l.startsWith("#")).skip(1).toList()) {
                String[] cells = line.split(",", -1);
                List<Integer> arrangement = Arrays.stream(cells[3].split(" "))
                        .filter(s -> !s.isEmpty())
                        .map(s -> Integer.parseInt(s) - 1)
                        .toList();
                rows.add(new Row(
                        Integer.parseInt(cells[0]),
                        Double.parseDouble(cells[1]),
                        cells[2].isEmpty() ? -1 : Integer.parseInt(cells[2]),
                        arrangement));
            }
        }
        assertThat(rows).hasSize(19);
        return rows;
    }
}
