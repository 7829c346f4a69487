package turnalike.pieces.control;

import java.util.List;
import java.util.Optional;

/**
 * What the last pieces turned are doing: growing or shrinking steadily, soon enough to reset the caliper before the next.
 *
 * @param first the label of the first piece of the drift
 * @param last the label of the last piece turned
 * @param pieces how many pieces it spans, at least four
 * @param change how much the last differs from the first, in the chart's own unit, with its sign
 */
public record Drift(String first, String last, int pieces, double change) {
    /** Four pieces on the way are seen; three are chance. */
    private static final int FEWEST = 4;
    /** From six steady pieces on the size of the steps no longer matters: Nelson's trend rule. */
    private static final int SURE = 6;

    private static final List<String> NUMBERS =
            List.of("four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    /**
     * The drift the series ends in, if any: the longest tail in which each piece is above (or each below) the one before it. Four or five
     * pieces count once they have gone at least {@code telling} together, six or more always.
     *
     * <p>Common practice, no source. Four pieces that differ by chance alone stand in such an order one time in twelve (2/4!), so
     * {@code telling} should not be small: half the column's tolerance serves. Two sigmas leave about one false word in twenty pieces (by
     * simulation).
     *
     * @param points in the order they were turned
     * @param telling a change worth speaking of, in the chart's own unit; zero or above, else {@link IllegalArgumentException}
     * @return the drift, or empty when the last pieces keep no direction or go too short a way
     */
    public static Optional<Drift> find(List<ChartPoint> points, double telling) {
        if (!(telling >= 0)) {
            throw new IllegalArgumentException("a telling change is zero or above, was %s".formatted(telling));
        }
        int last = points.size() - 1;
        int first = last;
        while (first > 0 && step(points, first) != 0 && step(points, first) == step(points, last)) {
            first--;
        }
        int pieces = last - first + 1;
        if (pieces < FEWEST) {
            return Optional.empty();
        }
        double change = points.get(last).value() - points.get(first).value();
        return pieces < SURE && Math.abs(change) < telling
                ? Optional.empty()
                : Optional.of(
                        new Drift(points.get(first).piece(), points.get(last).piece(), pieces, change));
    }

    private static int step(List<ChartPoint> points, int at) {
        return Double.compare(points.get(at).value(), points.get(at - 1).value());
    }

    /**
     * The drift as a sentence: {@code the last four necks grew 0.2 mm (pieces 5 to 8)}.
     *
     * @param things what was measured, in the plural
     * @param amount the size of {@link #change} with its unit and no sign
     * @return the sentence, without a capital letter and a full stop
     */
    public String words(String things, String amount) {
        String count = pieces - FEWEST < NUMBERS.size() ? NUMBERS.get(pieces - FEWEST) : String.valueOf(pieces);
        return "the last %s %s %s %s (pieces %s to %s)"
                .formatted(count, things, change > 0 ? "grew" : "shrank", amount, first, last);
    }
}
