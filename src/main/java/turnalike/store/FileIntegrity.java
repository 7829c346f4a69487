package turnalike.store;

import java.util.ArrayList;
import java.util.List;
import turnalike.job.kept.StoreException;

/** Whether what is kept is as it was written: a file's pages and indexes by SQLite's own check, texts by their digests. */
final class FileIntegrity {
    private static final int TOLD = 20;

    private FileIntegrity() {}

    /** Everything found wrong, a line each, up to twenty; what stops the search is the last. */
    static List<String> faults(Database db) {
        List<String> faults = new ArrayList<>();
        try {
            faults.addAll(db.integrityFaults());
            addTextFaults(db, faults);
        } catch (StoreException stopped) {
            faults.add(stopped.problem().what());
        }
        return faults.size() <= TOLD ? faults : faults.subList(0, TOLD);
    }

    /** What SQLite finds wrong itself. */
    static List<String> ofPages(SqliteConnection db) {
        List<String> faults = new ArrayList<>();
        try {
            db.list("PRAGMA integrity_check(%d)".formatted(TOLD), row -> Database.text(row, 1)).stream()
                    .filter(each -> !each.equals("ok"))
                    .forEach(each -> faults.add(oneLine(each)));
            faults.addAll(db.list("PRAGMA foreign_key_check", row -> "a row of %s points to what is not there"
                    .formatted(row.getString(1))));
        } catch (StoreException stopped) {
            faults.add(stopped.problem().what());
        }
        return faults;
    }

    private static void addTextFaults(Database db, List<String> faults) {
        db.each("SELECT digest, body FROM document", row -> {
            String digest = Database.text(row, 1);
            if (!Digest.of(Database.text(row, 2)).equals(digest)) {
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
