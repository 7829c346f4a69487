package turnalike.wood;

import java.util.OptionalDouble;

/**
 * Printed coefficients of dimensional change: the fraction of a size gained per percentage point of moisture, from 6 % to 14 %. Each
 * above 0 and below 0.01, or empty where it is not printed. Source: Wood Handbook Table 13-5.
 *
 * @param radial along the radius, across the rings
 * @param tangential along the rings
 */
public record Coefficients(OptionalDouble radial, OptionalDouble tangential) {
    public Coefficients {
        check(radial);
        check(tangential);
    }

    private static void check(OptionalDouble coefficient) {
        if (coefficient.isPresent() && !(coefficient.getAsDouble() > 0 && coefficient.getAsDouble() < 0.01)) {
            throw new IllegalArgumentException(
                    "coefficient must be above 0 and below 0.01 per percentage point, was %s".formatted(coefficient));
        }
    }

    /**
     * {@return the printed coefficient in that direction}
     *
     * @param grain along the radius or along the rings
     */
    public OptionalDouble in(Grain grain) {
        return grain == Grain.RADIAL ? radial : tangential;
    }
}
