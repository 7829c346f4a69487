package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.jobs.FirstJobs;

/** The site on a real store and a free port, and a client that asks it as a browser would. */
public final class Served implements AutoCloseable {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([^\"]+)\"");

    private final JobStore store;
    private final Site site;
    private final HttpClient client = HttpClient.newHttpClient();
    private final List<Exception> faults = new CopyOnWriteArrayList<>();
    private String token = "";
    private String language = "";

    private Served(JobStore store) throws Site.PortTaken {
        this.store = store;
        this.site = Site.start(0, store, faults::add);
    }

    /** Serves a new store in the folder, with the jobs every new store begins with. */
    public static Served in(Path folder) throws Site.PortTaken {
        JobStore store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC());
        FirstJobs.keep(store);
        return new Served(store);
    }

    /** As the command serves it: made quick before anybody comes. */
    public CompletableFuture<Integer> rehearse() {
        return site.rehearse();
    }

    /** The same with fewer edits than help. */
    public CompletableFuture<Integer> rehearse(int edits) {
        return site.rehearse(edits);
    }

    public JobStore store() {
        return store;
    }

    public String address() {
        return site.address();
    }

    public int port() {
        return site.port();
    }

    /** The job with that title. */
    public JobId job(String title) {
        return store.list().stream()
                .filter(card -> card.title().startsWith(title))
                .findFirst()
                .orElseThrow()
                .id();
    }

    public JobId demo() {
        return job("Harrowmead");
    }

    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(request(path).GET().build(), HttpResponse.BodyHandlers.ofString());
    }

    /** A file to be kept, such as a workbook. */
    public byte[] file(String path) throws IOException, InterruptedException {
        return client.send(request(path).GET().build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    /** Sends a form as our own page does: with its origin, its cookie and its token. */
    public HttpResponse<String> post(String path, String form) throws IOException, InterruptedException {
        HttpRequest request = ours(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form + "&token=" + token))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Asks what programs may ask as a script of our own page does: with its origin, its cookie and its token. */
    public HttpResponse<String> api(String method, String path, String json) throws IOException, InterruptedException {
        HttpRequest request = ours("/api" + path)
                .header("X-Turnalike-Token", token)
                .header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(json))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Logs a piece of that mass as the bench view does, with a number of its own. */
    public HttpResponse<String> entry(JobId job, String entry, String piece, int mass)
            throws IOException, InterruptedException {
        return api(
                "POST",
                "/jobs/" + job.text() + "/pieces",
                "{\"entry\": \"%s\", \"pieces\": [{\"piece\": \"%s\", \"figures\": {\"mass_g\": \"%d\"}}]}"
                        .formatted(entry, piece, mass));
    }

    /** Asks from now on in the language of that code. */
    public void speak(String code) {
        language = code;
    }

    private HttpRequest.Builder ours(String path) throws IOException, InterruptedException {
        if (token.isEmpty()) {
            Matcher matcher = TOKEN.matcher(get("/").body());
            assertThat(matcher.find()).isTrue();
            token = matcher.group(1);
        }
        return request(path)
                .header("Origin", "http://localhost:" + port())
                .header("Cookie", "turnalike-token=" + token);
    }

    /** Sends a form with a file as our own page does. */
    public HttpResponse<String> upload(String path, Map<String, String> fields, String name, byte[] file)
            throws IOException, InterruptedException {
        post("/nowhere", "");
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("token", token);
        for (Map.Entry<String, String> each : all.entrySet()) {
            body.writeBytes("--edge\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n"
                    .formatted(each.getKey(), each.getValue())
                    .getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes(
                "--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"%s\"\r\nContent-Type: application/octet-stream\r\n\r\n"
                        .formatted(name)
                        .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(file);
        body.writeBytes("\r\n--edge--\r\n".getBytes(StandardCharsets.UTF_8));
        HttpRequest request = request(path)
                .header("Origin", "http://localhost:" + port())
                .header("Cookie", "turnalike-token=" + token)
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** What asks as a browser would, for a request of its own making. */
    public HttpClient client() {
        return client;
    }

    /** The bytes at an address. */
    public byte[] bytes(String path) throws IOException, InterruptedException {
        return client.send(request(path).GET().build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    public HttpRequest.Builder request(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + port() + path));
        return language.isEmpty() ? request : request.header("Accept-Language", language);
    }

    @Override
    public void close() {
        site.close();
        store.close();
        assertThat(faults).isEmpty();
    }
}
