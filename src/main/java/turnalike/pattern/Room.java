package turnalike.pattern;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The room a new member has, and the sizes it may start from there. Proportions are common practice, no source: a place to start from.
 *
 * @param length along the piece
 * @param before the diameter where it starts
 * @param after the diameter where it ends
 * @param stock the blank's size, which nothing may exceed
 * @param units of the job
 */
public record Room(Length length, Length before, Length after, Length stock, UnitSystem units) {
    /** {@return the smaller of the diameters beside it} */
    public Length smaller() {
        return before.compareTo(after) < 0 ? before : after;
    }

    /** {@return the larger of the diameters beside it} */
    public Length larger() {
        return before.compareTo(after) < 0 ? after : before;
    }

    /**
     * {@return what something stands on that is to rise: the smaller diameter, or eight tenths of the blank where that leaves no wood to
     * rise into}
     */
    public Length foot() {
        return smaller().minus(stock.times(0.9)).isPositive() ? tidy(stock.times(0.8)) : smaller();
    }

    /** {@return three tenths above the {@link #foot}, and within the blank} */
    public Length risen() {
        return between(tidy(foot().times(1.3)), foot().plus(step(units).times(0.5)), stock);
    }

    /** {@return a quarter below the larger diameter, and at least a tenth} */
    public Length sunk() {
        return between(tidy(larger().times(0.75)), step(units).times(0.25), larger().times(0.9));
    }

    /** {@return a gentle tenth above the smaller diameter, and within the blank} */
    public Length swollen() {
        return between(tidy(smaller().times(1.1)), smaller(), stock);
    }

    /**
     * {@return the length rounded as {@link #tidy(Length, UnitSystem)} does, in the job's units}
     *
     * @param length above zero
     */
    public Length tidy(Length length) {
        return tidy(length, units);
    }

    /**
     * {@return the length rounded to what a turner would choose when nothing says otherwise: to 1/16 in or 0.5 mm, one of them at least}
     *
     * @param length above zero
     * @param units whether to round to sixteenths of an inch or half millimetres
     */
    public static Length tidy(Length length, UnitSystem units) {
        Length step = step(units);
        return step.times(Math.max(1, (double) Math.round(length.mm() / step.mm())));
    }

    private static Length step(UnitSystem units) {
        return units == UnitSystem.INCH ? Length.ofInches(1 / 16.0) : Length.ofMm(0.5);
    }

    private static Length between(Length length, Length least, Length most) {
        Length raised = length.compareTo(least) < 0 ? least : length;
        return raised.compareTo(most) > 0 ? most : raised;
    }
}
