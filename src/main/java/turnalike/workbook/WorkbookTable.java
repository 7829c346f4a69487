package turnalike.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellAddress;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import turnalike.units.Problem;

/**
 * The first sheet of a workbook as CSV text, a line for each row, so that a line's number is the row's. Numbers stand in as few digits as
 * tell them apart, dates as year-month-day, formulas as the result that was kept.
 */
public final class WorkbookTable {
    private static final int MOST_ROWS = 20_000;
    private static final int MOST_COLUMNS = 256;
    private static final int LONGEST_TEXT = 5_000;
    private static final int MOST_TEXT = 16 << 20;
    private static final int MOST_PROBLEMS = 50;

    private static final String SAVE_AGAIN = "save the sheet as .xlsx or as CSV in UTF-8, and give that file";

    private final List<Problem> problems = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private final String sheet;
    private final CellText cells;

    /** How many cells the first row that holds any has: every line gets as many. */
    private int width;

    private WorkbookTable(String sheet, CellText cells) {
        this.sheet = sheet;
        this.cells = cells;
    }

    /**
     * What came of reading.
     *
     * @param text the table as CSV; empty when anything is wrong
     * @param problems everything wrong, each with its sheet and cell where it has one
     */
    public record Read(String text, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /** Does the file begin as a zip does, which a workbook is? */
    public static boolean isZip(byte[] file) {
        return file.length > 3 && file[0] == 'P' && file[1] == 'K' && file[2] == 3 && file[3] == 4;
    }

    /**
     * The first sheet, or what is wrong with it.
     *
     * @param file the whole file
     * @param name of the file, which a problem with all of it names
     */
    public static Read read(byte[] file, String name) {
        WorkbookParts parts = WorkbookParts.of(file);
        if (parts.what().isPresent()) {
            return wrong(name, parts.what().get());
        }
        try (ReadableWorkbook workbook = new ReadableWorkbook(parts.zip(), new ReadingOptions(true, true))) {
            Optional<Sheet> first = workbook.getSheets().findFirst();
            if (first.isEmpty()) {
                return wrong(name, "is a workbook without a sheet");
            }
            WorkbookTable table = new WorkbookTable(first.get().getName(), new CellText(workbook.isDate1904()));
            table.rows(first.get());
            return table.problems.isEmpty() ? new Read(table.text.toString(), List.of()) : new Read("", table.problems);
        } catch (IOException | RuntimeException damaged) {
            // The library tells what it cannot read by many kinds of exception; all it read was this file.
            return wrong(name, "is a damaged workbook");
        }
    }

    private static Read wrong(String name, String what) {
        return new Read("", List.of(new Problem(name, what, SAVE_AGAIN)));
    }

    private void rows(Sheet from) throws IOException {
        try (Stream<Row> rows = from.openStream()) {
            int before = 0;
            for (Row row : (Iterable<Row>) rows::iterator) {
                if (row.getRowNum() > MOST_ROWS || row.getRowNum() <= before) {
                    problems.add(new Problem(
                            "sheet '%s', row %d".formatted(sheet, row.getRowNum()),
                            "lies beyond row %d".formatted(MOST_ROWS),
                            "give one order's table at a time, and nothing below it"));
                    return;
                }
                text.append("\r\n".repeat(row.getRowNum() - 1 - before));
                before = row.getRowNum();
                line(row);
                if (problems.size() >= MOST_PROBLEMS || text.length() > MOST_TEXT) {
                    break;
                }
            }
        }
        if (text.length() > MOST_TEXT) {
            problems.add(new Problem(
                    "sheet '%s'".formatted(sheet),
                    "holds more than %d MiB of text".formatted(MOST_TEXT >> 20),
                    "give the table alone"));
        }
    }

    private void line(Row row) {
        List<String> line = new ArrayList<>();
        int last = 0;
        for (int i = 0; i < row.getCellCount(); i++) {
            String cell = row.getOptionalCell(i).map(this::cell).orElse("");
            line.add(cell);
            last = cell.isBlank() ? last : i + 1;
        }
        if (last > MOST_COLUMNS) {
            problem(
                    new CellAddress(row.getRowNum() - 1, last - 1).toString(),
                    "lies beyond %d columns".formatted(MOST_COLUMNS),
                    "give the table alone");
            return;
        }
        width = width == 0 ? last : width;
        for (int i = 0; i < Math.max(width, last) && last > 0; i++) {
            String cell = i < line.size() ? line.get(i) : "";
            text.append(i == 0 ? "" : ",").append(cell.isEmpty() ? "" : '"' + cell.replace("\"", "\"\"") + '"');
        }
        text.append("\r\n");
    }

    private String cell(Cell cell) {
        CellText.Told told = cells.of(cell);
        if (told.what().isPresent()) {
            problem(cell.getAddress().toString(), told.what().get(), told.mend());
            return "";
        }
        if (told.text().length() > LONGEST_TEXT) {
            problem(cell.getAddress().toString(), "holds more than %d letters".formatted(LONGEST_TEXT), "shorten it");
            return "";
        }
        return told.text();
    }

    private void problem(String cell, String what, String mend) {
        problems.add(new Problem("sheet '%s', cell %s".formatted(sheet, cell), what, mend));
    }
}
