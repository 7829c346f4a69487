package turnalike.web.lan;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.ssl.SslConnection;

/**
 * How many connections may stand open. One more from an address that has its share is closed, so that no device takes those of the others;
 * this machine has all that is left. May be used by several threads.
 */
public final class ConnectionCount implements Connection.Listener {
    /** A browser opens six; a shop's router may stand for several devices. */
    static final int MOST_OF_A_DEVICE = 48;

    /** Below what systems commonly let one program open, 1,024 files in all. */
    static final int MOST = 700;

    private final int most;
    private final Map<InetAddress, Integer> open = new HashMap<>();
    /** Whose each is: a connection that is closed no longer says where it came from. */
    private final IdentityHashMap<Connection, InetAddress> senders = new IdentityHashMap<>();

    private int all;

    public ConnectionCount() {
        this(MOST);
    }

    ConnectionCount(int most) {
        this.most = most;
    }

    @Override
    public void onOpened(Connection connection) {
        // One that is encrypted stands for the one within it, which is counted.
        if (!(connection instanceof SslConnection)
                && connection.getEndPoint().getRemoteSocketAddress() instanceof InetSocketAddress from
                && !taken(connection, from.getAddress())) {
            connection.close();
        }
    }

    private synchronized boolean taken(Connection connection, InetAddress from) {
        senders.put(connection, from);
        return taken(from);
    }

    @Override
    public synchronized void onClosed(Connection connection) {
        Optional.ofNullable(senders.remove(connection)).ifPresent(this::left);
    }

    /** Counts one from the address, also one that must go: it is counted out when it is closed. Whether it may stay. */
    synchronized boolean taken(InetAddress from) {
        int now = open.merge(from, 1, Integer::sum);
        all++;
        return all <= most && (from.isLoopbackAddress() || now <= MOST_OF_A_DEVICE);
    }

    synchronized void left(InetAddress from) {
        all--;
        open.computeIfPresent(from, (address, now) -> now > 1 ? now - 1 : null);
    }
}
