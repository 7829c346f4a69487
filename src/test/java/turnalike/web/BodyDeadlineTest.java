package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class BodyDeadlineTest {
    private final Server server = new Server();
    private final ServerConnector connector = new ServerConnector(server);

    /** Answers with how many letters came. */
    private static final class Counts extends Handler.Abstract {
        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            int length =
                    Content.Source.asString(request, StandardCharsets.UTF_8).length();
            Content.Sink.write(response, true, "got " + length, callback);
            return true;
        }
    }

    private int start(long graceMs) throws Exception {
        connector.setHost("127.0.0.1");
        server.addConnector(connector);
        BodyDeadline deadline = new BodyDeadline(graceMs, 1_000_000);
        deadline.setHandler(new Counts());
        server.setHandler(deadline);
        server.start();
        return connector.getLocalPort();
    }

    @AfterEach
    void stop() throws Exception {
        server.stop();
    }

    private static String sent(int port, String body, int length) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port)) {
            socket.setSoTimeout(25_000); // below the server's own patience of 30 s with silence
            String head = "POST / HTTP/1.1\r\nHost: here\r\nConnection: close\r\nContent-Length: %d\r\n\r\n";
            socket.getOutputStream().write((head.formatted(length) + body).getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (SocketException hungUp) {
            return "";
        }
    }

    @Test
    void a_body_that_never_ends_is_hung_up_on() throws Exception {
        assertThat(sent(start(300), "units=", 500)).doesNotContain("got");
    }

    @Test
    void a_body_that_is_there_is_answered() throws Exception {
        assertThat(sent(start(20_000), "units=mm", 8)).contains("200 OK", "got 8");
        assertThat(sent(connector.getLocalPort(), "", 0)).contains("200 OK", "got 0");
    }
}
