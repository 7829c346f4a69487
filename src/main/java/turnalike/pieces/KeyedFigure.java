package turnalike.pieces;

import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/**
 * One figure as it comes from a key, a paste or an instrument that types: {@code +  182.4 g}, {@code 22.31mm}, {@code 7/8}. A unit that is
 * written wins over the one expected; a scale's or caliper's plus sign, leading zeros and line end are read over.
 *
 * @param units how a bare length is read
 * @param mass how a bare mass is read
 * @param scale what the pieces are weighed on: no sentence tells a mass finer
 */
public record KeyedFigure(UnitSystem units, MassUnit mass, WeighingScale scale) {
    /** Of a bench scale, which shows tenths of a gram. */
    private static final WeighingScale BENCH = new WeighingScale(Mass.ofGrams(0.1));

    /**
     * Weighed on a bench scale, which shows tenths of a gram.
     *
     * @param units how a bare length is read
     * @param mass how a bare mass is read
     */
    public KeyedFigure(UnitSystem units, MassUnit mass) {
        this(units, mass, BENCH);
    }

    /** Reads the figure for a column, in grams for the mass and millimetres for the rest; above zero or refused. */
    Parsed<Double> figure(Column column, String text) {
        return column.isMass() ? grams(text) : mm(text);
    }

    /**
     * {@return the measures with the figure typed for that column, or why the text is refused: it is no figure, or not above zero}
     *
     * @param before the measures so far
     * @param column what was measured
     * @param text as it was typed; blank takes the column's figure out again
     */
    public Parsed<Measures> enter(Measures before, Column column, String text) {
        if (text.isBlank()) {
            return Parsed.of(before.without(column));
        }
        Parsed<Double> figure = figure(column, text);
        return figure instanceof Parsed.Refused<Double> refused
                ? Parsed.refused(refused.what(), refused.mend())
                : Parsed.of(before.with(column, figure.get()));
    }

    /**
     * {@return a figure of a column as a sentence carries it, with its unit and without its sign}
     *
     * @param column what was measured
     * @param figure in grams for the mass and millimetres for the rest
     */
    public String say(Column column, double figure) {
        return FigureText.figure(column, figure, this);
    }

    private Parsed<Double> grams(String text) {
        var parsed = MassText.parse(text, mass);
        return parsed instanceof Parsed.Refused<?> refused
                ? Parsed.refused(refused.what(), refused.mend())
                : Parsed.of(parsed.get().grams());
    }

    private Parsed<Double> mm(String text) {
        String signless = text.strip().startsWith("+") ? text.strip().substring(1) : text;
        Parsed<Length> parsed = Length.parse(signless, units);
        if (parsed instanceof Parsed.Refused<Length> refused) {
            return Parsed.refused(refused.what(), refused.mend());
        }
        return parsed.get().isPositive()
                ? Parsed.of(parsed.get().mm())
                : Parsed.refused(
                        "a measure is above zero, was '%s'".formatted(text.strip()),
                        "leave it blank when it was not measured");
    }
}
