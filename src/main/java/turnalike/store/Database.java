package turnalike.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;

/**
 * What jobs are kept in, and the few ways it is spoken to: the same rows and the same SQL, whether in one SQLite file or in a PostgreSQL
 * database that several benches share. Whatever it complains of is thrown as {@link StoreException}. May be used by several threads.
 */
interface Database extends AutoCloseable {
    /** Makes one row into a value. */
    interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** Takes one row. */
    interface EachRow {
        void take(ResultSet row) throws SQLException;
    }

    /** A cell is empty in which something was written. */
    final class EmptyCell extends SQLException {
        private static final long serialVersionUID = 1L;
    }

    /** The text in a cell that is never empty; an empty one is told as damage. */
    static String text(ResultSet row, int column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).orElseThrow(EmptyCell::new);
    }

    /** What messages call it: the file, or the address without its password. */
    String place();

    /** Runs one statement with these values for its question marks, and returns how many rows it changed. */
    int run(String sql, @Nullable Object... values);

    /** Row by row, for more than should be held at once; no other query of the same text may begin before the last row. */
    void each(String sql, EachRow row, @Nullable Object... values);

    default <T> List<T> list(String sql, Row<T> row, @Nullable Object... values) {
        List<T> out = new ArrayList<>();
        each(sql, found -> out.add(row.of(found)), values);
        return out;
    }

    default <T> Optional<T> find(String sql, Row<T> row, @Nullable Object... values) {
        return list(sql, row, values).stream().findFirst();
    }

    /** The one number a query gives. */
    default int number(String sql, @Nullable Object... values) {
        return find(sql, row -> row.getInt(1), values).orElseThrow();
    }

    /**
     * All of the work or none of it. When this returns it is kept for good; from its first moment nobody else writes. The work may be done by
     * the thread of another that waited with it, and is done once more where a server was lost before it was kept.
     */
    <T> T write(Supplier<T> work);

    /**
     * Everything read in it is of one moment; within a write it sees what was written so far. The work is done once more where a server was
     * lost meanwhile.
     */
    <T> T read(Supplier<T> work);

    /** The schema's version. */
    int version();

    /** What is wrong with the tables, indexes and triggers; empty when they are as the scripts made them. */
    Optional<String> tablesFault(Schema schema);

    /** Everything found wrong below the rows, a line each. */
    List<String> integrityFaults();

    /** Queries that find the jobs' ids, several ways, since a damaged page ends a scan. */
    List<String> idScans();

    /** That what is kept is not what was written. */
    StoreException damaged(String how);

    /** Where what was kept may stand a second time. */
    String adviceOnBackups();

    /** Tells whoever watches that a job was written to, once the write is kept. Called within it. */
    default void tell(JobId id) {}

    /** Tells, from a thread of its own, whenever something may have been written by anybody; until it is closed. */
    KeptJobs.Watch watch(Runnable changed);

    @Override
    void close();
}
