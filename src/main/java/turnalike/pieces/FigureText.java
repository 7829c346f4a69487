package turnalike.pieces;

import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;

/** Figures as a sentence carries them: fine enough to tell two pieces apart, in the user's units. */
final class FigureText {
    private FigureText() {}

    /** The figure of a column with its unit; the sign is dropped, the sentence says it in words. */
    static String figure(Column column, double figure, KeyedFigure keyed) {
        return column.isMass()
                ? mass(figure, keyed.mass())
                : Length.ofMm(Math.abs(figure)).formatFine(keyed.units());
    }

    private static String mass(double grams, MassUnit unit) {
        int decimals = unit == MassUnit.GRAM ? 1 : 2;
        return PlainNumber.toDecimals(unit.count(Mass.ofGrams(Math.abs(grams))), decimals) + " " + unit.symbol();
    }
}
