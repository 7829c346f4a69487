package turnalike.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;

/**
 * One connection to one file, and the few ways it is spoken to. Reads and writes of several threads wait for each other in the order they
 * came; writes that wait together reach the disk together.
 */
final class SqliteConnection implements Database {
    /** Long enough for another process's commit on a slow disk. */
    private static final int WAIT_FOR_OTHERS_MS = 10_000;

    private final Path file;
    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();
    /** Fair, so that nobody waits longer than those before him take: a plain monitor let one of many wait for half a minute. */
    private final ReentrantLock turn = new ReentrantLock(true);

    private final WriteQueue writes = new WriteQueue(turn, new WriteQueue.InWords(this::script));

    private SqliteConnection(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    /** What may be done with the file. */
    enum Use {
        /** The file is made when it is not there. */
        MAKE,
        WRITE,
        /** SQL cannot change anything. SQLite itself still takes back a write that was cut off, where the disk allows. */
        READ
    }

    static SqliteConnection open(Path file, Use use) {
        SQLiteConfig config = new SQLiteConfig();
        if (use != Use.MAKE) {
            config.resetOpenMode(SQLiteOpenMode.CREATE);
        }
        config.setBusyTimeout(WAIT_FOR_OTHERS_MS);
        config.enforceForeignKeys(true);
        // As a URI, since in a plain name the driver would take what follows a question mark for settings.
        return open(
                file,
                use,
                config,
                "jdbc:sqlite:" + file.toAbsolutePath().toUri().toASCIIString());
    }

    /** An empty store that is nowhere on disk, gone when it is closed. */
    static SqliteConnection inMemory() {
        return open(Path.of("memory"), Use.MAKE, new SQLiteConfig(), "jdbc:sqlite::memory:");
    }

    private static SqliteConnection open(Path file, Use use, SQLiteConfig config, String url) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl(url);
        try {
            SqliteConnection db = new SqliteConnection(file, source.getConnection());
            // The journal is SQLite's usual one, so at rest there is one file and nothing beside it. EXTRA makes a
            // commit survive losing power right after it.
            db.script(
                    "PRAGMA synchronous=EXTRA; PRAGMA fullfsync=ON; PRAGMA cell_size_check=ON; PRAGMA trusted_schema=OFF;"
                            + (use == Use.READ ? " PRAGMA query_only=ON;" : ""));
            return db;
        } catch (SQLException trouble) {
            throw SqliteErrors.of(file, trouble, Optional::empty);
        }
    }

    Path file() {
        return file;
    }

    @Override
    public String place() {
        return file.toString();
    }

    @Override
    public int version() {
        return Schema.version(this);
    }

    @Override
    public Optional<String> tablesFault(Schema schema) {
        return schema.fault(this);
    }

    /** Pages and indexes by SQLite's own check. */
    @Override
    public List<String> integrityFaults() {
        return FileIntegrity.ofPages(this);
    }

    @Override
    public List<String> idScans() {
        return List.of(
                "SELECT id FROM job ORDER BY rowid",
                "SELECT id FROM job ORDER BY rowid DESC",
                "SELECT DISTINCT job FROM standing",
                "SELECT job FROM standing ORDER BY rowid DESC",
                "SELECT DISTINCT job FROM step",
                "SELECT job FROM step ORDER BY rowid DESC");
    }

    @Override
    public StoreException damaged(String how) {
        return SqliteErrors.damaged(file, how);
    }

    @Override
    public String adviceOnBackups() {
        return Backups.advice(file);
    }

    /** Runs statements that give nothing back. */
    synchronized void script(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        } catch (SQLException trouble) {
            throw SqliteErrors.of(file, trouble, this::tablesFault);
        }
    }

    @Override
    public synchronized int run(String sql, @Nullable Object... values) {
        try {
            return filled(sql, values).executeUpdate();
        } catch (SQLException trouble) {
            throw failed(sql, trouble);
        }
    }

    @Override
    public synchronized void each(String sql, EachRow row, @Nullable Object... values) {
        try (ResultSet rows = filled(sql, values).executeQuery()) {
            while (rows.next()) {
                row.take(rows);
            }
        } catch (SQLException trouble) {
            throw failed(sql, trouble);
        }
    }

    private PreparedStatement filled(String sql, @Nullable Object... values) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    /** The driver finishes with a statement that failed: it cannot be used again. */
    private RuntimeException failed(String sql, SQLException trouble) {
        prepared.remove(sql);
        return SqliteErrors.of(file, trouble, this::tablesFault);
    }

    /** What cannot be asked of the tables as they were made can mean that they are damaged. Not through {@link #list}, which asks this. */
    private Optional<String> tablesFault() {
        try (Statement statement = connection.createStatement()) {
            int version;
            try (ResultSet answer = statement.executeQuery("PRAGMA user_version")) {
                version = answer.getInt(1);
            }
            List<List<String>> tables = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery(Schema.TABLES)) {
                while (rows.next()) {
                    tables.add(Schema.made(rows));
                }
            }
            return Schema.SHIPPED.fault(version, tables);
        } catch (SQLException unreadable) {
            return Optional.of("its list of tables cannot be read");
        }
    }

    @Override
    public <T> T write(Supplier<T> work) {
        return writes.write(work);
    }

    /** It ends by rolling back, since of a damaged file not even nothing can be committed. */
    @Override
    public <T> T read(Supplier<T> work) {
        turn.lock();
        try {
            return writes.isWriting() ? work.get() : readAlone(work);
        } finally {
            turn.unlock();
        }
    }

    private <T> T readAlone(Supplier<T> work) {
        script("BEGIN");
        try {
            return work.get();
        } finally {
            WriteQueue.rollBack(this::script);
        }
    }

    @Override
    public KeptJobs.Watch watch(Runnable changed) {
        return FileWatch.begin(file, changed);
    }

    @Override
    public void close() {
        turn.lock();
        try {
            for (PreparedStatement each : prepared.values()) {
                each.close();
            }
            connection.close();
        } catch (SQLException trouble) {
            throw SqliteErrors.of(file, trouble, Optional::empty);
        } finally {
            turn.unlock();
        }
    }
}
