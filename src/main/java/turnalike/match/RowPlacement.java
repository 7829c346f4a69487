package turnalike.match;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import turnalike.units.Working;

/**
 * A set in a row.
 *
 * @param order the piece at each place, by number from 0 in the list given
 * @param spares the pieces left over, ascending
 * @param totalDifference the sum of the differences of neighbours
 * @param bound what no choice or order can be below, as far as proven
 * @param bestProven whether no other choice or order has a smaller total
 * @param warnings in the user's words
 * @param workings how the figures were found
 */
public record RowPlacement(
        List<Integer> order,
        List<Integer> spares,
        double totalDifference,
        double bound,
        boolean bestProven,
        List<String> warnings,
        List<Working> workings) {
    public RowPlacement {
        order = List.copyOf(order);
        spares = List.copyOf(spares);
        warnings = List.copyOf(warnings);
        workings = List.copyOf(workings);
    }

    /** {@return the same row read from its other end: every neighbour stays a neighbour, so nothing else changes} */
    public RowPlacement reversed() {
        List<Integer> back = new ArrayList<>(order);
        Collections.reverse(back);
        return new RowPlacement(back, spares, totalDifference, bound, bestProven, warnings, workings);
    }
}
