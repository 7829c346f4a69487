package turnalike.wood;

import java.util.OptionalDouble;

/**
 * Printed shrinkage from green to ovendry, in percent of the green size (radial, tangential) or of the green volume. Each above 0 and
 * below 100, or empty where it is not printed. Source: Wood Handbook Tables 4-3 and 4-4.
 *
 * @param radialPct along the radius, in percent of the green size
 * @param tangentialPct along the rings, in percent of the green size
 * @param volumetricPct in percent of the green volume
 */
public record Shrinkage(OptionalDouble radialPct, OptionalDouble tangentialPct, OptionalDouble volumetricPct) {
    public Shrinkage {
        check(radialPct);
        check(tangentialPct);
        check(volumetricPct);
    }

    private static void check(OptionalDouble pct) {
        if (pct.isPresent() && !(pct.getAsDouble() > 0 && pct.getAsDouble() < 100)) {
            throw new IllegalArgumentException(
                    "shrinkage must be above 0 and below 100 percent, was %s".formatted(pct));
        }
    }

    /**
     * {@return the printed shrinkage in that direction}
     *
     * @param grain along the radius or along the rings
     */
    public OptionalDouble pct(Grain grain) {
        return grain == Grain.RADIAL ? radialPct : tangentialPct;
    }

    /**
     * {@return the part of a whole shrinkage that has happened at a moisture, in percent of the green size: {@code S (1 - x/30)}, nothing
     * above 30 %}
     *
     * <p>Source: {@link Equation#SHRINKAGE}.
     *
     * @param wholePct the shrinkage from green to ovendry, in percent
     * @param moisture the moisture reached
     */
    public static double soFarPct(double wholePct, Moisture moisture) {
        return wholePct * (1 - moisture.asItCountsForSize().pct() / Moisture.FIBRE_SATURATION.pct());
    }
}
