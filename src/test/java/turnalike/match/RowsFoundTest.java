package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnalike.effort.Effort;

/**
 * The rows that the searches found on random pieces before all differences from one piece were kept: the file was written by the search that asked for each
 * pair anew, which went the same way step by step. Whoever makes the search find others on purpose writes it anew.
 */
class RowsFoundTest {
    private static final Path FOUND = Path.of("src/test/resources/turnalike/match/rows-found.tsv");

    static List<String> found() throws IOException {
        return Files.readAllLines(FOUND).stream().skip(1).toList();
    }

    private static Unlikeness random(int pieces, long seed) {
        Random random = new Random(seed);
        double[][] figures = new double[pieces][4];
        for (double[] each : figures) {
            Arrays.setAll(each, i -> Math.rint(50 * random.nextGaussian()) / 50);
        }
        return (i, j) -> {
            double sum = 0;
            for (int k = 0; k < 4; k++) {
                sum += Math.abs(figures[i][k] - figures[j][k]) / (1 + k);
            }
            return sum;
        };
    }

    private static String told(int[] row) {
        return Arrays.stream(row).mapToObj(String::valueOf).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @MethodSource("found")
    void a_row_is_found_as_before(String line) {
        String[] cells = line.split("\t", -1);
        long seed = Long.parseLong(cells[0]);
        int pieces = Integer.parseInt(cells[1]);
        int places = Integer.parseInt(cells[2]);
        Differences differences = Differences.of(random(pieces, seed), pieces);
        double[] masses = new Random(1000 + seed)
                .doubles(pieces, 95, 105)
                .map(mass -> Math.rint(10 * mass) / 10)
                .toArray();
        SetRule rule = new SetRule(masses, places, 0.02 + 0.002 * seed);
        assertThat(told(new RowSearch(differences, rule).solve(0, 30, Effort.unlimited())))
                .isEqualTo(cells[3]);
        RowSorts sorts = new RowSorts(
                IntStream.range(0, pieces).mapToObj(i -> i % 3).toList(),
                IntStream.range(0, places).mapToObj(i -> i * i % 3).toList());
        SortRules rules = new SortRules(masses, sorts, 0.03);
        assertThat(told(new SortedRowSearch(differences, sorts, rules).solve(0, 30, Effort.unlimited())))
                .isEqualTo(cells[4]);
    }
}
