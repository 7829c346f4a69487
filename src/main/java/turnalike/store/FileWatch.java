package turnalike.store;

import java.nio.file.Path;
import turnalike.job.kept.StoreException;

/**
 * Asks a file, four times a second, whether anybody wrote to it: SQLite's {@code data_version}, which reads a few bytes that stand in memory
 * as a rule. On a connection of its own, so that it keeps nobody waiting.
 */
final class FileWatch {
    private static final long PAUSE_MS = 250;

    private FileWatch() {}

    static WatchThread begin(Path file, Runnable changed) {
        return WatchThread.begin(watch -> {
            try (SqliteConnection db = SqliteConnection.open(file, SqliteConnection.Use.READ)) {
                look(db, watch, changed);
            }
        });
    }

    private static void look(SqliteConnection db, WatchThread watch, Runnable changed) {
        int before = db.number("PRAGMA data_version");
        changed.run(); // what was written after the watching was asked for, and before this first look
        while (watch.pause(PAUSE_MS)) {
            int now = version(db, before);
            if (now != before) {
                before = now;
                changed.run();
            }
        }
    }

    /** Somebody who writes for long is asked about at the next look. */
    private static int version(SqliteConnection db, int before) {
        try {
            return db.number("PRAGMA data_version");
        } catch (StoreException busy) {
            return before;
        }
    }
}
