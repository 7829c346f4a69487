package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page as its users start it: a process of its own. */
class ServeCommandIT {
    private static final Pattern ADDRESS = Pattern.compile("http://localhost:\\d+/");

    @TempDir
    private Path folder;

    private Process started(String... arguments) throws IOException {
        List<String> command = Ran.java();
        command.addAll(Ran.QUICK);
        command.addAll(List.of("-cp", Ran.classPath(), "turnalike.Main"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectError(folder.resolve("stderr.txt").toFile());
        builder.environment().put("XDG_DATA_HOME", folder.toString());
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        return builder.start();
    }

    private static String address(Process process) throws IOException {
        BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
        String line = String.valueOf(out.readLine());
        Matcher matcher = ADDRESS.matcher(line);
        assertThat(matcher.find()).as(line).isTrue();
        return matcher.group();
    }

    private static String page(String address) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
        return HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofString())
                .body();
    }

    @Test
    void alone_it_serves_the_demo_beside_an_empty_job_and_ends_when_asked() throws Exception {
        Process process = started();
        try {
            assertThat(page(address(process))).contains("Harrowmead").contains("New job");
        } finally {
            process.destroy();
        }
        assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(folder.resolve("turnalike/turnalike.db")).exists();
    }

    @Test
    void a_store_that_another_command_made_is_served_as_it_is_and_nobody_is_told_of_a_renewal() throws Exception {
        String store = folder.resolve("shop.db").toString();
        String job = "src/main/resources/turnalike/demo/fair-wheel.job.json";
        assertThat(Ran.here("keep", job, "--store", store).code()).isZero();
        Process process = started("serve", "--port", "0", "--store", store);
        try {
            assertThat(page(address(process))).doesNotContain("was renewed").satisfies(text -> assertThat(
                            text.split("pieces logged", -1))
                    .hasSize(2));
        } finally {
            process.destroy();
        }
        assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void a_port_that_is_taken_is_told_on_one_line() throws Exception {
        try (ServerSocket taken =
                new ServerSocket(0, 1, java.net.InetAddress.getByAddress(new byte[] {127, 0, 0, 1}))) {
            String port = Integer.toString(taken.getLocalPort());
            Ran ran = Ran.asProcess(
                    folder,
                    "serve",
                    "--port",
                    port,
                    "--store",
                    folder.resolve("a.db").toString());
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err())
                    .startsWith("turnalike: --port: ")
                    .contains(port)
                    .hasLineCount(1);
        }
    }
}
