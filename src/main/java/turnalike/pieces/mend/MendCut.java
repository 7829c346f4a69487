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
 * @param sure whether the diameter stays within its tolerance; not where it was not measured and the cut goes deep
 */
public record MendCut(int member, String name, Length from, Length to, Length takeOff, boolean sure) {
    private static final double TENTH_MM = 0.1;

    /**
     * {@return what to do at the lathe: {@code take 0.3 mm off the diameter of the long taper between marks 5 and 7}} No finer than a caliper tells
     * on wood: to a tenth of a millimetre or a thousandth of an inch, and from a half of a 64th on by halves of it too.
     *
     * @param units in which the cut is printed
     */
    public String words(UnitSystem units) {
        return "take %s off the diameter of the %s%s".formatted(told(units).formatFine(units), name, onCaliper(units));
    }

    private Length told(UnitSystem units) {
        return units == UnitSystem.METRIC
                ? Length.ofMm(TENTH_MM * Math.max(1, Math.round(takeOff.mm() / TENTH_MM)))
                : takeOff;
    }

    /** A spring caliper tells a half of a 64th at best: below, thousandths on a dial. Whole 64ths have been said already. */
    private String onCaliper(UnitSystem units) {
        long halves = Math.round(takeOff.inches() * 64 * 2);
        boolean saidSo = Math.abs(takeOff.inches() * 64 - Math.rint(takeOff.inches() * 64)) < 1e-6;
        if (units == UnitSystem.METRIC || halves < 1 || saidSo) {
            return "";
        }
        if (halves == 1) {
            return ": half a 64th on the caliper";
        }
        String whole = String.valueOf(halves / 2);
        return halves == 2
                ? ": one 64th on the caliper"
                : ": %s 64ths on the caliper".formatted(halves % 2 == 0 ? whole : whole + " 1/2");
    }
}
