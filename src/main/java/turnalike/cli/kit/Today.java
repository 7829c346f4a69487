package turnalike.cli.kit;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import turnalike.cli.store.Stores;

/** The date where the machine stands, as papers carry it. */
public final class Today {
    private Today() {}

    public static String text() {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(LocalDate.now(Stores.clock()));
    }
}
