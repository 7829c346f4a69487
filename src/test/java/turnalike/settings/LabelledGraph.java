package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import turnalike.effort.Effort;
import turnalike.effort.Progress;

/**
 * A graph whose edges carry labels: the general task of which dividers are a case. The fewest labels whose edges join all nodes are
 * looked for as the fewest openings that reach every mark from one end, in any number of steps; the other end takes no part.
 *
 * @param labels at most 62; by label, its edges as pairs of nodes, the lower first; a label may have none
 */
record LabelledGraph(int nodes, List<List<int[]>> labels) {
    /** The share {@code density} of all pairs of nodes, drawn at random, each with a label at random; all joined when taken together. */
    static LabelledGraph random(int nodes, int labels, double density, Random random) {
        List<int[]> pairs = new ArrayList<>();
        for (int low = 0; low < nodes; low++) {
            for (int high = low + 1; high < nodes; high++) {
                pairs.add(new int[] {low, high});
            }
        }
        LabelledGraph graph = new LabelledGraph(nodes, List.of());
        while (!graph.joined((1L << graph.labels.size()) - 1)) {
            Collections.shuffle(pairs, random);
            List<List<int[]>> drawn = new ArrayList<>();
            for (int label = 0; label < labels; label++) {
                drawn.add(new ArrayList<>());
            }
            for (int[] pair : pairs.subList(0, (int) Math.round(density * pairs.size()))) {
                drawn.get(random.nextInt(labels)).add(pair);
            }
            graph = new LabelledGraph(nodes, drawn);
        }
        return graph;
    }

    /** The fewest labels, proven by the search for the fewest divider settings. */
    int fewest() {
        ProvenChoice proven = DividerSearch.search(spans(), new UntilFewest());
        if (proven.lowerBound() != proven.choice().settings()) {
            throw new AssertionError("%s is not proven".formatted(proven));
        }
        return proven.lowerBound();
    }

    /** Ends as soon as the fewest are proven: the sum of steps means nothing here. */
    private static final class UntilFewest implements Effort {
        private boolean proven;

        @Override
        public boolean spent() {
            return proven;
        }

        @Override
        public void report(Progress progress) {
            proven = progress.best() == progress.bound();
        }
    }

    /** The fewest labels by trying every set of them. */
    int fewestByTrying() {
        int fewest = Integer.MAX_VALUE;
        for (long set = 0; set < 1L << labels.size(); set++) {
            if (Long.bitCount(set) < fewest && joined(set)) {
                fewest = Long.bitCount(set);
            }
        }
        return fewest;
    }

    private boolean joined(long set) {
        int[] group = new int[nodes];
        Arrays.setAll(group, node -> node);
        int groups = nodes;
        for (int label = 0; label < labels.size(); label++) {
            for (int[] edge : (set >> label & 1) == 0 ? List.<int[]>of() : labels.get(label)) {
                int from = group[edge[0]];
                int to = group[edge[1]];
                if (from != to) {
                    groups--;
                    Arrays.setAll(group, node -> group[node] == from ? to : group[node]);
                }
            }
        }
        return groups == 1;
    }

    /** Node 0 is the near end, the far end a mark that no edge touches. */
    Spans spans() {
        int marks = nodes + 1;
        double[] places = new double[marks];
        Arrays.setAll(places, mark -> mark);
        boolean[][] barred = new boolean[marks][marks];
        for (boolean[] row : barred) {
            Arrays.fill(row, true);
        }
        List<Opening> openings = new ArrayList<>();
        for (List<int[]> edges : labels) {
            List<double[]> pairs = new ArrayList<>();
            for (int[] edge : edges) {
                pairs.add(new double[] {1, edge[0], edge[1]});
                barred[edge[0]][edge[1]] = false;
                barred[edge[1]][edge[0]] = false;
            }
            if (!pairs.isEmpty()) {
                openings.add(new Opening(pairs));
            }
        }
        return new Spans(places, nodes - 1, new boolean[marks], openings, 0, barred);
    }
}
