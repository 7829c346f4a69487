package turnalike.stock;

import java.util.Locale;
import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.UnitSystem;

/** Lengths in both systems, the job's own first, fine enough to set a marking gauge. */
final class DualLength {
    private DualLength() {}

    static String both(Length length, UnitSystem units) {
        return units == UnitSystem.INCH
                ? "%s (%s)"
                        .formatted(
                                length.format(units),
                                LengthText.printMm(length, 2).text())
                : String.format(
                        Locale.ROOT,
                        "%s (%.3f in)",
                        LengthText.printMm(length, 2).text(),
                        length.inches());
    }
}
