package turnalike.stock.boards;

import java.math.BigDecimal;
import java.util.stream.Stream;

/**
 * What boards cost in whole numbers: prices in their smallest step; one each where nothing has a price. Boards that cost nothing count
 * too, too little to outweigh one step of any price, so that none is cut for nothing.
 *
 * @param priced whether any board has a price
 * @param scale decimals of the prices
 * @param perStep whole numbers in one step of a price
 */
record BoardPrices(boolean priced, int scale, long perStep) {
    static BoardPrices of(CuttingOrder order) {
        int scale = prices(order)
                .mapToInt(price -> Math.max(0, price.stripTrailingZeros().scale()))
                .max()
                .orElse(0);
        boolean anyFree =
                prices(order).count() < order.boards().size() || prices(order).anyMatch(each -> each.signum() == 0);
        long boards = order.boards().stream().mapToLong(Board::count).sum();
        return new BoardPrices(order.isPriced(), scale, anyFree ? 1 + boards : 1);
    }

    private static Stream<BigDecimal> prices(CuttingOrder order) {
        return order.boards().stream().flatMap(board -> board.price().stream());
    }

    long of(Board board) {
        long steps = board.price().orElse(BigDecimal.ZERO).movePointRight(scale).longValueExact();
        return !priced || steps == 0 ? 1 : steps * perStep;
    }

    /** Whole numbers in a price of one. */
    double perUnit() {
        return priced ? perStep * Math.pow(10, scale) : 1;
    }

    /** A cost in whole numbers as a price, or as a number of boards. */
    BigDecimal told(long cost) {
        return priced ? BigDecimal.valueOf(cost / perStep, scale) : BigDecimal.valueOf(cost);
    }
}
