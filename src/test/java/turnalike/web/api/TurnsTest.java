package turnalike.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.jobs.FirstJobs;

/** Where so many figures are worked out that no more may begin. */
class TurnsTest {
    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> post(String address, String json) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address))
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void a_piece_is_logged_and_a_change_told_while_figures_wait_for_their_turn() throws Exception {
        Semaphore turns = new Semaphore(0, true);
        try (JobStore store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC());
                ApiFeature feature = new ApiFeature(store, Optional.empty(), turns)) {
            FirstJobs.keep(store);
            JobId job = store.list().get(0).id();
            Javalin server = Javalin.create(config -> {
                config.startup.showJavalinBanner = false;
                config.jetty.host = "127.0.0.1";
                config.jetty.port = 0;
                feature.addTo(config.routes);
            });
            server.start();
            try {
                String at = "http://127.0.0.1:%d/api/jobs/%s".formatted(server.port(), job);
                CompletableFuture<HttpResponse<String>> plan = client.sendAsync(
                        HttpRequest.newBuilder(URI.create(at + "/plan")).build(), HttpResponse.BodyHandlers.ofString());
                long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
                while (!turns.hasQueuedThreads()) {
                    assertThat(System.nanoTime()).isLessThan(last);
                    Thread.sleep(10);
                }
                int seen = store.find(job).orElseThrow().times().steps();
                String piece = "{\"pieces\": [{\"piece\": \"77\", \"figures\": {\"mass_g\": \"140\"}}]}";
                assertThat(post(at + "/pieces", piece).statusCode()).isEqualTo(200);
                String told = client.send(
                                HttpRequest.newBuilder(URI.create(at + "/changes?seen=" + seen))
                                        .build(),
                                HttpResponse.BodyHandlers.ofString())
                        .body();
                assertThat(told).contains("\"changed\" : true", "\"what\" : \"log piece 77\"");
                assertThat(plan).isNotDone();
                turns.release();
                assertThat(plan.get(60, TimeUnit.SECONDS).statusCode()).isEqualTo(200);
            } finally {
                server.stop();
            }
        }
    }
}
