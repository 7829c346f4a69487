package turnalike.pieces.control;

/**
 * One point of a chart.
 *
 * @param piece the piece's label
 * @param value its figure, in the chart's own unit; finite, else {@link IllegalArgumentException}
 */
public record ChartPoint(String piece, double value) {
    public ChartPoint {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a point must be finite, piece %s was %s".formatted(piece, value));
        }
    }
}
