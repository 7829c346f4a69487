package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every way to cut a small order of one section, by trying all: most blanks, then least cost, then the longest piece left. */
final class EveryCutting {
    private final CuttingOrder order;
    private int most = -1;
    private double leastCost = Double.POSITIVE_INFINITY;
    private double longest = -1;

    /** Clear stretches, strip by strip, and what is still free of each. */
    private final List<Integer> boardOf = new ArrayList<>();

    private final List<Double> whole = new ArrayList<>();

    private EveryCutting(CuttingOrder order) {
        this.order = order;
    }

    record Best(int blanks, double cost, double longestMm) {}

    static Best of(CuttingOrder order) {
        EveryCutting every = new EveryCutting(order);
        every.run();
        return new Best(every.most, every.leastCost, every.longest);
    }

    private void run() {
        double size = order.wanted().get(0).size().mm();
        double kerf = order.sawing().kerf().mm();
        for (int board = 0; board < order.boards().size(); board++) {
            Board each = order.boards().get(board);
            int layers = (int) Math.floor((each.thickness().mm() + kerf) / (size + kerf) + 1e-9);
            int beside = (int)
                    Math.floor((each.width().mm() - 2 * order.sawing().edge().mm() + kerf) / (size + kerf) + 1e-9);
            for (int strip = 0; strip < layers * beside; strip++) {
                for (Board.Clear clear : each.clear(order.sawing())) {
                    boardOf.add(board);
                    whole.add(clear.length().mm());
                }
            }
        }
        List<Double> lengths = new ArrayList<>();
        order.wanted().forEach(each -> {
            for (int copy = 0; copy < each.count(); copy++) {
                lengths.add(each.length().mm());
            }
        });
        double[] free = whole.stream().mapToDouble(each -> each).toArray();
        place(lengths, 0, 0, free, new int[order.boards().size()]);
    }

    private void place(List<Double> lengths, int at, int cut, double[] free, int[] onBoard) {
        if (at == lengths.size()) {
            judge(cut, free, onBoard);
            return;
        }
        for (int stretch = 0; stretch < free.length; stretch++) {
            if (free[stretch] >= lengths.get(at) - 1e-9 && isNew(stretch, free)) {
                double before = free[stretch];
                free[stretch] -= lengths.get(at) + order.sawing().kerf().mm();
                onBoard[boardOf.get(stretch)]++;
                place(lengths, at + 1, cut + 1, free, onBoard);
                onBoard[boardOf.get(stretch)]--;
                free[stretch] = before;
            }
        }
        place(lengths, at + 1, cut, free, onBoard);
    }

    /** Of stretches alike on one board only the first is tried. */
    private boolean isNew(int stretch, double[] free) {
        for (int other = 0; other < stretch; other++) {
            if (free[other] == free[stretch]
                    && whole.get(other).equals(whole.get(stretch))
                    && boardOf.get(other).equals(boardOf.get(stretch))) {
                return false;
            }
        }
        return true;
    }

    private void judge(int cut, double[] free, int[] onBoard) {
        double cost = 0;
        for (int board = 0; board < onBoard.length; board++) {
            if (onBoard[board] > 0) {
                cost += order.isPriced()
                        ? order.boards().get(board).price().orElseThrow().doubleValue()
                        : 1;
            }
        }
        double left = 0;
        for (int stretch = 0; stretch < free.length; stretch++) {
            left = Math.max(left, onBoard[boardOf.get(stretch)] > 0 ? free[stretch] : 0);
        }
        boolean better = cut > most
                || (cut == most && cost < leastCost - 1e-9)
                || (cut == most && cost < leastCost + 1e-9 && left > longest);
        if (better) {
            most = cut;
            leastCost = cost;
            longest = left;
        }
    }

    @Override
    public String toString() {
        return Arrays.asList(most, leastCost, longest).toString();
    }
}
