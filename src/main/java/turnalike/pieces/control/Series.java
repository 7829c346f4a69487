package turnalike.pieces.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Pattern;
import turnalike.pieces.Column;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/**
 * One column of the pieces in the order they were turned; pieces on which it was not measured are left out.
 *
 * @param name the column
 * @param points in the file's order, in grams or (for {@code mass_oz}) ounces, in millimetres for lengths, in its own unit for an extra
 *     column of numbers
 */
public record Series(String name, List<ChartPoint> points) {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d{1,15}(?:[.,]\\d{1,15})?|[.,]\\d{1,15})");

    public Series {
        points = List.copyOf(points);
    }

    /** {@return the unit of the values: {@code g}, {@code oz} or {@code mm}; empty for an extra column, whose unit nobody told} */
    public String unit() {
        return Column.find(name)
                .map(column -> column.isMass() ? massUnit().symbol() : UnitSystem.METRIC.symbol())
                .orElse("");
    }

    /** {@return the unit of a series of masses: ounces when the column is named {@code mass_oz}, else grams} */
    public MassUnit massUnit() {
        return massUnit(name);
    }

    private static MassUnit massUnit(String name) {
        return MassUnit.ofColumn(name);
    }

    /**
     * {@return the series of a column; refused when no piece has a figure in it, or an extra column holds what is no number}
     *
     * @param pieces in the order they were turned
     * @param name {@code mass_g}, {@code mass_oz}, {@code length}, {@code balance}, {@code d1}, {@code m1} or an extra column's, which is
     *     taken letter for letter
     * @param masses the unit that the pieces' masses are kept in: what else may be charted is told by its name there
     */
    public static Parsed<Series> of(List<Piece> pieces, String name, MassUnit masses) {
        Optional<Column> known = Column.find(name);
        if (known.isPresent()) {
            MassUnit unit = massUnit(name);
            List<ChartPoint> points = new ArrayList<>();
            for (Piece piece : pieces) {
                OptionalDouble figure = piece.measures().figure(known.get());
                figure.ifPresent(each -> points.add(
                        new ChartPoint(piece.label(), known.get().isMass() ? unit.count(Mass.ofGrams(each)) : each)));
            }
            return points.isEmpty() ? nowhere(pieces, name, masses) : Parsed.of(new Series(name.strip(), points));
        }
        return ofExtra(pieces, name, masses);
    }

    private static Parsed<Series> ofExtra(List<Piece> pieces, String name, MassUnit masses) {
        List<ChartPoint> points = new ArrayList<>();
        for (Piece piece : pieces) {
            String cell = piece.extra().get(name);
            if (cell == null) {
                continue;
            }
            if (!NUMBER.matcher(cell.strip()).matches()) {
                return Parsed.refused(
                        "piece %s has '%s' in column %s".formatted(piece.label(), cell.strip(), name),
                        "chart a column of numbers");
            }
            points.add(new ChartPoint(
                    piece.label(), Double.parseDouble(cell.strip().replace(',', '.'))));
        }
        return points.isEmpty() ? nowhere(pieces, name, masses) : Parsed.of(new Series(name, points));
    }

    private static Parsed<Series> nowhere(List<Piece> pieces, String name, MassUnit masses) {
        TreeSet<Column> measured = new TreeSet<>();
        pieces.forEach(piece -> measured.addAll(piece.measures().figures().keySet()));
        return Parsed.refused(
                "no piece has a figure in column '%s'".formatted(name),
                measured.isEmpty()
                        ? "measure something first"
                        : "chart one of "
                                + String.join(
                                        ", ",
                                        measured.stream()
                                                .map(each -> each.format(masses))
                                                .toList()));
    }
}
