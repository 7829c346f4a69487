package turnalike.cli;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/** The date where the machine stands, as papers carry it. */
final class Today {
    private Today() {}

    static String text() {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(LocalDate.now(Stores.clock()));
    }
}
