package turnalike.pieces;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * What was measured, or what the pattern asks for: a figure for some columns, none for those not measured.
 *
 * @param figures by column, in the column's own order; grams for the mass, millimetres for the rest; each finite and above zero, else
 *     {@link IllegalArgumentException}
 */
public record Measures(SortedMap<Column, Double> figures) {
    /** Nothing measured. */
    public static final Measures NONE = new Measures(new TreeMap<>());

    public Measures {
        for (Map.Entry<Column, Double> each : figures.entrySet()) {
            if (!(each.getValue() > 0) || !Double.isFinite(each.getValue())) {
                throw new IllegalArgumentException("%s must be above zero and finite, was %s"
                        .formatted(each.getKey().format(), each.getValue()));
            }
        }
        figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
    }

    /**
     * {@return the measures of a piece that was only weighed}
     *
     * @param mass above zero, else {@link IllegalArgumentException}
     */
    public static Measures ofMass(Mass mass) {
        return NONE.with(mass);
    }

    /**
     * {@return a copy with that mass}
     *
     * @param mass above zero, else {@link IllegalArgumentException}
     */
    public Measures with(Mass mass) {
        return with(Column.MASS, mass.grams());
    }

    /**
     * {@return a copy with that figure in a column of lengths}
     *
     * @param column what was measured; {@link IllegalArgumentException} for the mass
     * @param length above zero, else {@link IllegalArgumentException}
     */
    public Measures with(Column column, Length length) {
        if (column.isMass()) {
            throw new IllegalArgumentException("a mass is not a length of %s mm".formatted(length.mm()));
        }
        return with(column, length.mm());
    }

    /** A copy with that figure, in grams for the mass and millimetres for the rest. */
    Measures with(Column column, double figure) {
        SortedMap<Column, Double> changed = new TreeMap<>(figures);
        changed.put(column, figure);
        return new Measures(changed);
    }

    /**
     * {@return a copy in which that column is not measured}
     *
     * @param column what was not measured after all
     */
    public Measures without(Column column) {
        SortedMap<Column, Double> changed = new TreeMap<>(figures);
        changed.remove(column);
        return new Measures(changed);
    }

    /**
     * {@return the figure in a column, in grams for the mass and millimetres for the rest; empty when not measured}
     *
     * @param column what is measured
     */
    public OptionalDouble figure(Column column) {
        Double figure = figures.get(column);
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    /** {@return the mass, if measured} */
    public Optional<Mass> mass() {
        return Optional.ofNullable(figures.get(Column.MASS)).map(Mass::ofGrams);
    }

    /**
     * {@return the length in a column of lengths, if measured}
     *
     * @param column what is measured; {@link IllegalArgumentException} for the mass
     */
    public Optional<Length> length(Column column) {
        if (column.isMass()) {
            throw new IllegalArgumentException("a mass is no length");
        }
        return Optional.ofNullable(figures.get(column)).map(Length::ofMm);
    }
}
