package turnalike.stock.boards;

import java.util.Optional;
import turnalike.units.Length;

/**
 * Rough blanks that a job wants.
 *
 * @param job whose they are
 * @param size side of the square that is sawn, above zero
 * @param length along the grain, above zero
 * @param count how many, spares included, at least one
 * @param wood which wood they must be of; empty when any will do
 */
public record Wanted(String job, Length size, Length length, int count, Optional<String> wood) {
    public Wanted {
        if (!size.isPositive() || !length.isPositive() || count < 1) {
            throw new IllegalArgumentException(
                    "wanted blanks have a size, a length and a count above zero, was %s mm, %s mm, %s"
                            .formatted(size.mm(), length.mm(), count));
        }
    }

    /** {@return whether the board may be their wood: one of the two names none, or both the same} */
    boolean mayBe(Board board) {
        return wood.isEmpty() || board.species().isEmpty() || wood.equals(board.species());
    }
}
