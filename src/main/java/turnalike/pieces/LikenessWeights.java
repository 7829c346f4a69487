package turnalike.pieces;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import turnalike.units.Working;

/**
 * How much a tolerance's worth of each kind of difference counts.
 *
 * @param length for the length, the balance point and the places of marks; zero or above
 * @param diameter for diameters; likewise
 * @param mass for the mass; likewise
 * @param noted for extra columns that note what is judged by eye (curves, colour, grain), by the column's name: for each grade of
 *     difference where both pieces have a number there, for being unlike where they have a word; likewise
 */
public record LikenessWeights(double length, double diameter, double mass, Map<String, Double> noted) {
    /**
     * What the eye compares from across a room: where edges and beads stand, then how thick crowns and necks are, then the mass nobody
     * sees. Common practice, no source. Curves, colour and grain count once the job gives them a weight.
     */
    public static final LikenessWeights USUAL = new LikenessWeights(3, 2, 1, Map.of());

    public LikenessWeights {
        require("length", length);
        require("diameter", diameter);
        require("mass", mass);
        noted.forEach(LikenessWeights::require);
        noted = Collections.unmodifiableMap(new TreeMap<>(noted));
    }

    private static void require(String name, double weight) {
        if (!(weight >= 0) || !Double.isFinite(weight)) {
            throw new IllegalArgumentException(
                    "the weight of %s must be zero or above, was %s".formatted(name, weight));
        }
    }

    /**
     * {@return the weight of a column}
     *
     * @param column what is measured
     */
    public double of(Column column) {
        return switch (column.kind()) {
            case MASS -> mass;
            case LENGTH, BALANCE, MARK -> length;
            case DIAMETER -> diameter;
        };
    }

    /** {@return how differences are weighed, and that this is custom} */
    public Working working() {
        return new Working(
                "likeness",
                "sum of weight x difference / tolerance; weights %s for lengths and marks, %s for diameters, %s for mass"
                        .formatted(length, diameter, mass),
                Working.COMMON_PRACTICE,
                "a way to rank pieces, not a measure of what any one eye sees; change the weights to suit yours");
    }
}
