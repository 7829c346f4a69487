package turnalike.cli.kit;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** The date where the machine stands, as papers carry it. */
public final class Today {
    private Today() {}

    /** By which papers and backups are dated: the day where the machine stands. */
    public static Clock clock() {
        return Clock.system(ZoneId.systemDefault());
    }

    public static String text() {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(LocalDate.now(clock()));
    }
}
