package turnalike.job.boards;

import java.util.Comparator;
import java.util.Optional;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingOrder;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.Missing;
import turnalike.stock.boards.Wanted;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What to buy where wood is missing, in words. */
public final class WoodToBuy {
    private WoodToBuy() {}

    /**
     * {@return what is missing and why: {@code 3 of 12 blanks for Fair wheel: …}}
     *
     * @param plan where they are missing
     * @param missing which
     * @param units the units to print in
     */
    public static String missing(CuttingPlan plan, Missing missing, UnitSystem units) {
        Wanted of = missing.of();
        String told = "%d of %d blanks for %s, %s square and %s long"
                .formatted(
                        missing.count(),
                        of.count(),
                        of.job(),
                        of.size().formatBoth(units),
                        of.length().formatBoth(units));
        return missing.nearest()
                .map(nearest -> told + ": " + nearest(plan, nearest, units))
                .orElse(told);
    }

    private static String nearest(CuttingPlan plan, CuttingPlan.Nearest nearest, UnitSystem units) {
        Board board = nearest.board();
        return switch (nearest.lack()) {
            case SPECIES ->
                "no board is of that wood (%s is %s)"
                        .formatted(board.name(), board.species().orElse("of another"));
            case THICKNESS ->
                "no board is thick enough; nearest is %s at %s, %s too thin"
                        .formatted(board.name(), board.thickness().formatBoth(units), up(nearest.by(), units));
            case WIDTH ->
                "no board is wide enough; nearest is %s at %s, %s too narrow once %s is off each edge"
                        .formatted(
                                board.name(),
                                board.width().formatBoth(units),
                                up(nearest.by(), units),
                                plan.order().sawing().edge().formatFine(units));
            case LENGTH ->
                "no board is long enough between its ends and faults; nearest is %s at %s, %s too short"
                        .formatted(board.name(), board.length().formatBoth(units), up(nearest.by(), units));
        };
    }

    private static String up(Length length, UnitSystem units) {
        return length.formatFineUpBoth(units);
    }

    /**
     * {@return what would do: boards like one in hand, or the least a board must measure}
     *
     * @param order what was asked
     * @param missing which are missing
     * @param units the units to print in
     */
    public static String buy(CuttingOrder order, Missing missing, UnitSystem units) {
        Wanted of = missing.of();
        Optional<Board> best = order.boards().stream()
                .filter(board -> order.blanksIn(of, board) > 0)
                .max(Comparator.comparingInt(board -> order.blanksIn(of, board)));
        if (best.isPresent()) {
            int each = order.blanksIn(of, best.get());
            int boards = (missing.count() + each - 1) / each;
            return "%d more like %s would do, %d blanks from each"
                    .formatted(boards, best.get().name(), each);
        }
        return "a board gives one from %s thick, %s wide and %s long on"
                .formatted(
                        up(of.size(), units),
                        up(of.size().plus(order.sawing().edge().times(2)), units),
                        up(of.length().plus(order.sawing().end().times(2)), units));
    }
}
