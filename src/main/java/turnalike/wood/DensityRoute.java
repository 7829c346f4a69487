package turnalike.wood;

import java.util.Locale;
import java.util.OptionalDouble;
import turnalike.units.Density;

/**
 * The ways from printed facts to the specific gravity at a moisture. The Handbook's own examples spread by about 1 % between them (white
 * ash at 12 %: 0.60 printed, 0.598 by its shrinkage, 0.603 by the estimate), so a figure names its route, how far the others lie, and how
 * sure it is. Each route is continuous in the moisture.
 */
enum DensityRoute {
    /**
     * Through all that is printed: the specific gravity of green wood above fibre saturation and the one at 12 %, between the two the
     * volume shrinking in a straight line as it does with every route, and below 12 % shrinking on as printed. (Derived here from the
     * equations of the other routes: the printed figures alone decide which shrinkage goes where.)
     */
    THROUGH_BOTH("the specific gravities printed for green wood and at 12 %") {
        @Override
        OptionalDouble gravity(Species species, Moisture moisture) {
            OptionalDouble atTwelve = species.gravity().atTwelve();
            return atTwelve.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(throughBoth(
                            species.gravity().basic(), atTwelve.getAsDouble(), wholeShrinkagePct(species), moisture));
        }

        @Override
        String how(Species species, Moisture moisture) {
            double basic = species.gravity().basic();
            double atTwelve = species.gravity().atTwelve().orElseThrow();
            double gravity = gravity(species, moisture).orElseThrow();
            if (moisture.equals(Moisture.TWELVE)) {
                return String.format(Locale.ROOT, "G = %.2f as printed at 12 %%", gravity);
            }
            if (moisture.compareTo(Moisture.FIBRE_SATURATION) >= 0) {
                return String.format(Locale.ROOT, "G = %.2f as printed for green wood, from 30 %% on", gravity);
            }
            if (moisture.compareTo(Moisture.TWELVE) > 0) {
                return String.format(
                        Locale.ROOT,
                        "G = Gb / (1 - (1 - Gb/G12) (30 - x)/18) = %.4f, between Gb = %.2f as printed for green wood and G12 = %.2f as"
                                + " printed at 12 %%, at x = %s",
                        gravity,
                        basic,
                        atTwelve,
                        moisture.text());
            }
            double whole = wholeShrinkagePct(species);
            return String.format(
                    Locale.ROOT,
                    "G = G12 (1 - S12/100) / (1 - Sx/100) = %.2f (1 - %.3f/100) / (1 - %.3f/100) = %.4f, G12 as printed at 12 %%, where"
                            + " Sx = S (1 - x/30) is the part of the %s volumetric shrinkage S = %.2f %% that has happened at x = %s",
                    atTwelve,
                    Shrinkage.soFarPct(whole, Moisture.TWELVE),
                    Shrinkage.soFarPct(whole, moisture),
                    gravity,
                    isShrinkagePrinted(species) ? "printed" : "estimated",
                    whole,
                    moisture.text());
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

    /** The route a figure takes, at any moisture: through both printed gravities where both are; else by shrinkage; else by the estimate. */
    static DensityRoute of(Species species) {
        if (species.gravity().atTwelve().isPresent()) {
            return THROUGH_BOTH;
        }
        return isShrinkagePrinted(species) ? BY_SHRINKAGE : BY_ESTIMATE;
    }

    /** The specific gravity at that moisture; empty where a fact this route needs is not printed. */
    abstract OptionalDouble gravity(Species species, Moisture moisture);

    String text() {
        return text;
    }

    /** The formula with what went into it, up to the specific gravity. */
    String how(Species species, Moisture moisture) {
        double whole = this == BY_ESTIMATE ? species.gravity().estimatedShrinkagePct() : wholeShrinkagePct(species);
        return String.format(
                Locale.ROOT,
                "G = Gb / (1 - Sx/100) = %.2f / (1 - %.3f/100) = %.4f, where Sx = S (1 - x/30) is the part of the %s volumetric"
                        + " shrinkage S = %.2f %% that has happened at x = %s (none above 30 %%)",
                species.gravity().basic(),
                Shrinkage.soFarPct(whole, moisture),
                gravity(species, moisture).orElseThrow(),
                this == BY_ESTIMATE ? "estimated" : "printed",
                whole,
                moisture.text());
    }

    /** The same with any figures in place of the printed ones. */
    static double throughBoth(double basic, double atTwelve, double wholePct, Moisture moisture) {
        if (moisture.compareTo(Moisture.TWELVE) <= 0) {
            // The ratio is exactly 1 at 12 %, so the printed figure comes through untouched.
            return atTwelve * (left(wholePct, Moisture.TWELVE) / left(wholePct, moisture));
        }
        double wettest = Moisture.FIBRE_SATURATION.pct();
        double toGo = (wettest - moisture.asItCountsForSize().pct()) / (wettest - Moisture.TWELVE.pct());
        return basic / (1 - (1 - basic / atTwelve) * toGo);
    }

    /** Ovendry mass over volume, times water's 1000 kg/m³, with the water added. Source: {@link Equation#DENSITY}. */
    static Density density(double gravity, Moisture moisture) {
        return Density.ofKgPerM3(1000 * gravity * (1 + moisture.pct() / 100));
    }

    static boolean isShrinkagePrinted(Species species) {
        return species.shrinkage().volumetricPct().isPresent();
    }

    static double wholeShrinkagePct(Species species) {
        return species.shrinkage().volumetricPct().orElseGet(() -> species.gravity()
                .estimatedShrinkagePct());
    }

    /** The share of the green volume that is left at that moisture. */
    static double left(double wholePct, Moisture moisture) {
        return 1 - Shrinkage.soFarPct(wholePct, moisture) / 100;
    }
}
