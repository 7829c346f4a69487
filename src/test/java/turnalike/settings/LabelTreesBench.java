package turnalike.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The divider search on labelled graphs of published sizes: fewest labels whose edges join all nodes. Arguments: a file of graphs (CSV
 * with a header: file, instance, nodes, labels, edges as {@code u-v:label} with blanks between) and one of their optima (file, instance,
 * nodes, labels, density, edges, optimum), both CSV; prints how many agree. Without arguments: own graphs drawn at random, the average
 * beside the published one. The graphs of the literature are not carried here, as their licence is not known.
 */
final class LabelTreesBench {
    private static final int GRAPHS = 10;

    private LabelTreesBench() {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length == 2) {
            compare(Path.of(arguments[0]), optima(Path.of(arguments[1])));
            return;
        }
        // Published exact averages as in LabelTreesTest, from memory.
        double[][] published = {{20, 2.4, 3.1}, {30, 2.8, 3.7}, {40, 2.9, 3.7}, {50, 3.0, 4.0}};
        for (double[] row : published) {
            drawn((int) row[0], 0.8, row[1]);
            drawn((int) row[0], 0.5, row[2]);
        }
    }

    private static void drawn(int nodes, double density, double published) {
        Random random = new Random(nodes);
        long start = System.nanoTime();
        int sum = 0;
        for (int graph = 0; graph < GRAPHS; graph++) {
            sum += LabelledGraph.random(nodes, nodes, density, random).fewest();
        }
        System.out.printf(
                Locale.ROOT,
                "%d nodes, density %.1f: average %.1f, published %.1f; %.3f s each%n",
                nodes,
                density,
                (double) sum / GRAPHS,
                published,
                (System.nanoTime() - start) * 1e-9 / GRAPHS);
    }

    private static void compare(Path graphs, Map<String, Integer> optima) throws IOException {
        int same = 0;
        int all = 0;
        double longest = 0;
        for (String line : rows(graphs)) {
            String[] fields = line.split(",", -1);
            long start = System.nanoTime();
            int fewest = graph(fields).fewest();
            longest = Math.max(longest, (System.nanoTime() - start) * 1e-9);
            int optimum = optima.getOrDefault(fields[0] + " " + fields[1], -1);
            all++;
            if (fewest == optimum) {
                same++;
            } else {
                System.out.printf("%s %s: %d, the file says %d%n", fields[0], fields[1], fewest, optimum);
            }
        }
        System.out.printf(Locale.ROOT, "%d of %d the same, each within %.3f s%n", same, all, longest);
    }

    private static LabelledGraph graph(String[] fields) {
        List<List<int[]>> labels = new ArrayList<>();
        for (int label = 0; label < Integer.parseInt(fields[3]); label++) {
            labels.add(new ArrayList<>());
        }
        for (String edge : fields[4].strip().split(" ", -1)) {
            String[] ends = edge.split("[-:]", -1);
            labels.get(Integer.parseInt(ends[2])).add(new int[] {Integer.parseInt(ends[0]), Integer.parseInt(ends[1])});
        }
        return new LabelledGraph(Integer.parseInt(fields[2]), labels);
    }

    private static Map<String, Integer> optima(Path file) throws IOException {
        return rows(file).stream()
                .map(row -> row.split(",", -1))
                .collect(Collectors.toMap(
                        fields -> fields[0] + " " + fields[1],
                        fields -> Integer.valueOf(fields[6].strip()),
                        (one, other) -> one,
                        TreeMap::new));
    }

    private static List<String> rows(Path csv) throws IOException {
        return Files.readAllLines(csv, StandardCharsets.UTF_8).stream().skip(1).toList();
    }
}
