package turnalike.job.boards;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import turnalike.csv.CsvText;
import turnalike.stock.boards.Board;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Boards as a table: a line each under the columns {@code board}, {@code thickness}, {@code width}, {@code length}, and, where they are told,
 * {@code count}, {@code price}, {@code species}, {@code from1}, {@code to1}, {@code from2}, {@code to2}, … Other columns are the turner's own.
 */
public final class BoardsFile {
    /** More lines than a shop has boards: a slip or a machine wrote them. */
    static final int MOST_LINES = 20_000;

    static final String NAME = "board";
    private static final List<String> NEEDED = List.of(NAME, "thickness", "width", "length");
    private static final String FILE = "boards file";

    private final CsvText text;
    private final Map<String, Integer> columns = new TreeMap<>();
    private final UnitSystem units;
    private final List<Board> boards = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Long> lineOfName = new HashMap<>();

    private BoardsFile(CsvText text, UnitSystem units) {
        this.text = text;
        this.units = units;
    }

    /**
     * What came of reading.
     *
     * @param boards in the order of the file; only those that could be read
     * @param problems everything wrong, in the order of reading
     */
    public record Read(List<Board> boards, List<Problem> problems) {
        public Read {
            boards = List.copyOf(boards);
            problems = List.copyOf(problems);
        }
    }

    /**
     * {@return the boards, or what is wrong}
     *
     * @param file the table's text
     * @param units of lengths that carry none
     */
    public static Read read(String file, UnitSystem units) {
        BoardsFile reader = new BoardsFile(CsvText.of(file, NAME, "boards file"), units);
        reader.read();
        return new Read(reader.boards, reader.problems);
    }

    private void read() {
        text.broken()
                .ifPresent(broken -> problems.add(new Problem(
                        broken.where().startsWith("line") ? broken.where() : FILE, broken.what(), broken.mend())));
        if (!problems.isEmpty()) {
            return;
        }
        if (text.lines().isEmpty()) {
            problems.add(new Problem(
                    FILE, "the file is empty", "give a header line: board,thickness,width,length, and a line a board"));
            return;
        }
        if (text.lines().size() > MOST_LINES) {
            problems.add(new Problem(
                    FILE,
                    "%d lines are more than %d".formatted(text.lines().size(), MOST_LINES),
                    "give boards that are alike one line with a count"));
            return;
        }
        header(text.lines().get(0));
        if (problems.isEmpty()) {
            text.lines().stream().skip(1).forEach(this::line);
        }
    }

    private void header(CsvText.Line header) {
        for (int i = 0; i < header.cells().size(); i++) {
            String name = header.cell(i).strip().toLowerCase(Locale.ROOT);
            if (!name.isEmpty() && columns.putIfAbsent(name, i) != null) {
                problems.add(new Problem(
                        "line %d, column %s".formatted(header.number(), name),
                        "two columns bear this name",
                        "rename one of them or take it out"));
            }
        }
        for (String needed : NEEDED) {
            if (!columns.containsKey(needed)) {
                problems.add(new Problem(
                        "line " + header.number(),
                        "the header has no column '%s'".formatted(needed),
                        "name the columns in the first line, like board,thickness,width,length,count,price"));
            }
        }
    }

    private void line(CsvText.Line line) {
        if (line.cells().size() > text.lines().get(0).cells().size()) {
            problems.add(new Problem(
                    "line " + line.number(),
                    "%d cells where the header has %d"
                            .formatted(
                                    line.cells().size(),
                                    text.lines().get(0).cells().size()),
                    text.separator() == ','
                            ? "a decimal comma cannot be told from a separator here: write decimal points, or put semicolons between the"
                                    + " cells"
                            : "take out the cells too many"));
            return;
        }
        BoardLine cells = new BoardLine(line, columns, units);
        Optional<Board> board = cells.board();
        problems.addAll(cells.problems());
        board.filter(each -> cells.problems().isEmpty()).ifPresent(each -> {
            Long earlier = lineOfName.putIfAbsent(each.name(), line.number());
            if (earlier == null) {
                boards.add(each);
            } else {
                problems.add(new Problem(
                        "line %d, column board".formatted(line.number()),
                        "board '%s' is already on line %d".formatted(each.name(), earlier),
                        "give each line a name of its own; boards that are alike may share a line with a count"));
            }
        });
    }
}
