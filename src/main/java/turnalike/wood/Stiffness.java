package turnalike.wood;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.units.Working;

/**
 * The modulus of elasticity along the grain to reckon bending with, shear-free, and the modulus of shear beside it.
 *
 * @param moeMpa above zero and finite, in MPa (N/mm²), else {@link IllegalArgumentException}
 * @param moeOverShear how many times the modulus of elasticity along the grain is that of shear, above zero and finite, else {@link
 *     IllegalArgumentException}
 * @param working how both were found
 */
public record Stiffness(double moeMpa, double moeOverShear, Working working) {
    /**
     * What a wood's modulus of elasticity is over its modulus of shear, where nobody gives it: the shear moduli along the grain of the
     * hardwoods in Wood Handbook Table 5-1 are 0.05 to 0.15 of the elastic one, most near 0.08; from memory. With it a bar bent as the
     * printed moduli were seems 7.7 % limper than it is without shear, about the tenth of {@link #SHEAR_FREE}.
     */
    public static final double USUAL_MOE_OVER_SHEAR = 12.5;

    /**
     * Printed moduli come from centre loading at span over depth 14 and include shear deflection; the shear-free value is 10 % more.
     * Source: Wood Handbook Table 5-3 footnote c, VERIFIED (S1).
     */
    static final double SHEAR_FREE = 1.10;

    public Stiffness {
        if (!(moeMpa > 0) || !Double.isFinite(moeMpa)) {
            throw new IllegalArgumentException("stiffness must be above zero and finite, was %s MPa".formatted(moeMpa));
        }
        if (!(moeOverShear > 0) || !Double.isFinite(moeOverShear)) {
            throw new IllegalArgumentException(
                    "ratio of moduli must be above zero and finite, was %s".formatted(moeOverShear));
        }
    }

    /** {@return the modulus of shear between the grain and across it, in MPa} */
    public double shearMpa() {
        return moeMpa / moeOverShear;
    }

    /**
     * {@return the same with another ratio of moduli}
     *
     * @param ratio modulus of elasticity over that of shear, above zero and finite
     */
    public Stiffness withMoeOverShear(double ratio) {
        return new Stiffness(moeMpa, ratio, working);
    }

    /**
     * {@return a stiffness someone measured or chose, which wins over any printed one}
     *
     * @param moeMpa modulus of elasticity in megapascals, finite and above zero, else {@link IllegalArgumentException}
     */
    public static Stiffness given(double moeMpa) {
        return new Stiffness(
                moeMpa,
                USUAL_MOE_OVER_SHEAR,
                new Working(
                        "Stiffness",
                        String.format(Locale.ROOT, "given as %.0f MPa", moeMpa),
                        "given in the job",
                        "taken as it is"));
    }

    /**
     * The printed modulus at 12 % moisture, raised by 10 % to leave shear out. It is not carried to the wood's own moisture: that
     * needs the green value (Equation 5-3, {@link StrengthAtMoisture}), which the table does not hold.
     */
    static Optional<Stiffness> of(Species species, Moisture moisture) {
        OptionalDouble printed = species.strength().moeMpa();
        if (printed.isEmpty()) {
            return Optional.empty();
        }
        double moeMpa = printed.getAsDouble() * SHEAR_FREE;
        String how = String.format(
                Locale.ROOT,
                "printed modulus of elasticity at 12 %%, %.0f MPa, plus 10 %% because it was measured with shear deflection"
                        + " included: %.0f MPa",
                printed.getAsDouble(),
                moeMpa);
        String notTwelve = moisture.equals(Moisture.TWELVE)
                ? ""
                : "The wood is at %s; the value for 12 %% is used unchanged (drier wood is stiffer, wetter less stiff). "
                        .formatted(moisture.text());
        String sureness = notTwelve
                + "An average of clear, straight-grained specimens; coefficient of variation 22 % (Table 5-6; VERIFIED, S15)";
        String source = "Wood Handbook Table 5-3 or 5-5 and its footnote c (VERIFIED, S1); %s: facts %s"
                .formatted(species.name(), species.provenance().cite(FactGroup.STRENGTH));
        return Optional.of(
                new Stiffness(moeMpa, USUAL_MOE_OVER_SHEAR, new Working("Stiffness", how, source, sureness)));
    }
}
