package turnalike.price;

/**
 * What some pieces took of a stage.
 *
 * @param minutes together, above zero
 * @param pieces how many: 1 for one piece, more for pieces done in one go, 0 for what is done once for the order however many there are
 */
public record Timing(double minutes, int pieces) {
    public Timing {
        if (!(minutes > 0 && minutes < Double.POSITIVE_INFINITY) || pieces < 0) {
            throw new IllegalArgumentException("no timing: %s minutes for %d pieces".formatted(minutes, pieces));
        }
    }
}
