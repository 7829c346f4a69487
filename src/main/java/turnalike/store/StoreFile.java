package turnalike.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;
import turnalike.units.Problem;

/**
 * The store's file. Several programs may have it open. Whatever cannot be opened throws {@link StoreException} and is left as it is.
 */
public final class StoreFile {
    private StoreFile() {}

    /** Told once a store that was opened beside its check was looked through. */
    public interface Looked {
        /**
         * The whole file was looked through.
         *
         * @param took from the opening on
         * @param unsound what is wrong with it; nothing is written to it then
         */
        void through(Duration took, Optional<Problem> unsound);
    }

    /**
     * Opens a store for writing: looks through the whole of it, refuses a damaged one, brings an older one up to this program's schema, and
     * makes the day's backup.
     *
     * @param clock gives each step its time and each backup its date, in its zone
     */
    public static JobStore open(Path file, Clock clock) {
        return open(file, clock, Schema.SHIPPED);
    }

    static JobStore open(Path file, Clock clock, Schema schema) {
        SqliteHeader header = SqliteHeader.read(file);
        tighten(file);
        LocalDate today = LocalDate.now(clock);
        List<Problem> notes = new ArrayList<>();
        SqliteConnection db = SqliteConnection.open(file, SqliteConnection.Use.WRITE);
        boolean opened = false;
        try {
            Soundness sound = Soundness.of(db, schema);
            if (header.schema() < schema.newest()) {
                Backups.beforeMigration(db, schema, header.schema(), today).ifPresent(notes::add);
                schema.migrate(db);
            }
            Backups.daily(db, schema, today).ifPresent(notes::add);
            opened = true;
            return new SqlJobs(db, clock, sound, notes);
        } finally {
            if (!opened) {
                db.close();
            }
        }
    }

    /**
     * Opens a store for many to read and write, an empty one when the file is not there: what stands can be read at once, while the whole is
     * looked through beside it. The first write waits for the end of that and is refused, as are all after it, when the file is not sound;
     * what can be read of it then stays to be read.
     *
     * @param clock gives each step its time and each backup its date, in its zone
     * @param told when the whole was looked through, on a thread of its own
     */
    public static JobStore openAtOnce(Path file, Clock clock, Looked told) {
        if (!Files.exists(file)) {
            make(file, Schema.SHIPPED);
        }
        if (SqliteHeader.read(file).schema() < Schema.SHIPPED.newest()) {
            long began = System.nanoTime();
            JobStore brought = open(file, clock);
            told.through(Duration.ofNanos(System.nanoTime() - began), Optional.empty());
            return brought;
        }
        tighten(file);
        List<Problem> notes = Collections.synchronizedList(new ArrayList<>());
        LocalDate today = LocalDate.now(clock);
        SqliteConnection db = SqliteConnection.open(file, SqliteConnection.Use.WRITE);
        Soundness sound = Soundness.begin(
                () -> SqliteConnection.open(file, SqliteConnection.Use.WRITE),
                Schema.SHIPPED,
                own -> Backups.daily(own, Schema.SHIPPED, today).ifPresent(notes::add),
                told);
        return new SqlJobs(db, clock, sound, notes);
    }

    private static void tighten(Path file) {
        OwnerOnly.tighten(file);
        Backups.tighten(file);
    }

    /** Opens a store for writing, an empty one when the file is not there. */
    public static JobStore openOrMake(Path file, Clock clock) {
        if (!Files.exists(file)) {
            make(file, Schema.SHIPPED);
        }
        return open(file, clock);
    }

    /** Made under another name: whoever sees the file sees a whole store, even when this program is killed now. */
    static void make(Path file, Schema schema) {
        if (!Files.isDirectory(AtomicFile.folder(file))) {
            throw new StoreException(new Problem(
                    file.toString(), "its folder does not exist", "make the folder first, or check the name"));
        }
        try {
            Path unfinished = AtomicFile.begin(file);
            try (SqliteConnection db = SqliteConnection.open(unfinished, SqliteConnection.Use.MAKE)) {
                schema.migrate(db);
            }
            AtomicFile.publish(unfinished, file); // when another program was first, its store is as good
        } catch (IOException trouble) {
            throw SqliteErrors.disk(file, trouble);
        }
    }

    /** Opens a store to read, a damaged one too: what can be read comes, the rest throws. Nothing is written, no backup made. */
    public static KeptJobs openToRead(Path file) {
        SqliteHeader.read(file);
        return new SqlJobs(
                SqliteConnection.open(file, SqliteConnection.Use.READ),
                Clock.systemUTC(),
                Soundness.known(),
                List.of());
    }

    /**
     * Looks through the whole file: its pages, its texts, every job step by step. Nothing is written.
     *
     * @throws StoreException only when there is no such file
     */
    public static StoreReport check(Path file) {
        if (!Files.isRegularFile(file)) {
            SqliteHeader.read(file); // says what it is instead
        }
        Optional<Problem> refused = refused(file);
        if (refused.isPresent()) {
            return new StoreReport(0, 0, List.of(refused.get()));
        }
        try (SqliteConnection db = SqliteConnection.open(file, SqliteConnection.Use.READ)) {
            return new Examination(db, Schema.SHIPPED).report();
        } catch (StoreException unreadable) {
            return new StoreReport(0, 0, List.of(unreadable.problem()));
        }
    }

    private static Optional<Problem> refused(Path file) {
        try {
            SqliteHeader.read(file);
            return Optional.empty();
        } catch (StoreException refusal) {
            return Optional.of(refusal.problem());
        }
    }
}
