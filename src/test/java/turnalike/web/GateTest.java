package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.job.kept.JobText;

class GateTest {
    @TempDir
    private Path folder;

    private Served served;

    @BeforeEach
    void serve() throws Site.PortTaken {
        served = Served.in(folder);
    }

    @AfterEach
    void close() {
        served.close();
    }

    /** Sends bytes as no well-behaved client would, and gives what comes back. */
    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), served.port())) {
            socket.setSoTimeout(5_000);
            OutputStream out = socket.getOutputStream();
            out.write(request.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
            socket.shutdownOutput();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private int jobs() {
        return served.store().list().size();
    }

    @Test
    void our_own_page_may_change_things() throws Exception {
        int before = jobs();
        HttpResponse<String> answer = served.post("/jobs", "units=mm");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(jobs()).isEqualTo(before + 1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"evil.example", "evil.example:%d", "localhost", "127.0.0.1.evil.example:%d", "localhost:1", ""})
    void a_name_rebound_to_this_machine_is_not_served(String host) throws IOException {
        String answer = raw("GET / HTTP/1.1\nHost: %s\nConnection: close\n\n".formatted(host.formatted(served.port())));
        assertThat(answer).doesNotContain("Harrowmead");
        assertThat(answer).matches("(?s)HTTP/1.1 (421|400) .*");
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost:%d", "127.0.0.1:%d", "[::1]:%d"})
    void our_own_names_are_served(String host) throws IOException {
        String answer = raw("GET / HTTP/1.1\nHost: %s\nConnection: close\n\n".formatted(host.formatted(served.port())));
        assertThat(answer).startsWith("HTTP/1.1 200").contains("Harrowmead");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://evil.example",
                "null",
                "https://localhost:%d",
                "http://localhost:1",
                "http://localhost",
                "http://localhost:%d.evil.example",
                "http://localhost:%d0",
                "http://localhost:%d@evil.example",
                "http://evil.example/http://localhost:%d",
                "http://127.0.0.1:%d",
                ""
            })
    void a_page_elsewhere_cannot_send_a_form(String origin) throws IOException {
        int before = jobs();
        String header = origin.isEmpty() ? "" : "Origin: " + origin.formatted(served.port()) + "\n";
        String body = "units=mm&token=AAAAAAAAAAAAAAAAAAAAAA";
        String answer = raw("""
                POST /jobs HTTP/1.1
                Host: localhost:%d
                %sCookie: turnalike-token=AAAAAAAAAAAAAAAAAAAAAA
                Content-Type: application/x-www-form-urlencoded
                Content-Length: %d
                Connection: close

                """.formatted(served.port(), header, body.length()) + body);
        assertThat(answer).startsWith("HTTP/1.1 403");
        assertThat(jobs()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "BBBBBBBBBBBBBBBBBBBBBB",
                "AAAAAAAAAAAAAAAAAAAAA",
                "AAAAAAAAAAAAAAAAAAAAAAA",
                "aaaaaaaaaaaaaaaaaaaaaa"
            })
    void a_form_without_the_pages_token_changes_nothing(String token) throws IOException {
        int before = jobs();
        String body = "units=mm&token=" + token;
        String answer = raw("""
                POST /jobs HTTP/1.1
                Host: localhost:%1$d
                Origin: http://localhost:%1$d
                Cookie: turnalike-token=AAAAAAAAAAAAAAAAAAAAAA
                Content-Type: application/x-www-form-urlencoded
                Content-Length: %2$d
                Connection: close

                """.formatted(served.port(), body.length()) + body);
        assertThat(answer).startsWith("HTTP/1.1 403");
        assertThat(jobs()).isEqualTo(before);
    }

    /** No token is not the same as no token: who never saw a page of ours cannot have the right one. */
    @Test
    void a_form_of_someone_without_a_token_changes_nothing() throws IOException {
        int before = jobs();
        for (String body : new String[] {"units=mm", "units=mm&token="}) {
            for (String cookie : new String[] {"", "Cookie: turnalike-token=\n"}) {
                String answer = raw("""
                        POST /jobs HTTP/1.1
                        Host: localhost:%1$d
                        Origin: http://localhost:%1$d
                        %2$sContent-Type: application/x-www-form-urlencoded
                        Content-Length: %3$d
                        Connection: close

                        """.formatted(served.port(), cookie, body.length()) + body);
                assertThat(answer).startsWith("HTTP/1.1 403");
            }
        }
        assertThat(jobs()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/assets/../../../../etc/passwd",
                "/assets/%2e%2e%2fpage.css",
                "/assets/..%5cpage.css",
                "/assets/%2e%2e/%2e%2e/etc/passwd",
                "/assets/turnalike/store/V1.sql",
                "/assets//etc/passwd",
                "/../etc/passwd",
                "/jobs/..%2f..%2fetc/job.json",
                "/assets/Main.class"
            })
    void no_path_leads_out_of_what_is_served(String path) throws IOException {
        String answer =
                raw("GET %s HTTP/1.1\nHost: localhost:%d\nConnection: close\n\n".formatted(path, served.port()));
        assertThat(answer)
                .matches("(?s)HTTP/1.1 40[04] .*")
                .doesNotContain("root:")
                .doesNotContain("CREATE TABLE");
    }

    @Test
    void more_than_a_megabyte_is_not_taken_whatever_it_says_of_its_length() throws Exception {
        String large = "x".repeat(1_200_000);
        int jobs = jobs();
        assertThat(served.post("/jobs", "units=" + large).statusCode()).isEqualTo(413);
        assertThat(jobs()).isEqualTo(jobs);
        StringBuilder chunked = new StringBuilder("""
                POST /jobs HTTP/1.1
                Host: localhost:%1$d
                Origin: http://localhost:%1$d
                Cookie: turnalike-token=AAAAAAAAAAAAAAAAAAAAAA
                Content-Type: application/x-www-form-urlencoded
                Transfer-Encoding: chunked
                Connection: close

                """.formatted(served.port()));
        String chunk = "a=" + "y".repeat(0xfffe - 2) + "&\n";
        for (int i = 0; i < 40; i++) {
            chunked.append("ffff\n").append(chunk);
        }
        int before = jobs();
        assertThat(raw(chunked.append("0\n\n").toString())).startsWith("HTTP/1.1 413");
        assertThat(jobs()).isEqualTo(before);
    }

    @Test
    void a_request_shorter_than_it_says_changes_nothing() throws IOException {
        int before = jobs();
        String answer = raw("""
                POST /jobs HTTP/1.1
                Host: localhost:%1$d
                Origin: http://localhost:%1$d
                Content-Type: application/x-www-form-urlencoded
                Content-Length: 5000
                Connection: close

                units=mm""".formatted(served.port()));
        assertThat(answer).doesNotStartWith("HTTP/1.1 2").doesNotStartWith("HTTP/1.1 303");
        assertThat(jobs()).isEqualTo(before);
    }

    @Test
    void markup_in_names_stays_text() throws Exception {
        String attack = "<script>alert(1)</script>\\\"><img src=x onerror=alert(2)>&amp;";
        String json = """
                {"format": "turnalike-job", "version": 1, "title": "%1$s", "units": "mm",
                 "pattern": {"name": "%1$s", "stock": {"section": "round", "size": 30, "length": 100},
                  "members": [{"kind": "cylinder", "name": "%1$s", "length": 100, "diameter": 20}]},
                 "wood": {"density_kg_m3": 700}}
                """.formatted(attack);
        var id = served.store().keep(JobText.read(json).text().orElseThrow());
        for (String path : new String[] {"/", "/jobs/" + id.text()}) {
            HttpResponse<String> page = served.get(path);
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body())
                    .containsPattern("&lt;script(>|&gt;)alert\\(1\\)")
                    .doesNotContain("<script>alert")
                    .doesNotContain("<img src=x");
        }
    }

    @Test
    void every_answer_forbids_what_we_do_not_use() throws Exception {
        for (String path : new String[] {"/", "/jobs/" + served.demo().text(), "/assets/page.js", "/nowhere"}) {
            HttpResponse<String> answer = served.get(path);
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElse("");
            assertThat(policy)
                    .contains("default-src 'none'")
                    .contains("script-src 'self'")
                    .contains("style-src 'self'")
                    .contains("form-action 'self'")
                    .contains("base-uri 'none'")
                    .contains("frame-ancestors 'none'");
            assertThat(policy).doesNotContain("unsafe").doesNotContain("*").doesNotContain("http");
            assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(answer.headers().firstValue("X-Frame-Options")).contains("DENY");
        }
    }

    @Test
    void pages_carry_no_script_or_style_of_their_own_and_load_nothing_from_elsewhere() throws Exception {
        for (String path : new String[] {"/", "/jobs/" + served.demo().text()}) {
            String page = served.get(path).body().replace("http://www.w3.org/2000/svg", "");
            assertThat(page)
                    .doesNotContainPattern("\\son[a-z]+=")
                    .doesNotContain("style=")
                    .doesNotContain("<style");
            assertThat(page)
                    .doesNotContain("http://")
                    .doesNotContain("https://")
                    .doesNotContainPattern("<script(?! src)");
        }
    }

    /** Whoever listens on every address is also found at this one, by which only this machine can ask. */
    @Test
    void unless_it_is_shared_it_listens_at_one_address_of_this_machine() throws IOException {
        try (Socket socket = new Socket()) {
            InetSocketAddress another =
                    new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 2}), served.port());
            assertThatThrownBy(() -> socket.connect(another, 5_000)).isInstanceOf(ConnectException.class);
        }
    }

    @Test
    void nothing_is_done_by_a_method_we_do_not_use() throws Exception {
        var request = served.request("/jobs")
                .method("DELETE", java.net.http.HttpRequest.BodyPublishers.noBody())
                .build();
        int status = java.net.http.HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.discarding())
                .statusCode();
        assertThat(status).isEqualTo(405);
    }
}
