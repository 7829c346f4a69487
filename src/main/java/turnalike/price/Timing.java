package turnalike.price;

import java.util.Optional;

/**
 * What some pieces took of a stage.
 *
 * @param minutes together, above zero
 * @param pieces how many: 1 for one piece, more for pieces done in one go, 0 for what is done once for the order however many there are
 * @param piece which piece it was, if that was told
 */
public record Timing(double minutes, int pieces, Optional<String> piece) {
    public Timing {
        if (!(minutes > 0 && minutes < Double.POSITIVE_INFINITY) || pieces < 0) {
            throw new IllegalArgumentException("no timing: %s minutes for %d pieces".formatted(minutes, pieces));
        }
    }

    /**
     * A time whose piece was not told.
     *
     * @param minutes together, above zero
     * @param pieces how many, 0 for what is done once for the order
     */
    public Timing(double minutes, int pieces) {
        this(minutes, pieces, Optional.empty());
    }
}
