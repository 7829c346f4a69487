package turnalike.trace.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.csv.CsvText;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** Reads the rows of a table of measured points, each by itself: what is wrong within one is told with its line. */
final class PointRows {
    private static final double THICKEST_MM = 2000;

    private final CsvText rows;
    private final UnitSystem units;
    private final List<Problem> problems;
    private final Map<PointColumns, PointColumns.Column> columns = new EnumMap<>(PointColumns.class);

    private PointRows(CsvText rows, UnitSystem units, List<Problem> problems) {
        this.rows = rows;
        this.units = units;
        this.problems = problems;
    }

    /** The rows as they stand, of those that can be read; what is wrong is added to the problems. */
    static List<PointRow> read(String text, UnitSystem units, List<Problem> problems) {
        return new PointRows(CsvText.of(text, PointColumns.PLACE::isHeading, "table"), units, problems).rows();
    }

    private void problem(String where, String what, String mend) {
        problems.add(new Problem(where, what, mend));
    }

    private List<PointRow> rows() {
        List<PointRow> out = new ArrayList<>();
        if (rows.broken().isPresent()) {
            problems.add(rows.broken().get());
            return out;
        }
        if (rows.lines().isEmpty()) {
            problem("table", "is empty", "give a header line x,diameter and a row for each place");
            return out;
        }
        header();
        if (!problems.isEmpty()) {
            return out;
        }
        int count = rows.lines().size() - 1;
        if (count < PointTable.FEWEST || count > PointTable.MOST) {
            problem(
                    "table",
                    "has %d %s".formatted(count, count == 1 ? "row" : "rows"),
                    "give %d to %d, one for each place".formatted(PointTable.FEWEST, PointTable.MOST));
            return out;
        }
        for (CsvText.Line line : rows.lines().subList(1, rows.lines().size())) {
            row(line).ifPresent(out::add);
        }
        return out;
    }

    private void header() {
        CsvText.Line header = rows.lines().get(0);
        String where = "line " + header.number();
        for (PointColumns each : PointColumns.values()) {
            List<PointColumns.Column> found = each.in(header);
            found.stream().findFirst().ifPresent(column -> columns.put(each, column));
            if (found.size() > 1) {
                problem(where, "the header has two columns '%s'".formatted(each.word()), "leave one of them");
            }
        }
        boolean hasPlace = columns.containsKey(PointColumns.PLACE);
        boolean hasSize = columns.containsKey(PointColumns.DIAMETER) || columns.containsKey(PointColumns.SIDE);
        if (!hasPlace || !hasSize) {
            problem(
                    where,
                    "the header has no column '%s'"
                            .formatted((hasPlace ? PointColumns.DIAMETER : PointColumns.PLACE).word()),
                    "begin with x,diameter or x,diameter,side; a unit may stand beside the name, as x (mm), in each cell, as 20 mm, or"
                            + " for all in --units");
        }
    }

    private String cell(CsvText.Line line, PointColumns which) {
        return Optional.ofNullable(columns.get(which))
                .map(each -> each.of(line))
                .orElse("");
    }

    private Optional<PointRow> row(CsvText.Line line) {
        int most = rows.lines().get(0).cells().size();
        if (line.cells().size() > most) {
            boolean comma = rows.separator() == ',';
            problem(
                    "line " + line.number(),
                    "%d cells where the header has %d".formatted(line.cells().size(), most),
                    comma
                            ? "a decimal comma cannot be told from a separator here: write decimal points, or put semicolons between the cells"
                            : "leave nothing beside the columns of the header");
            return Optional.empty();
        }
        boolean round = !cell(line, PointColumns.DIAMETER).isEmpty();
        boolean square = !cell(line, PointColumns.SIDE).isEmpty();
        if (round == square) {
            problem(
                    "line " + line.number(),
                    round ? "has both a diameter and a side" : "has neither a diameter nor a side",
                    "give the diameter of what is round, the side across the flats of what is square");
            return Optional.empty();
        }
        PointColumns across = round ? PointColumns.DIAMETER : PointColumns.SIDE;
        Optional<Length> place = length(line, PointColumns.PLACE);
        Optional<Length> size = length(line, across);
        if (size.isPresent() && !size.get().isPositive()) {
            problem(at(line, across), "must be above zero", "give the size measured there");
            return Optional.empty();
        }
        if (size.isPresent() && size.get().mm() > THICKEST_MM) {
            problem(at(line, across), "is more than 2 m", "check the unit and the decimal sign");
            return Optional.empty();
        }
        return place.flatMap(where -> size.map(each -> new PointRow(line.number(), where.mm(), each.mm() / 2, square)));
    }

    private Optional<Length> length(CsvText.Line line, PointColumns column) {
        return Length.parse(cell(line, column), units).fold(Optional::of, (what, mend) -> {
            problem(at(line, column), what, mend);
            return Optional.empty();
        });
    }

    private static String at(CsvText.Line line, PointColumns column) {
        return "line %d: %s".formatted(line.number(), column.word());
    }
}
