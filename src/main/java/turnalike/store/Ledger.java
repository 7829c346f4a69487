package turnalike.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.job.kept.Change;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Step;
import turnalike.job.kept.StoreTrouble;
import turnalike.job.kept.Subject;
import turnalike.job.kept.UndoOrder;

/** Jobs and their steps as rows. Callers hold the transaction; a row that cannot be what was written is told as damage. */
final class Ledger {
    private final Db db;
    private final Figures figures;

    Ledger(Db db) {
        this.db = db;
        this.figures = new Figures(db);
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

    /** Adds a step and brings everything that stands up to it. */
    void append(JobId id, Step step) {
        String sealBefore = seal(id, step.number() - 1);
        List<Written> written =
                step.changes().stream().map(each -> write(id, each)).toList();
        db.run(
                "INSERT INTO step (job, number, at, did, of_step, what, seal) VALUES (?, ?, ?, ?, ?, ?, ?)",
                id.text(),
                step.number(),
                step.at().toString(),
                step.did().word(),
                step.of().isPresent() ? step.of().getAsInt() : null,
                step.what(),
                Digest.seal(sealBefore, parts(step, written)));
        for (int place = 0; place < written.size(); place++) {
            Written each = written.get(place);
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
    }

    /** A change with the digests of what its subject was and is. */
    private record Written(Change change, Optional<String> before, Optional<String> after) {}

    private Written write(JobId id, Change change) {
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
        return new Written(change, before, after);
    }

    private static List<String> parts(Step step, List<Written> written) {
        List<String> parts = new ArrayList<>(List.of(
                String.valueOf(step.number()),
                step.at().toString(),
                step.did().word(),
                step.of().toString(),
                step.what()));
        for (Written each : written) {
            parts.add(each.change().subject().kind().word());
            parts.add(each.change().subject().name());
            parts.add(each.before().orElse(""));
            parts.add(each.after().orElse(""));
        }
        return parts;
    }

    private void stand(JobId id, int step, Written written) {
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

    /** Every step, with its changes. Each seal is checked, so that steps altered, lost or exchanged are noticed. */
    List<Step> history(JobId id) {
        List<Step> steps = new ArrayList<>();
        String seal = "";
        for (Row row : rows(id)) {
            List<Written> written = changes(id, row.number());
            Step step = readable(
                    id,
                    () -> new Step(
                            row.number(),
                            Instant.parse(row.at()),
                            Step.Did.of(row.did()),
                            row.of(),
                            row.what(),
                            written.stream().map(Written::change).toList()));
            seal = Digest.seal(seal, parts(step, written));
            if (!seal.equals(row.seal())) {
                throw damaged(id, "step %d is not as it was written".formatted(row.number()));
            }
            steps.add(step);
        }
        return steps;
    }

    private record Row(int number, String at, String did, OptionalInt of, String what, String seal) {
        static Row of(ResultSet row) throws SQLException {
            int number = row.getInt(4);
            OptionalInt of = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
            return new Row(row.getInt(1), row.getString(2), row.getString(3), of, row.getString(5), row.getString(6));
        }
    }

    private List<Row> rows(JobId id) {
        return db.list(
                "SELECT number, at, did, of_step, what, seal FROM step WHERE job = ? ORDER BY number",
                Row::of,
                id.text());
    }

    private List<Written> changes(JobId id, int step) {
        return db.list(
                "SELECT kind, name, before, after FROM change WHERE job = ? AND step = ? ORDER BY place",
                row -> {
                    Optional<String> after = Optional.ofNullable(row.getString(4));
                    return new Written(
                            change(id, row.getString(1), row.getString(2), after),
                            Optional.ofNullable(row.getString(3)),
                            after);
                },
                id.text(),
                step);
    }

    /** What each subject of the job is now, in the order they first came. */
    List<Change> standing(JobId id) {
        return db.list(
                "SELECT kind, name, document FROM standing WHERE job = ? ORDER BY place",
                row -> change(id, row.getString(1), row.getString(2), Optional.ofNullable(row.getString(3))),
                id.text());
    }

    private Change change(JobId id, String kind, String name, Optional<String> digest) {
        Optional<String> body = digest.map(each -> body(id, each));
        return readable(id, () -> Change.read(new Subject(Subject.Kind.of(kind), name), body));
    }

    private String body(JobId id, String digest) {
        return db.find("SELECT body FROM document WHERE digest = ?", row -> row.getString(1), digest)
                .filter(body -> Digest.of(body).equals(digest))
                .orElseThrow(() -> damaged(id, "one of its texts is not as it was written"));
    }

    /** The job as it stands. */
    KeptJob kept(JobId id) {
        List<Row> rows = rows(id);
        if (rows.isEmpty()) {
            throw damaged(id, "its steps are missing");
        }
        UndoOrder order = new UndoOrder();
        return readable(id, () -> {
            rows.forEach(row -> order.take(row.number(), Step.Did.of(row.did()), row.of()));
            return KeptJob.of(
                    id,
                    standing(id),
                    new KeptJob.Times(
                            Instant.parse(rows.get(0).at()),
                            Instant.parse(rows.get(rows.size() - 1).at()),
                            rows.size()),
                    order.nextUndo().map(number -> rows.get(number - 1).what()),
                    order.nextRedo().map(number -> rows.get(number - 1).what()));
        });
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

    private interface Reading<T> {
        T now();
    }

    private <T> T readable(JobId id, Reading<T> reading) {
        try {
            return reading.now();
        } catch (IllegalArgumentException | DateTimeException | IndexOutOfBoundsException unreadable) {
            throw damaged(id, String.valueOf(unreadable.getMessage()).replaceAll("\\p{Cntrl}", " "));
        }
    }

    private StoreTrouble damaged(JobId id, String how) {
        return Trouble.damaged(db.file(), "job %s: %s".formatted(id, how));
    }
}
