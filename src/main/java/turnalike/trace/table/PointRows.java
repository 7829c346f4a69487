package turnalike.trace.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import turnalike.units.Problem;

/**
 * The cells of a table of points. Cells are parted by tabs, semicolons or commas, whichever the header has; with commas a decimal comma
 * cannot be told from a separator.
 *
 * @param lines those that hold anything, the header first
 * @param broken why reading stopped early, if it did
 */
record PointRows(char separator, List<Line> lines, Optional<Problem> broken) {
    private static final char BYTE_ORDER_MARK = '\ufeff';

    /** A line with its number in the file, from 1. */
    record Line(long number, List<String> cells) {
        Line {
            cells = List.copyOf(cells);
        }

        String cell(int index) {
            return index >= 0 && index < cells.size() ? cells.get(index) : "";
        }
    }

    PointRows {
        lines = List.copyOf(lines);
    }

    static PointRows of(String text) {
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && !Character.isWhitespace(c) && c != '\u0085')) {
            return new PointRows(
                    ',',
                    List.of(),
                    Optional.of(new Problem(
                            "table",
                            "is no table in plain text",
                            "save the sheet as CSV in UTF-8 and name that file")));
        }
        String body = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        String header = body.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char separator = header.indexOf('\t') >= 0 ? '\t' : header.indexOf(';') >= 0 ? ';' : ',';
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
        List<Line> lines = new ArrayList<>();
        long start = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(body), format)) {
            for (CSVRecord cells : parser) {
                Line line = new Line(start, cells.stream().map(PointRows::plain).toList());
                if (!line.cells().stream().allMatch(String::isBlank)) {
                    lines.add(line);
                }
                start = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException | IllegalStateException unreadable) {
            return new PointRows(separator, lines, Optional.of(quoting(start)));
        }
        return new PointRows(separator, lines, Optional.empty());
    }

    private static String plain(String cell) {
        return cell.strip();
    }

    private static Problem quoting(long line) {
        return new Problem(
                "line " + line,
                "a cell that begins with a quotation mark does not end with one",
                "close it, double the marks within it, or write the inch mark after the number");
    }

    /** The index of the column of that name, whatever its case; below zero when there is none. */
    int column(String name) {
        List<String> header = lines.get(0).cells();
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).toLowerCase(Locale.ROOT).equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
