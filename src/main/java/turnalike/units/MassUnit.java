package turnalike.units;

/** The unit of a mass that carries none of its own, and the name of a pieces file's column in that unit. */
public enum MassUnit {
    /** Grams, {@code mass_g}. */
    GRAM("mass_g", "g"),
    /** Avoirdupois ounces, {@code mass_oz}. */
    OUNCE("mass_oz", "oz");

    private final String column;
    private final String symbol;

    MassUnit(String column, String symbol) {
        this.column = column;
        this.symbol = symbol;
    }

    /** {@return the name of the column of masses in a pieces file} */
    public String column() {
        return column;
    }

    /**
     * {@return the unit of that column's masses: ounces for {@code mass_oz}, else grams}
     *
     * @param column its name in a pieces file, in letters of either case
     */
    public static MassUnit ofColumn(String column) {
        return OUNCE.column.equalsIgnoreCase(column.strip()) ? OUNCE : GRAM;
    }

    /** {@return the unit as written after a number} */
    public String symbol() {
        return symbol;
    }

    /**
     * {@return the mass of so many of this unit}
     *
     * @param count how many; finite, else {@link IllegalArgumentException}
     */
    public Mass mass(double count) {
        return this == GRAM ? Mass.ofGrams(count) : Mass.ofOunces(count);
    }

    /**
     * {@return how many of this unit a mass is}
     *
     * @param mass any
     */
    public double count(Mass mass) {
        return this == GRAM ? mass.grams() : mass.ounces();
    }
}
