package turnalike.stock.boards;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Bins of one size as boards that give one stretch each. */
final class Packings {
    private Packings() {}

    static Question question(long capacity, int[] lengths) {
        Map<Integer, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        for (int length : lengths) {
            counts.merge(length, 1, Integer::sum);
        }
        long[] weights = counts.keySet().stream().mapToLong(each -> each).toArray();
        int[] demand = counts.values().stream().mapToInt(each -> each).toArray();
        BitSet all = new BitSet();
        all.set(0, weights.length);
        return new Question(
                weights,
                demand,
                List.of(new Question.Stretch(all, capacity)),
                List.of(new Question.Type(1, lengths.length, List.of(new int[] {1}))));
    }
}
