package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.security.cert.CertificateFactory;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobStore;
import turnalike.reach.Certificates;
import turnalike.reach.Outside;
import turnalike.reach.OwnCertificate;
import turnalike.reach.PemFiles;
import turnalike.store.StoreFile;
import turnalike.web.jobs.FirstJobs;

/** The page by HTTPS, asked by Java's own client, which trusts the certificate of this test alone and checks its name. */
class SecureDoorTest {
    @TempDir
    private Path folder;

    private final List<Exception> faults = new ArrayList<>();
    private JobStore store;
    private Site site;
    private SSLContext trusting;
    private HttpClient client;

    @BeforeEach
    void serve() throws Exception {
        Certificates.Pair files = Certificates.of(folder, "own", "EC", "dns:localhost,dns:bench.test");
        OwnCertificate own = PemFiles.read(files.certificate(), files.key(), Instant.now());
        store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC());
        FirstJobs.keep(store);
        Outside outside = new Outside(false, Optional.of(own), Optional.empty());
        site = Site.start(new Site.Reach(0, Optional.empty(), outside), store, faults::add);
        trusting = trusting(files.certificate());
        client = HttpClient.newBuilder().sslContext(trusting).build();
    }

    @AfterEach
    void close() {
        site.close();
        store.close();
        assertThat(faults).isEmpty();
    }

    private static SSLContext trusting(Path certificate) throws Exception {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        try (InputStream in = Files.newInputStream(certificate)) {
            trusted.setCertificateEntry(
                    "one", CertificateFactory.getInstance("X.509").generateCertificate(in));
        }
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), new SecureRandom());
        return context;
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("https://localhost:" + site.port() + path));
    }

    private HttpResponse<String> sent(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** What comes back when these lines are sent without encryption. */
    private String plainly(String... lines) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), site.port())) {
            return answer(socket, lines);
        }
    }

    private static String answer(Socket socket, String... lines) throws IOException {
        socket.setSoTimeout(10_000);
        String text = String.join("\r\n", lines) + "\r\n\r\n";
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void the_page_comes_encrypted_and_takes_edits_with_cookies_that_go_no_other_way() throws Exception {
        assertThat(site.address()).isEqualTo("https://localhost:" + site.port() + "/");
        HttpResponse<String> page = sent(request("/"));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("Harrowmead");
        String cookie = page.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie)
                .contains("turnalike-token=")
                .containsIgnoringCase("; secure")
                .containsIgnoringCase("httponly");
        String token = cookie.replaceAll("(?s).*turnalike-token=([^;]+);.*", "$1");
        HttpRequest.Builder edit = request("/jobs")
                .header("Cookie", "turnalike-token=" + token)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("units=mm&token=" + token));
        int before = store.list().size();
        assertThat(sent(edit.copy().header("Origin", "http://localhost:" + site.port()))
                        .statusCode())
                .isEqualTo(403);
        assertThat(store.list()).hasSize(before);
        assertThat(sent(edit.header("Origin", "https://localhost:" + site.port()))
                        .statusCode())
                .isEqualTo(303);
        assertThat(store.list()).hasSize(before + 1);
    }

    @Test
    void who_speaks_plainly_is_sent_to_the_encrypted_address_and_no_other() throws Exception {
        String port = ":" + site.port();
        assertThat(plainly("GET /help?a=b HTTP/1.1", "Host: bench.test" + port))
                .startsWith("HTTP/1.1 308")
                .contains("Location: https://bench.test" + port + "/help?a=b\r\n")
                .doesNotContain("Harrowmead");
        assertThat(plainly("GET / HTTP/1.1", "Host: elsewhere.example" + port))
                .startsWith("HTTP/1.1 421")
                .contains("open the address the program printed")
                .doesNotContain("Location");
        assertThat(plainly("POST /jobs HTTP/1.1", "Host: bench.test" + port, "Content-Length: 1000000"))
                .startsWith("HTTP/1.1 308");
    }

    @Test
    void it_is_asked_by_the_names_of_the_certificate_and_by_no_other() throws Exception {
        assertThat(encrypted("bench.test")).startsWith("HTTP/1.1 200");
        assertThat(encrypted("elsewhere.example")).startsWith("HTTP/1.1 421");
    }

    private String encrypted(String name) throws IOException {
        try (Socket socket = trusting.getSocketFactory().createSocket("127.0.0.1", site.port())) {
            return answer(socket, "GET /help HTTP/1.1", "Host: " + name + ":" + site.port(), "Connection: close");
        }
    }
}
