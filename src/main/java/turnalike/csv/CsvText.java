package turnalike.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import turnalike.units.Problem;

/**
 * The cells of a table, whether it came as a file or off a spreadsheet's clipboard.
 *
 * @param separator what stands between cells: a comma, a semicolon or a tab
 * @param lines the lines that hold anything
 * @param broken why reading stopped early, if it did
 */
public record CsvText(char separator, List<Line> lines, Optional<Problem> broken) {
    private static final char BYTE_ORDER_MARK = '\ufeff';
    private static final List<Character> SEPARATORS = List.of('\t', ';', ',');
    private static final String MEND = "save the sheet as CSV in UTF-8, or paste its cells";

    /**
     * One line of cells.
     *
     * @param number counts from 1 in the text and is where the line starts, for a quoted cell may hold line ends
     * @param cells as written, in order
     */
    public record Line(long number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }

        /**
         * {@return the cell; empty past the end, and for the index of a column that is not there}
         *
         * @param index from 0, or below it
         */
        public String cell(int index) {
            return index >= 0 && index < cells.size() ? cells.get(index) : "";
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    public CsvText {
        lines = List.copyOf(lines);
    }

    /**
     * {@return the cells of a pieces file}
     *
     * @param text the whole text
     * @param firstColumn the header name that tells one separator from another
     */
    public static CsvText of(String text, String firstColumn) {
        return of(text, firstColumn, "pieces file");
    }

    /**
     * {@return the cells of a table}
     *
     * @param text the whole text
     * @param firstColumn the header name that tells one separator from another
     * @param file what a problem calls it: {@code pieces file}
     */
    public static CsvText of(String text, String firstColumn, String file) {
        return of(text, firstColumn::equalsIgnoreCase, file);
    }

    /**
     * {@return the cells of a table whose first column may bear several names}
     *
     * @param text the whole text
     * @param isFirst whether a cell of the header heads the column that tells one separator from another
     * @param file what a problem calls it: {@code table}
     */
    public static CsvText of(String text, Predicate<String> isFirst, String file) {
        Optional<Problem> rubbish = rubbish(text, file);
        if (rubbish.isPresent()) {
            return new CsvText(',', List.of(), rubbish);
        }
        String body = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        char separator = separator(body, isFirst);
        List<Line> lines = new ArrayList<>();
        long start = 1;
        // Blank lines are not skipped by the parser, else its line count could not name where a record starts.
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(body), format)) {
            for (CSVRecord cells : parser) {
                Line line = new Line(start, cells.stream().map(PlainCell::read).toList());
                if (!line.isBlank()) {
                    lines.add(line);
                }
                start = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException | IllegalStateException unreadable) {
            return new CsvText(separator, lines, Optional.of(quoting(start)));
        }
        return new CsvText(separator, lines, Optional.empty());
    }

    /**
     * {@return the index of the column that the first line heads so, whatever its case; -1 when there is none}
     *
     * @param name of the column
     */
    public int column(String name) {
        List<String> header = lines.isEmpty() ? List.of() : lines.get(0).cells();
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }

    private static Problem quoting(long line) {
        return new Problem(
                "line " + line,
                "a cell that begins with a quotation mark does not end with one",
                "close it, double the marks within it, or write the inch mark after the number");
    }

    private static char separator(String body, Predicate<String> isFirst) {
        String header = body.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        for (char separator : SEPARATORS) {
            for (String cell : header.split(String.valueOf(separator), -1)) {
                if (isFirst.test(cell.replace("\"", "").strip())) {
                    return header.indexOf(separator) < 0 ? ',' : separator;
                }
            }
        }
        return ',';
    }

    /** Control characters never stand in a table; a workbook (a zip file, so it begins with PK) and UTF-16 are full of them. */
    private static Optional<Problem> rubbish(String text, String file) {
        if (text.chars().noneMatch(c -> Character.isISOControl(c) && !Character.isWhitespace(c) && c != '\u0085')) {
            return Optional.empty();
        }
        String what = text.startsWith("PK")
                ? "this is a spreadsheet's own file, not CSV"
                : "this is not a table in plain text";
        return Optional.of(new Problem(file, what, MEND));
    }

    /**
     * {@return the cell as it is written, so that no spreadsheet takes it for a formula}
     *
     * @param cell as it is meant
     */
    public static String plain(String cell) {
        return PlainCell.write(cell);
    }

    /**
     * {@return a line of a table, ended by a line end; what a spreadsheet would take for a formula is written as text}
     *
     * @param cells of the line
     */
    public static String row(List<String> cells) {
        StringBuilder out = new StringBuilder();
        try {
            // Not through CSVPrinter: its class file names an annotation that is not on our path, and the compiler
            // warns of it.
            CSVFormat.DEFAULT.printRecord(
                    out, cells.stream().map(PlainCell::write).toArray());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible); // a StringBuilder takes everything
        }
        return out.toString();
    }
}
