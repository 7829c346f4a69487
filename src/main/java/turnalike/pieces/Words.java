package turnalike.pieces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;

/** Figures as a sentence carries them: fine enough to tell two pieces apart, in the user's units. */
final class Words {
    private static final double PARTS_OF_INCH = 64;

    private Words() {}

    /** The figure of a column with its unit; the sign is dropped, the sentence says it in words. */
    static String figure(Column column, double figure, Keyed keyed) {
        return column.isMass() ? mass(figure, keyed.mass()) : length(Math.abs(figure), keyed.units());
    }

    private static String mass(double grams, MassUnit unit) {
        int decimals = unit == MassUnit.GRAM ? 1 : 2;
        return rounded(unit.count(Mass.ofGrams(Math.abs(grams))), decimals) + " " + unit.symbol();
    }

    private static String length(double mm, UnitSystem units) {
        if (units == UnitSystem.METRIC) {
            return LengthText.printMm(Length.ofMm(mm), 2).text();
        }
        double parts = mm / Length.MM_PER_INCH * PARTS_OF_INCH;
        // A whole number of 64ths is a fraction the user wrote; anything else came off a caliper and reads as
        // thousandths.
        boolean fraction = Math.abs(parts - Math.rint(parts)) < 1e-6;
        return fraction ? Length.ofMm(mm).format(units) : rounded(mm / Length.MM_PER_INCH, 3) + " in";
    }

    static String rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
