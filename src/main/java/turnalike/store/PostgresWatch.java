package turnalike.store;

import java.sql.Connection;
import java.sql.SQLException;
import turnalike.job.kept.StoreException;

/** Listens to what benches tell each other of their writes, on a connection of its own; one that is lost is made anew. */
final class PostgresWatch {
    private static final long PAUSE_MS = 500;

    private PostgresWatch() {}

    static WatchThread begin(PostgresAddress address, Runnable changed) {
        return WatchThread.begin(watch -> {
            while (!watch.isStopped()) {
                try (Connection connection = PostgresLink.connectToListen(address)) {
                    changed.run(); // what was told before this connection stood
                    listen(connection, watch, changed);
                } catch (SQLException | StoreException lost) {
                    watch.pause(PAUSE_MS);
                }
            }
        });
    }

    private static void listen(Connection connection, WatchThread watch, Runnable changed) throws SQLException {
        while (!watch.isStopped()) {
            if (PostgresLink.hasBeenTold(connection)) {
                changed.run();
            }
        }
    }
}
