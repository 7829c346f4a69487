package turnalike.wood;

import java.util.Locale;
import turnalike.units.Working;

/**
 * A strength or stiffness of clear wood at a moisture, from its values at 12 % and green: {@code P = P12 (P12/Pg)^((12 - M)/(Mp - 12))},
 * and Pg from Mp upward. Source: {@link Equation#STRENGTH}. Not for work to maximum load, impact bending or tension across the grain.
 *
 * @param atTwelve the value at 12 %, above zero, in any unit
 * @param green the value of green wood, above zero, in the same unit
 * @param intersection Mp, above 12 %, see {@link Species#intersection()}
 */
public record StrengthAtMoisture(double atTwelve, double green, Moisture intersection) {
    public StrengthAtMoisture {
        if (!(atTwelve > 0 && green > 0) || !Double.isFinite(atTwelve) || !Double.isFinite(green)) {
            throw new IllegalArgumentException(
                    "strengths must be above zero and finite, were %s and green %s".formatted(atTwelve, green));
        }
        if (intersection.compareTo(Moisture.TWELVE) <= 0) {
            throw new IllegalArgumentException(
                    "intersection must be above 12 percent, was %s".formatted(intersection.pct()));
        }
    }

    /**
     * {@return the value at that moisture, in the unit of the two given}
     *
     * @param moisture the wood's
     */
    public double at(Moisture moisture) {
        double counted = Math.min(moisture.pct(), intersection.pct());
        return atTwelve * Math.pow(atTwelve / green, (12 - counted) / (intersection.pct() - 12));
    }

    /**
     * {@return how the value at that moisture was found}
     *
     * @param moisture as of {@link #at}
     */
    public Working working(Moisture moisture) {
        return new Working(
                "Strength at " + moisture.text(),
                String.format(
                        Locale.ROOT,
                        "P = P12 (P12/Pg)^((12 - M)/(Mp - 12)) with P12 = %.4g, Pg = %.4g, Mp = %s, M = %s: %.4g",
                        atTwelve,
                        green,
                        intersection.text(),
                        moisture.text(),
                        at(moisture)),
                Equation.STRENGTH.cite() + "; Mp from Table 5-13 (VERIFIED, S3)",
                "for clear wood; not for work to maximum load, impact bending or tension across the grain");
    }
}
