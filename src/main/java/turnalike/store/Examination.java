package turnalike.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPhoto;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;
import turnalike.units.Problem;

/**
 * Looks through a whole store, and goes on past what is damaged. Two questions: whether every byte that counts is as it was written, which
 * decides whether the file may be written to, and whether what stands can be read. The second may fail without the first, when a text was
 * taken by a program that took more; then the other jobs go on.
 */
final class Examination {
    private final Database db;
    private final Schema schema;
    private final Ledger ledger;
    private final List<Problem> faults = new ArrayList<>();
    private boolean withTexts;
    private int jobs;
    private int pieces;

    Examination(Database db, Schema schema) {
        this.db = db;
        this.schema = schema;
        this.ledger = new Ledger(db);
    }

    /** Both questions, of everything. */
    StoreReport report() {
        return db.read(() -> {
            begin();
            file();
            ids().forEach(this::report);
            return new StoreReport(jobs, pieces, faults);
        });
    }

    /** The first question alone; {@link StoreException} with the first thing that is not as it was written. */
    void require() {
        db.read(() -> {
            begin();
            file();
            ids().forEach(id -> damage(id).ifPresent(how -> fault("job " + id, how)));
            return faults.size();
        });
        if (!faults.isEmpty()) {
            Problem first = faults.get(0);
            String where = first.where().equals(db.place()) ? "" : first.where() + ": ";
            throw db.damaged(where + first.what());
        }
    }

    /** Anew, where a server was lost in the middle. */
    private void begin() {
        faults.clear();
        jobs = 0;
        pieces = 0;
    }

    private void file() {
        FileIntegrity.faults(db).forEach(each -> fault(db.place(), each));
        try {
            db.tablesFault(schema).ifPresent(each -> fault(db.place(), each));
        } catch (StoreException unreadable) {
            fault(db.place(), "its list of tables cannot be read");
        }
        // Where the file is sound so are its texts, each of which was looked at once.
        withTexts = !faults.isEmpty();
    }

    private void fault(String where, String what) {
        faults.add(new Problem(
                where, SqliteErrors.oneLine(what), "keep what can be given in a new store; " + db.adviceOnBackups()));
    }

    /** A damaged page ends a scan, so the ids are looked for from both ends and in the other tables that name them. */
    private Set<JobId> ids() {
        Set<JobId> ids = new LinkedHashSet<>();
        for (String scan : db.idScans()) {
            try {
                db.each(scan, row -> ids.add(new JobId(Database.text(row, 1))));
            } catch (StoreException | IllegalArgumentException damaged) {
                fault(db.place(), "not every job can be found");
            }
        }
        return ids;
    }

    private void report(JobId id) {
        HistoryCheck history = new HistoryCheck(withTexts);
        Optional<String> broken = broken(id, history);
        try {
            KeptJob kept = ledger.kept(id);
            pieces += kept.pieces().size();
            jobs++;
            KeptPhoto.faults(kept).forEach(each -> fault("job " + id, each));
        } catch (StoreException gone) {
            fault("job " + id, "cannot be read: " + broken.orElse(gone.problem().what()));
            return;
        }
        broken.map(how -> "only what stands can be read, not its history: " + how)
                .or(() -> beside(id, history))
                .ifPresent(how -> fault("job " + id, how));
    }

    /** The first thing of a job that is not as it was written. */
    private Optional<String> damage(JobId id) {
        HistoryCheck history = new HistoryCheck(withTexts);
        return broken(id, history).or(() -> beside(id, history));
    }

    private Optional<String> broken(JobId id, HistoryCheck history) {
        try {
            ledger.history().each(id, withTexts, 0, Integer.MAX_VALUE, history);
            return history.fault();
        } catch (StoreException damaged) {
            return Optional.of(damaged.problem().what());
        }
    }

    /** What is kept beside the history and follows from it. */
    private Optional<String> beside(JobId id, HistoryCheck history) {
        try {
            if (!ledger.digests(id).equals(history.standing())) {
                return Optional.of("what stands is not what its history comes to");
            }
            if (!ledger.made(id).equals(Optional.of(history.made()))) {
                return Optional.of("the time it was made is not that of its first step");
            }
            if (!ledger.title(id).equals(JobText.titleIn(ledger.text(id)))) {
                return Optional.of("its title in the list is not that of its text");
            }
            Optional<List<KeptPiece>> kept = ledger.pieces(id);
            return kept.isEmpty() || ledger.figuresAgree(id, kept.get())
                    ? Optional.empty()
                    : Optional.of("its figures are not those of its pieces");
        } catch (StoreException damaged) {
            return Optional.of(damaged.problem().what());
        }
    }
}
