package turnalike.web.lan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobStore;
import turnalike.reach.Outside;
import turnalike.reach.PublicAddress;
import turnalike.store.StoreFile;
import turnalike.web.Site;
import turnalike.web.jobs.FirstJobs;

/** What a server on the same machine passes on, in the words it would use: every connection comes from this machine, yet not its owner. */
class BehindProxyTest {
    private static final String PASSED_ON = "Host: turn.example.org\nX-Forwarded-For: %s\n";
    private static final String HERE = "Host: localhost:%d\n";
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([^\"]+)\"");

    @TempDir
    private Path folder;

    private final List<String> codes = new ArrayList<>();
    private final List<Exception> faults = new ArrayList<>();
    private JobStore store;
    private Site site;

    @BeforeEach
    void serve() throws Site.PortTaken {
        store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC());
        FirstJobs.keep(store);
        Sharing sharing = Sharing.of(folder.resolve("jobs.db.devices"), Clock.systemUTC(), codes::add)
                .behindProxy();
        Outside outside = new Outside(false, Optional.empty(), PublicAddress.parse("https://turn.example.org"));
        site = Site.start(new Site.Reach(0, Optional.of(sharing), outside), store, faults::add);
    }

    @AfterEach
    void close() {
        site.close();
        store.close();
        assertThat(faults).isEmpty();
    }

    private String sent(String request, String body) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), site.port())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write((request.replace("\n", "\r\n") + "Connection: close\r\n\r\n" + body)
                            .getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String get(String path, String head) throws IOException {
        return sent("GET " + path + " HTTP/1.1\n" + head, "");
    }

    private String pairing(String from, String code) throws IOException {
        String page = get("/pair", PASSED_ON.formatted(from));
        Matcher token = TOKEN.matcher(page);
        assertThat(token.find()).as(page).isTrue();
        String body = "name=phone&code=" + code + "&token=" + token.group(1);
        String head = "Origin: https://turn.example.org\nCookie: turnalike-token=" + token.group(1)
                + "\nContent-Type: application/x-www-form-urlencoded\nContent-Length: " + body.length() + "\n";
        return sent("POST /pair HTTP/1.1\n" + PASSED_ON.formatted(from) + head, body);
    }

    @Test
    void what_is_passed_on_must_be_paired_and_then_has_cookies_that_go_encrypted_alone() throws IOException {
        String phone = PASSED_ON.formatted("10.0.0.7");
        assertThat(get("/", phone)).startsWith("HTTP/1.1 303").contains("Location: /pair");
        assertThat(get("/devices", phone)).doesNotContain(codes.get(0));
        String paired = pairing("10.0.0.7", codes.get(0));
        assertThat(paired).startsWith("HTTP/1.1 303").containsIgnoringCase("; secure");
        String secret = paired.replaceAll("(?s).*(turnalike-device=[^;]+);.*", "$1");
        assertThat(get("/", phone + "Cookie: " + secret + "\n"))
                .startsWith("HTTP/1.1 200")
                .contains("Harrowmead");
    }

    @Test
    void this_machine_s_own_browser_is_let_in_and_minds_the_devices() throws IOException {
        String here = HERE.formatted(site.port());
        assertThat(get("/", here)).startsWith("HTTP/1.1 200").contains("Harrowmead");
        assertThat(get("/devices", here)).startsWith("HTTP/1.1 200").contains("https://turn.example.org/");
    }

    /** Else everybody who comes by it would be taken for this machine. */
    @Test
    void a_server_that_hides_for_whom_it_asks_is_not_taken_for_this_machine() throws IOException {
        assertThat(get("/", "Host: 127.0.0.1:%d\n".formatted(site.port())))
                .startsWith("HTTP/1.1 421")
                .contains("must pass on the Host");
        String here = HERE.formatted(site.port());
        assertThat(get("/", here + "X-Forwarded-For: 10.0.0.7\n")).startsWith("HTTP/1.1 303");
        assertThat(get("/", here + "Via: 1.1 front\n")).startsWith("HTTP/1.1 303");
        assertThat(sent("GET / HTTP/1.0\n" + here, "")).contains(" 303 ");
    }

    @Test
    void each_address_that_is_passed_on_has_its_own_tries_by_the_last_that_is_named() throws IOException {
        assertThat(pairing("10.0.0.7", "000")).contains("not the code");
        assertThat(pairing("10.0.0.7", "000")).contains("Wait a second");
        assertThat(pairing("10.0.0.9, 10.0.0.7", "000")).contains("Wait a second");
        assertThat(pairing("10.0.0.8", codes.get(0))).startsWith("HTTP/1.1 303");
    }
}
