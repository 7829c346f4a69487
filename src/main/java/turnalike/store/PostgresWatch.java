package turnalike.store;

import java.sql.Connection;
import java.sql.SQLException;

/** Listens to what benches tell each other of their writes, on a connection of its own; one that is lost is made anew. */
final class PostgresWatch {
    private PostgresWatch() {}

    static WatchThread begin(PostgresAddress address, Runnable changed) {
        return WatchThread.begin(watch -> {
            try (Connection connection = PostgresLink.connectToListen(address)) {
                changed.run(); // what was told before this connection stood
                listen(connection, watch, changed);
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
