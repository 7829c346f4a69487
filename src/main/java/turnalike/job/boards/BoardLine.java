package turnalike.job.boards;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;
import turnalike.stock.boards.Board;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.wood.Species;
import turnalike.wood.Woods;

/** One line of the boards' file, with everything wrong in it. */
final class BoardLine {
    private static final int LONGEST_NAME = 60;
    private static final int MOST_ALIKE = 10_000;
    private static final Pattern PRICE =
            Pattern.compile("\\p{Sc}?\\s*(\\d{1,9}(?:[.,]\\d{1,4})?|[.,]\\d{1,4})\\s*\\p{Sc}?");

    private final CsvText.Line line;
    private final Map<String, Integer> columns;
    private final UnitSystem units;
    private final List<Problem> problems = new ArrayList<>();

    BoardLine(CsvText.Line line, Map<String, Integer> columns, UnitSystem units) {
        this.line = line;
        this.columns = columns;
        this.units = units;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    Optional<Board> board() {
        String name = name();
        Optional<Length> thickness = size("thickness");
        Optional<Length> width = size("width");
        Optional<Length> length = size("length");
        int count = count();
        Optional<BigDecimal> price = price();
        Optional<String> species = species();
        List<Board.Fault> faults = faults(length);
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Board(
                name,
                thickness.orElseThrow(),
                width.orElseThrow(),
                length.orElseThrow(),
                count,
                price,
                species,
                faults));
    }

    private String cell(String column) {
        Integer at = columns.get(column);
        return at == null ? "" : line.cell(at).strip();
    }

    private void wrong(String column, String what, String mend) {
        problems.add(new Problem("line %d, column %s".formatted(line.number(), column), what, mend));
    }

    private String name() {
        String name = cell(BoardsFile.NAME);
        if (name.isEmpty()) {
            wrong(BoardsFile.NAME, "the board has no name", "give each board a short name or number of its own");
        } else if (name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
            wrong(
                    BoardsFile.NAME,
                    "the name has more than %d letters, or what is no letter".formatted(LONGEST_NAME),
                    "give each board a short name of its own");
        }
        return name;
    }

    private Optional<Length> size(String column) {
        if (cell(column).isEmpty()) {
            wrong(
                    column,
                    "no %s is given".formatted(column),
                    "measure the board and write it like 2 1/4, 57 mm or 8 ft");
            return Optional.empty();
        }
        Optional<Length> read = length(column);
        if (read.isPresent() && !read.get().isPositive()) {
            wrong(column, "a board's %s is above zero, was '%s'".formatted(column, cell(column)), "measure it again");
            return Optional.empty();
        }
        return read;
    }

    private Optional<Length> length(String column) {
        return Length.parse(cell(column), units).fold(Optional::of, (what, mend) -> {
            wrong(column, what, mend);
            return Optional.empty();
        });
    }

    private int count() {
        String cell = cell("count");
        if (cell.isEmpty()) {
            return 1;
        }
        int count = cell.matches("\\d{1,6}") ? Integer.parseInt(cell) : 0;
        if (count < 1 || count > MOST_ALIKE) {
            wrong(
                    "count",
                    "a count is a whole number from 1 to %d, was '%s'".formatted(MOST_ALIKE, cell),
                    "say how many there are, or take the line out where there is none");
        }
        return Math.max(1, count);
    }

    private Optional<BigDecimal> price() {
        String cell = cell("price");
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Matcher matcher = PRICE.matcher(cell);
        if (!matcher.matches()) {
            wrong(
                    "price",
                    "'%s' is not a price".formatted(cell),
                    "give what one board costs as a number of zero or more, like 18.50");
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(matcher.group(1).replace(',', '.')));
    }

    /** By the same finding as a job's wood. */
    private Optional<String> species() {
        String cell = cell("species");
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Parsed<Species> read = Woods.shipped().read(cell);
        return read.fold(species -> Optional.of(species.name()), (what, mend) -> {
            wrong("species", what, mend.replace("give a density", "leave the cell blank"));
            return Optional.empty();
        });
    }

    private List<Board.Fault> faults(Optional<Length> length) {
        List<Board.Fault> out = new ArrayList<>();
        for (int number = 1; columns.containsKey("from" + number) || columns.containsKey("to" + number); number++) {
            String from = "from" + number;
            String to = "to" + number;
            if (cell(from).isEmpty() && cell(to).isEmpty()) {
                continue;
            }
            if (cell(from).isEmpty() || cell(to).isEmpty()) {
                wrong(
                        cell(from).isEmpty() ? from : to,
                        "a fault is given by both its ends",
                        "give %s and %s, from the untrimmed end of the board".formatted(from, to));
                continue;
            }
            Optional<Length> begins = length(from);
            Optional<Length> ends = length(to);
            if (begins.isPresent() && ends.isPresent()) {
                fault(to, begins.get(), ends.get(), length).ifPresent(out::add);
            }
        }
        return out;
    }

    private Optional<Board.Fault> fault(String column, Length begins, Length ends, Optional<Length> length) {
        if (ends.compareTo(begins) < 0) {
            wrong(
                    column,
                    "the fault ends at %s, before it begins at %s".formatted(ends.format(units), begins.format(units)),
                    "swap the two");
            return Optional.empty();
        }
        if (length.isPresent() && ends.compareTo(length.get()) > 0) {
            wrong(
                    column,
                    "the fault ends at %s, beyond the board's end at %s"
                            .formatted(ends.format(units), length.get().format(units)),
                    "measure it again, or give the board's end");
            return Optional.empty();
        }
        return Optional.of(new Board.Fault(begins, ends));
    }
}
