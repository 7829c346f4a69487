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

    private static final double HALF = 0.499;

    /** So near to a rule's mark, in 64ths, is at it: the eye halves the space between two and no more. */
    private static final double AT_A_MARK = 0.25;

    /**
     * {@return what to do at the lathe: {@code take 0.3 mm off the diameter of the long taper between marks 5 and 7}} No finer than a caliper tells
     * on wood: to a tenth of a millimetre or a thousandth of an inch, and from a half of a 64th on as a rule shows it too.
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

    /**
     * As a spring caliper is set by a rule, whose finest marks are 64ths: at one, or between two. Less than half of one is for thousandths on a dial
     * alone. Whole 64ths have been said already.
     */
    private String onCaliper(UnitSystem units) {
        double marks = takeOff.inches() * 64;
        long nearest = Math.round(marks);
        boolean saidSo = Math.abs(marks - nearest) < 1e-6;
        if (units == UnitSystem.METRIC || marks < HALF || saidSo) {
            return "";
        }
        if (nearest > 0 && Math.abs(marks - nearest) <= AT_A_MARK) {
            return ": about %s on the rule".formatted(rule(nearest));
        }
        long below = (long) Math.floor(marks);
        return below == 0
                ? ": less than %s on the rule".formatted(rule(1))
                : ": between %s and %s on the rule".formatted(rule(below), rule(below + 1));
    }

    private static String rule(long marks) {
        return Length.ofInches(marks / 64.0).format(UnitSystem.INCH);
    }
}
