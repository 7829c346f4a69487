package turnalike.store;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobCard;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Replay;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepSummary;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/** Jobs in one SQLite file. Opened for reading it is used as {@link turnalike.job.kept.KeptJobs} only, and SQLite refuses every write. */
final class SqliteJobs implements JobStore {
    private final SqliteConnection db;
    private final Clock clock;
    private final Ledger ledger;
    private final JobCache latest;
    private final JobIds ids = new JobIds();
    private final List<Problem> notes = new ArrayList<>();

    SqliteJobs(SqliteConnection db, Clock clock, List<Problem> notes) {
        this.db = db;
        this.clock = clock;
        this.ledger = new Ledger(db);
        this.latest = new JobCache(ledger);
        this.notes.addAll(notes);
    }

    @Override
    public JobId keep(JobText text) {
        return db.write(() -> {
            JobId id = ids.draw(ledger);
            Step first = new Replay().edit(now(), Edit.of("keep the job", Change.of(text)));
            ledger.begin(id, List.of(first));
            return id;
        });
    }

    @Override
    public JobId keep(GivenJob given) {
        return db.write(() -> {
            JobId id = given.id();
            if (!ledger.has(id)) {
                ledger.begin(id, given.history());
                return id;
            }
            GivenJob here = new GivenJob(id, ledger.history().all(id));
            if (!given.goesOnFrom(here)) {
                throw new StoreException(new Problem(
                        db.file().toString(),
                        here.goesOnFrom(given)
                                ? "job %s is here already and was changed since the file was given".formatted(id)
                                : "job %s is here already and was changed otherwise".formatted(id),
                        "keep the file in another store, or with --beside as a job of its own"));
            }
            given.history()
                    .subList(here.history().size(), given.history().size())
                    .forEach(step -> ledger.append(id, step));
            return id;
        });
    }

    @Override
    public JobId keepBeside(GivenJob given) {
        return db.write(() -> {
            JobId id = ids.draw(ledger);
            ledger.begin(id, given.history());
            return id;
        });
    }

    @Override
    public Optional<Step> edit(JobId id, Function<KeptJob, Edit> edit) {
        return db.write(() -> latest.find(id).map(kept -> {
            Edit made = edit.apply(kept);
            Step step = new Step(
                    kept.times().steps() + 1, now(), Step.Did.EDIT, OptionalInt.empty(), made.what(), made.changes());
            latest.goOn(kept, step, ledger.append(id, step));
            return step;
        }));
    }

    @Override
    public Optional<Step> undo(JobId id) {
        return again(id, () -> ledger.history().undoing(id, now()));
    }

    @Override
    public Optional<Step> redo(JobId id) {
        return again(id, () -> ledger.history().redoing(id, now()));
    }

    private Optional<Step> again(JobId id, Supplier<Optional<Step>> next) {
        return db.write(() -> {
            Optional<Step> step = next.get();
            step.ifPresent(each -> ledger.append(id, each));
            return step;
        });
    }

    /** Thousandths of a second: what every system's clock has, and JSON keeps in few digits. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    @Override
    public List<JobCard> list() {
        return db.list(
                "SELECT job.id, job.title, job.made_at, max(step.at), count(*),"
                        + " (SELECT count(*) FROM standing WHERE standing.job = job.id AND kind = 'piece' AND document IS NOT NULL)"
                        + " FROM job JOIN step ON step.job = job.id GROUP BY job.id ORDER BY max(step.at) DESC, job.id",
                row -> new JobCard(
                        new JobId(row.getString(1)),
                        row.getString(2),
                        new KeptJob.Times(
                                Instant.parse(row.getString(3)), Instant.parse(row.getString(4)), row.getInt(5)),
                        row.getInt(6)));
    }

    @Override
    public Optional<KeptJob> find(JobId id) {
        return db.read(() -> latest.find(id));
    }

    @Override
    public List<StepSummary> done(JobId id) {
        return db.read(() -> ledger.history().done(id));
    }

    @Override
    public Optional<JobText> textAfter(JobId id, int step) {
        return db.read(() -> ledger.history().textAfter(id, step));
    }

    @Override
    public Optional<GivenJob> give(JobId id) {
        return db.read(() -> ledger.has(id) ? Optional.of(given(id)) : Optional.empty());
    }

    /** With its history; of a damaged file, where that cannot be read, the job as it stands as if it were made so at once. */
    private GivenJob given(JobId id) {
        try {
            return new GivenJob(id, ledger.history().all(id));
        } catch (StoreException | IllegalArgumentException damaged) {
            KeptJob standing = ledger.kept(id);
            notes.add(new Problem(
                    db.file().toString(),
                    "job %s is given as it stands, without its history: the file is damaged".formatted(id),
                    "keep the given job in a new store"));
            Edit all = new Edit(
                    "taken out of a damaged file",
                    ledger.standing(id).stream()
                            .filter(change -> change.document().isPresent())
                            .toList());
            return new GivenJob(id, List.of(new Replay().edit(standing.times().changed(), all)));
        }
    }

    @Override
    public List<Problem> notes() {
        return List.copyOf(notes);
    }

    @Override
    public void close() {
        db.close();
    }
}
