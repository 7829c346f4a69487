package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class TopKTest {
    @Test
    void the_greatest_are_kept_and_of_equal_ones_the_first() {
        Seeds.each(200, random -> {
            int most = 1 + random.nextInt(4);
            TopK best = new TopK(most);
            best.offer(99, 99);
            best.clear();
            int offered = random.nextInt(9);
            int[] values = random.ints(offered, 0, 5).toArray();
            for (int i = 0; i < offered; i++) {
                best.offer(i, values[i]);
            }
            List<Integer> wanted = IntStream.range(0, offered)
                    .boxed()
                    .sorted(Comparator.comparing(i -> -values[i]))
                    .limit(most)
                    .toList();
            assertThat(best.size()).isEqualTo(wanted.size());
            assertThat(IntStream.range(0, best.size()).map(best::index).boxed().toList())
                    .isEqualTo(wanted);
            assertThat(best.sum()).isEqualTo(sum(values, wanted));
            assertThat(best.least()).isEqualTo(wanted.isEmpty() ? 0 : values[wanted.get(wanted.size() - 1)]);
            assertThat(best.sumButOne()).isEqualTo(sum(values, wanted.subList(0, Math.min(most - 1, wanted.size()))));
        });
    }

    private static int sum(int[] values, List<Integer> which) {
        return which.stream().mapToInt(i -> values[i]).sum();
    }
}
