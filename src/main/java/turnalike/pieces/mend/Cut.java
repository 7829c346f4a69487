package turnalike.pieces.mend;

import turnalike.units.Length;
import turnalike.units.LengthText;
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
public record Cut(int member, String name, Length from, Length to, Length takeOff) {
    /** {@code take 0.3 mm off the long taper between marks 5 and 7}; hundredths of a millimetre, or thousandths of an inch. */
    public String words(UnitSystem units) {
        String much = units == UnitSystem.METRIC
                ? LengthText.printMm(takeOff, 2).text()
                : LengthText.printMm(Length.ofMm(takeOff.inches()), 3).text().replace(" mm", " in");
        return "take %s off the %s".formatted(much, name);
    }
}
