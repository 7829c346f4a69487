package turnalike.web.lan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.junit.jupiter.api.Test;

class ConnectionCountTest {
    private static final InetAddress HOST = InetAddress.getLoopbackAddress();

    private final ConnectionCount count = new ConnectionCount();

    private static InetAddress device(int number) throws UnknownHostException {
        return InetAddress.getByAddress(new byte[] {10, 0, 0, (byte) number});
    }

    private int taken(InetAddress from, int tries) {
        int taken = 0;
        for (int i = 0; i < tries; i++) {
            taken += count.taken(from) ? 1 : 0;
        }
        return taken;
    }

    @Test
    void one_device_takes_its_share_and_leaves_the_others_theirs() throws Exception {
        assertThat(taken(device(1), 100)).isEqualTo(ConnectionCount.MOST_OF_A_DEVICE);
        assertThat(taken(device(2), 10)).isEqualTo(10);
        assertThat(taken(HOST, 300)).isEqualTo(300);
    }

    @Test
    void what_is_closed_makes_room_again() throws Exception {
        taken(device(1), ConnectionCount.MOST_OF_A_DEVICE);
        assertThat(count.taken(device(1))).isFalse();
        count.left(device(1)); // the one that was turned away
        assertThat(count.taken(device(1))).isFalse();
        count.left(device(1));
        count.left(device(1));
        assertThat(count.taken(device(1))).isTrue();
    }

    @Test
    void all_together_stay_below_what_a_program_may_open() throws Exception {
        assertThat(taken(HOST, 2 * ConnectionCount.MOST)).isEqualTo(ConnectionCount.MOST);
        assertThat(count.taken(device(1))).isFalse();
    }

    /** Over real connections: the first count of ours never counted one out, and the page was gone after seven hundred. */
    @Test
    void connections_that_come_and_go_are_counted_out() throws Exception {
        int most = 4;
        Server server = new Server();
        ServerConnector connector = new ServerConnector(server);
        connector.setHost("127.0.0.1");
        connector.addBean(new ConnectionCount(most));
        server.addConnector(connector);
        server.start();
        try {
            for (int i = 0; i < 5 * most; i++) {
                assertThat(asked(connector.getLocalPort()))
                        .as("connection %d", i)
                        .startsWith("HTTP/1.1 404");
            }
        } finally {
            server.stop();
        }
    }

    private static String asked(int port) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port)) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream()
                    .write("GET / HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
