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
import turnalike.job.kept.JobText;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepSummary;
import turnalike.job.kept.StepText;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.Subject;
import turnalike.job.kept.UndoOrder;

/** What was done to each job, read back and checked. Callers hold the transaction; a row that cannot be what was written is told as damage. */
final class History {
    private final Database db;

    History(Database db) {
        this.db = db;
    }

    /** The steps after one and up to another, in order, as their rows have them. */
    void each(JobId id, boolean withTexts, int after, int upTo, StepRow.Taker taker) {
        StepRow.Reader reader = new StepRow.Reader(taker);
        db.each(StepRow.query(db, withTexts), reader, id.text(), after, upTo);
        reader.end();
    }

    /** The steps after one and up to another as text, each text compared with its digest. */
    List<StepText> texts(JobId id, int after, int upTo) {
        List<StepText> texts = new ArrayList<>();
        each(
                id,
                true,
                after,
                upTo,
                row -> texts.add(readable(
                        id,
                        () -> new StepText(
                                row.at(),
                                Step.Did.of(row.did()),
                                row.of(),
                                row.what(),
                                row.changes().stream()
                                        .map(each -> text(id, each))
                                        .toList(),
                                row.who()))));
        return texts;
    }

    private StepText.ChangeText text(JobId id, StepRow.ChangeRow row) {
        return new StepText.ChangeText(subject(id, row), whole(id, row.after(), row.body()));
    }

    /** Every step, with its changes. Each seal is checked, so that steps altered, lost or exchanged are noticed. */
    List<Step> all(JobId id) {
        List<Step> steps = new ArrayList<>();
        String[] seal = {""};
        each(id, true, 0, Integer.MAX_VALUE, row -> {
            steps.add(step(id, row, seal[0]));
            seal[0] = row.seal();
        });
        return steps;
    }

    private Step step(JobId id, StepRow row, String sealBefore) {
        if (!row.isSealedAfter(sealBefore)) {
            throw damaged(id, "step %d is not as it was written".formatted(row.number()));
        }
        return readable(
                id,
                () -> new Step(
                        row.number(),
                        Instant.parse(row.at()),
                        Step.Did.of(row.did()),
                        row.of(),
                        row.what(),
                        row.changes().stream().map(each -> change(id, each)).toList(),
                        row.who()));
    }

    private Change change(JobId id, StepRow.ChangeRow row) {
        return change(id, subject(id, row), whole(id, row.after(), row.body()));
    }

    private Subject subject(JobId id, StepRow.ChangeRow row) {
        return readable(id, () -> new Subject(Subject.Kind.of(row.kind()), row.name()));
    }

    List<StepSummary> done(JobId id) {
        return readable(id, () -> rows(id).stream()
                .map(row -> new StepSummary(
                        row.number(), Instant.parse(row.at()), Step.Did.of(row.did()), row.of(), row.what(), row.who()))
                .toList());
    }

    /** Looked for by the database: one looks for it within an edit's turn, and a history is long. */
    boolean hasStepEnding(JobId id, String ending) {
        String plain = ending.replaceAll("[!%_]", "!$0");
        // A database may find the small letters for the capitals.
        return db
                .list(
                        "SELECT what FROM step WHERE job = ? AND what LIKE ? ESCAPE '!'",
                        row -> Database.text(row, 1),
                        id.text(),
                        "%" + plain)
                .stream()
                .anyMatch(what -> what.endsWith(ending));
    }

    /** The text that the last change of it up to that step left. */
    Optional<JobText> textAfter(JobId id, int step) {
        if (step < 1 || db.number("SELECT count(*) FROM step WHERE job = ? AND number = ?", id.text(), step) == 0) {
            return Optional.empty();
        }
        return db.find(
                        "SELECT kind, name, after FROM change WHERE job = ? AND kind = ? AND step <= ?"
                                + " ORDER BY step DESC, place DESC LIMIT 1",
                        row -> change(
                                id,
                                subject(id, row),
                                Optional.ofNullable(row.getString(3)).map(digest -> body(id, digest))),
                        id.text(),
                        Subject.JOB.kind().word(),
                        step)
                .flatMap(change -> change instanceof Change.OfJob job ? Optional.of(job.text()) : Optional.empty());
    }

    /** The step that would undo the last standing edit; empty when there is none. Of all texts only those of that edit are read. */
    Optional<Step> undoing(JobId id, Instant at) {
        List<Row> rows = rows(id);
        UndoOrder order = order(id, rows);
        return readable(id, () -> order.nextUndo()
                .map(number -> again(rows, number, at, Step.Did.UNDO, before(id, rows, number))));
    }

    /** The step that would bring the edit undone last again; empty when there is none. */
    Optional<Step> redoing(JobId id, Instant at) {
        List<Row> rows = rows(id);
        UndoOrder order = order(id, rows);
        return readable(id, () -> order.nextRedo()
                .map(number -> again(rows, number, at, Step.Did.REDO, after(id, rows, number))));
    }

    private static Step again(List<Row> rows, int number, Instant at, Step.Did did, List<Change> changes) {
        return new Step(
                rows.size() + 1,
                at,
                did,
                OptionalInt.of(number),
                rows.get(number - 1).what(),
                changes);
    }

    private List<Change> before(JobId id, List<Row> rows, int number) {
        return checked(id, rows, number).changes().stream()
                .map(each -> change(id, subject(id, each), each.before().map(digest -> body(id, digest))))
                .toList();
    }

    private List<Change> after(JobId id, List<Row> rows, int number) {
        return checked(id, rows, number).changes().stream()
                .map(each -> change(id, each))
                .toList();
    }

    private StepRow checked(JobId id, List<Row> rows, int number) {
        List<StepRow> found = new ArrayList<>();
        each(id, true, number - 1, number, found::add);
        String sealBefore = number == 1 ? "" : rows.get(number - 2).seal();
        return found.stream()
                .filter(row -> row.isSealedAfter(sealBefore))
                .findFirst()
                .orElseThrow(() -> damaged(id, "step %d is not as it was written".formatted(number)));
    }

    /** What would be undone and redone next. */
    UndoOrder order(JobId id, List<Row> rows) {
        UndoOrder order = new UndoOrder();
        return readable(id, () -> {
            rows.forEach(row -> order.take(row.number(), Step.Did.of(row.did()), row.of()));
            return order;
        });
    }

    record Row(int number, String at, String did, OptionalInt of, String what, String seal, Optional<String> who) {
        static Row of(ResultSet row) throws SQLException {
            int number = row.getInt(4);
            OptionalInt of = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
            return new Row(
                    row.getInt(1),
                    Database.text(row, 2),
                    Database.text(row, 3),
                    of,
                    Database.text(row, 5),
                    Database.text(row, 6),
                    Optional.ofNullable(row.getString(7)));
        }
    }

    List<Row> rows(JobId id) {
        return db.list(
                "SELECT number, at, did, of_step, what, seal, " + StepRow.who(db, "who")
                        + " FROM step WHERE job = ? ORDER BY number",
                Row::of,
                id.text());
    }

    /** A change with the digests of what its subject was and is. */
    record WrittenChange(Change change, Optional<String> before, Optional<String> after) {}

    static List<String> parts(Step step, List<WrittenChange> written) {
        List<String> parts = new ArrayList<>(List.of(
                String.valueOf(step.number()),
                step.at().toString(),
                step.did().word(),
                step.of().toString(),
                step.what()));
        for (WrittenChange each : written) {
            parts.add(each.change().subject().kind().word());
            parts.add(each.change().subject().name());
            parts.add(each.before().orElse(""));
            parts.add(each.after().orElse(""));
        }
        step.who().ifPresent(parts::add);
        return parts;
    }

    /** Of a row that begins with the kind and the name. */
    Subject subject(JobId id, ResultSet row) throws SQLException {
        String kind = Database.text(row, 1);
        String name = Database.text(row, 2);
        return readable(id, () -> new Subject(Subject.Kind.of(kind), name));
    }

    /** The change that made the subject that text. */
    Change change(JobId id, Subject subject, Optional<String> body) {
        return readable(id, () -> Change.read(subject, body));
    }

    /** The text as it was written under that digest. */
    Optional<String> whole(JobId id, Optional<String> digest, Optional<String> body) {
        if (!body.map(Digest::of).equals(digest)) {
            throw damaged(id, "one of its texts is not as it was written");
        }
        return body;
    }

    private String body(JobId id, String digest) {
        Optional<String> body =
                db.find("SELECT body FROM document WHERE digest = ?", row -> Database.text(row, 1), digest);
        return whole(id, Optional.of(digest), body).orElseThrow();
    }

    interface Reading<T> {
        T now();
    }

    <T> T readable(JobId id, Reading<T> reading) {
        try {
            return reading.now();
        } catch (IllegalArgumentException | DateTimeException | IndexOutOfBoundsException unreadable) {
            throw damaged(id, String.valueOf(unreadable.getMessage()).replaceAll("\\p{Cntrl}", " "));
        }
    }

    StoreException damaged(JobId id, String how) {
        return db.damaged("job %s: %s".formatted(id, how));
    }
}
