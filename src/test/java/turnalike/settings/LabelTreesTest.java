package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

/** The search for the fewest divider settings on the task that it is a case of: the minimum labelling spanning tree. */
class LabelTreesTest {
    private static final int GRAPHS = 10;

    @Test
    void the_fewest_labels_are_those_found_by_trying_every_set() {
        Seeds.each(150, random -> {
            int nodes = 4 + random.nextInt(7);
            LabelledGraph graph =
                    LabelledGraph.random(nodes, 2 + random.nextInt(9), 0.6 + 0.35 * random.nextDouble(), random);
            assertThat(graph.fewest()).isEqualTo(graph.fewestByTrying());
        });
    }

    /**
     * The exact averages over ten graphs drawn at random, as many labels as nodes, as published for the graphs of Cerulli and others 2005
     * (Consoli, Darby-Dowman, Mladenović and Moreno Pérez, European Journal of Operational Research, 2009; figures from memory). Ours are
     * not the same graphs: averages over ten scatter by up to 0.16, hence 0.5, three times the scatter of the difference of both. The
     * published graphs of density 0.2 are drawn less evenly than ours, some with a few nodes that have most edges, so they tell nothing
     * here; {@link LabelTreesBench} tells whether each fewest of theirs is the same.
     */
    @Test
    void averages_over_random_graphs_are_the_published_ones() {
        assertThat(average(20, 0.8)).isCloseTo(2.4, within(0.5));
        assertThat(average(20, 0.5)).isCloseTo(3.1, within(0.5));
        assertThat(average(30, 0.8)).isCloseTo(2.8, within(0.5));
        assertThat(average(30, 0.5)).isCloseTo(3.7, within(0.5));
    }

    private static double average(int nodes, double density) {
        Random random = new Random(20_261_126);
        int sum = 0;
        for (int graph = 0; graph < GRAPHS; graph++) {
            sum += LabelledGraph.random(nodes, nodes, density, random).fewest();
        }
        return (double) sum / GRAPHS;
    }
}
