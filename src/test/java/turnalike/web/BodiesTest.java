package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bodies that no browser sends: broken ones are told as such and written down nowhere, slow ones hold nobody up. */
class BodiesTest {
    /** More than the server has threads. */
    private static final int SLOW = 300;

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @TempDir
    private Path folder = Path.of("");

    private static Socket open(int port) throws IOException {
        Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port);
        socket.setSoTimeout(60_000);
        return socket;
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        socket.getOutputStream().flush();
    }

    private static String head(int port, String type, int length) {
        return """
                POST /jobs HTTP/1.1
                Host: localhost:%1$d
                Origin: http://localhost:%1$d
                Cookie: turnalike-token=%2$s
                Content-Type: %3$s
                Content-Length: %4$d
                Connection: close

                """.formatted(port, TOKEN, type, length).replace("\n", "\r\n");
    }

    private static String part(String name, String value) {
        return "--edge\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n".formatted(name, value);
    }

    private record Body(String what, String type, String text) {}

    private static List<Body> broken() {
        String form = "multipart/form-data; boundary=edge";
        String many =
                IntStream.range(0, 1_001).mapToObj(i -> part("a" + i, "b")).collect(Collectors.joining());
        return List.of(
                new Body("no part at all", form, "units=mm&token=" + TOKEN),
                new Body("no boundary", "multipart/form-data", part("units", "mm") + "--edge--\r\n"),
                new Body("an empty boundary", "multipart/form-data; boundary=", part("units", "mm") + "--edge--\r\n"),
                new Body("another boundary", "multipart/form-data; boundary=rim", part("units", "mm") + "--edge--\r\n"),
                new Body("no end", form, part("token", TOKEN) + part("units", "mm")),
                new Body("a part without a name", form, "--edge\r\n\r\nmm\r\n--edge--\r\n"),
                new Body("1,001 parts", form, part("token", TOKEN) + many + "--edge--\r\n"),
                new Body(
                        "a character set nobody has",
                        "application/x-www-form-urlencoded; charset=nobodys",
                        "units=mm"));
    }

    @Test
    void a_broken_form_is_told_as_such_and_is_no_fault_of_ours() throws Exception {
        try (Served served = Served.in(folder)) { // its end asks whether a fault was told
            int before = served.store().list().size();
            for (Body each : broken()) {
                assertThat(answer(served.port(), each)).as(each.what()).startsWith("HTTP/1.1 400 ");
            }
            assertThat(served.store().list()).hasSize(before);
        }
    }

    private static String answer(int port, Body body) throws IOException {
        try (Socket socket = open(port)) {
            send(socket, head(port, body.type(), body.text().length()) + body.text());
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void bodies_that_never_come_hold_nobody_up() throws Exception {
        List<Socket> slow = new ArrayList<>();
        try (Served served = Served.in(folder)) {
            for (int i = 0; i < SLOW; i++) {
                Socket socket = open(served.port());
                slow.add(socket);
                send(socket, head(served.port(), "application/x-www-form-urlencoded", 5_000) + "units=");
            }
            // Every one of them stays open, and the page is answered all the same: with a thread for each it was not.
            assertThat(served.get("/").body()).contains("Harrowmead");
            assertThat(served.post("/jobs", "units=mm").statusCode()).isEqualTo(303);
            for (Socket socket : slow) {
                assertThat(socket.getInputStream().available()).isZero();
                socket.close();
            }
        }
    }
}
