package turnalike.workbook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import turnalike.units.PlainNumber;

/**
 * A cell as text.
 *
 * @param lateEpoch whether days count from the later first day, of the two that workbooks have
 */
record CellText(boolean lateEpoch) {
    private static final String ERRORS = "#(NULL!|DIV/0!|VALUE!|REF!|NAME\\?|NUM!|N/A|GETTING_DATA|SPILL!|CALC!)";
    private static final double MOST_DAYS = 2_958_466; // the year 9999

    /**
     * What a cell holds.
     *
     * @param text its content in one line
     * @param what is wrong with it, if anything is
     * @param mend of that
     */
    record Told(String text, Optional<String> what, String mend) {
        static Told of(String text) {
            return new Told(text.replaceAll("\\s*[\\r\\n\\t\\x0b\\f\\u2028\\u2029]\\s*", " "), Optional.empty(), "");
        }

        static Told wrong(String what, String mend) {
            return new Told("", Optional.of(what), mend);
        }
    }

    Told of(Cell cell) {
        CellType type = cell.getType();
        Optional<String> raw = Optional.ofNullable(cell.getRawValue());
        if (type == CellType.ERROR || raw.filter(each -> each.matches(ERRORS)).isPresent()) {
            return Told.wrong(
                    "holds the error " + raw.orElse("of a formula"), "mend the formula, or type the figure itself");
        }
        return switch (type) {
            case NUMBER -> number(cell, raw.orElse(""));
            case FORMULA -> formula(cell, raw);
            case BOOLEAN -> Told.of(raw.orElse("").equals("0") ? "FALSE" : "TRUE");
            case STRING -> Told.of(Optional.ofNullable(cell.getText()).orElse(""));
            case EMPTY, ERROR -> Told.of("");
        };
    }

    /** What was kept beside a formula; nothing was where a program wrote the workbook and no spreadsheet has opened it since. */
    private Told formula(Cell cell, Optional<String> raw) {
        if (raw.isEmpty() || raw.get().isEmpty()) {
            return Told.wrong(
                    "holds a formula without its result",
                    "open the workbook in the spreadsheet and save it, or type the figure itself");
        }
        return cell.getValue() instanceof BigDecimal ? number(cell, raw.get()) : Told.of(raw.get());
    }

    private Told number(Cell cell, String raw) {
        double figure;
        try {
            figure = Double.parseDouble(raw);
        } catch (NumberFormatException none) {
            return Told.wrong("holds '%s' for a number".formatted(raw), "type the figure itself");
        }
        if (!Double.isFinite(figure)) {
            return Told.wrong("holds a number beyond all bounds", "type the figure itself");
        }
        boolean date = DateFormats.isDate(
                Optional.ofNullable(cell.getDataFormatId()), Optional.ofNullable(cell.getDataFormatString()));
        if (date && figure >= 0 && figure < MOST_DAYS) {
            return Told.of(date(figure));
        }
        return Told.of(PlainNumber.exact(figure));
    }

    /** Spreadsheets count a day that never was, the sixtieth; what lies before it is told one off, as nobody measured spindles for us then. */
    private String date(double days) {
        LocalDate origin = lateEpoch ? LocalDate.of(1904, 1, 1) : LocalDate.of(1899, 12, 30);
        LocalDateTime moment = origin.atStartOfDay().plusSeconds(Math.round(days * 86_400));
        LocalTime time = moment.toLocalTime();
        String day = moment.toLocalDate().toString();
        if (days < 1) {
            return time.toString();
        }
        return time.equals(LocalTime.MIDNIGHT) ? day : day + " " + time;
    }
}
