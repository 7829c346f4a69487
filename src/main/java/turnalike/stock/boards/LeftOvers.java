package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.List;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.LeftOver;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.units.Length;

/** What is left of boards that are cut: ends of strips, strips, and the width that is not ripped, each between faults. */
final class LeftOvers {
    private final CuttingOrder order;
    private final List<LeftOver> out = new ArrayList<>();

    private LeftOvers(CuttingOrder order) {
        this.order = order;
    }

    static List<LeftOver> of(CuttingOrder order, List<CutBoard> boards) {
        LeftOvers all = new LeftOvers(order);
        boards.forEach(all::board);
        return all.out;
    }

    private void board(CutBoard cut) {
        List<Board.Clear> clear = cut.board().clear(order.sawing());
        for (Rip rip : cut.rips()) {
            for (int layer = 0; layer < rip.strips().size(); layer++) {
                for (Board.Clear stretch : clear) {
                    strip(cut, rip, layer, stretch);
                }
            }
        }
        Rip last = cut.rips().get(cut.rips().size() - 1);
        Length ripped = last.from().plus(last.size()).plus(order.sawing().kerf());
        Length width = cut.board().width().minus(order.sawing().edge()).minus(ripped);
        List<Length> sizes = BoardModel.sizes(order);
        if (width.mm() >= sizes.get(sizes.size() - 1).mm() * (1 - 1e-12)) {
            clear.forEach(
                    stretch -> out.add(new LeftOver(cut.label(), stretch.from(), stretch.length(), ripped, width, 0)));
        }
    }

    private void strip(CutBoard cut, Rip rip, int layer, Board.Clear stretch) {
        Strip strip = rip.strips().get(layer);
        Length from = stretch.from();
        Length end = stretch.from().plus(stretch.length());
        for (CutBlank blank : strip.blanks()) {
            if (blank.from().compareTo(stretch.from()) >= 0 && blank.from().compareTo(end) < 0) {
                from = blank.from()
                        .plus(blank.of().length())
                        .plus(order.sawing().kerf());
            }
        }
        Length length = end.minus(from);
        if (length.mm() > 1e-4) {
            out.add(new LeftOver(cut.label(), from, length, rip.from(), strip.size(), layer));
        }
    }
}
