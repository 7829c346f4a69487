package turnalike.job.wood;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Text;
import turnalike.wood.Species;
import turnalike.wood.Stiffness;
import turnalike.wood.Woods;

/** What it is turned from: a species at a moisture, or a density in its place. */
public final class WoodKeys {
    private static final List<List<String>> ONE_OF = List.of(List.of("species"), List.of("density_kg_m3"));

    /** A name of the shipped wood table; a density may stand in its place. */
    public static final Key<Text> SPECIES = Key.may(
                    "species",
                    new Text(Woods.shipped().list().stream().map(Species::name).toList()),
                    "a name of the wood table, or as much of it as only one wood has",
                    "`density_kg_m3` must stand in its place")
            .asked(KeySection.STOCK, "Species", "");

    /**
     * Water per hundred of dry wood, as it is turned. Left out, the target for interior use in most of the United States (Wood
     * Handbook, figure 13-1; VERIFIED second-hand).
     */
    public static final Key<Number> MOISTURE = Key.may(
                    "moisture_pct", KeyType.number(0, 300, 8), "water per hundred of dry wood, as it is turned", "8")
            .asked(KeySection.STOCK, "Moisture, %", "left empty: 8");

    /** In kg/m³ as it is turned, in place of a species. No wood is lighter than 30 or heavier than its own cell wall full of water. */
    public static final Key<Number> DENSITY = Key.may(
                    "density_kg_m3",
                    KeyType.number(30, 2000),
                    "in place of a species",
                    "the species' own at its moisture")
            .asked(KeySection.STOCK, "Or density, kg/m³", "in place of a species");

    /**
     * Along the grain and without what shear adds to a beam's sag. Balsa has about 3,000 MPa along the grain and no wood 40,000 (from
     * memory); far outside that the unit is wrong.
     */
    public static final Key<Number> MOE = Key.may(
                    "moe_mpa",
                    KeyType.number(500, 60_000),
                    "its stiffness along the grain, shear-free; wins over the table's",
                    "the table's printed value and 10 %; nothing about whip when none is printed")
            .asked(KeySection.TURNING, "Wood's stiffness, MPa", "left empty: the handbook's");

    /** From memory: Wood Handbook Table 5-1 has 5 to 27 among its woods. */
    public static final Key<Number> MOE_OVER_SHEAR = Key.may(
            "moe_over_shear",
            KeyType.number(1, 100, Stiffness.USUAL_MOE_OVER_SHEAR),
            "its stiffness along the grain over its stiffness in shear",
            "12.5");

    /** A species or a density, never both; how stiff it is beside. */
    public static final Group GROUP = new Group(List.of(SPECIES, MOISTURE, DENSITY, MOE, MOE_OVER_SHEAR), ONE_OF);

    /** The keys of a wood that nothing is turned from, whatever it is asked for. */
    static final Group BESIDE = new Group(List.of(SPECIES, MOISTURE, DENSITY), ONE_OF);

    /**
     * {@return the same, asked for by a form}
     *
     * @param section the part of the form
     * @param what is made of it: {@code Rim}
     */
    public static Group beside(KeySection section, String what) {
        return new Group(
                List.of(
                        SPECIES.asked(section, what + "'s wood", "left empty: the pieces' own"),
                        MOISTURE.asked(section, what + "'s moisture, %", ""),
                        DENSITY.asked(section, what + "'s density, kg/m³", "in place of a species")),
                ONE_OF);
    }

    private WoodKeys() {}
}
