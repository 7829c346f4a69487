package turnalike.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Supplier;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/** What SQLite and the disk complain of, in the user's words. */
final class SqliteErrors {
    private SqliteErrors() {}

    /**
     * What went wrong, to be thrown.
     *
     * @param tables asked where a statement could not be understood: what is wrong with the file's tables, if they are not as made
     */
    static RuntimeException of(Path file, SQLException trouble, Supplier<Optional<String>> tables) {
        if (trouble instanceof Database.EmptyCell) {
            return damaged(file, "a cell is empty in which something was written", trouble);
        }
        if (!(trouble instanceof SQLiteException known)) {
            return notUnderstood(file, trouble, tables);
        }
        SQLiteErrorCode code = known.getResultCode();
        String name = code.name();
        if (name.startsWith("SQLITE_CORRUPT") || name.equals("SQLITE_NOTADB")) {
            return damaged(file, plain(code.message), trouble);
        }
        if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
            return told(file, "is in use by another program", "try again when that is done", trouble);
        }
        if (name.equals("SQLITE_FULL")) {
            return told(file, "the disk is full", "free some space; nothing was changed", trouble);
        }
        if (name.startsWith("SQLITE_READONLY") || name.startsWith("SQLITE_CANTOPEN") || name.equals("SQLITE_PERM")) {
            return told(file, "cannot be written to", "check that you may write to it and to its folder", trouble);
        }
        if (name.startsWith("SQLITE_IOERR")) {
            return told(file, "the disk failed (%s)".formatted(plain(code.message)), "check the disk", trouble);
        }
        if (name.equals("SQLITE_TOOBIG") || name.equals("SQLITE_NOMEM")) {
            return damaged(file, "a text is longer than any that was written", trouble);
        }
        return notUnderstood(file, trouble, tables);
    }

    /** Our own fault, unless the tables are no longer those we speak to. */
    private static RuntimeException notUnderstood(Path file, SQLException trouble, Supplier<Optional<String>> tables) {
        return tables.get()
                .<RuntimeException>map(how -> damaged(file, how, trouble))
                .orElseGet(() -> new IllegalStateException("the store was spoken to wrongly", trouble));
    }

    /** The file is not what was written to it. */
    static StoreException damaged(Path file, String how, Throwable cause) {
        return new StoreException(damage(file, how), cause);
    }

    static StoreException damaged(Path file, String how) {
        return new StoreException(damage(file, how));
    }

    /** What was read of a damaged cell may hold anything: one line of it is told. */
    static String oneLine(String how) {
        return how.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    static Problem damage(Path file, String how) {
        return new Problem(
                file.toString(),
                "is damaged: %s; it is left as it is".formatted(oneLine(how)),
                "'turnalike check' tells what can be read, 'turnalike give' takes that out; " + Backups.advice(file));
    }

    static StoreException disk(Path file, IOException trouble) {
        return told(
                file,
                "cannot be read or written (%s)".formatted(DiskTrouble.reason(trouble)),
                "check the disk and the folder",
                trouble);
    }

    private static StoreException told(Path file, String what, String mend, Throwable cause) {
        return new StoreException(new Problem(file.toString(), what, mend), cause);
    }

    private static String plain(String message) {
        return message.replaceAll("\\p{Cntrl}", " ").replaceAll("[()]", "");
    }
}
