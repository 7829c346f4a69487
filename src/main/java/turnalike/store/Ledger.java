package turnalike.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import turnalike.job.kept.Change;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Step;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.Subject;
import turnalike.job.kept.UndoOrder;

/** Jobs and their steps as rows. Callers hold the transaction; a row that cannot be what was written is told as damage. */
final class Ledger {
    private final Database db;
    private final History history;
    private final MeasureTable figures;

    Ledger(Database db) {
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

    /**
     * What came of adding a step.
     *
     * @param seal the step's
     * @param first the subjects that no step before it named
     */
    record Appended(String seal, Set<Subject> first) {}

    /** Adds a step and brings everything that stands up to it. */
    Appended append(JobId id, Step step) {
        String sealBefore = seal(id, step.number() - 1);
        Set<Subject> first = new HashSet<>();
        List<History.WrittenChange> written =
                step.changes().stream().map(each -> write(id, each, first)).toList();
        String seal = Digest.seal(sealBefore, History.parts(step, written));
        insert(id, step, seal);
        int places = first.isEmpty() ? 0 : db.number("SELECT count(*) FROM standing WHERE job = ?", id.text());
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
            places = stand(id, each, first.contains(subject), places);
            kept(id, step.number(), each.change());
        }
        return new Appended(seal, first);
    }

    private void insert(JobId id, Step step, String seal) {
        List<@Nullable Object> values = new ArrayList<>();
        values.add(id.text());
        values.add(step.number());
        values.add(step.at().toString());
        values.add(step.did().word());
        values.add(step.of().isPresent() ? step.of().getAsInt() : null);
        values.add(step.what());
        values.add(seal);
        String columns = "job, number, at, did, of_step, what, seal";
        if (StepRow.hasWho(db)) {
            values.add(step.who().orElse(null));
            columns += ", who";
        }
        String marks = String.join(", ", Collections.nCopies(values.size(), "?"));
        db.run("INSERT INTO step (%s) VALUES (%s)".formatted(columns, marks), values.toArray());
    }

    private History.WrittenChange write(JobId id, Change change, Set<Subject> first) {
        Optional<String> after = change.document().map(body -> {
            String digest = Digest.of(body);
            db.run("INSERT INTO document (digest, body) VALUES (?, ?) ON CONFLICT DO NOTHING", digest, body);
            return digest;
        });
        Subject subject = change.subject();
        List<Optional<String>> stood = db.list(
                "SELECT document FROM standing WHERE job = ? AND kind = ? AND name = ?",
                row -> Optional.ofNullable(row.getString(1)),
                id.text(),
                subject.kind().word(),
                subject.name());
        if (stood.isEmpty()) {
            first.add(subject);
        }
        return new History.WrittenChange(change, stood.stream().findFirst().flatMap(each -> each), after);
    }

    /** A subject that is new gets the next place; they are counted by the caller, since counting them for each would take ever longer. */
    private int stand(JobId id, History.WrittenChange written, boolean isNew, int places) {
        Subject subject = written.change().subject();
        String document = written.after().orElse(null);
        if (isNew) {
            db.run(
                    "INSERT INTO standing (job, kind, name, place, document) VALUES (?, ?, ?, ?, ?)",
                    id.text(),
                    subject.kind().word(),
                    subject.name(),
                    places,
                    document);
            return places + 1;
        }
        db.run(
                "UPDATE standing SET document = ? WHERE job = ? AND kind = ? AND name = ?",
                document,
                id.text(),
                subject.kind().word(),
                subject.name());
        return places;
    }

    private void kept(JobId id, int step, Change change) {
        if (change instanceof Change.OfJob job) {
            db.run("UPDATE job SET title = ? WHERE id = ?", job.text().job().title(), id.text());
        } else if (change instanceof Change.OfPiece piece) {
            figures.stand(id, step, piece);
        }
    }

    private String seal(JobId id, int number) {
        return db.find(
                        "SELECT seal FROM step WHERE job = ? AND number = ?",
                        row -> Database.text(row, 1),
                        id.text(),
                        number)
                .orElse("");
    }

    /** What each subject of the job is now, in the order they first came. Each text is compared with its digest. */
    List<Change> standing(JobId id) {
        return db.list(
                "SELECT s.kind, s.name, s.document, d.body FROM standing AS s"
                        + " LEFT JOIN document AS d ON d.digest = s.document WHERE s.job = ? ORDER BY s.place",
                row -> {
                    Optional<String> digest = Optional.ofNullable(row.getString(3));
                    Optional<String> body = Optional.ofNullable(row.getString(4));
                    return history.change(id, history.subject(id, row), history.whole(id, digest, body));
                },
                id.text());
    }

    /** The same as digests alone. */
    List<Map.Entry<HistoryCheck.Named, Optional<String>>> digests(JobId id) {
        return db.list(
                "SELECT kind, name, document FROM standing WHERE job = ? ORDER BY place",
                row -> Map.entry(
                        new HistoryCheck.Named(Database.text(row, 1), Database.text(row, 2)),
                        Optional.ofNullable(row.getString(3))),
                id.text());
    }

    /** The text that stands, read no further; empty where there is none. */
    String text(JobId id) {
        return db.find(
                        "SELECT d.body FROM standing AS s JOIN document AS d ON d.digest = s.document"
                                + " WHERE s.job = ? AND s.kind = ? AND s.name = ''",
                        row -> Database.text(row, 1),
                        id.text(),
                        Subject.Kind.JOB.word())
                .orElse("");
    }

    /** The pieces that stand; empty when one of them was taken by a program that took more than this one reads. */
    Optional<List<KeptPiece>> pieces(JobId id) {
        List<KeptPiece> pieces = new ArrayList<>();
        try {
            db.each(
                    "SELECT s.name, d.body FROM standing AS s JOIN document AS d ON d.digest = s.document"
                            + " WHERE s.job = ? AND s.kind = ?",
                    row -> {
                        Subject subject = new Subject(Subject.Kind.PIECE, Database.text(row, 1));
                        if (Change.read(subject, Optional.of(Database.text(row, 2))) instanceof Change.OfPiece piece) {
                            piece.piece().ifPresent(pieces::add);
                        }
                    },
                    id.text(),
                    Subject.Kind.PIECE.word());
            return Optional.of(pieces);
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** The time the job was made, as written in the list of jobs. */
    Optional<String> made(JobId id) {
        return db.find("SELECT made_at FROM job WHERE id = ?", row -> Database.text(row, 1), id.text());
    }

    /** The title, as written in the list of jobs. */
    Optional<String> title(JobId id) {
        return db.find("SELECT title FROM job WHERE id = ?", row -> Database.text(row, 1), id.text());
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

    /** The job as it stands, if all of its history, its texts included, is as it was written and comes to that; else empty. */
    Optional<KeptJob> sound(JobId id) {
        try {
            HistoryCheck check = new HistoryCheck(true);
            history.each(id, true, 0, Integer.MAX_VALUE, check);
            return check.fault().isEmpty() && digests(id).equals(check.standing())
                    ? Optional.of(kept(id))
                    : Optional.empty();
        } catch (StoreException damaged) {
            return Optional.empty();
        }
    }

    /** The seal of the last step: it stands for the whole history, so that one who remembers it can tell whether anything came since. */
    Optional<String> lastSeal(JobId id) {
        return db.find(
                "SELECT seal FROM step WHERE job = ? ORDER BY number DESC LIMIT 1",
                row -> Database.text(row, 1),
                id.text());
    }

    /** Whether the figures kept for questions are those of the pieces. */
    boolean figuresAgree(JobId id, List<KeptPiece> pieces) {
        return figures.agree(id, pieces);
    }
}
