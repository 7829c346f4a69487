package turnalike.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.units.Density;
import turnalike.units.Problem;
import turnalike.units.Working;

/** The wood of a job: a species at a moisture, or just a density. */
public sealed interface Wood permits Wood.OfSpecies, Wood.OfDensity {
    /** {@return what it is, in words: {@code Black cherry at 8 %}, with the name as the table has it; or its density} */
    String text();

    /** {@return mass over volume, water included} */
    Density density();

    /**
     * {@return by how much the density may be off either way as the mean of such wood, by what it was worked out from; empty where it was
     * given} Single pieces differ by more.
     */
    Optional<Density> densityUncertainty();

    /** {@return how {@link #density()} was found, by which route, and how sure it is} */
    Working working();

    /** {@return the stiffness to reckon bending with, where one is printed for this wood} */
    Optional<Stiffness> stiffness();

    /** {@return the stress at which it breaks in bending, where one is printed for this wood} */
    Optional<Rupture> rupture();

    /** {@return what looks wrong about this wood though it can be reckoned with; in order, empty when nothing does} */
    List<Problem> warnings();

    /**
     * {@return what the case for this one makes of it}
     *
     * @param <R> what becomes of it
     * @param cases one answer for each case
     */
    <R> R match(Cases<R> cases);

    /**
     * One answer for each kind of wood.
     *
     * @param <R> what becomes of it
     */
    interface Cases<R> {
        /**
         * {@return what wood of a printed species becomes}
         *
         * @param wood the wood
         */
        R species(OfSpecies wood);

        /**
         * {@return what wood of a given density becomes}
         *
         * @param wood the wood
         */
        R density(OfDensity wood);
    }

    /**
     * {@return wood of a printed species at a moisture}
     *
     * @param species a row of the table of woods
     * @param moisture the wood's own
     */
    static Wood of(Species species, Moisture moisture) {
        return new OfSpecies(species, moisture, Optional.empty());
    }

    /**
     * {@return wood of which only the density is known}
     *
     * @param density mass over volume, water included
     */
    static Wood of(Density density) {
        return new OfDensity(density, Optional.empty());
    }

    /**
     * {@return the same wood with a stiffness someone measured or chose, which wins over any printed one}
     *
     * @param own the stiffness to use
     */
    Wood with(Stiffness own);

    /**
     * A species at a moisture. Its density is {@code 1000 G (1 + M/100)} kg/m³, continuous in the moisture; {@link DensityRoute} says by
     * which way. Where the table has a G at 12 %, the density there is exactly its, as from 30 % on it is the basic one's.
     * Accuracy: {@link #densityUncertainty} for the wood's mean; single pieces of one wood spread about 10 % around it.
     *
     * @param species the wood, with what is printed about it
     * @param moisture of the wood as it is turned
     * @param own a stiffness someone measured or chose; empty for the printed one, where there is one
     */
    record OfSpecies(Species species, Moisture moisture, Optional<Stiffness> own) implements Wood {
        private static final String SPREAD =
                "Ovendry density within one wood varies with a coefficient of variation of about 10 %"
                        + " (Wood Handbook, FPL-GTR-190; VERIFIED, S9 page index 88): weigh a blank to know it";

        @Override
        public String text() {
            return species.name() + " at " + moisture.text();
        }

        @Override
        public Density density() {
            return by(DensityRoute.of(species)).orElseThrow();
        }

        @Override
        public Optional<Density> densityUncertainty() {
            return Optional.of(DensitySureness.halfWidth(species, moisture));
        }

        @Override
        public Working working() {
            DensityRoute route = DensityRoute.of(species);
            String how = String.format(
                    Locale.ROOT,
                    "%s at %s by %s: %s; density = 1000 G (1 + M/100) = %.1f kg/m3",
                    species.name(),
                    moisture.text(),
                    route.text(),
                    route.how(species, moisture),
                    density().kgPerM3());
            List<String> sureness = new ArrayList<>();
            sureness.add(String.format(
                    Locale.ROOT,
                    "As this wood's mean within %.1f kg/m3 either way, by the rounding of the printed figures and how far the basic"
                            + " specific gravity with its shrinkage lies off",
                    DensitySureness.halfWidth(species, moisture).kgPerM3()));
            others(route).ifPresent(sureness::add);
            sureness.add(SPREAD);
            species.provenance().note().ifPresent(note -> sureness.add("About this wood's row: " + note));
            return new Working("Density", how, source(route), String.join(". ", sureness));
        }

        private Optional<Density> by(DensityRoute route) {
            OptionalDouble gravity = route.gravity(species, moisture);
            return gravity.isPresent()
                    ? Optional.of(DensityRoute.density(gravity.getAsDouble(), moisture))
                    : Optional.empty();
        }

        private Optional<String> others(DensityRoute taken) {
            double here = density().kgPerM3();
            List<String> parts = new ArrayList<>();
            for (DensityRoute route : DensityRoute.values()) {
                if (route != taken) {
                    by(route)
                            .ifPresent(there -> parts.add(String.format(
                                    Locale.ROOT,
                                    "by %s it would be %.1f kg/m3 (%+.1f %%)",
                                    route.text(),
                                    there.kgPerM3(),
                                    100 * (there.kgPerM3() / here - 1))));
                }
            }
            return parts.isEmpty() ? Optional.empty() : Optional.of("Other routes: " + String.join("; ", parts));
        }

        private String source(DensityRoute route) {
            String facts = "%s: facts %s".formatted(species.name(), facts(route));
            String gravity = isAsPrinted(route)
                    ? ""
                    : Equation.GRAVITY.cite() + "; "
                            + (usesShrinkage(route)
                                    ? shrinkage().cite()
                                    : Working.DERIVED + ": a straight line between the two")
                            + "; ";
            return gravity + Equation.DENSITY.cite() + "; " + facts;
        }

        /** Whether no formula is needed: at 12 %, and from 30 % on. */
        private boolean isAsPrinted(DensityRoute route) {
            return route == DensityRoute.THROUGH_BOTH
                    && (moisture.equals(Moisture.TWELVE) || moisture.compareTo(Moisture.FIBRE_SATURATION) >= 0);
        }

        private boolean usesShrinkage(DensityRoute route) {
            return route != DensityRoute.THROUGH_BOTH || moisture.compareTo(Moisture.TWELVE) < 0;
        }

        private Equation shrinkage() {
            return DensityRoute.isShrinkagePrinted(species) ? Equation.SHRINKAGE : Equation.ESTIMATED_SHRINKAGE;
        }

        private String facts(DensityRoute route) {
            return usesShrinkage(route) && DensityRoute.isShrinkagePrinted(species)
                    ? species.provenance().cite(FactGroup.GRAVITY, FactGroup.SHRINKAGE)
                    : species.provenance().cite(FactGroup.GRAVITY);
        }

        /** The own stiffness if there is one, else the printed modulus with its shear deflection taken out, see {@link Stiffness#of}. */
        @Override
        public Optional<Stiffness> stiffness() {
            return own.or(() -> Stiffness.of(species, moisture));
        }

        @Override
        public Optional<Rupture> rupture() {
            return Rupture.of(species, moisture);
        }

        @Override
        public Wood with(Stiffness given) {
            return new OfSpecies(species, moisture, Optional.of(given));
        }

        @Override
        public List<Problem> warnings() {
            Moisture most = species.maximumMoisture();
            if (moisture.compareTo(most) <= 0) {
                return List.of();
            }
            return List.of(new Problem(
                    "wood: moisture",
                    "%s is more water than %s can hold, about %s"
                            .formatted(
                                    moisture.text(),
                                    species.name(),
                                    Moisture.ofPct(Math.rint(most.pct())).text()),
                    "check the moisture"));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.species(this);
        }
    }

    /**
     * A density someone measured or chose; nothing else is known about the wood.
     *
     * @param density as measured or chosen
     * @param own a stiffness someone measured or chose; empty when none is known
     */
    record OfDensity(Density density, Optional<Stiffness> own) implements Wood {
        /** Below the lightest wood in trade and above wood with no hollow left; both only to catch a slip. From memory; Equation 4-3. */
        private static final double LIGHTEST = 80;

        private static final double HEAVIEST = 1000 * SpecificGravity.OF_WOOD_SUBSTANCE;

        @Override
        public String text() {
            return String.format(Locale.ROOT, "wood of %.0f kg/m³", density.kgPerM3());
        }

        @Override
        public Optional<Density> densityUncertainty() {
            return Optional.empty();
        }

        @Override
        public Working working() {
            return new Working(
                    "Density",
                    String.format(Locale.ROOT, "given as %.1f kg/m3", density.kgPerM3()),
                    "given in the job",
                    "taken as it is");
        }

        @Override
        public Optional<Stiffness> stiffness() {
            return own;
        }

        @Override
        public Optional<Rupture> rupture() {
            return Optional.empty();
        }

        @Override
        public Wood with(Stiffness given) {
            return new OfDensity(density, Optional.of(given));
        }

        @Override
        public List<Problem> warnings() {
            if (density.kgPerM3() >= LIGHTEST && density.kgPerM3() <= HEAVIEST) {
                return List.of();
            }
            return List.of(new Problem(
                    "wood: density",
                    String.format(Locale.ROOT, "%.1f kg/m3 is no wood's density", density.kgPerM3()),
                    "give it in kg/m3: most dry woods lie between 320 and 720"));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.density(this);
        }
    }
}
