package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.Lack;
import turnalike.stock.boards.CuttingPlan.Missing;
import turnalike.stock.boards.CuttingPlan.Nearest;
import turnalike.units.Length;

/** Which blanks a plan has no wood for, and which board comes nearest where none can give even one. */
final class MissingBlanks {
    private MissingBlanks() {}

    static List<Missing> of(CuttingOrder order, List<CutBoard> boards) {
        Map<Wanted, Integer> cut = new HashMap<>();
        boards.stream()
                .flatMap(board -> board.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .forEach(blank -> cut.merge(blank.of(), 1, Integer::sum));
        List<Missing> out = new ArrayList<>();
        for (Wanted each : order.wanted()) {
            int count = each.count() - cut.getOrDefault(each, 0);
            if (count > 0) {
                boolean none = order.boards().stream().noneMatch(board -> order.fits(each, board));
                out.add(new Missing(each, count, none ? nearest(order, each) : Optional.empty()));
            }
        }
        return out;
    }

    /** One that lacks only length comes before one too narrow, that before one too thin, and that before one of another wood. */
    private static Optional<Nearest> nearest(CuttingOrder order, Wanted blank) {
        return order.boards().stream()
                .map(board -> lack(order, blank, board))
                .max(Comparator.comparing(Nearest::lack).thenComparing(Nearest::by, Comparator.reverseOrder()));
    }

    private static Nearest lack(CuttingOrder order, Wanted blank, Board board) {
        if (!blank.mayBe(board)) {
            return new Nearest(board, Lack.SPECIES, Length.ZERO);
        }
        if (order.layers(board, blank.size()) == 0) {
            return new Nearest(board, Lack.THICKNESS, blank.size().minus(board.thickness()));
        }
        if (order.beside(board, blank.size()) == 0) {
            Length needed = blank.size().plus(order.sawing().edge().times(2));
            return new Nearest(board, Lack.WIDTH, needed.minus(board.width()));
        }
        return new Nearest(board, Lack.LENGTH, blank.length().minus(board.longestClear(order.sawing())));
    }
}
