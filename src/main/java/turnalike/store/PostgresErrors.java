package turnalike.store;

import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Supplier;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/**
 * What PostgreSQL complains of, in the user's words. By its five-letter states, "PostgreSQL Error Codes", appendix A of its manual (from
 * memory); never in its own words, which may hold anything.
 */
final class PostgresErrors {
    private PostgresErrors() {}

    /** Whether the server, or the way to it, is gone: another try may find it again. */
    static boolean isLoss(SQLException trouble) {
        String state = state(trouble);
        return state.startsWith("08") || state.startsWith("57P0") || state.equals("25P03") || state.equals("25P04");
    }

    /** Whether the server is there and not ready yet, or has no place for one more at the moment. */
    static boolean isPassing(SQLException trouble) {
        return state(trouble).equals("57P03") || state(trouble).equals("53300");
    }

    private static String state(SQLException trouble) {
        return Optional.ofNullable(trouble.getSQLState()).orElse("");
    }

    /** What went wrong while the connection was made. */
    static StoreException connecting(PostgresAddress address, SQLException trouble) {
        return switch (state(trouble)) {
            case "28P01", "28000" ->
                told(
                        address,
                        "refuses this user, this password or this machine",
                        "check the user and the password, which may also stand in your file .pgpass, and the server's pg_hba.conf",
                        trouble);
            case "3D000" ->
                told(
                        address,
                        "there is no such database",
                        "check its name, or have it made: createdb %s".formatted(address.database()),
                        trouble);
            case "57P03" -> told(address, "is starting or stopping", "try again in a moment", trouble);
            case "53300" -> told(address, "has no connection left", "try again, or raise max_connections", trouble);
            case "08004" ->
                told(
                        address,
                        "asks for a password or refuses this machine",
                        "give it as user:password@, or in the file .pgpass",
                        trouble);
            default ->
                isLoss(trouble)
                        ? told(
                                address,
                                "cannot be reached",
                                "check that PostgreSQL runs there, the host and the port, and what stands between",
                                trouble)
                        : told(
                                address,
                                "cannot be spoken to (%s)".formatted(state(trouble)),
                                "check that it is a PostgreSQL database, and the address",
                                trouble);
        };
    }

    /**
     * What went wrong while it was spoken to.
     *
     * @param tables asked where a statement could not be understood: what is wrong with the tables, if they are not as made
     */
    static RuntimeException of(PostgresAddress address, SQLException trouble, Supplier<Optional<String>> tables) {
        if (trouble instanceof Database.EmptyCell) {
            return damaged(address, "a cell is empty in which something was written", trouble);
        }
        String state = state(trouble);
        if (isLoss(trouble)) {
            return told(address, "the connection was lost", "nothing was changed; try again", trouble);
        }
        return switch (state) {
            case "53100" ->
                told(address, "the server's disk is full", "free some space there; nothing was changed", trouble);
            case "53200", "54000" ->
                told(address, "the server has not enough memory", "nothing was changed; look at the server", trouble);
            case "58030", "58000" ->
                told(address, "the server's disk failed", "check that disk; nothing was changed", trouble);
            case "55P03", "40001", "40P01", "57014" ->
                told(
                        address,
                        "is in use by another bench",
                        "try again when that is done; nothing was changed",
                        trouble);
            case "42501", "25006" ->
                told(
                        address,
                        "this user may not write there",
                        "have the right given to him, or take another user; nothing was changed",
                        trouble);
            case "22021", "22P05" ->
                told(
                        address,
                        "holds no letter of what was to be kept",
                        "take that letter out, or have the database made with the encoding UTF8",
                        trouble);
            default ->
                state.startsWith("XX")
                        ? damaged(address, "PostgreSQL finds it so (%s)".formatted(state), trouble)
                        : notUnderstood(address, trouble, tables);
        };
    }

    /** Our own fault, unless the tables are no longer those we speak to. */
    private static RuntimeException notUnderstood(
            PostgresAddress address, SQLException trouble, Supplier<Optional<String>> tables) {
        return tables.get()
                .<RuntimeException>map(how -> damaged(address, how, trouble))
                .orElseGet(() -> new IllegalStateException("the store was spoken to wrongly", trouble));
    }

    static StoreException damaged(PostgresAddress address, String how, Throwable cause) {
        return new StoreException(damage(address, how), cause);
    }

    static StoreException damaged(PostgresAddress address, String how) {
        return new StoreException(damage(address, how));
    }

    private static Problem damage(PostgresAddress address, String how) {
        return new Problem(
                address.place(),
                "is damaged: %s; it is left as it is".formatted(SqliteErrors.oneLine(how)),
                "'turnalike check' tells what can be read, 'turnalike give' takes that out; " + ADVICE);
    }

    /** Where what was kept may stand a second time. */
    static final String ADVICE = "ask whoever runs the database for his backup of it";

    static StoreException noStore(PostgresAddress address) {
        return new StoreException(new Problem(
                address.place(),
                "holds no store yet",
                "check the name; 'turnalike keep' and 'turnalike serve' make one"));
    }

    static StoreException later(PostgresAddress address, int version) {
        return new StoreException(new Problem(
                address.place(),
                "was written by a later Turnalike (schema %d, this one knows %d)"
                        .formatted(version, Schema.SHIPPED.newest()),
                "use that Turnalike on this machine too; the database is left as it is"));
    }

    static StoreException earlier(PostgresAddress address, int version) {
        return new StoreException(new Problem(
                address.place(),
                "is of an earlier Turnalike (schema %d, this one writes %d)"
                        .formatted(version, Schema.SHIPPED.newest()),
                "open it with 'serve' or 'keep', which bring it up"));
    }

    static StoreException ofAnother(PostgresAddress address, String tables) {
        return new StoreException(new Problem(
                address.place(),
                "is the database of another program (tables %s); it is left as it is"
                        .formatted(SqliteErrors.oneLine(tables)),
                "check the name, or have a database made for Turnalike alone: createdb turnalike"));
    }

    /** The server was lost while it was told to keep a write, and has not come back. */
    static StoreException unknown(PostgresAddress address, Throwable cause) {
        return told(
                address,
                "the connection was lost just as a change was being kept, and has not come back",
                "look at the job's history before you make the change again",
                cause);
    }

    private static StoreException told(PostgresAddress address, String what, String mend, Throwable cause) {
        return new StoreException(new Problem(address.place(), what, mend), cause);
    }
}
