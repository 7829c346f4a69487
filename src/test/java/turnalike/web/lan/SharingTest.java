package turnalike.web.lan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.Site;
import turnalike.web.jobs.FirstJobs;

/**
 * The page shared on the network. A test has one machine: 127.0.0.1 stands for the host and 127.0.0.2, from which the same machine may also
 * ask, for another device.
 */
class SharingTest {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([^\"]+)\"");
    private static final byte[] HOST = {127, 0, 0, 1};
    private static final byte[] DEVICE = {127, 0, 0, 2};

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
        Sharing sharing = Sharing.of(
                folder.resolve("jobs.db.devices"),
                Clock.systemUTC(),
                codes::add,
                address -> Arrays.equals(address.getAddress(), HOST));
        site = Site.start(new Site.Reach(0, Optional.of(sharing)), store, faults::add);
    }

    @AfterEach
    void close() {
        site.close();
        store.close();
        assertThat(faults).isEmpty();
    }

    private record Answer(int status, List<String> headers, String body) {
        String header(String name) {
            return headers.stream()
                    .filter(each -> each.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ": "))
                    .map(each -> each.substring(name.length() + 2))
                    .collect(Collectors.joining("\n"));
        }
    }

    private String own() {
        return "127.0.0.1:" + site.port();
    }

    private Answer ask(byte[] from, String request, String form) throws IOException {
        try (Socket socket = new Socket()) {
            socket.bind(new InetSocketAddress(InetAddress.getByAddress(from), 0));
            socket.connect(new InetSocketAddress(InetAddress.getByAddress(HOST), site.port()), 5_000);
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write((request.replace("\n", "\r\n") + form).getBytes(StandardCharsets.UTF_8));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int end = answer.indexOf("\r\n\r\n");
            List<String> head = answer.substring(0, end).lines().toList();
            int status = Integer.parseInt(head.get(0).substring(9, 12));
            return new Answer(status, head, answer.substring(end + 4));
        }
    }

    private Answer get(byte[] from, String path, String cookie) throws IOException {
        String cookies = cookie.isEmpty() ? "" : "Cookie: " + cookie + "\n";
        return ask(from, "GET %s HTTP/1.1\nHost: %s\n%sConnection: close\n\n".formatted(path, own(), cookies), "");
    }

    private Answer post(byte[] from, String path, String form, String cookie) throws IOException {
        Matcher token = TOKEN.matcher(get(from, "/pair", "").body());
        assertThat(token.find()).isTrue();
        String cookies = "turnalike-token=" + token.group(1) + (cookie.isEmpty() ? "" : "; " + cookie);
        String body = form + "&token=" + token.group(1);
        return ask(from, """
                POST %s HTTP/1.1
                Host: %s
                Origin: http://%s
                Cookie: %s
                Content-Type: application/x-www-form-urlencoded
                Content-Length: %d
                Connection: close

                """.formatted(path, own(), own(), cookies, body.length()), body);
    }

    /** As a script of our own page asks what programs may ask. */
    private Answer script(byte[] from, String verb, String path, String json, String cookie) throws IOException {
        Matcher token = TOKEN.matcher(get(from, "/pair", "").body());
        assertThat(token.find()).isTrue();
        String cookies = "turnalike-token=" + token.group(1) + (cookie.isEmpty() ? "" : "; " + cookie);
        return ask(from, """
                %s /api%s HTTP/1.1
                Host: %s
                Origin: http://%s
                Cookie: %s
                X-Turnalike-Token: %s
                Content-Type: application/json
                Content-Length: %d
                Connection: close

                """.formatted(verb, path, own(), own(), cookies, token.group(1), json.length()), json);
    }

    private String pair(String name) throws IOException {
        String form =
                "name=" + URLEncoder.encode(name, StandardCharsets.UTF_8) + "&code=" + codes.get(codes.size() - 1);
        Answer answer = post(DEVICE, "/pair", form, "");
        assertThat(answer.status()).isEqualTo(303);
        String cookie = answer.header("Set-Cookie")
                .lines()
                .filter(each -> each.startsWith("turnalike-device="))
                .findFirst()
                .orElseThrow();
        assertThat(cookie).contains("HttpOnly", "SameSite=Strict");
        return cookie.substring(0, cookie.indexOf(';'));
    }

    @Test
    void a_device_that_is_not_paired_sees_only_the_pairing() throws IOException {
        Answer answer = get(DEVICE, "/", "");
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.header("Location")).isEqualTo("/pair");
        assertThat(answer.body()).doesNotContain("Harrowmead");
        assertThat(get(DEVICE, "/pair", "").body()).contains("Pair this device").doesNotContain(codes.get(0));
        String job = "/jobs/" + store.list().get(0).id().text();
        assertThat(get(DEVICE, job + "/whole.json", "").status()).isEqualTo(303);
        assertThat(post(DEVICE, "/jobs", "units=mm", "").status()).isEqualTo(401);
        assertThat(get(DEVICE, "/", "turnalike-device=guessed").status()).isEqualTo(303);
        assertThat(get(HOST, "/", "").body()).contains("Harrowmead");
    }

    @Test
    void a_paired_device_is_served_until_the_host_shows_it_out() throws IOException {
        String cookie = pair("Phone <b>at</b> the lathe");
        assertThat(get(DEVICE, "/", cookie).body()).contains("Harrowmead");
        assertThat(post(DEVICE, "/jobs", "units=mm", cookie).status()).isEqualTo(303);
        assertThat(get(DEVICE, "/devices", cookie).status()).isEqualTo(403);
        String devices = get(HOST, "/devices", "").body();
        assertThat(devices)
                .contains(
                        "Phone &lt;b&gt;at&lt;/b&gt; the lathe",
                        codes.get(codes.size() - 1).substring(0, 3));
        Matcher revoke = Pattern.compile("/devices/[0-9a-f]+/revoke").matcher(devices);
        assertThat(revoke.find()).isTrue();
        assertThat(post(DEVICE, revoke.group(), "", cookie).status()).isEqualTo(403);
        assertThat(post(HOST, revoke.group(), "", "").status()).isEqualTo(303);
        assertThat(get(DEVICE, "/", cookie).status()).isEqualTo(303);
    }

    /** The form is never sent: whoever waited for it would not answer. */
    @Test
    void a_device_that_is_not_paired_is_turned_away_before_its_form_is_read() throws IOException {
        for (String path : List.of("/jobs", "/pair")) {
            Answer answer = ask(DEVICE, """
                    POST %s HTTP/1.1
                    Host: %s
                    Origin: http://%s
                    Content-Type: multipart/form-data
                    Content-Length: 5000
                    Connection: close

                    """.formatted(path, own(), own()), "");
            assertThat(answer.status()).isEqualTo(401);
            assertThat(answer.body()).contains("is not paired with the program");
        }
    }

    @Test
    void a_form_that_cannot_be_read_is_no_fault_of_ours() throws IOException {
        String cookie = pair("Tablet");
        for (String each : List.of(cookie, "turnalike-device=guessed")) {
            Answer answer = ask(DEVICE, """
                    POST /pair HTTP/1.1
                    Host: %s
                    Origin: http://%s
                    Cookie: %s
                    Content-Type: multipart/form-data
                    Content-Length: 9
                    Connection: close

                    """.formatted(own(), own(), each), "code=1234");
            assertThat(answer.status()).isEqualTo(400);
        }
    }

    @Test
    void a_wrong_code_pairs_nothing_and_tries_must_wait() throws IOException {
        String right = codes.get(0);
        String wrong = (right.charAt(0) == '9' ? "0" : "9") + right.substring(1);
        Answer answer = post(DEVICE, "/pair", "name=Other&code=" + wrong, "");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.header("Set-Cookie")).doesNotContain("turnalike-device");
        assertThat(post(DEVICE, "/pair", "name=Other&code=" + right, "").status())
                .isEqualTo(429);
        assertThat(post(DEVICE, "/pair", "name=&code=" + right, "").status()).isEqualTo(422);
    }

    @Test
    void the_file_of_devices_holds_no_secret_and_is_read_again() throws IOException {
        String secret = pair("Tablet").substring("turnalike-device=".length());
        Path file = folder.resolve("jobs.db.devices");
        assertThat(Files.readString(file)).contains("Tablet").doesNotContain(secret);
        Devices again = new Devices(file, Clock.systemUTC());
        assertThat(again.find(secret).orElseThrow().name()).isEqualTo("Tablet");
    }

    @Test
    void a_name_rebound_to_this_machine_is_not_served_even_when_shared() throws IOException {
        Answer answer = ask(
                DEVICE, "GET /pair HTTP/1.1\nHost: evil.example:%d\nConnection: close\n\n".formatted(site.port()), "");
        assertThat(answer.status()).isEqualTo(421);
        assertThat(answer.body()).doesNotContain("name=\"code\"");
    }

    @Test
    void a_device_that_may_only_log_cannot_change_a_pattern_and_its_steps_bear_its_name() throws IOException {
        assertThat(post(HOST, "/devices/next", "role=log", "").status()).isEqualTo(303);
        String cookie = pair("Ben's telephone");
        JobId job = store.list().stream()
                .filter(card -> card.title().startsWith("Harrowmead"))
                .findFirst()
                .orElseThrow()
                .id();
        int steps = store.done(job).size();
        for (String path : List.of(
                "/fields",
                "/undo",
                "/mirror",
                "/member/2/remove",
                "/steps/undo",
                "/bin",
                "/rename",
                "/wood/boards/row")) {
            Answer refused = post(DEVICE, "/jobs/" + job + path, "title=x", cookie);
            assertThat(refused.status()).as(path).isEqualTo(403);
            assertThat(refused.body()).as(path).contains("may only log and turn; nothing was changed");
        }
        assertThat(post(DEVICE, "/jobs", "units=mm", cookie).status()).isEqualTo(403);
        assertThat(store.done(job)).hasSize(steps);
        String entry = "0123456789abcdef0123";
        String piece = "{\"entry\": \"%s\", \"pieces\": [{\"piece\": \"77\", \"figures\": {\"mass_g\": 140}}]}"
                .formatted(entry);
        String pieces = "/jobs/" + job + "/pieces";
        assertThat(script(DEVICE, "POST", pieces, piece, "").status()).isEqualTo(401);
        assertThat(script(DEVICE, "POST", pieces, piece, cookie).status()).isEqualTo(200);
        assertThat(script(DEVICE, "DELETE", "/jobs/" + job + "/entries/" + entry, "", cookie)
                        .status())
                .isEqualTo(200);
        assertThat(store.done(job).get(steps + 1).who()).contains("Ben's telephone");
        steps++;
        for (String refused : List.of("PUT", "PATCH", "DELETE")) {
            assertThat(script(DEVICE, refused, "/jobs/" + job + "?version=" + (steps + 1), "{}", cookie)
                            .status())
                    .as(refused)
                    .isEqualTo(403);
        }
        assertThat(store.done(job)).hasSize(steps + 1);
        assertThat(store.done(job).get(steps).who()).contains("Ben's telephone");
        assertThat(get(DEVICE, "/jobs/" + job + "/history", cookie).body()).contains("by Ben");
        String id = new Devices(folder.resolve("jobs.db.devices"), Clock.systemUTC())
                .list()
                .get(0)
                .id();
        assertThat(post(DEVICE, "/devices/" + id + "/role", "role=change", cookie)
                        .status())
                .isEqualTo(403);
        assertThat(post(HOST, "/devices/" + id + "/role", "role=change", "").status())
                .isEqualTo(303);
        assertThat(post(DEVICE, "/jobs/" + job + "/mirror", "", cookie).status())
                .isLessThan(400);
        assertThat(store.done(job).get(steps + 1).who()).contains("Ben's telephone");
        assertThat(post(HOST, "/jobs/" + job + "/mirror", "", "").status()).isLessThan(400);
        assertThat(store.done(job).get(steps + 2).who()).isEmpty();
    }

    /** As the command does it, in another program. */
    @Test
    void a_device_shown_out_in_the_file_is_out_at_once() throws IOException {
        String cookie = pair("Tablet");
        assertThat(get(DEVICE, "/", cookie).status()).isEqualTo(200);
        Devices another = new Devices(folder.resolve("jobs.db.devices"), Clock.systemUTC());
        assertThat(another.revoke(another.list().get(0).id())).isTrue();
        assertThat(get(DEVICE, "/", cookie).status()).isEqualTo(303);
    }

    /** A line of before there were roles. */
    @Test
    void a_device_paired_before_there_were_roles_may_do_what_it_did() {
        Device device =
                Device.of("0a1b\tffff\t2026-03-01T12:00:00Z\tOld telephone").orElseThrow();
        assertThat(device.role()).isEqualTo(DeviceRole.CHANGE);
        assertThat(Device.of(device.line())).contains(device);
        assertThat(Device.of(device.allowed(DeviceRole.LOG).line())
                        .orElseThrow()
                        .role())
                .isEqualTo(DeviceRole.LOG);
    }

    private Answer program(byte[] from, String verb, String path, String token, String json) throws IOException {
        String bearer = token.isEmpty() ? "" : "Authorization: Bearer " + token + "\n";
        return ask(
                from,
                "%s /api%s HTTP/1.1\nHost: %s\n%sContent-Type: application/json\nContent-Length: %d\nConnection: close\n\n"
                        .formatted(verb, path, own(), bearer, json.length()),
                json);
    }

    @Test
    void a_program_on_another_device_asks_with_a_token_until_it_is_shown_out() throws IOException {
        assertThat(program(HOST, "GET", "/jobs", "", "").status()).isEqualTo(200);
        Answer refused = program(DEVICE, "GET", "/jobs", "", "");
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.body()).contains("\"error\"", "Authorization: Bearer");
        assertThat(program(DEVICE, "POST", "/jobs", "", "{\"format\": 1}").status())
                .isEqualTo(401);
        assertThat(program(DEVICE, "GET", "/jobs", "made-up", "").status()).isEqualTo(401);
        assertThat(program(HOST, "GET", "/jobs", "made-up", "").status()).isEqualTo(401);
        assertThat(program(DEVICE, "GET", "/openapi.json", "", "").status()).isEqualTo(401);

        assertThat(program(DEVICE, "POST", "/pair", "", "{\"code\": \"%s\", \"name\": \"\"}".formatted(codes.get(0)))
                        .status())
                .isEqualTo(422);
        Answer paired = program(
                DEVICE, "POST", "/pair", "", "{\"code\": \"%s\", \"name\": \"a script\"}".formatted(codes.get(0)));
        assertThat(paired.status()).isEqualTo(201);
        Matcher token = Pattern.compile("\"token\" : \"([^\"]+)\"").matcher(paired.body());
        assertThat(token.find()).isTrue();
        String secret = token.group(1);
        assertThat(program(DEVICE, "GET", "/jobs", secret, "").body()).contains("Harrowmead");
        assertThat(program(DEVICE, "POST", "/jobs", secret, "{\"format\": 1}").status())
                .as("the body is read, and is no job")
                .isEqualTo(422);
        assertThat(get(DEVICE, "/", "").status()).as("the page takes no token").isEqualTo(303);

        Matcher device = Pattern.compile("/devices/([0-9a-f]+)/revoke")
                .matcher(get(HOST, "/devices", "").body());
        assertThat(device.find()).isTrue();
        post(HOST, "/devices/" + device.group(1) + "/revoke", "", "");
        assertThat(program(DEVICE, "GET", "/jobs", secret, "").status()).isEqualTo(401);
    }

    @Test
    void what_the_next_device_may_do_outlives_the_program_and_a_damaged_line_its_neighbours() throws IOException {
        Path file = folder.resolve("other.devices");
        Devices devices = new Devices(file, Clock.systemUTC());
        assertThat(devices.next()).isEqualTo(DeviceRole.CHANGE);
        devices.next(DeviceRole.LOG);
        String first = devices.pair("Scale", devices.next());
        String second = devices.pair("Tablet", DeviceRole.CHANGE);
        Devices again = new Devices(file, Clock.systemUTC());
        assertThat(again.next()).isEqualTo(DeviceRole.LOG);
        assertThat(again.find(first).orElseThrow().role()).isEqualTo(DeviceRole.LOG);
        List<String> lines = Files.readAllLines(file);
        Files.write(file, List.of("half a li", lines.get(0).substring(0, 90), lines.get(1), lines.get(2)));
        Devices damaged = new Devices(file, Clock.systemUTC());
        assertThat(damaged.list()).singleElement().satisfies(each -> assertThat(each.name())
                .isEqualTo("Tablet"));
        assertThat(damaged.find(second)).isPresent();
        assertThat(damaged.next()).isEqualTo(DeviceRole.LOG);
        Files.write(file, List.of(lines.get(0), "next\twhatever"));
        assertThat(new Devices(file, Clock.systemUTC()).next()).isEqualTo(DeviceRole.LOG);
        damaged.next(DeviceRole.CHANGE);
        assertThat(new Devices(file, Clock.systemUTC()).next()).isEqualTo(DeviceRole.CHANGE);
    }

    @Test
    void a_program_that_may_only_log_changes_no_job() throws IOException {
        assertThat(post(HOST, "/devices/next", "role=log", "").status()).isEqualTo(303);
        Answer paired =
                program(DEVICE, "POST", "/pair", "", "{\"code\": \"%s\", \"name\": \"scale\"}".formatted(codes.get(0)));
        Matcher token = Pattern.compile("\"token\" : \"([^\"]+)\"").matcher(paired.body());
        assertThat(token.find()).isTrue();
        String secret = token.group(1);
        JobId job = store.list().get(0).id();
        int steps = store.done(job).size();
        String at = "/jobs/" + job;
        for (List<String> asked : List.of(
                List.of("POST", "/jobs"),
                List.of("PUT", at + "?version=1"),
                List.of("PATCH", at + "?version=1"),
                List.of("POST", at + "/undo?version=1"),
                List.of("DELETE", at + "?version=1"),
                List.of("POST", at + "/restore"))) {
            Answer refused = program(DEVICE, asked.get(0), asked.get(1), secret, "{}");
            assertThat(refused.status()).as("%s", asked).isEqualTo(403);
            assertThat(refused.body()).as("%s", asked).contains("may only log and turn; nothing was changed");
        }
        assertThat(store.done(job)).hasSize(steps);
        String piece = "{\"pieces\": [{\"piece\": \"77\", \"figures\": {\"mass_g\": \"140\"}}]}";
        assertThat(program(DEVICE, "POST", at + "/pieces", secret, piece).status())
                .isEqualTo(200);
        assertThat(store.done(job).get(steps).who()).contains("scale");
    }

    @Test
    void the_host_makes_a_token_for_a_program_and_shows_it_once() throws IOException {
        Answer made = post(HOST, "/devices/token", "name=sums", "");
        Matcher token =
                Pattern.compile("class=\"code token\">([A-Za-z0-9_-]{43})<").matcher(made.body());
        assertThat(token.find()).isTrue();
        assertThat(program(DEVICE, "GET", "/jobs", token.group(1), "").status()).isEqualTo(200);
        assertThat(get(HOST, "/devices", "").body()).contains("sums").doesNotContain(token.group(1));
        assertThat(post(HOST, "/devices/token", "name=", "").status()).isEqualTo(422);
        assertThat(post(DEVICE, "/devices/token", "name=mine", "").status()).isEqualTo(401);
    }
}
