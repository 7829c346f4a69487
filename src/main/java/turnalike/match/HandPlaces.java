package turnalike.match;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a person has settled of an order with their own hands. Pieces and places are numbered from 0. An order in which a held piece stands
 * elsewhere, or a piece stands twice, is an {@link IllegalArgumentException}.
 *
 * @param order the piece at each place as the set stands; empty where it is still to be chosen
 * @param held the piece that keeps each place, by place; none where nothing is held
 * @param stands whether the order is told as it stands; else the rest of it is searched again, from there on
 */
public record HandPlaces(List<Integer> order, Map<Integer, Integer> held, boolean stands) {
    public HandPlaces {
        order = List.copyOf(order);
        held = Map.copyOf(held);
        if (stands && order.isEmpty()) {
            throw new IllegalArgumentException("an order that stands must be told");
        }
        if (new HashSet<>(order).size() < order.size() || new HashSet<>(held.values()).size() < held.size()) {
            throw new IllegalArgumentException("a piece stands twice in %s, held %s".formatted(order, held));
        }
        for (Map.Entry<Integer, Integer> each : held.entrySet()) {
            int place = each.getKey();
            if (!order.isEmpty() && (place >= order.size() || !order.get(place).equals(each.getValue()))) {
                throw new IllegalArgumentException(
                        "piece %d is held at place %d, where another stands".formatted(each.getValue(), place));
            }
        }
    }

    /** The pieces of every place: the order, or what is held with the rest in the order of preference, each where it fits. */
    int[] start(int places, int[] preferred, HandSearch.Fits fits) {
        if (!order.isEmpty()) {
            return order.stream().mapToInt(piece -> piece).toArray();
        }
        int[] out = new int[places];
        boolean[] taken = new boolean[preferred.length];
        held.values().forEach(piece -> taken[piece] = true);
        for (int place = 0; place < places; place++) {
            out[place] = held.containsKey(place) ? held.get(place) : next(place, preferred, taken, fits);
        }
        return out;
    }

    private static int next(int place, int[] preferred, boolean[] taken, HandSearch.Fits fits) {
        for (int piece : preferred) {
            if (!taken[piece] && fits.at(piece, place)) {
                taken[piece] = true;
                return piece;
            }
        }
        throw new IllegalArgumentException("no piece is left for place %d".formatted(place));
    }

    /** {@return the held ones in the order of their places} */
    public Map<Integer, Integer> inOrder() {
        return new TreeMap<>(held);
    }
}
