package turnalike.job.read;

import java.util.Optional;
import turnalike.units.Density;
import turnalike.wood.Moisture;
import turnalike.wood.Species;
import turnalike.wood.Stiffness;
import turnalike.wood.Wood;
import turnalike.wood.Woods;

/** The wood from JSON: a species at a moisture, or a density in its place. */
final class WoodReader {
    /**
     * Moisture of a job that gives none: the target for interior use in most of the United States (Wood Handbook, figure 13-1;
     * VERIFIED second-hand).
     */
    private static final double USUAL_MOISTURE_PCT = 8;

    /** Balsa has about 3,000 MPa along the grain and no wood 40,000 (from memory); far outside that the unit is wrong. */
    private static final double LEAST_MOE_MPA = 500;

    private static final double MOST_MOE_MPA = 60_000;

    private WoodReader() {}

    static Optional<Wood> read(Fields fields) {
        boolean bySpecies = fields.has("species");
        boolean byDensity = fields.has("density_kg_m3");
        Optional<Wood> wood = Optional.empty();
        Optional<Double> pct = fields.numberOr("moisture_pct", USUAL_MOISTURE_PCT, 0, 300);
        if (bySpecies && byDensity) {
            fields.reading().problem(fields.where(), "gives a species and a density", "keep one of the two");
        } else if (bySpecies) {
            Optional<Species> species = fields.findText("species")
                    .flatMap(name ->
                            fields.accept(fields.at("species"), Woods.shipped().read(name)));
            wood = species.flatMap(each -> pct.map(moisture -> Wood.of(each, Moisture.ofPct(moisture))));
        } else if (byDensity) {
            // no wood is lighter than 30 or heavier than its own cell wall full of water
            wood = fields.number("density_kg_m3", 30, 2000).map(number -> Wood.of(Density.ofKgPerM3(number)));
        } else {
            fields.reading()
                    .problem(
                            fields.where(),
                            "names no wood",
                            "give a species from the table, or density_kg_m3 in its place");
        }
        boolean stiffnessGiven = fields.has("moe_mpa");
        Optional<Double> moe =
                stiffnessGiven ? fields.number("moe_mpa", LEAST_MOE_MPA, MOST_MOE_MPA) : Optional.empty();
        fields.refuseUnknown();
        if (stiffnessGiven) {
            return wood.flatMap(each -> moe.map(mpa -> each.with(Stiffness.given(mpa))));
        }
        return wood;
    }
}
