package turnalike.store;

import java.util.ArrayList;
import java.util.List;
import turnalike.job.kept.StoreException;

/** Whether the file's bytes are as they were written: its pages and indexes by SQLite's own check, its texts by their digests. */
final class FileIntegrity {
    private static final int TOLD = 20;

    private FileIntegrity() {}

    /** Quick, for every opening: pages and trees, not the texts. */
    static void requireTree(SqliteConnection db) {
        List<String> faults = db.list("PRAGMA quick_check(1)", row -> row.getString(1));
        if (!faults.equals(List.of("ok"))) {
            throw SqliteErrors.damaged(db.file(), oneLine(faults.get(0)));
        }
    }

    /** Thorough; {@link StoreException} with the first fault. */
    static void require(SqliteConnection db) {
        List<String> faults = faults(db);
        if (!faults.isEmpty()) {
            throw SqliteErrors.damaged(db.file(), faults.get(0));
        }
    }

    /** Everything found wrong, a line each, up to twenty; what stops the search is the last. */
    static List<String> faults(SqliteConnection db) {
        List<String> faults = new ArrayList<>();
        try {
            db.list("PRAGMA integrity_check(%d)".formatted(TOLD), row -> row.getString(1)).stream()
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
        db.list("SELECT digest, body FROM document", row -> {
            if (!Digest.of(String.valueOf(row.getString(2))).equals(row.getString(1))) {
                faults.add("the text %s… is not as it was written".formatted(excerpt(row.getString(1))));
            }
            return 0;
        });
    }

    private static String excerpt(String digest) {
        return digest.substring(0, Math.min(12, digest.length()));
    }

    /** SQLite's own words name trees and cells over several lines. */
    private static String oneLine(String fault) {
        return fault.replace("*** in database main ***", "")
                .replaceAll("\\p{Cntrl}+", " ")
                .strip();
    }
}
