package turnalike.job.edit;

import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.PlainNumber;
import turnalike.units.UnitSystem;

/** A computed length as it is written into a job: as a turner writes it where that is exact, else as a decimal number, without a unit. */
final class LengthSpelling {
    /** Nearer than this to a sixty-fourth it is one: rounding in sums of fractions is far below it, and so is any tool. */
    private static final double EXACT_MM = 1e-6;

    private LengthSpelling() {}

    static String of(Length length, UnitSystem units) {
        if (units == UnitSystem.INCH) {
            LengthText.Printed printed = LengthText.print(length, units);
            if (Math.abs(printed.roundedOff().mm()) < EXACT_MM) {
                return printed.text().replace(" in", "");
            }
        }
        double count = units == UnitSystem.INCH ? length.inches() : length.mm();
        return PlainNumber.toDecimals(count, 6);
    }
}
