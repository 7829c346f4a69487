package turnalike.store;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.postgresql.Driver;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/** Makes connections to PostgreSQL. The only class that touches its driver, which is loaded when the first is asked for. */
final class PostgresLink {
    /** The schema our tables stand in. */
    static final String SCHEMA = "turnalike";

    /** On which benches tell each other what they wrote to. */
    static final String CHANNEL = "turnalike";

    /** How long a server that restarts is waited for. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** A server that starts is there within it, as a rule. */
    private static final Duration STARTING = Duration.ofSeconds(5);

    private static final int LISTENED_MS = 1_000;

    private static final Duration PAUSE = Duration.ofMillis(100);

    /**
     * What is read is of one moment and writes nothing; what is kept is on the server's disk before it is told so, whatever the server's
     * settings are; a bench that breaks off in the middle does not keep the others waiting for ever.
     */
    private static final String SESSION = String.join(
            "; ",
            "SET search_path = " + SCHEMA,
            "set session characteristics as transaction isolation level repeatable read read only",
            "SET synchronous_commit = on",
            "SET lock_timeout = '20s'",
            "SET idle_in_transaction_session_timeout = '60s'");

    private PostgresLink() {}

    /** A connection; a server that is just starting is waited for, any other trouble told at once. */
    static Connection connect(PostgresAddress address) {
        return connect(address, STARTING, false);
    }

    /** A connection to a server that was there a moment ago. */
    static Connection connectPatiently(PostgresAddress address) {
        return connect(address, PATIENCE, true);
    }

    /** A connection on which benches are heard. */
    static Connection connectToListen(PostgresAddress address) throws SQLException {
        Connection made = connect(address);
        boolean done = false;
        try (Statement statement = made.createStatement()) {
            made.setAutoCommit(true);
            statement.execute("LISTEN " + CHANNEL);
            done = true;
            return made;
        } finally {
            if (!done) {
                made.close();
            }
        }
    }

    /** Waits up to a second; whether anything was told. */
    static boolean hasBeenTold(Connection connection) throws SQLException {
        PGNotification[] told = connection.unwrap(PGConnection.class).getNotifications(LISTENED_MS);
        return told != null && told.length > 0;
    }

    private static Connection connect(PostgresAddress address, Duration patience, boolean wasThere) {
        long until = System.nanoTime() + patience.toNanos();
        while (true) {
            try {
                return connectOnce(address);
            } catch (SQLException trouble) {
                boolean again = PostgresErrors.isPassing(trouble) || (wasThere && PostgresErrors.isLoss(trouble));
                if (!again || System.nanoTime() > until) {
                    throw PostgresErrors.connecting(address, trouble);
                }
                pause(address);
            }
        }
    }

    private static void pause(PostgresAddress address) {
        try {
            Thread.sleep(PAUSE.toMillis());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new StoreException(new Problem(address.place(), "was given up on", "try again"), stop);
        }
    }

    private static Connection connectOnce(PostgresAddress address) throws SQLException {
        Properties how = new Properties();
        how.setProperty("user", address.user());
        address.password()
                .or(() -> Optional.ofNullable(System.getenv("PGPASSWORD")))
                .ifPresent(password -> how.setProperty("password", password));
        how.putAll(address.settings());
        how.putAll(Map.of(
                "ApplicationName", "Turnalike",
                "connectTimeout", "10",
                "loginTimeout", "15",
                "socketTimeout", "60",
                "tcpKeepAlive", "true"));
        String url = String.format(
                Locale.ROOT, "jdbc:postgresql://%s:%d/%s", address.host(), address.port(), encoded(address.database()));
        Connection made = Optional.ofNullable(new Driver().connect(url, how))
                .orElseThrow(() -> new SQLException("not understood", "08001"));
        try (Statement statement = made.createStatement()) {
            statement.execute(SESSION);
            made.setAutoCommit(false);
            return made;
        } catch (SQLException trouble) {
            made.close();
            throw trouble;
        }
    }

    /** As the driver decodes it. */
    private static String encoded(String name) {
        StringBuilder out = new StringBuilder();
        for (byte each : name.getBytes(StandardCharsets.UTF_8)) {
            char letter = (char) (each & 0xff);
            boolean plain = letter < 128 && (Character.isLetterOrDigit(letter) || letter == '_' || letter == '-');
            out.append(plain ? String.valueOf(letter) : String.format(Locale.ROOT, "%%%02X", each));
        }
        return out.toString();
    }
}
