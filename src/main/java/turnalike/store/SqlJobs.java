package turnalike.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.GivenWriter;
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

/** Jobs in a database. Opened for reading it is used as {@link turnalike.job.kept.KeptJobs} only, and the database refuses every write. */
final class SqlJobs implements JobStore {
    /** Steps given away at a time. */
    private static final int PORTION = 250;

    private final Database db;
    private final Clock clock;
    private final Ledger ledger;
    private final JobCache latest;
    private final JobIds ids = new JobIds();
    private final Soundness sound;
    private final List<Problem> notes;
    private final List<Problem> damage;
    private final Supplier<Optional<String>> who;

    /**
     * @param sound asked before anything is written
     * @param notes that may go on to grow until it is known whether the file is sound
     */
    SqlJobs(Database db, Clock clock, Soundness sound, List<Problem> notes) {
        this.db = db;
        this.clock = clock;
        this.ledger = new Ledger(db);
        this.latest = new JobCache(ledger);
        this.sound = sound;
        this.notes = notes;
        this.damage = new CopyOnWriteArrayList<>();
        this.who = Optional::empty;
    }

    private SqlJobs(SqlJobs unsigned, Supplier<Optional<String>> who) {
        this.db = unsigned.db;
        this.clock = unsigned.clock;
        this.ledger = unsigned.ledger;
        this.latest = unsigned.latest;
        this.sound = unsigned.sound;
        this.notes = unsigned.notes;
        this.damage = unsigned.damage;
        this.who = who;
    }

    @Override
    public JobStore signedBy(Supplier<Optional<String>> name) {
        return new SqlJobs(this, () -> name.get().or(who));
    }

    @Override
    public JobId keep(JobText text) {
        Optional<String> whose = who.get(); // asked here: the work may be done by another's thread
        return write(() -> {
            JobId id = ids.draw(ledger);
            Step first = new Replay()
                    .edit(now(), Edit.of("keep the job", Change.of(text)))
                    .by(whose);
            ledger.begin(id, List.of(first));
            db.tell(id);
            return id;
        });
    }

    @Override
    public JobId keep(GivenJob given) {
        JobId id = given.id();
        return write(id, () -> {
            if (!ledger.has(id)) {
                ledger.begin(id, given.history());
                return id;
            }
            GivenJob here = new GivenJob(id, ledger.history().all(id));
            if (!given.goesOnFrom(here)) {
                throw new StoreException(new Problem(
                        db.place(),
                        here.goesOnFrom(given)
                                ? "job %s is here already and was changed since the file was given".formatted(id)
                                : "job %s is here already and was changed otherwise".formatted(id),
                        "keep the file in another store, or with --beside as a job of its own"));
            }
            given.history()
                    .subList(here.history().size(), given.history().size())
                    .forEach(step -> ledger.append(id, step));
            db.run("DELETE FROM bin WHERE job = ?", id.text()); // whoever brings a job back wants to see it
            return id;
        });
    }

    @Override
    public JobId keepBeside(GivenJob given) {
        return write(() -> {
            JobId id = ids.draw(ledger);
            ledger.begin(id, given.history());
            db.tell(id);
            return id;
        });
    }

    @Override
    public Optional<Step> edit(JobId id, Function<KeptJob, Edit> edit) {
        Optional<String> whose = who.get();
        return write(id, () -> latest.find(id).map(kept -> {
            Edit made = edit.apply(kept);
            Step step = new Step(
                            kept.times().steps() + 1,
                            now(),
                            Step.Did.EDIT,
                            OptionalInt.empty(),
                            made.what(),
                            made.changes())
                    .by(whose);
            latest.goOn(kept, step, ledger.append(id, step));
            return step;
        }));
    }

    @Override
    public Optional<Step> undo(JobId id) {
        return again(id, () -> ledger.history().undoing(id, now()));
    }

    @Override
    public Optional<Step> undo(JobId id, Predicate<KeptJob> meant) {
        return again(id, () -> latest.find(id).filter(meant).flatMap(kept -> ledger.history()
                .undoing(id, now())));
    }

    @Override
    public Optional<Step> redo(JobId id) {
        return again(id, () -> ledger.history().redoing(id, now()));
    }

    @Override
    public Optional<Step> redo(JobId id, Predicate<KeptJob> meant) {
        return again(id, () -> latest.find(id).filter(meant).flatMap(kept -> ledger.history()
                .redoing(id, now())));
    }

    private Optional<Step> again(JobId id, Supplier<Optional<Step>> next) {
        Optional<String> whose = who.get();
        return write(id, () -> {
            Optional<Step> step = next.get().map(each -> each.by(whose));
            step.ifPresent(each -> ledger.append(id, each));
            return step;
        });
    }

    /** A write to a job, of which those who watch are told. */
    private <T> T write(JobId id, Supplier<T> work) {
        return write(() -> {
            T out = work.get();
            db.tell(id);
            return out;
        });
    }

    private <T> T write(Supplier<T> work) {
        sound.require();
        return db.write(work);
    }

    /** Thousandths of a second: what every system's clock has, and JSON keeps in few digits. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    @Override
    public List<JobCard> list() {
        return db.read(() -> cards(hasBin() ? " WHERE job.id NOT IN (SELECT bin.job FROM bin)" : ""));
    }

    @Override
    public List<JobCard> binned() {
        return db.read(
                () -> hasBin() ? cards(" WHERE job.id IN (SELECT bin.job FROM bin WHERE emptied = 0)") : List.of());
    }

    /** A file that is only read may be of the version before the bin. */
    private boolean hasBin() {
        return db.version() > 1;
    }

    private List<JobCard> cards(String which) {
        return db.list(
                "SELECT job.id, job.title, job.made_at, max(step.at), count(*),"
                        + " (SELECT count(*) FROM standing WHERE standing.job = job.id AND kind = 'piece' AND document IS NOT NULL)"
                        + " FROM job JOIN step ON step.job = job.id"
                        + which
                        + " GROUP BY job.id ORDER BY max(step.at) DESC, job.id",
                row -> card(
                        Database.text(row, 1),
                        Database.text(row, 2),
                        List.of(Database.text(row, 3), Database.text(row, 4)),
                        row.getInt(5),
                        row.getInt(6)));
    }

    @Override
    public boolean bin(JobId id) {
        return write(
                id,
                () -> ledger.has(id)
                        && db.run(
                                        "INSERT INTO bin (job, at, emptied) VALUES (?, ?, 0) ON CONFLICT DO NOTHING",
                                        id.text(),
                                        now().toString())
                                > 0);
    }

    @Override
    public boolean restore(JobId id) {
        return write(id, () -> db.run("DELETE FROM bin WHERE job = ?", id.text()) > 0);
    }

    @Override
    public int emptyBin() {
        return write(() -> db.run("UPDATE bin SET emptied = 1 WHERE emptied = 0"));
    }

    private JobCard card(String id, String title, List<String> madeAndChanged, int steps, int pieces) {
        try {
            return new JobCard(
                    new JobId(id),
                    title,
                    new KeptJob.Times(
                            Instant.parse(madeAndChanged.get(0)), Instant.parse(madeAndChanged.get(1)), steps),
                    pieces);
        } catch (IllegalArgumentException | DateTimeException unreadable) {
            throw db.damaged("a job's line in the list is not as it was written");
        }
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
    public boolean hasStepEnding(JobId id, String ending) {
        return db.read(() -> ledger.history().hasStepEnding(id, ending));
    }

    @Override
    public Optional<JobText> textAfter(JobId id, int step) {
        return db.read(() -> ledger.history().textAfter(id, step));
    }

    @Override
    public Optional<GivenJob> give(JobId id) {
        return db.read(() -> ledger.has(id) ? Optional.of(given(id)) : Optional.empty());
    }

    /** Steps that are there never change, so those up to now may be read in portions, between which others write. */
    @Override
    public boolean give(JobId id, Writer out) {
        Optional<KeptJob> sound = db.read(() -> ledger.has(id) ? ledger.sound(id) : Optional.empty());
        if (sound.isEmpty()) {
            Optional<GivenJob> found = give(id);
            found.ifPresent(given -> write(given.format(), out));
            return found.isPresent();
        }
        GivenWriter writer = GivenWriter.begin(out, sound.get());
        for (int after = 0; after < sound.get().times().steps(); after += PORTION) {
            int first = after;
            int last = Math.min(first + PORTION, sound.get().times().steps());
            db.read(() -> ledger.history().texts(id, first, last)).forEach(writer::step);
        }
        writer.end();
        return true;
    }

    private static void write(String text, Writer out) {
        try {
            out.write(text);
            out.flush();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** With its history; of a damaged file, where that cannot be read, the job as it stands as if it were made so at once. */
    private GivenJob given(JobId id) {
        try {
            return new GivenJob(id, ledger.history().all(id));
        } catch (StoreException | IllegalArgumentException damaged) {
            KeptJob standing = ledger.kept(id);
            damage.add(new Problem(
                    db.place(),
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
        return Stream.concat(List.copyOf(notes).stream(), damage.stream()).toList();
    }

    @Override
    public Watch watch(Runnable changed) {
        return db.watch(changed);
    }

    @Override
    public void close() {
        db.close();
    }
}
