package turnalike.wood;

import java.util.Locale;
import turnalike.units.Working;

/**
 * The moisture wood comes to when it is left in air that does not change.
 *
 * <p>Source: {@link Equation#EQUILIBRIUM}, which fits Table 4-2. FPL-GTR-282 prints a second model (4-6) that gives about half a point
 * more (12.4 against 12.0 % at 21.1 °C and 65 % humidity); one model is used throughout. Accuracy: within 0.06 of the printed cells
 * from 5 to 90 % humidity; beyond that, and below -1 °C or above 54 °C, unchecked.
 *
 * @param air its temperature and its relative humidity
 */
public record Equilibrium(Air air) {
    /** {@return the moisture; at most 30 % for any air allowed here} */
    public Moisture moisture() {
        double t = air.celsius();
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double kh = k * air.relativeHumidity();
        double layered = k1 * kh + k1 * k2 * kh * kh;
        double doubled = k1 * kh + 2 * k1 * k2 * kh * kh;
        return Moisture.ofPct(1800 / w * (kh / (1 - kh) + doubled / (1 + layered)));
    }

    /** {@return how the moisture was found: formula, figures put in, source, and how sure it is} */
    public Working working() {
        return new Working(
                "Equilibrium moisture",
                String.format(
                        Locale.ROOT,
                        "the Handbook's sorption equation at %.1f degrees Celsius and %.0f %% relative humidity: %.1f %%",
                        air.celsius(),
                        100 * air.relativeHumidity(),
                        moisture().pct()),
                Equation.EQUILIBRIUM.cite() + "; held against Table 4-2 (VERIFIED, S10)",
                "for wood in general: a wood's own figure may lie a point or so off (from memory). The equation follows the printed"
                        + " table within 0.06 points between 5 and 90 % humidity");
    }
}
