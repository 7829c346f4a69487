package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.units.Length;

/**
 * The boards that need be looked at. Where nothing has a price and there are a great many, most can be left out: one that is smaller in
 * every way than so many others as a plan takes at the most is in no plan that the others could not make.
 */
final class BoardChoice {
    /** Fewer boards than that are all looked at. */
    private static final int FEW = 40;

    private final CuttingOrder order;
    private final List<Wanted> kinds;
    private final List<Weighed> useful;
    private final boolean priced;
    private int enough = 4;

    /**
     * A board with what it costs in whole numbers.
     *
     * @param clear its stretches, the longest first
     */
    record Weighed(Board board, long cost, List<Length> clear) {
        boolean dominates(Weighed worse) {
            boolean larger = board.thickness().compareTo(worse.board.thickness()) >= 0
                    && board.width().compareTo(worse.board.width()) >= 0
                    && clear.size() >= worse.clear.size()
                    && (board.species().isEmpty() || board.species().equals(worse.board.species()));
            for (int i = 0; larger && i < worse.clear.size(); i++) {
                larger = clear.get(i).compareTo(worse.clear.get(i)) >= 0;
            }
            return larger;
        }
    }

    BoardChoice(CuttingOrder order, List<Wanted> kinds, BoardPrices prices) {
        this.order = order;
        this.kinds = kinds;
        this.priced = prices.priced();
        this.useful = order.boards().stream()
                .filter(board -> kinds.stream().anyMatch(each -> order.fits(each, board)))
                .map(board -> new Weighed(board, prices.of(board), clear(board)))
                .toList();
    }

    private List<Length> clear(Board board) {
        return board.clear(order.sawing()).stream()
                .map(Board.Clear::length)
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** With every board. */
    BoardModel all(BoardModel.Terms terms) {
        return BoardModel.of(order, kinds, useful, terms);
    }

    BoardModel model(BoardModel.Terms terms) {
        return BoardModel.of(order, kinds, looksAtAll() ? useful : undominated(), terms);
    }

    private boolean looksAtAll() {
        return priced || useful.size() <= FEW || enough == Integer.MAX_VALUE;
    }

    /** Whether no plan for so many boards takes more than were counted on; where not, more will be looked at. */
    boolean isEnoughFor(long boards) {
        if (looksAtAll() || boards <= enough) {
            return true;
        }
        enough = boards > useful.size() ? Integer.MAX_VALUE : (int) boards;
        return false;
    }

    private List<Weighed> undominated() {
        List<Weighed> largest = new ArrayList<>(useful);
        largest.sort(Comparator.<Weighed, Length>comparing(each -> each.board().thickness())
                .thenComparing(each -> each.board().width())
                .thenComparing(each -> each.clear().get(0))
                .reversed());
        List<Weighed> out = new ArrayList<>();
        for (Weighed each : largest) {
            int better = 0;
            for (int other = 0; other < out.size() && better < enough; other++) {
                better +=
                        out.get(other).dominates(each) ? out.get(other).board().count() : 0;
            }
            if (better < enough) {
                out.add(each);
            }
        }
        return out;
    }
}
