package turnalike.trace.against;

import turnalike.units.Length;

/**
 * A length and how sure it is.
 *
 * @param value of either sign where it is a difference
 * @param uncertainty one standard deviation, above zero
 */
public record Figure(Length value, Length uncertainty) {
    /** Off by more than so many standard deviations is off, and not chance: one time in twenty. */
    private static final double SURE_SIGMAS = 2;

    public Figure {
        if (!uncertainty.isPositive()) {
            throw new IllegalArgumentException("a figure is uncertain by something, was " + uncertainty.mm() + " mm");
        }
    }

    /** {@return whether it is further from zero than chance would bring it, in nineteen cases of twenty} */
    public boolean isSurelyOff() {
        return value.abs().mm() > SURE_SIGMAS * uncertainty.mm();
    }

    /**
     * {@return the same less so much, as sure as before}
     *
     * @param much of either sign
     */
    public Figure less(Length much) {
        return new Figure(value.minus(much), uncertainty);
    }
}
