package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.units.Length;

/**
 * The boards that need be looked at. Of a great many most can be left out: one that is worse in every way than so many others as a plan can
 * take at the most is in no plan that the others could not make.
 */
final class BoardChoice {
    /** Fewer boards than that are all looked at. */
    private static final int FEW = 40;

    private final CuttingOrder order;
    private final List<Wanted> kinds;
    private final BoardCutting.Prices prices;
    private final List<Board> useful;
    private final Map<Board, List<Length>> clear = new HashMap<>();
    private int enough = 4;

    BoardChoice(CuttingOrder order, List<Wanted> kinds, BoardCutting.Prices prices) {
        this.order = order;
        this.kinds = kinds;
        this.prices = prices;
        this.useful = order.boards().stream()
                .filter(board -> kinds.stream().anyMatch(each -> order.fits(each, board)))
                .toList();
        for (Board board : useful) {
            clear.put(
                    board,
                    board.clear(order.sawing()).stream()
                            .map(Board.Clear::length)
                            .sorted(Comparator.reverseOrder())
                            .toList());
        }
    }

    /** With every board. */
    BoardModel all(BoardModel.Terms terms) {
        return BoardModel.of(order, kinds, costs(useful), terms);
    }

    BoardModel model(BoardModel.Terms terms) {
        return BoardModel.of(order, kinds, costs(useful.size() <= FEW ? useful : undominated()), terms);
    }

    private Map<Board, Long> costs(List<Board> boards) {
        Map<Board, Long> out = new LinkedHashMap<>();
        boards.forEach(board -> out.put(board, prices.of(board)));
        return out;
    }

    /** Whether a plan of that cost can take no more boards than were counted on. */
    boolean isEnoughFor(long cost) {
        long cheapest = useful.stream().mapToLong(prices::of).min().orElse(1);
        return useful.size() <= FEW || cost / Math.max(1, cheapest) <= enough;
    }

    /** Looks at more of them; false where all are. */
    boolean widen() {
        boolean more = enough < useful.stream().mapToInt(Board::count).sum();
        enough *= 2;
        return more;
    }

    private List<Board> undominated() {
        List<Board> best = new ArrayList<>(useful);
        best.sort(Comparator.<Board>comparingLong(prices::of)
                .thenComparing(Board::thickness, Comparator.reverseOrder())
                .thenComparing(Board::width, Comparator.reverseOrder())
                .thenComparing(board -> clear.get(board).get(0), Comparator.reverseOrder()));
        List<Board> out = new ArrayList<>();
        for (Board board : best) {
            int better = 0;
            for (Board other : out) {
                better += dominates(other, board) ? other.count() : 0;
                if (better >= enough) {
                    break;
                }
            }
            if (better < enough) {
                out.add(board);
            }
        }
        return useful.stream().filter(new java.util.HashSet<>(out)::contains).toList();
    }

    private boolean dominates(Board better, Board worse) {
        boolean larger = prices.of(better) <= prices.of(worse)
                && better.thickness().compareTo(worse.thickness()) >= 0
                && better.width().compareTo(worse.width()) >= 0
                && (better.species().isEmpty() || better.species().equals(worse.species()));
        if (!larger) {
            return false;
        }
        List<Length> longer = clear.get(better);
        List<Length> shorter = clear.get(worse);
        if (longer.size() < shorter.size()) {
            return false;
        }
        for (int i = 0; i < shorter.size(); i++) {
            if (longer.get(i).compareTo(shorter.get(i)) < 0) {
                return false;
            }
        }
        return true;
    }
}
