package turnalike.drawing.svg;

import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.UnitSystem;

/** Lengths as the pictures letter them. */
public final class LengthLabels {
    private LengthLabels() {}

    /** Without its unit, where a caption names the unit for all: {@code 14 3/8}. */
    public static String bare(Length length, UnitSystem units) {
        String text = LengthText.print(length, units).text();
        return text.substring(0, text.length() - units.symbol().length() - 1);
    }
}
