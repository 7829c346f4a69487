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
     * {@return what to do at the lathe: {@code take 0.3 mm off the diameter of the long taper between marks 5 and 7: 3 tenths on the caliper}}
     * On the caliper in tenths of a millimetre or 64ths of an inch, to a half of a tenth and a quarter of a 64th.
     *
     * @param units in which the cut is printed
     */
    public String words(UnitSystem units) {
        return "take %s off the diameter of the %s: %s on the caliper"
                .formatted(takeOff.formatFine(units), name, onCaliper(units));
    }

    private String onCaliper(UnitSystem units) {
        if (units == UnitSystem.METRIC) {
            long halves = Math.max(1, Math.round(takeOff.mm() / TENTH_MM * 2));
            return parts(halves, 2, "tenth", "tenths");
        }
        long quarters = Math.max(1, Math.round(takeOff.inches() * 64 * 4));
        return parts(quarters, 4, "64th", "64ths");
    }

    /** {@code 1 1/2 tenths}, {@code 3/4 of a 64th}, {@code 2 64ths}: so many of so many to one. */
    private static String parts(long count, int perOne, String one, String many) {
        long whole = count / perOne;
        long over = count % perOne;
        String fraction = over == 0 ? "" : over * 2 == perOne ? "1/2" : over + "/" + perOne;
        if (whole == 0) {
            return fraction + " of a " + one;
        }
        String counted = over == 0 ? String.valueOf(whole) : whole + " and " + fraction;
        return counted + " " + (whole == 1 && over == 0 ? one : many);
    }
}
