package turnalike.drawing;

import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.UnitSystem;

/** Lengths as the pictures letter them. */
public final class Figures {
    private Figures() {}

    /** Without its unit, where a caption names the unit for all: {@code 14 3/8}. */
    public static String bare(Length length, UnitSystem units) {
        String text = LengthText.print(length, units).text();
        return text.substring(0, text.length() - units.symbol().length() - 1);
    }

    /** In both units, the job's own first: {@code 14 3/8 in (365.1 mm)}. */
    public static String both(Length length, UnitSystem units) {
        return length.format(units) + " (" + length.format(units.other()) + ")";
    }
}
