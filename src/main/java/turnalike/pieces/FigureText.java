package turnalike.pieces;

import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.PlainNumber;

/** Figures as a sentence carries them: fine enough to tell two pieces apart, in the user's units. */
final class FigureText {
    /** Below this a whole column is told with a decimal, however coarse the scale. */
    private static final double FEW_G = 10;

    private FigureText() {}

    /** The figure of a column with its unit; the sign is dropped, the sentence says it in words. */
    static String figure(Column column, double figure, KeyedFigure keyed) {
        return column.isMass()
                ? mass(figure, keyed, decimals(keyed))
                : Length.ofMm(Math.abs(figure)).formatFine(keyed.units());
    }

    /** Of a whole column, about whose unit is asked: lengths as a rule shows them; of pounds read as grams there is something left. */
    static String roughly(Column column, double figure, KeyedFigure keyed) {
        return column.isMass()
                ? mass(figure, keyed, Math.abs(figure) < FEW_G ? Math.max(1, decimals(keyed)) : decimals(keyed))
                : Length.ofMm(Math.abs(figure)).format(keyed.units());
    }

    /** No finer than the scale shows. */
    private static int decimals(KeyedFigure keyed) {
        return keyed.scale().in(keyed.mass()).decimals();
    }

    private static String mass(double grams, KeyedFigure keyed, int decimals) {
        MassUnit unit = keyed.mass();
        return PlainNumber.toDecimals(unit.count(Mass.ofGrams(Math.abs(grams))), decimals) + " " + unit.symbol();
    }
}
