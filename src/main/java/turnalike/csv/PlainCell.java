package turnalike.csv;

import java.util.regex.Pattern;

/**
 * A cell that a spreadsheet takes for text. What begins like a formula is one to a spreadsheet, whoever wrote it, and may ask for another
 * file or send cells away; an apostrophe before it makes it text again, and is taken off when the table is read (OWASP, "CSV Injection",
 * from memory). {@link #read} and {@link #write} are inverses: what has its apostrophe already gets another.
 */
final class PlainCell {
    /** What begins a formula, blanks and apostrophes before it counted in, also in the wide letters of East Asia. */
    private static final Pattern FORMULA = Pattern.compile("^(?:[\\s']*[=+\\-@\uff1d\uff0b\uff0d\uff20]|'*[\\t\\r])");

    private static final String TEXT = "'";

    private PlainCell() {}

    /** The cell as it is written. */
    static String write(String cell) {
        return FORMULA.matcher(cell).find() ? TEXT + cell : cell;
    }

    /** The cell that was written so. */
    static String read(String cell) {
        return cell.startsWith(TEXT) && FORMULA.matcher(cell.substring(1)).find() ? cell.substring(1) : cell;
    }
}
