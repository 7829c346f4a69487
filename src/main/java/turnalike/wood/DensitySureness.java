package turnalike.wood;

import java.util.OptionalDouble;
import turnalike.units.Density;

/**
 * How sure the density of a wood is that was worked out from printed facts: by how much it may be off as the mean of that wood, not of a
 * single piece. The greater of two things: what the rounding of the printed figures leaves open, all corners of it tried; and how far the
 * basic specific gravity with the printed shrinkage lies from the route taken, where both can be gone. (Derived here.)
 */
final class DensitySureness {
    /** Half the last digit of a printed specific gravity, and of a printed shrinkage in percent. */
    private static final double GRAVITY_ROUNDING = 0.005;

    private static final double SHRINKAGE_ROUNDING_PCT = 0.05;

    /** Nine of ten woods of our table with a printed shrinkage have it within this share of the estimate; held by a test. */
    static final double ESTIMATE_SPREAD = 0.45;

    private DensitySureness() {}

    /** Half the width of the range around the density by the route taken. */
    static Density halfWidth(Species species, Moisture moisture) {
        DensityRoute route = DensityRoute.of(species);
        double here = route.gravity(species, moisture).orElseThrow();
        double half = Math.max(rounding(species, moisture, here), otherRoute(species, moisture, here));
        return DensityRoute.density(half, moisture);
    }

    private static double rounding(Species species, Moisture moisture, double here) {
        double half = 0;
        for (int corner = 0; corner < 8; corner++) {
            double basic = species.gravity().basic() + sign(corner) * GRAVITY_ROUNDING;
            double whole = whole(species, sign(corner >> 1));
            OptionalDouble atTwelve = species.gravity().atTwelve();
            double there = atTwelve.isPresent()
                    ? DensityRoute.throughBoth(
                            basic, atTwelve.getAsDouble() + sign(corner >> 2) * GRAVITY_ROUNDING, whole, moisture)
                    : basic / DensityRoute.left(whole, moisture);
            half = Math.max(half, Math.abs(there - here));
        }
        return half;
    }

    private static double whole(Species species, int sign) {
        double whole = DensityRoute.wholeShrinkagePct(species);
        return DensityRoute.isShrinkagePrinted(species)
                ? whole + sign * SHRINKAGE_ROUNDING_PCT
                : whole * (1 + sign * ESTIMATE_SPREAD);
    }

    private static int sign(int bit) {
        return (bit & 1) == 0 ? -1 : 1;
    }

    private static double otherRoute(Species species, Moisture moisture, double here) {
        OptionalDouble other = DensityRoute.BY_SHRINKAGE.gravity(species, moisture);
        return other.isPresent() ? Math.abs(other.getAsDouble() - here) : 0;
    }
}
