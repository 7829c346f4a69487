package turnalike.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import turnalike.job.kept.Change;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Step;
import turnalike.job.kept.Subject;
import turnalike.job.kept.UndoOrder;

/** Jobs and their steps as rows. Callers hold the transaction; a row that cannot be what was written is told as damage. */
final class Ledger {
    private final SqliteConnection db;
    private final History history;
    private final MeasureTable figures;

    Ledger(SqliteConnection db) {
        this.db = db;
        this.history = new History(db);
        this.figures = new MeasureTable(db);
    }

    /** What was done. */
    History history() {
        return history;
    }

    boolean has(JobId id) {
        return db.number("SELECT count(*) FROM job WHERE id = ?", id.text()) > 0;
    }

    /** A new job with its steps so far. */
    void begin(JobId id, List<Step> steps) {
        db.run(
                "INSERT INTO job (id, made_at, title) VALUES (?, ?, '')",
                id.text(),
                steps.get(0).at().toString());
        steps.forEach(step -> append(id, step));
    }

    /** Adds a step and brings everything that stands up to it; returns the step's seal. */
    String append(JobId id, Step step) {
        String sealBefore = seal(id, step.number() - 1);
        List<History.WrittenChange> written =
                step.changes().stream().map(each -> write(id, each)).toList();
        String seal = Digest.seal(sealBefore, History.parts(step, written));
        db.run(
                "INSERT INTO step (job, number, at, did, of_step, what, seal) VALUES (?, ?, ?, ?, ?, ?, ?)",
                id.text(),
                step.number(),
                step.at().toString(),
                step.did().word(),
                step.of().isPresent() ? step.of().getAsInt() : null,
                step.what(),
                seal);
        for (int place = 0; place < written.size(); place++) {
            History.WrittenChange each = written.get(place);
            Subject subject = each.change().subject();
            db.run(
                    "INSERT INTO change (job, step, place, kind, name, before, after) VALUES (?, ?, ?, ?, ?, ?, ?)",
                    id.text(),
                    step.number(),
                    place,
                    subject.kind().word(),
                    subject.name(),
                    each.before().orElse(null),
                    each.after().orElse(null));
            stand(id, step.number(), each);
        }
        return seal;
    }

    private History.WrittenChange write(JobId id, Change change) {
        Optional<String> after = change.document().map(body -> {
            String digest = Digest.of(body);
            db.run("INSERT OR IGNORE INTO document (digest, body) VALUES (?, ?)", digest, body);
            return digest;
        });
        Subject subject = change.subject();
        Optional<String> before = db
                .list(
                        "SELECT document FROM standing WHERE job = ? AND kind = ? AND name = ?",
                        row -> Optional.ofNullable(row.getString(1)),
                        id.text(),
                        subject.kind().word(),
                        subject.name())
                .stream()
                .findFirst()
                .flatMap(each -> each);
        return new History.WrittenChange(change, before, after);
    }

    private void stand(JobId id, int step, History.WrittenChange written) {
        Subject subject = written.change().subject();
        db.run(
                "INSERT INTO standing (job, kind, name, place, document)"
                        + " VALUES (?1, ?2, ?3, (SELECT count(*) FROM standing WHERE job = ?1), ?4)"
                        + " ON CONFLICT (job, kind, name) DO UPDATE SET document = excluded.document",
                id.text(),
                subject.kind().word(),
                subject.name(),
                written.after().orElse(null));
        if (written.change() instanceof Change.OfJob job) {
            db.run("UPDATE job SET title = ? WHERE id = ?", job.text().job().title(), id.text());
        } else if (written.change() instanceof Change.OfPiece piece) {
            figures.stand(id, step, piece);
        }
    }

    private String seal(JobId id, int number) {
        return db.find("SELECT seal FROM step WHERE job = ? AND number = ?", row -> row.getString(1), id.text(), number)
                .orElse("");
    }

    /** What each subject of the job is now, in the order they first came. */
    List<Change> standing(JobId id) {
        return db.list(
                "SELECT kind, name, document FROM standing WHERE job = ? ORDER BY place",
                row -> history.change(id, history.subject(id, row), Optional.ofNullable(row.getString(3))),
                id.text());
    }

    /** The job as it stands. */
    KeptJob kept(JobId id) {
        List<History.Row> rows = history.rows(id);
        if (rows.isEmpty()) {
            throw history.damaged(id, "its steps are missing");
        }
        UndoOrder order = history.order(id, rows);
        return history.readable(
                id,
                () -> KeptJob.of(
                        id,
                        standing(id),
                        new KeptJob.Times(
                                Instant.parse(rows.get(0).at()),
                                Instant.parse(rows.get(rows.size() - 1).at()),
                                rows.size()),
                        order.nextUndo().map(number -> rows.get(number - 1).what()),
                        order.nextRedo().map(number -> rows.get(number - 1).what())));
    }

    /** The seal of the last step: it stands for the whole history, so that one who remembers it can tell whether anything came since. */
    Optional<String> lastSeal(JobId id) {
        return db.find(
                "SELECT seal FROM step WHERE job = ? ORDER BY number DESC LIMIT 1", row -> row.getString(1), id.text());
    }

    /** Whether the figures kept for questions are those of the pieces. */
    boolean figuresAgree(JobId id, List<KeptPiece> pieces) {
        return figures.agree(id, pieces);
    }
}
