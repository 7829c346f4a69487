package turnalike.wood;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is printed about one wood, with where it was seen.
 *
 * @param name the common name, unique among {@link Woods}; jobs use it
 * @param latin the Latin name
 * @param gravity the printed specific gravities, of green wood and at 12 % moisture
 * @param strength of small clear specimens at 12 % moisture
 * @param shrinkage from green to ovendry
 * @param coefficients of dimensional change in use
 * @param provenance where these facts were seen and how sure they are
 */
public record Species(
        String name,
        String latin,
        SpecificGravity gravity,
        Strength strength,
        Shrinkage shrinkage,
        Coefficients coefficients,
        Provenance provenance) {

    /** Wood Handbook Table 5-13, VERIFIED (S3); every wood it does not name stands at {@link #INTERSECTION_OF_OTHERS}. */
    private static final Map<String, Moisture> INTERSECTION = Map.of(
            "White ash", Moisture.ofPct(24),
            "Yellow birch", Moisture.ofPct(27),
            "Douglas-fir (coast)", Moisture.ofPct(24),
            "Loblolly pine (southern pine)", Moisture.ofPct(21),
            "Longleaf pine (southern pine)", Moisture.ofPct(21),
            "Redwood (old-growth)", Moisture.ofPct(21),
            "Sitka spruce", Moisture.ofPct(27));

    private static final Moisture INTERSECTION_OF_OTHERS = Moisture.ofPct(25);

    public Species {
        if (name.isBlank() || latin.isBlank()) {
            throw new IllegalArgumentException("a species needs both names, was '%s', '%s'".formatted(name, latin));
        }
    }

    /**
     * {@return the printed coefficient; else one derived from the printed shrinkage and marked so; empty when neither is printed}
     *
     * @param grain along the radius or along the rings
     */
    public Optional<Coefficient> coefficient(Grain grain) {
        OptionalDouble printed = coefficients.in(grain);
        if (printed.isPresent()) {
            return Optional.of(new Coefficient(printed.getAsDouble(), false));
        }
        OptionalDouble whole = shrinkage.pct(grain);
        return whole.isPresent() ? Optional.of(Coefficient.fromShrinkage(whole.getAsDouble())) : Optional.empty();
    }

    /** {@return the most water this wood can hold} Source: {@link Equation#MAXIMUM_MOISTURE}. */
    public Moisture maximumMoisture() {
        return Moisture.ofPct(gravity.maximumMoisturePct());
    }

    /**
     * {@return the moisture at which drying begins to change strength, Mp of {@link Equation#STRENGTH}} Source: Wood Handbook Table 5-13.
     */
    public Moisture intersection() {
        return INTERSECTION.getOrDefault(name, INTERSECTION_OF_OTHERS);
    }
}
