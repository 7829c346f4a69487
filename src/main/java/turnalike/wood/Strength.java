package turnalike.wood;

import java.util.OptionalDouble;

/**
 * Printed strength of clear, straight-grained small specimens at 12 % moisture: averages of a species, never design values. Each above
 * zero, or empty where it is not printed. Source: Wood Handbook Tables 5-3 and 5-5.
 *
 * @param moeMpa modulus of elasticity in static bending, centre-loaded at span over depth 14, shear deflection included
 * @param morMpa modulus of rupture in static bending
 * @param hardnessN side (Janka) hardness, in newtons
 */
public record Strength(OptionalDouble moeMpa, OptionalDouble morMpa, OptionalDouble hardnessN) {
    public Strength {
        check("modulus of elasticity", moeMpa);
        check("modulus of rupture", morMpa);
        check("hardness", hardnessN);
    }

    private static void check(String what, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() > 0 && Double.isFinite(value.getAsDouble()))) {
            throw new IllegalArgumentException("%s must be above zero and finite, was %s".formatted(what, value));
        }
    }
}
