package turnalike.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import turnalike.csv.CsvText;

/** Writes a table of ours as a workbook of one sheet: figures as numbers, all else as text, nothing as a formula. */
public final class WorkbookFile {
    private static final String MEDIA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /** At most so many digits that the number read back is the same. */
    private static final Pattern FIGURE = Pattern.compile("-?(0|[1-9][0-9]{0,14})(\\.[0-9]{1,17})?");

    private WorkbookFile() {}

    /** As HTTP writes it. */
    public static String mediaType() {
        return MEDIA_TYPE;
    }

    /**
     * The workbook's bytes.
     *
     * @param sheet what the sheet is called
     * @param table as CSV, as we write it, its header first
     * @param figures by a column's name whether it holds figures
     */
    public static byte[] of(String sheet, String table, Predicate<String> figures) {
        List<CsvText.Line> lines = CsvText.of(table, "piece").lines();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Turnalike", null)) {
            Worksheet page = workbook.newWorksheet(sheet);
            page.freezePane(0, 1);
            List<String> header = lines.isEmpty() ? List.of() : lines.get(0).cells();
            for (int row = 0; row < lines.size(); row++) {
                List<String> cells = lines.get(row).cells();
                for (int column = 0; column < cells.size(); column++) {
                    boolean figure = row > 0 && figures.test(header.get(column));
                    write(page, row, column, cells.get(column), figure);
                }
            }
            for (int column = 0; column < header.size(); column++) {
                page.style(0, column).bold().set();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible); // memory takes everything
        }
        return out.toByteArray();
    }

    private static void write(Worksheet page, int row, int column, String cell, boolean figure) {
        if (cell.isEmpty()) {
            return;
        }
        if (figure && FIGURE.matcher(cell).matches()) {
            page.value(row, column, Double.valueOf(cell));
        } else {
            // The apostrophe that a CSV has too: the sheet may be saved as one.
            page.value(row, column, CsvText.plain(cell));
        }
    }
}
