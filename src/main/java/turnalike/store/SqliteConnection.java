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

/**
 * One connection to one file, and the few ways it is spoken to. Reads and writes of several threads wait for each other in the order they
 * came; writes that wait together reach the disk together.
 */
final class SqliteConnection implements AutoCloseable {
    /** Long enough for another process's commit on a slow disk. */
    private static final int WAIT_FOR_OTHERS_MS = 10_000;

    private final Path file;
    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();
    /** Fair, so that nobody waits longer than those before him take: a plain monitor let one of many wait for half a minute. */
    private final ReentrantLock turn = new ReentrantLock(true);

    private final WriteQueue writes = new WriteQueue(turn, this::script);

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

    /** Makes one row into a value. */
    interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** Takes one row. */
    interface EachRow {
        void take(ResultSet row) throws SQLException;
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
            // commit survive losing
            // power right after it.
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

    /** Runs statements that give nothing back. */
    synchronized void script(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        } catch (SQLException trouble) {
            throw SqliteErrors.of(file, trouble, this::tablesFault);
        }
    }

    /** Runs one statement with these values for its question marks, and returns how many rows it changed. */
    synchronized int run(String sql, @Nullable Object... values) {
        try {
            return filled(sql, values).executeUpdate();
        } catch (SQLException trouble) {
            throw failed(sql, trouble);
        }
    }

    <T> List<T> list(String sql, Row<T> row, @Nullable Object... values) {
        List<T> out = new ArrayList<>();
        each(sql, found -> out.add(row.of(found)), values);
        return out;
    }

    /** Row by row, for more than should be held at once; no other query of the same text may begin before the last row. */
    synchronized void each(String sql, EachRow row, @Nullable Object... values) {
        try (ResultSet rows = filled(sql, values).executeQuery()) {
            while (rows.next()) {
                row.take(rows);
            }
        } catch (SQLException trouble) {
            throw failed(sql, trouble);
        }
    }

    /** The text in a cell that is never empty; an empty one is told as damage. */
    static String text(ResultSet row, int column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).orElseThrow(EmptyCell::new);
    }

    /** A cell is empty in which something was written. */
    static final class EmptyCell extends SQLException {
        private static final long serialVersionUID = 1L;
    }

    <T> Optional<T> find(String sql, Row<T> row, @Nullable Object... values) {
        return list(sql, row, values).stream().findFirst();
    }

    /** The one number a query gives. */
    int number(String sql, @Nullable Object... values) {
        return find(sql, row -> row.getInt(1), values).orElseThrow();
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

    /**
     * All of the work or none of it. When this returns it is on disk; from its first moment no other process writes. The work may be done by
     * the thread of another that waited with it.
     */
    <T> T write(Supplier<T> work) {
        return writes.write(work);
    }

    /**
     * Everything read in it is of one moment; within a write it sees what was written so far. It ends by rolling back, since of a damaged file
     * not even nothing can be committed.
     */
    <T> T read(Supplier<T> work) {
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
