package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;

/**
 * What is to be cut out of what.
 *
 * @param wanted the blanks, at least one kind
 * @param boards in hand; there may be none
 * @param sawing what sawing takes, the same for all that is cut in one go
 */
public record CuttingOrder(List<Wanted> wanted, List<Board> boards, Sawing sawing) {
    /** Lets a sixty-fourth that is not quite one in binary still fit. */
    private static final double HAIR = 1e-9;

    private static final double SAME_MM = 1e-6;

    public CuttingOrder {
        wanted = sameSizes(wanted);
        boards = List.copyOf(boards);
    }

    /** Squares that differ only by how they were reckoned are one: 44.45 mm and 1 3/4 in. */
    private static List<Wanted> sameSizes(List<Wanted> wanted) {
        List<Wanted> out = new ArrayList<>();
        for (Wanted each : wanted) {
            Length size = out.stream()
                    .map(Wanted::size)
                    .filter(known -> known.minus(each.size()).abs().mm() < SAME_MM)
                    .findFirst()
                    .orElse(each.size());
            out.add(new Wanted(each.job(), size, each.length(), each.count(), each.wood()));
        }
        return List.copyOf(out);
    }

    /** {@return how many strips of that square lie over one another in the board: ⌊(thickness + kerf)/(size + kerf)⌋} */
    int layers(Board board, Length size) {
        return times(board.thickness().plus(sawing.kerf()), size);
    }

    /** {@return how many strips of that square lie beside one another: ⌊(width - 2 edge + kerf)/(size + kerf)⌋} */
    int beside(Board board, Length size) {
        return times(board.width().minus(sawing.edge().times(2)).plus(sawing.kerf()), size);
    }

    private int times(Length room, Length size) {
        double each = size.plus(sawing.kerf()).mm();
        return room.mm() < size.mm() * (1 - HAIR) ? 0 : (int) Math.floor(room.mm() / each + HAIR);
    }

    /** {@return whether one of these blanks comes out of the board at all} */
    boolean fits(Wanted blank, Board board) {
        return blank.mayBe(board)
                && layers(board, blank.size()) > 0
                && beside(board, blank.size()) > 0
                && board.longestClear(sawing).mm()
                        >= blank.length().mm() - HAIR * blank.length().mm();
    }

    /**
     * {@return how many such blanks and no others come out of one board, strips and faults counted}
     *
     * @param blank which
     * @param board which
     */
    public int blanksIn(Wanted blank, Board board) {
        int strip = board.clear(sawing).stream()
                .mapToInt(clear -> times(clear.length().plus(sawing.kerf()), blank.length()))
                .sum();
        return fits(blank, board) ? strip * layers(board, blank.size()) * beside(board, blank.size()) : 0;
    }

    /** {@return whether any board has a price; then they are counted by it} */
    public boolean isPriced() {
        return boards.stream().anyMatch(board -> board.price().isPresent());
    }
}
