package turnalike.job.set;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.match.HandPlaces;
import turnalike.pieces.Piece;
import turnalike.units.Problem;

/**
 * What a person settled of the set with their own hands, by the pieces' labels. Places are numbered from 1; those of legs go on from one group to
 * the next.
 *
 * @param order the piece of every place as the set stands; empty where that was left to the search
 * @param held the piece that keeps each place, by place
 * @param searching whether the rest is searched again from the order on, where there is one, instead of standing as it is
 */
public record ByHand(List<String> order, SortedMap<Integer, String> held, boolean searching) {
    /** Nothing is settled. */
    public static final ByHand NONE = new ByHand(List.of(), Collections.emptySortedMap(), false);

    private static final String RELEASE = "release it, or place the set by hand again";

    public ByHand {
        order = List.copyOf(order);
        held = Collections.unmodifiableSortedMap(new TreeMap<>(held));
    }

    /** {@return whether anything is settled} */
    public boolean isAny() {
        return !order.isEmpty() || !held.isEmpty();
    }

    /** {@return whether the set is told as it stands, without a search} */
    public boolean stands() {
        return !order.isEmpty() && !searching;
    }

    /** {@return the same, the rest to be searched again: what stands now is where that search begins} */
    public ByHand searched() {
        return new ByHand(order, held, true);
    }

    /**
     * {@return the same with that order}
     *
     * @param labels the piece of every place; what is held and stands elsewhere there is held no longer
     */
    public ByHand ordered(List<String> labels) {
        SortedMap<Integer, String> kept = new TreeMap<>(held);
        kept.entrySet()
                .removeIf(each -> each.getKey() > labels.size()
                        || !labels.get(each.getKey() - 1).equals(each.getValue()));
        return new ByHand(labels, kept, false);
    }

    /**
     * {@return what keeps it from being done, in order; empty when nothing does}
     *
     * @param places how many the frame has
     * @param pieces those there are to choose from
     */
    List<Problem> problems(int places, List<Piece> pieces) {
        List<Problem> out = new ArrayList<>();
        List<String> labels = pieces.stream().map(Piece::label).toList();
        if (!order.isEmpty() && order.size() != places) {
            out.add(new Problem(
                    "by_hand: order",
                    "names %d pieces, the frame has %d places".formatted(order.size(), places),
                    "place the set again by hand, or let it be searched"));
        }
        for (int i = 0; i < order.size(); i++) {
            if (!labels.contains(order.get(i))) {
                out.add(new Problem(
                        "by_hand: order",
                        "piece %s at place %d is not among the pieces".formatted(order.get(i), i + 1),
                        "put another there, or log it again"));
            }
        }
        held.forEach((place, label) -> {
            String where = "by_hand: held";
            if (place > places) {
                out.add(new Problem(
                        where, "piece %s is held at place %d of %d".formatted(label, place, places), RELEASE));
            } else if (!labels.contains(label)) {
                out.add(new Problem(where, "piece %s is not among the pieces".formatted(label), RELEASE));
            } else if (order.size() == places && !order.get(place - 1).equals(label)) {
                out.add(new Problem(
                        where,
                        "piece %s is held at place %d, where piece %s stands"
                                .formatted(label, place, order.get(place - 1)),
                        RELEASE));
            }
        });
        return out;
    }

    /** The same by the pieces' numbers in that list; only when there are no problems. */
    HandPlaces among(List<Piece> pieces) {
        Map<String, Integer> numbers = new HashMap<>();
        pieces.forEach(piece -> numbers.put(piece.label(), numbers.size()));
        Map<Integer, Integer> kept = new HashMap<>();
        held.forEach((place, label) -> kept.put(place - 1, numbers.get(label)));
        return new HandPlaces(order.stream().map(numbers::get).toList(), kept, stands());
    }

    /**
     * {@return which place holds the piece, from 1; empty for one that is not held}
     *
     * @param label the piece's
     */
    public OptionalInt placeOf(String label) {
        return held.entrySet().stream()
                .filter(each -> each.getValue().equals(label))
                .mapToInt(Map.Entry::getKey)
                .findFirst();
    }
}
