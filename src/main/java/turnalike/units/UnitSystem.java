package turnalike.units;

import java.util.Optional;

/** The units a job is written in. Inside, every length is in millimetres; this says how a bare number is read and how lengths print. */
public enum UnitSystem {
    /** Inches, printed as fractions to the nearest 1/64. */
    INCH("in"),
    /** Millimetres, printed to the nearest 0.1. */
    METRIC("mm");

    private final String symbol;

    UnitSystem(String symbol) {
        this.symbol = symbol;
    }

    /** {@return the word a job file uses: {@code in} or {@code mm}} */
    public String symbol() {
        return symbol;
    }

    /** {@return the other system, for the figure shown in reach beside each length} */
    public UnitSystem other() {
        return this == INCH ? METRIC : INCH;
    }

    /**
     * {@return the length of {@code count} of this system's units}
     *
     * @param count of either sign, finite, else {@link IllegalArgumentException}
     */
    public Length length(double count) {
        return this == INCH ? Length.ofInches(count) : Length.ofMm(count);
    }

    /**
     * {@return the system whose symbol this is, if any}
     *
     * @param symbol as a job file writes it
     */
    public static Optional<UnitSystem> find(String symbol) {
        for (UnitSystem system : values()) {
            if (system.symbol.equals(symbol)) {
                return Optional.of(system);
            }
        }
        return Optional.empty();
    }
}
