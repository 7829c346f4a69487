package turnalike.api;

import java.util.List;

/**
 * A set chosen from pieces and placed in the order's frame.
 *
 * @param order the label of the piece at each place, from the first place on; on a wheel anticlockwise, of legs group by group
 * @param spares labels of the pieces left over
 * @param leftOver what the search makes small: the unbalance in g·mm of a wheel, else how unlike neighbours or the pieces of a group are
 * @param proven whether no other choice and order leaves less over
 * @param warnings what to know before believing it, a sentence each
 * @param json every figure, as {@code match --json} prints it
 */
public record PlacedSet(
        List<String> order, List<String> spares, double leftOver, boolean proven, List<String> warnings, String json) {
    public PlacedSet {
        order = List.copyOf(order);
        spares = List.copyOf(spares);
        warnings = List.copyOf(warnings);
    }
}
