package turnalike.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.pieces.blanks.WeighedBlank;
import turnalike.price.Charges;
import turnalike.price.Timing;
import turnalike.stock.boards.Board;

/**
 * What stands in the shop for an order: nothing of it changes what is turned.
 *
 * @param boards in hand, in the order told
 * @param blanks weighed before they are turned, in the order told
 * @param times taken, by stage, in the order they were taken
 * @param charges what the turner charges; without a rate for the hour no price is made
 * @param cut how the boards are cut, as it was found last
 */
public record Shop(
        List<Board> boards,
        List<WeighedBlank> blanks,
        Map<String, List<Timing>> times,
        Charges charges,
        Optional<FoundCut> cut) {
    /** Nothing told yet. */
    public static final Shop EMPTY = new Shop(List.of(), List.of(), Map.of(), Charges.NONE, Optional.empty());

    public Shop {
        boards = List.copyOf(boards);
        blanks = List.copyOf(blanks);
        Map<String, List<Timing>> copy = new LinkedHashMap<>();
        times.forEach((stage, timings) -> copy.put(stage, List.copyOf(timings)));
        times = Collections.unmodifiableMap(copy);
    }
}
