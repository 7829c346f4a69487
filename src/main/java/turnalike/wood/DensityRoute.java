package turnalike.wood;

import java.util.Locale;
import java.util.OptionalDouble;
import turnalike.units.Density;

/**
 * The ways from printed facts to the specific gravity at a moisture. The Handbook's own examples spread by about 1 % between them (white
 * ash at 12 %: 0.60 printed, 0.598 by its shrinkage, 0.603 by the estimate), so a figure names its route and how far the others lie.
 */
enum DensityRoute {
    /** From the specific gravity printed at 12 %, carried to other moistures by the shrinkage. */
    FROM_TWELVE("the specific gravity printed at 12 %") {
        @Override
        OptionalDouble gravity(Species species, Moisture moisture) {
            OptionalDouble atTwelve = species.gravity().atTwelve();
            if (atTwelve.isEmpty()) {
                return OptionalDouble.empty();
            }
            double whole = wholeShrinkagePct(species);
            // The ratio is exactly 1 at 12 %, so the printed figure comes through untouched.
            double ratio = left(whole, Moisture.TWELVE) / left(whole, moisture);
            return OptionalDouble.of(atTwelve.getAsDouble() * ratio);
        }
    },
    /** From the basic specific gravity and the printed volumetric shrinkage. */
    BY_SHRINKAGE("the basic specific gravity and the printed volumetric shrinkage") {
        @Override
        OptionalDouble gravity(Species species, Moisture moisture) {
            OptionalDouble whole = species.shrinkage().volumetricPct();
            return whole.isPresent()
                    ? OptionalDouble.of(species.gravity().basic() / left(whole.getAsDouble(), moisture))
                    : OptionalDouble.empty();
        }
    },
    /** From the basic specific gravity alone, its shrinkage estimated. */
    BY_ESTIMATE("the basic specific gravity and a volumetric shrinkage estimated from it") {
        @Override
        OptionalDouble gravity(Species species, Moisture moisture) {
            double whole = species.gravity().estimatedShrinkagePct();
            return OptionalDouble.of(species.gravity().basic() / left(whole, moisture));
        }
    };

    private final String text;

    DensityRoute(String text) {
        this.text = text;
    }

    /** The route a figure takes: the printed value at exactly 12 % where there is one; else by shrinkage; else by the estimate. */
    static DensityRoute of(Species species, Moisture moisture) {
        if (moisture.equals(Moisture.TWELVE) && species.gravity().atTwelve().isPresent()) {
            return FROM_TWELVE;
        }
        return species.shrinkage().volumetricPct().isPresent() ? BY_SHRINKAGE : BY_ESTIMATE;
    }

    /** The specific gravity at that moisture; empty where a fact this route needs is not printed. */
    abstract OptionalDouble gravity(Species species, Moisture moisture);

    String text() {
        return text;
    }

    /** The formula with what went into it, up to the specific gravity. */
    String how(Species species, Moisture moisture) {
        double basic = species.gravity().basic();
        double whole = wholeShrinkagePct(species);
        double gravity = gravity(species, moisture).orElseThrow();
        if (this == FROM_TWELVE && moisture.equals(Moisture.TWELVE)) {
            return String.format(Locale.ROOT, "G = %.2f as printed at 12 %%", gravity);
        }
        return String.format(
                Locale.ROOT,
                "G = Gb / (1 - Sx/100) = %.2f / (1 - %.3f/100) = %.4f, where Sx = S (1 - x/30) is the part of the %s volumetric"
                        + " shrinkage S = %.2f %% that has happened at x = %s (none above 30 %%)",
                basic,
                Shrinkage.soFarPct(whole, moisture),
                gravity,
                this == BY_ESTIMATE ? "estimated" : "printed",
                whole,
                moisture.text());
    }

    /** Ovendry mass over volume, times water's 1000 kg/m³, with the water added. Source: {@link Equation#DENSITY}. */
    static Density density(double gravity, Moisture moisture) {
        return Density.ofKgPerM3(1000 * gravity * (1 + moisture.pct() / 100));
    }

    private static double wholeShrinkagePct(Species species) {
        return species.shrinkage().volumetricPct().orElseGet(() -> species.gravity()
                .estimatedShrinkagePct());
    }

    /** The share of the green volume that is left at that moisture. */
    private static double left(double wholePct, Moisture moisture) {
        return 1 - Shrinkage.soFarPct(wholePct, moisture) / 100;
    }
}
