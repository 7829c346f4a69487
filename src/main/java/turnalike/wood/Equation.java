package turnalike.wood;

/**
 * The Wood Handbook's formulas this package uses, each with its number in both editions (they differ by two in places) and where it was
 * seen. Keys are those of {@link Woods#listSources()}.
 */
public enum Equation {
    /** The wettest a wood can be, from its basic specific gravity. */
    MAXIMUM_MOISTURE("4-3", "number not seen", "VERIFIED in FPL-GTR-282 (S3)"),
    /** Equilibrium moisture content from temperature and humidity. */
    EQUILIBRIUM("4-5", "4-5", "VERIFIED in three transcriptions (S3, S7, S11)"),
    /** How much of the whole shrinkage has happened at a moisture. */
    SHRINKAGE("4-9", "4-7", "VERIFIED in FPL-GTR-282 (S3)"),
    /** Specific gravity at a moisture from the basic one and the volumetric shrinkage. */
    GRAVITY("4-11", "4-9", "VERIFIED in FPL-GTR-282 (S3)"),
    /** Volumetric shrinkage from the basic specific gravity, when it is not known. */
    ESTIMATED_SHRINKAGE("4-12", "4-10", "VERIFIED in FPL-GTR-282 (S3)"),
    /** Density from specific gravity and moisture, water included. */
    DENSITY("4-14", "4-12", "VERIFIED in FPL-GTR-282 (S3)"),
    /** Strength at another moisture. */
    STRENGTH("5-3", "number not seen", "VERIFIED in FPL-GTR-282 (S3)"),
    /** Change of size between 6 % and 14 % moisture. */
    CHANGE_BY_COEFFICIENT("number not seen", "13-2", "VERIFIED in words (S17), its worked example on the page (S9)"),
    /** Change of size at any moisture. */
    CHANGE_BY_SHRINKAGE(
            "number not seen",
            "13-3",
            "symbols and limits VERIFIED on the page (S9), the form VERIFIED from the same formula elsewhere (S13)");

    private final String in282;
    private final String in190;
    private final String seen;

    Equation(String in282, String in190, String seen) {
        this.in282 = in282;
        this.in190 = in190;
        this.seen = seen;
    }

    /** {@return the citation a {@link turnalike.units.Working} carries} */
    public String cite() {
        return "Wood Handbook equation, FPL-GTR-282: %s, FPL-GTR-190: %s; %s".formatted(in282, in190, seen);
    }
}
