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
import turnalike.job.kept.StoreException;
import turnalike.job.kept.Subject;
import turnalike.job.kept.UndoOrder;

/** What was done to each job, read back and checked. Callers hold the transaction; a row that cannot be what was written is told as damage. */
final class History {
    private final SqliteConnection db;

    History(SqliteConnection db) {
        this.db = db;
    }

    /** Every step, with its changes. Each seal is checked, so that steps altered, lost or exchanged are noticed. */
    List<Step> all(JobId id) {
        List<Step> steps = new ArrayList<>();
        String seal = "";
        for (Row row : rows(id)) {
            steps.add(step(id, row, changes(id, row.number()), seal));
            seal = row.seal();
        }
        return steps;
    }

    private Step step(JobId id, Row row, List<WrittenChange> written, String sealBefore) {
        Step step = readable(
                id,
                () -> new Step(
                        row.number(),
                        Instant.parse(row.at()),
                        Step.Did.of(row.did()),
                        row.of(),
                        row.what(),
                        written.stream().map(WrittenChange::change).toList()));
        if (!Digest.seal(sealBefore, parts(step, written)).equals(row.seal())) {
            throw damaged(id, "step %d is not as it was written".formatted(row.number()));
        }
        return step;
    }

    List<StepSummary> done(JobId id) {
        return readable(id, () -> rows(id).stream()
                .map(row -> new StepSummary(row.number(), Instant.parse(row.at()), Step.Did.of(row.did()), row.what()))
                .toList());
    }

    /** The text that the last change of it up to that step left. */
    Optional<JobText> textAfter(JobId id, int step) {
        if (step < 1 || db.number("SELECT count(*) FROM step WHERE job = ? AND number = ?", id.text(), step) == 0) {
            return Optional.empty();
        }
        return db.find(
                        "SELECT kind, name, after FROM change WHERE job = ? AND kind = ? AND step <= ?"
                                + " ORDER BY step DESC, place DESC LIMIT 1",
                        row -> change(id, subject(id, row), Optional.ofNullable(row.getString(3))),
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
        return checked(id, rows, number).stream()
                .map(each -> change(id, each.change().subject(), each.before()))
                .toList();
    }

    private List<Change> after(JobId id, List<Row> rows, int number) {
        return checked(id, rows, number).stream().map(WrittenChange::change).toList();
    }

    private List<WrittenChange> checked(JobId id, List<Row> rows, int number) {
        List<WrittenChange> written = changes(id, number);
        step(
                id,
                rows.get(number - 1),
                written,
                number == 1 ? "" : rows.get(number - 2).seal());
        return written;
    }

    /** What would be undone and redone next. */
    UndoOrder order(JobId id, List<Row> rows) {
        UndoOrder order = new UndoOrder();
        return readable(id, () -> {
            rows.forEach(row -> order.take(row.number(), Step.Did.of(row.did()), row.of()));
            return order;
        });
    }

    record Row(int number, String at, String did, OptionalInt of, String what, String seal) {
        static Row of(ResultSet row) throws SQLException {
            int number = row.getInt(4);
            OptionalInt of = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
            return new Row(row.getInt(1), row.getString(2), row.getString(3), of, row.getString(5), row.getString(6));
        }
    }

    List<Row> rows(JobId id) {
        return db.list(
                "SELECT number, at, did, of_step, what, seal FROM step WHERE job = ? ORDER BY number",
                Row::of,
                id.text());
    }

    private List<WrittenChange> changes(JobId id, int step) {
        return db.list(
                "SELECT kind, name, before, after FROM change WHERE job = ? AND step = ? ORDER BY place",
                row -> {
                    Optional<String> after = Optional.ofNullable(row.getString(4));
                    return new WrittenChange(
                            change(id, subject(id, row), after), Optional.ofNullable(row.getString(3)), after);
                },
                id.text(),
                step);
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
        return parts;
    }

    /** Of a row that begins with the kind and the name. */
    Subject subject(JobId id, ResultSet row) throws SQLException {
        String kind = row.getString(1);
        String name = row.getString(2);
        return readable(id, () -> new Subject(Subject.Kind.of(kind), name));
    }

    Change change(JobId id, Subject subject, Optional<String> digest) {
        Optional<String> body = digest.map(each -> body(id, each));
        return readable(id, () -> Change.read(subject, body));
    }

    private String body(JobId id, String digest) {
        return db.find("SELECT body FROM document WHERE digest = ?", row -> row.getString(1), digest)
                .filter(body -> Digest.of(body).equals(digest))
                .orElseThrow(() -> damaged(id, "one of its texts is not as it was written"));
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
        return SqliteErrors.damaged(db.file(), "job %s: %s".formatted(id, how));
    }
}
