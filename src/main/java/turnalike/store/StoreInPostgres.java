package turnalike.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreReport;

/**
 * A store in a PostgreSQL database, in a schema of its own named {@code turnalike}. Servers and commands of many machines may have it open.
 * Its backups are made by whoever runs the database: none are made here.
 *
 * @param address of the database
 */
record StoreInPostgres(PostgresAddress address) implements StorePlace {
    @Override
    public boolean isMade() {
        try (PostgresConnection db = PostgresConnection.open(address, PostgresConnection.Use.READ)) {
            return db.version() > 0;
        }
    }

    /**
     * {@inheritDoc} Each step bears the name by which this machine knows whoever runs the program.
     *
     * <p>Commands do not look through the whole: each text and each seal is looked at where it is read.
     */
    @Override
    public boolean isShared() {
        return true;
    }

    @Override
    public JobStore open(Clock clock) {
        return jobs(opened(false), clock, Soundness.known());
    }

    @Override
    public JobStore openOrMake(Clock clock) {
        return jobs(opened(true), clock, Soundness.known());
    }

    @Override
    public JobStore openAtOnce(Clock clock, StoreFile.Looked told) {
        PostgresConnection db = opened(true);
        Soundness sound = Soundness.begin(
                () -> PostgresConnection.open(address, PostgresConnection.Use.READ),
                Schema.SHIPPED,
                looked -> {},
                told);
        return jobs(db, clock, sound);
    }

    private static JobStore jobs(PostgresConnection db, Clock clock, Soundness sound) {
        Optional<String> person = Optional.of(System.getProperty("user.name", ""))
                .map(name -> name.replaceAll("\\p{Cntrl}", " ").strip())
                .filter(name -> !name.isEmpty());
        return new SqlJobs(db, clock, sound, List.of()).signedBy(() -> person);
    }

    private PostgresConnection opened(boolean make) {
        PostgresConnection db = PostgresConnection.open(address, PostgresConnection.Use.WRITE);
        boolean opened = false;
        try {
            if (db.version() == 0 && !make) {
                throw PostgresErrors.noStore(address);
            }
            PostgresSchema.bringUp(db, Schema.SHIPPED);
            opened = true;
            return db;
        } finally {
            if (!opened) {
                db.close();
            }
        }
    }

    @Override
    public KeptJobs openToRead() {
        PostgresConnection db = PostgresConnection.open(address, PostgresConnection.Use.READ);
        if (db.version() == 0) {
            db.close();
            throw PostgresErrors.noStore(address);
        }
        return new SqlJobs(db, Clock.systemUTC(), Soundness.known(), List.of());
    }

    @Override
    public StoreReport check() {
        try (PostgresConnection db = PostgresConnection.open(address, PostgresConnection.Use.READ)) {
            if (db.version() == 0) {
                throw PostgresErrors.noStore(address);
            }
            return new Examination(db, Schema.SHIPPED).report();
        }
    }

    @Override
    public Path beside(Supplier<Path> folder, String ending) {
        String name = "%s-%d-%s".formatted(address.host(), address.port(), address.database());
        return folder.get().resolve("postgresql-" + name.replaceAll("[^A-Za-z0-9_.-]", "_") + ending);
    }

    @Override
    public String toString() {
        return address.place();
    }
}
