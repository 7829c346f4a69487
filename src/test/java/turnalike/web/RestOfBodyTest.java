package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RestOfBodyTest {
    private final Server server = new Server();
    private final ServerConnector connector = new ServerConnector(server);

    /** Says no before it reads anything, and hangs up; at one address by the server's own way to tell of an error. */
    private static final class TurnsAway extends Handler.Abstract {
        @Override
        public boolean handle(Request request, Response response, Callback callback) {
            if (request.getHttpURI().getPath().equals("/error")) {
                Response.writeError(request, response, callback, 413, "too large");
                return true;
            }
            response.setStatus(413);
            response.getHeaders().put(HttpHeader.CONNECTION, "close");
            Content.Sink.write(response, true, "too large", callback);
            return true;
        }
    }

    private int start(long mostBytes, long mostMs) throws Exception {
        connector.setHost("127.0.0.1");
        server.addConnector(connector);
        RestOfBody rest = new RestOfBody(mostBytes, mostMs);
        rest.setHandler(new TurnsAway());
        server.setHandler(rest);
        server.start();
        return connector.getLocalPort();
    }

    @AfterEach
    void stop() throws Exception {
        server.stop();
    }

    private static Socket open(int port) throws Exception {
        Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port);
        socket.setSoTimeout(20_000);
        return socket;
    }

    private static void head(OutputStream out, int length) throws Exception {
        head(out, "/", length);
    }

    private static void head(OutputStream out, String path, int length) throws Exception {
        out.write("POST %s HTTP/1.1\r\nHost: here\r\nContent-Length: %d\r\n\r\n"
                .formatted(path, length)
                .getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/error"})
    void who_sends_on_after_the_answer_was_given_can_still_read_it(String path) throws Exception {
        try (Socket socket = open(start(8 << 20, 20_000))) {
            OutputStream out = socket.getOutputStream();
            head(out, path, 4 << 20);
            byte[] part = new byte[1 << 16];
            for (int sent = 0; sent < 4 << 20; sent += part.length) {
                out.write(part); // fails with a broken pipe where the server has hung up
                Thread.sleep(2);
            }
            socket.shutdownOutput();
            assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                    .startsWith("HTTP/1.1 413")
                    .contains("too large");
        }
    }

    @Test
    void the_answer_is_there_before_the_body() throws Exception {
        try (Socket socket = open(start(8 << 20, 60_000))) {
            head(socket.getOutputStream(), 4 << 20);
            assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.UTF_8))
                    .isEqualTo("HTTP/1.1 413");
        }
    }

    @Test
    void who_falls_silent_or_never_ends_is_hung_up_on() throws Exception {
        int port = start(1 << 20, 300);
        try (Socket silent = open(port)) {
            head(silent.getOutputStream(), 4 << 20);
            silent.getInputStream().readAllBytes(); // ends by the server's closing, else by the time-out above
            assertThat(gone(silent)).isTrue();
        }
        try (Socket endless = open(port)) {
            head(endless.getOutputStream(), 1 << 30);
            assertThat(gone(endless)).isTrue();
        }
    }

    /** Whether the line breaks while far more is sent than is let fall. */
    private static boolean gone(Socket socket) throws Exception {
        byte[] part = new byte[1 << 16];
        try {
            for (int i = 0; i < 1024; i++) {
                socket.getOutputStream().write(part);
            }
            return false;
        } catch (SocketException broken) {
            return true;
        }
    }

    @Test
    void a_request_without_a_body_is_answered_as_ever() throws Exception {
        try (Socket socket = open(start(1 << 20, 20_000))) {
            socket.getOutputStream().write("GET / HTTP/1.1\r\nHost: here\r\n\r\n".getBytes(StandardCharsets.UTF_8));
            assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                    .startsWith("HTTP/1.1 413")
                    .contains("too large");
        }
    }
}
