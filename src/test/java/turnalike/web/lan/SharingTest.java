package turnalike.web.lan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.FirstJobs;
import turnalike.web.Site;

/** The page shared on the network: asked from this machine's own network address, which is not the loopback, as another device would. */
class SharingTest {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([^\"]+)\"");

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();
    private final List<String> codes = new ArrayList<>();
    private final List<Exception> faults = new ArrayList<>();
    private JobStore store;
    private Site site;

    @BeforeEach
    void serve() throws Site.PortTaken {
        store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC());
        FirstJobs.keep(store);
        Sharing sharing = Sharing.of(folder.resolve("jobs.db.devices"), Clock.systemUTC(), codes::add);
        site = Site.start(new Site.Reach(0, Optional.of(sharing)), store, faults::add);
    }

    @AfterEach
    void close() {
        site.close();
        store.close();
        assertThat(faults).isEmpty();
    }

    private String there() {
        List<String> addresses = LocalNetwork.addresses();
        assumeThat(addresses)
                .as("a machine on no network cannot be asked over one")
                .isNotEmpty();
        return addresses.get(0);
    }

    private HttpResponse<String> get(String host, String path, String cookie) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(host, path));
        return client.send(
                (cookie.isEmpty() ? request : request.header("Cookie", cookie))
                        .GET()
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private URI uri(String host, String path) {
        return URI.create("http://" + host + ":" + site.port() + path);
    }

    private HttpResponse<String> post(String host, String path, String form, String cookie)
            throws IOException, InterruptedException {
        HttpResponse<String> page = get(host, host.equals("localhost") ? "/" : "/pair", "");
        Matcher token = TOKEN.matcher(page.body());
        assertThat(token.find()).isTrue();
        String cookies = "turnalike-token=" + token.group(1) + (cookie.isEmpty() ? "" : "; " + cookie);
        HttpRequest request = HttpRequest.newBuilder(uri(host, path))
                .header("Origin", "http://" + host + ":" + site.port())
                .header("Cookie", cookies)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form + "&token=" + token.group(1)))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private String pair(String host, String name) throws IOException, InterruptedException {
        String form =
                "name=" + URLEncoder.encode(name, StandardCharsets.UTF_8) + "&code=" + codes.get(codes.size() - 1);
        HttpResponse<String> answer = post(host, "/pair", form, "");
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.headers().allValues("Set-Cookie").stream()
                .filter(each -> each.startsWith("turnalike-device="))
                .peek(each -> assertThat(each).contains("HttpOnly", "SameSite=Strict"))
                .map(each -> each.substring(0, each.indexOf(';')))
                .collect(Collectors.joining());
    }

    @Test
    void a_device_that_is_not_paired_sees_only_the_pairing() throws Exception {
        String host = there();
        HttpResponse<String> answer = get(host, "/", "");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).contains("/pair");
        assertThat(answer.body()).doesNotContain("Harrowmead");
        assertThat(get(host, "/pair", "").body()).contains("Pair this device").doesNotContain(codes.get(0));
        String job = "/jobs/" + store.list().get(0).id().text();
        assertThat(get(host, job + "/whole.json", "").statusCode()).isEqualTo(303);
        assertThat(post(host, "/jobs", "units=mm", "").statusCode()).isEqualTo(401);
        assertThat(get(host, "/", "turnalike-device=guessed").statusCode()).isEqualTo(303);
    }

    @Test
    void a_paired_device_is_served_until_the_host_shows_it_out() throws Exception {
        String host = there();
        String cookie = pair(host, "Phone <b>at</b> the lathe");
        assertThat(get(host, "/", cookie).body()).contains("Harrowmead");
        assertThat(post(host, "/jobs", "units=mm", cookie).statusCode()).isEqualTo(303);
        assertThat(get(host, "/devices", cookie).statusCode()).isEqualTo(403);
        String devices = get("localhost", "/devices", "").body();
        assertThat(devices)
                .contains(
                        "Phone &lt;b&gt;at&lt;/b&gt; the lathe",
                        codes.get(codes.size() - 1).substring(0, 3));
        Matcher revoke = Pattern.compile("/devices/[0-9a-f]+/revoke").matcher(devices);
        assertThat(revoke.find()).isTrue();
        assertThat(post(host, revoke.group(), "", cookie).statusCode()).isEqualTo(403);
        assertThat(post("localhost", revoke.group(), "", "").statusCode()).isEqualTo(303);
        assertThat(get(host, "/", cookie).statusCode()).isEqualTo(303);
    }

    @Test
    void a_code_pairs_one_device_and_a_wrong_one_none() throws Exception {
        String host = there();
        String first = codes.get(0);
        pair(host, "Tablet");
        Thread.sleep(1_100);
        if (!codes.get(codes.size() - 1).equals(first)) {
            assertThat(post(host, "/pair", "name=Other&code=" + first, "").statusCode())
                    .isEqualTo(422);
        }
        assertThat(post(host, "/pair", "name=Other&code=" + codes.get(codes.size() - 1), "")
                        .statusCode())
                .isEqualTo(429);
    }

    @Test
    void the_file_of_devices_holds_no_secret_and_is_read_again() throws Exception {
        String host = there();
        String cookie = pair(host, "Tablet");
        Path file = folder.resolve("jobs.db.devices");
        assertThat(Files.readString(file)).contains("Tablet").doesNotContain(cookie.substring(cookie.indexOf('=') + 1));
        Devices again = new Devices(file, Clock.systemUTC());
        assertThat(again.find(cookie.substring(cookie.indexOf('=') + 1))
                        .orElseThrow()
                        .name())
                .isEqualTo("Tablet");
    }

    @Test
    void a_name_rebound_to_this_machine_is_not_served_even_when_shared() throws Exception {
        try (Socket socket = new Socket(there(), site.port())) {
            socket.setSoTimeout(5_000);
            String request =
                    "GET /pair HTTP/1.1\r\nHost: evil.example:%d\r\nConnection: close\r\n\r\n".formatted(site.port());
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 421").doesNotContain("name=\"code\"");
        }
    }
}
