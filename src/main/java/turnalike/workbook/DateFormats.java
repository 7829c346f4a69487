package turnalike.workbook;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which number formats show a date or a time: the built-in ones by their number (ECMA-376 part 1, 18.8.30; from memory), others by letters. */
final class DateFormats {
    /** What stands in quotation marks, brackets or after a backslash is shown and means nothing. */
    private static final Pattern SHOWN = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.");

    private static final Pattern DAYS = Pattern.compile("[dyhs]|m");

    private DateFormats() {}

    static boolean isDate(Optional<Integer> number, Optional<String> format) {
        int id = number.orElse(0);
        if ((id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 47) || (id >= 50 && id <= 58)) {
            return true;
        }
        String letters =
                SHOWN.matcher(format.orElse("").toLowerCase(Locale.ROOT)).replaceAll("");
        return !letters.contains("general") && DAYS.matcher(letters).find();
    }
}
