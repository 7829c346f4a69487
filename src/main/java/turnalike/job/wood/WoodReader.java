package turnalike.job.wood;

import java.util.Optional;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType.Group;
import turnalike.units.Density;
import turnalike.wood.Moisture;
import turnalike.wood.Species;
import turnalike.wood.Stiffness;
import turnalike.wood.Wood;
import turnalike.wood.Woods;

/** The wood from JSON: a species at a moisture, or a density in its place. */
public final class WoodReader {
    private WoodReader() {}

    /**
     * {@return the wood that is turned; empty when a problem was told}
     *
     * @param fields the keys of the wood's object, none of them taken
     */
    public static Optional<Wood> read(Fields fields) {
        Optional<Wood> wood = plain(fields);
        boolean stiffnessGiven = fields.has(WoodKeys.MOE);
        Optional<Double> moe = fields.number(WoodKeys.MOE);
        Optional<Double> ratio = fields.number(WoodKeys.MOE_OVER_SHEAR);
        fields.refuseUnknown(WoodKeys.GROUP);
        if (stiffnessGiven) {
            wood = wood.flatMap(each -> moe.map(mpa -> each.with(Stiffness.given(mpa))));
        }
        return wood.flatMap(each -> ratio.map(times -> sheared(each, times)));
    }

    /**
     * {@return the wood of something that is not turned; empty when a problem was told}
     *
     * @param fields the keys of its object, none of them taken
     */
    private static Optional<Wood> beside(Fields fields) {
        Optional<Wood> wood = plain(fields);
        fields.refuseUnknown(WoodKeys.BESIDE);
        return wood;
    }

    /**
     * {@return the wood of something that is not turned, where the key is there; empty when it is not or a problem was told}
     *
     * @param fields the keys of the object around it
     * @param key under which the wood stands
     */
    public static Optional<Wood> besideOf(Fields fields, Key<Group> key) {
        return fields.has(key)
                ? fields.object(key, "write it like {\"species\": \"White oak\"}")
                        .flatMap(WoodReader::beside)
                : Optional.empty();
    }

    private static Optional<Wood> plain(Fields fields) {
        boolean bySpecies = fields.has(WoodKeys.SPECIES);
        boolean byDensity = fields.has(WoodKeys.DENSITY);
        Optional<Wood> wood = Optional.empty();
        Optional<Double> pct = fields.number(WoodKeys.MOISTURE);
        if (bySpecies && byDensity) {
            fields.reading().problem(fields.where(), "gives a species and a density", "keep one of the two");
        } else if (bySpecies) {
            Optional<Species> species = fields.findText(WoodKeys.SPECIES)
                    .flatMap(name -> fields.accept(
                            fields.at(WoodKeys.SPECIES.name()), Woods.shipped().read(name)));
            wood = species.flatMap(each -> pct.map(moisture -> Wood.of(each, Moisture.ofPct(moisture))));
        } else if (byDensity) {
            wood = fields.number(WoodKeys.DENSITY).map(number -> Wood.of(Density.ofKgPerM3(number)));
        } else {
            fields.reading()
                    .problem(
                            fields.where(),
                            "names no wood",
                            "give a species from the table, or density_kg_m3 in its place");
        }
        return wood;
    }

    private static Wood sheared(Wood wood, double moeOverShear) {
        return wood.stiffness()
                .map(each -> wood.with(each.withMoeOverShear(moeOverShear)))
                .orElse(wood);
    }
}
