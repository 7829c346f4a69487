package turnalike.match;

import java.util.List;

/**
 * Pieces in groups that look alike.
 *
 * @param groups each the pieces of one group, ascending, by number from 0 in the list given; groups ascending by their first
 * @param spares what is left over, ascending
 * @param totalDifference the sum of the differences of any two pieces of one group
 * @param bestProven whether no other grouping has a smaller total
 */
public record Grouping(List<List<Integer>> groups, List<Integer> spares, double totalDifference, boolean bestProven) {
    public Grouping {
        groups = groups.stream().map(List::copyOf).toList();
        spares = List.copyOf(spares);
    }
}
