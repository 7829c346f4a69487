package turnalike.wood;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.units.Working;

/**
 * The bending stress at which clear wood breaks on average.
 *
 * @param mpa modulus of rupture, above zero and finite, in MPa (N/mm²), else {@link IllegalArgumentException}
 * @param working how it was found
 */
public record Rupture(double mpa, Working working) {
    /**
     * White ash at 12 % over white ash green, 103000 over 66000 kPa: the one pair seen, from the Wood Handbook's example of {@link
     * Equation#STRENGTH} (VERIFIED, S3). It stands in for other woods where they are wetter than 12 %.
     */
    static final double TWELVE_OVER_GREEN = 103.0 / 66;

    private static final String WHITE_ASH = "White ash";

    public Rupture {
        if (!(mpa > 0) || !Double.isFinite(mpa)) {
            throw new IllegalArgumentException("strength must be above zero and finite, was %s MPa".formatted(mpa));
        }
    }

    /**
     * The printed value at 12 %, carried to the wood's moisture by {@link Equation#STRENGTH}. Below 12 % only white ash gains by it: for any
     * other wood the green value is not in the table, and the printed one is the cautious one.
     */
    static Optional<Rupture> of(Species species, Moisture moisture) {
        OptionalDouble printed = species.strength().morMpa();
        if (printed.isEmpty()) {
            return Optional.empty();
        }
        double twelve = printed.getAsDouble();
        boolean own = species.name().equals(WHITE_ASH);
        boolean carried = own || moisture.compareTo(Moisture.TWELVE) > 0;
        double mpa = carried
                ? new StrengthAtMoisture(twelve, twelve / TWELVE_OVER_GREEN, species.intersection()).at(moisture)
                : twelve;
        String how = carried
                ? String.format(
                        Locale.ROOT,
                        "printed modulus of rupture at 12 %%, %.0f MPa, times %.3f^((12 - M)/(Mp - 12)) with Mp = %s, M = %s: %.1f MPa",
                        twelve,
                        TWELVE_OVER_GREEN,
                        species.intersection().text(),
                        moisture.text(),
                        mpa)
                : String.format(
                        Locale.ROOT, "printed modulus of rupture at 12 %%, %.0f MPa, unchanged for drier wood", twelve);
        String source = "Wood Handbook Table 5-3 or 5-5; %s: facts %s"
                        .formatted(species.name(), species.provenance().cite(FactGroup.STRENGTH))
                + (carried ? "; " + Equation.STRENGTH.cite() : "");
        String stand = carried && !own
                ? "1.561 is white ash's ratio of strength at 12 % to green, used in place of its own. "
                : "";
        return Optional.of(new Rupture(
                mpa,
                new Working(
                        "Strength",
                        how,
                        source,
                        stand
                                + "An average of clear, straight-grained specimens; coefficient of variation 16 % (Table 5-6;"
                                + " VERIFIED, S15); a knot or slanting grain breaks far sooner")));
    }
}
