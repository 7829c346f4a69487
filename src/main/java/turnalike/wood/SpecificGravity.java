package turnalike.wood;

import java.util.OptionalDouble;

/**
 * The printed specific gravities of a wood: ovendry mass over volume, relative to water. Ratios, no unit.
 *
 * @param basic over the green volume; above 0 and below the {@value #OF_WOOD_SUBSTANCE} of wood substance itself
 * @param atTwelve over the volume at 12 % moisture; empty where it is not printed
 */
public record SpecificGravity(double basic, OptionalDouble atTwelve) {
    /** Solid wood substance without any hollow, as Equation 4-3 has it. */
    static final double OF_WOOD_SUBSTANCE = 1.54;

    public SpecificGravity {
        check(basic);
        atTwelve.ifPresent(SpecificGravity::check);
    }

    private static void check(double gravity) {
        if (!(gravity > 0 && gravity < OF_WOOD_SUBSTANCE)) {
            throw new IllegalArgumentException(
                    "specific gravity must be above 0 and below %s, was %s".formatted(OF_WOOD_SUBSTANCE, gravity));
        }
    }

    /**
     * {@return the volumetric shrinkage to expect from the basic specific gravity alone, in percent: {@code 26.5 G}} Source: {@link
     * Equation#ESTIMATED_SHRINKAGE}. For white ash it is 14.6 against the 13.3 printed.
     */
    public double estimatedShrinkagePct() {
        return 26.5 * basic;
    }

    /**
     * {@return the most water the wood can hold, every hollow filled: {@code 100 (1.54 - G) / (1.54 G)} percent} Source: {@link
     * Equation#MAXIMUM_MOISTURE}.
     */
    public double maximumMoisturePct() {
        return 100 * (OF_WOOD_SUBSTANCE - basic) / (OF_WOOD_SUBSTANCE * basic);
    }
}
