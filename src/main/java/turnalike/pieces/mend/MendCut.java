package turnalike.pieces.mend;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * One cut over the whole of a member.
 *
 * @param member the member's index
 * @param name its name, see {@link Mendable#name}
 * @param from where it begins, from the start end
 * @param to where it ends
 * @param takeOff how much the diameter comes down
 */
public record MendCut(int member, String name, Length from, Length to, Length takeOff) {
    /**
     * {@return what to do at the lathe: {@code take 0.3 mm off the long taper between marks 5 and 7}}
     *
     * @param units in which the cut is printed
     */
    public String words(UnitSystem units) {
        return "take %s off the %s".formatted(takeOff.formatFine(units), name);
    }
}
