package turnalike.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;

/**
 * One connection to one PostgreSQL database. One bench writes at a time, whichever machine it is at: each write first takes the one row of
 * the table {@code store} for itself, which also says whether a later program has changed the tables meanwhile. A lost connection is made
 * anew and the work done once more; each write leaves a key of its own, by which one that was kept just before the loss is known and not
 * made twice.
 */
final class PostgresConnection implements Database {
    private static final int ROWS_AT_A_TIME = 200;
    private static final int MOST_ATTEMPTS = 8;

    /** What may be done with it. */
    enum Use {
        WRITE,
        READ
    }

    private final PostgresAddress address;
    private final Use use;
    private final ReentrantLock turn = new ReentrantLock(true);
    private final KeyedTransaction transaction = new KeyedTransaction();
    private final WriteQueue writes = new WriteQueue(turn, transaction);
    private Connection connection;
    private volatile int version;
    private boolean reading;
    /** Whether what failed last failed because the connection is gone. */
    private boolean lost;

    private PostgresConnection(PostgresAddress address, Use use, Connection connection) {
        this.address = address;
        this.use = use;
        this.connection = connection;
    }

    static PostgresConnection open(PostgresAddress address, Use use) {
        PostgresConnection db = new PostgresConnection(address, use, PostgresLink.connect(address));
        boolean opened = false;
        try {
            db.version = db.read(() -> PostgresSchema.versionOf(db));
            if (db.version > Schema.SHIPPED.newest()) {
                throw PostgresErrors.later(address, db.version);
            }
            opened = true;
            return db;
        } finally {
            if (!opened) {
                db.close();
            }
        }
    }

    PostgresAddress address() {
        return address;
    }

    @Override
    public String place() {
        return address.place();
    }

    @Override
    public int version() {
        return version;
    }

    /** Runs statements that give nothing back. */
    void script(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException trouble) {
            throw failed(trouble);
        }
    }

    @Override
    public int run(String sql, @Nullable Object... values) {
        try (PreparedStatement statement = filled(sql, values)) {
            return statement.executeUpdate();
        } catch (SQLException trouble) {
            throw failed(trouble);
        }
    }

    @Override
    public void each(String sql, EachRow row, @Nullable Object... values) {
        try (PreparedStatement statement = filled(sql, values);
                ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
                row.take(rows);
            }
        } catch (SQLException trouble) {
            throw failed(trouble);
        }
    }

    private PreparedStatement filled(String sql, @Nullable Object... values) throws SQLException {
        if (!turn.isHeldByCurrentThread()) {
            throw new IllegalStateException("the database is spoken to within a read or a write alone: " + sql);
        }
        PreparedStatement statement = connection.prepareStatement(sql);
        statement.setFetchSize(ROWS_AT_A_TIME);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    private RuntimeException failed(SQLException trouble) {
        lost = lost || PostgresErrors.isLoss(trouble);
        return PostgresErrors.of(address, trouble, this::tablesFaultAfterwards);
    }

    /** Of a transaction that broke off nothing more can be asked: on a connection of its own. */
    private Optional<String> tablesFaultAfterwards() {
        try (PostgresConnection another = open(address, Use.READ)) {
            return another.read(() -> another.tablesFault(Schema.SHIPPED));
        } catch (StoreException unreachable) {
            return Optional.empty();
        }
    }

    @Override
    public <T> T write(Supplier<T> work) {
        return writes.write(work);
    }

    @Override
    public <T> T read(Supplier<T> work) {
        turn.lock();
        try {
            return writes.isWriting() || reading ? work.get() : readAlone(work);
        } finally {
            turn.unlock();
        }
    }

    private <T> T readAlone(Supplier<T> work) {
        for (int attempt = 1; ; attempt++) {
            lost = false;
            reading = true;
            try {
                return work.get();
            } catch (RuntimeException trouble) {
                if (!lost || attempt == MOST_ATTEMPTS) {
                    throw trouble;
                }
            } finally {
                reading = false;
                rollBack();
            }
            connectAnew();
        }
    }

    private void rollBack() {
        try {
            connection.rollback();
        } catch (SQLException gone) {
            lost = true;
        }
    }

    private void connectAnew() {
        try {
            connection.close();
        } catch (SQLException gone) {
            // as it was found
        }
        connection = PostgresLink.connectPatiently(address);
        lost = false;
    }

    /** Brings the tables up, all of it or nothing; two programs may try at once. */
    void bringUp(Supplier<Integer> work) {
        turn.lock();
        boolean done = false;
        try {
            script("set transaction isolation level read committed read write");
            script("SELECT pg_advisory_xact_lock(%d)".formatted(SqliteHeader.APPLICATION_ID));
            reading = true;
            version = work.get();
            connection.commit();
            done = true;
        } catch (SQLException trouble) {
            throw failed(trouble);
        } finally {
            reading = false;
            if (!done) {
                rollBack();
            }
            turn.unlock();
        }
    }

    /** A write with a key of its own, under which it is found when nobody knows whether it was kept. */
    private final class KeyedTransaction implements Transaction {
        private Optional<String> key = Optional.empty();
        private String before = "";
        private int attempts;

        @Override
        public void begin() {
            if (use == Use.READ) {
                throw new IllegalStateException("opened to be read");
            }
            lost = false;
            takeTurn();
            String mine = key.orElseGet(() -> UUID.randomUUID().toString());
            key = Optional.of(mine);
            // The key before it has served.
            run("WITH served AS (DELETE FROM sent WHERE key = ?) INSERT INTO sent (key) VALUES (?)", before, mine);
        }

        private void takeTurn() {
            script("set transaction isolation level read committed read write");
            int now = find("SELECT version FROM store FOR UPDATE", row -> row.getInt(1))
                    .orElseThrow(() -> damaged("its version is missing"));
            if (now > Schema.SHIPPED.newest()) {
                throw PostgresErrors.later(address, now);
            }
        }

        @Override
        public void commit() {
            try {
                connection.commit();
            } catch (SQLException trouble) {
                throw failed(trouble);
            }
            end(key.orElse(""));
        }

        private void end(String served) {
            before = served;
            key = Optional.empty();
            attempts = 0;
        }

        @Override
        public void rollBack() {
            PostgresConnection.this.rollBack();
        }

        @Override
        public void say(String sql) {
            script(sql);
        }

        @Override
        public Ending ending(RuntimeException trouble) {
            attempts++;
            if (!lost || attempts > MOST_ATTEMPTS) {
                end(before);
                return Ending.REFUSED;
            }
            try {
                if (wasKept()) {
                    end(key.orElse(""));
                    return Ending.KEPT;
                }
                return Ending.TO_BE_MADE_AGAIN;
            } catch (StoreException stillGone) {
                end(before);
                throw PostgresErrors.unknown(address, stillGone);
            }
        }

        /** Taking the turn waits for what the lost connection may still be doing at the server. */
        private boolean wasKept() {
            for (int attempt = 1; ; attempt++) {
                connectAnew();
                try {
                    takeTurn();
                    return number("SELECT count(*) FROM sent WHERE key = ?", key.orElse("")) > 0;
                } catch (StoreException trouble) {
                    if (!lost || attempt == MOST_ATTEMPTS) {
                        throw trouble;
                    }
                } finally {
                    rollBack();
                }
            }
        }
    }

    @Override
    public Optional<String> tablesFault(Schema schema) {
        return PostgresSchema.fault(this, schema);
    }

    /** The pages are the server's to look after. */
    @Override
    public List<String> integrityFaults() {
        return List.of();
    }

    @Override
    public List<String> idScans() {
        return List.of(
                "SELECT id FROM job ORDER BY made_at, id",
                "SELECT DISTINCT job FROM standing",
                "SELECT DISTINCT job FROM step");
    }

    @Override
    public StoreException damaged(String how) {
        return PostgresErrors.damaged(address, how);
    }

    @Override
    public String adviceOnBackups() {
        return PostgresErrors.ADVICE;
    }

    @Override
    public void tell(JobId id) {
        list("SELECT pg_notify(?, ?)", row -> 1, PostgresLink.CHANNEL, id.text());
    }

    @Override
    public KeptJobs.Watch watch(Runnable changed) {
        return PostgresWatch.begin(address, changed);
    }

    @Override
    public void close() {
        turn.lock();
        try {
            connection.close();
        } catch (SQLException gone) {
            // it is closed all the same
        } finally {
            turn.unlock();
        }
    }
}
