package turnalike.store;

import java.util.ArrayList;
import java.util.List;
import turnalike.job.kept.StoreException;

/** Whether the file's bytes are as they were written: its pages and indexes by SQLite's own check, its texts by their digests. */
final class FileIntegrity {
    private static final int TOLD = 20;

    private FileIntegrity() {}

    /** Everything found wrong, a line each, up to twenty; what stops the search is the last. */
    static List<String> faults(SqliteConnection db) {
        List<String> faults = new ArrayList<>();
        try {
            db.list("PRAGMA integrity_check(%d)".formatted(TOLD), row -> SqliteConnection.text(row, 1)).stream()
                    .filter(each -> !each.equals("ok"))
                    .forEach(each -> faults.add(oneLine(each)));
            faults.addAll(db.list("PRAGMA foreign_key_check", row -> "a row of %s points to what is not there"
                    .formatted(row.getString(1))));
            addTextFaults(db, faults);
        } catch (StoreException stopped) {
            faults.add(stopped.problem().what());
        }
        return faults.size() <= TOLD ? faults : faults.subList(0, TOLD);
    }

    private static void addTextFaults(SqliteConnection db, List<String> faults) {
        db.each("SELECT digest, body FROM document", row -> {
            String digest = SqliteConnection.text(row, 1);
            if (!Digest.of(SqliteConnection.text(row, 2)).equals(digest)) {
                faults.add("the text %s… is not as it was written".formatted(excerpt(digest)));
            }
        });
    }

    private static String excerpt(String digest) {
        return digest.substring(0, Math.min(12, digest.length()));
    }

    /** SQLite's own words name trees and cells over several lines. */
    private static String oneLine(String fault) {
        return SqliteErrors.oneLine(fault.replace("*** in database main ***", ""));
    }
}
