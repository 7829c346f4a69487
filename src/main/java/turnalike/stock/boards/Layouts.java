package turnalike.stock.boards;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.units.Length;

/** A search's answer in whole numbers laid out on the boards. */
final class Layouts {
    private final CuttingOrder order;
    private final List<Wanted> kinds;
    private final BoardModel model;
    private final List<Length> sizes;
    private Map<Integer, Deque<int[]>> cuts = new HashMap<>();

    Layouts(CuttingOrder order, List<Wanted> kinds, BoardModel model) {
        this.order = order;
        this.kinds = kinds;
        this.model = model;
        this.sizes = BoardModel.sizes(order);
    }

    /** The boards from which anything is cut, in the order of the list. */
    List<CutBoard> of(BoardSearch.Found found) {
        cuts = new HashMap<>();
        List<StripCut> fullFirst = new ArrayList<>(found.cuts());
        fullFirst.sort(Comparator.comparingInt(cut -> -blanks(cut.blanks())));
        for (StripCut cut : fullFirst) {
            if (blanks(cut.blanks()) > 0) {
                cuts.computeIfAbsent(cut.stretch(), each -> new ArrayDeque<>()).add(cut.blanks());
            }
        }
        List<CutBoard> out = new ArrayList<>();
        for (int type = 0; type < model.copies().size(); type++) {
            int copy = 0;
            for (int way = 0; way < found.opened()[type].length; way++) {
                for (int opened = 0; opened < found.opened()[type][way]; opened++) {
                    BoardModel.Copy board = model.copies().get(type).get(copy++);
                    CutBoard cut = board(board, board.ways().get(way));
                    if (!cut.rips().isEmpty()) {
                        out.add(cut);
                    }
                }
            }
        }
        IdentityHashMap<Board, Integer> places = new IdentityHashMap<>();
        order.boards().forEach(board -> places.putIfAbsent(board, places.size()));
        out.sort(Comparator.<CutBoard>comparingInt(each -> places.getOrDefault(each.board(), 0))
                .thenComparing(each -> each.label().length())
                .thenComparing(CutBoard::label));
        return out;
    }

    private int blanks(int[] cut) {
        int sum = 0;
        for (int kind = 0; kind < kinds.size(); kind++) {
            sum += cut[kind];
        }
        return sum;
    }

    private CutBoard board(BoardModel.Copy copy, BoardModel.Layout layout) {
        List<Rip> rips = new ArrayList<>();
        Length from = order.sawing().edge();
        for (BoardModel.RipLayout rip : layout.rips()) {
            List<Strip> strips = new ArrayList<>();
            boolean any = false;
            for (int layer = 0; layer < rip.layers(); layer++) {
                Strip strip = new Strip(sizes.get(rip.size()), strip(copy.board(), rip));
                any |= !strip.blanks().isEmpty();
                strips.add(strip);
            }
            if (any) {
                rips.add(new Rip(from, sizes.get(rip.size()), strips));
                from = from.plus(sizes.get(rip.size())).plus(order.sawing().kerf());
            }
        }
        return new CutBoard(copy.board(), copy.label(), rips);
    }

    private List<CutBlank> strip(Board board, BoardModel.RipLayout rip) {
        List<Board.Clear> clear = board.clear(order.sawing());
        List<CutBlank> out = new ArrayList<>();
        for (int i = 0; i < clear.size(); i++) {
            Deque<int[]> waiting = cuts.getOrDefault(rip.stretches()[i], new ArrayDeque<>());
            if (waiting.isEmpty()) {
                continue;
            }
            int[] blanks = waiting.remove();
            Length at = clear.get(i).from();
            for (int kind = 0; kind < kinds.size(); kind++) {
                for (int copy = 0; copy < blanks[kind]; copy++) {
                    out.add(new CutBlank(kinds.get(kind), at));
                    at = at.plus(kinds.get(kind).length()).plus(order.sawing().kerf());
                }
            }
        }
        return out;
    }
}
