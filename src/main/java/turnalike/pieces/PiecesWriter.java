package turnalike.pieces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import turnalike.csv.CsvText;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/** Writes a pieces file: the label, the mass, whatever else any piece was measured for, then the extra columns. */
final class PiecesWriter {
    /** What the grammar of lengths reads back. */
    private static final int DECIMALS = 15;

    private PiecesWriter() {}

    static String write(List<Piece> pieces, UnitSystem units, String massColumn, Function<Mass, String> masses) {
        SortedSet<Column> columns = new TreeSet<>(Set.of(Column.MASS));
        Set<String> extras = new LinkedHashSet<>();
        for (Piece piece : pieces) {
            columns.addAll(piece.measures().figures().keySet());
            extras.addAll(piece.extra().keySet());
        }
        List<String> header = new ArrayList<>(List.of(PiecesFile.LABEL));
        columns.forEach(column -> header.add(column.isMass() ? massColumn : column.format()));
        header.addAll(extras);
        StringBuilder out = new StringBuilder();
        out.append(CsvText.row(header));
        pieces.forEach(piece -> out.append(CsvText.row(cells(piece, columns, extras, units, masses))));
        return out.toString();
    }

    private static List<String> cells(
            Piece piece,
            Collection<Column> columns,
            Collection<String> extras,
            UnitSystem units,
            Function<Mass, String> masses) {
        List<String> cells = new ArrayList<>(List.of(piece.label()));
        for (Column column : columns) {
            Double figure = piece.measures().figures().get(column);
            cells.add(
                    figure == null
                            ? ""
                            : column.isMass()
                                    ? masses.apply(Mass.ofGrams(figure))
                                    : length(Length.ofMm(figure), units));
        }
        extras.forEach(name -> cells.add(piece.extra().getOrDefault(name, "")));
        return cells;
    }

    private static String length(Length length, UnitSystem units) {
        String own = decimal(units == UnitSystem.INCH ? length.inches() : length.mm(), units, length);
        return units == UnitSystem.METRIC || Length.parse(own, units).equals(Parsed.of(length))
                ? own
                : decimal(length.mm(), UnitSystem.METRIC, length) + " mm";
    }

    /** In as few decimals as are read back as the same length: an inch figure of 15.07 has come to 15.069999999999999 by way of mm. */
    private static String decimal(double figure, UnitSystem units, Length length) {
        BigDecimal exact = BigDecimal.valueOf(figure);
        BigDecimal rounded = exact;
        for (int decimals = 0; decimals <= DECIMALS; decimals++) {
            rounded = exact.setScale(decimals, RoundingMode.HALF_EVEN);
            if (units.length(rounded.doubleValue()).equals(length)) {
                break;
            }
        }
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
