package turnalike.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.Site;
import turnalike.web.jobs.DemoJob;

/** Any body sent as a form of ours, over HTTP to the site: an answer below 500, and no fault. */
public final class FormFuzz {
    private static final List<String> TYPES = List.of(
            "application/x-www-form-urlencoded",
            "multipart/form-data; boundary=edge",
            "multipart/form-data",
            "application/x-www-form-urlencoded; charset=utf-16",
            "text/plain");

    /** Below the job's own address, or below its address for programs; the job itself stays, so that there is something to edit. */
    private static final List<String> PATHS = List.of(
            "/fields",
            "/member/2",
            "/member/3/insert",
            "/units",
            "/nudge",
            "/undo",
            "/file",
            "/pieces",
            "/pieces/table",
            "/pieces/remove",
            "/api/pieces",
            "/api/blanks");

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";
    private static final int PATIENCE_MS = 30_000;

    private static final FormFuzz SITE = start();

    private final int port;
    private final String job;
    private final ConcurrentLinkedQueue<Exception> faults;

    private FormFuzz(int port, String job, ConcurrentLinkedQueue<Exception> faults) {
        this.port = port;
        this.job = job;
        this.faults = faults;
    }

    private static FormFuzz start() {
        try {
            Path folder = Files.createTempDirectory("turnalike-fuzz");
            JobStore store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC());
            JobId job = DemoJob.keep(store);
            ConcurrentLinkedQueue<Exception> faults = new ConcurrentLinkedQueue<>();
            Site site = Site.start(0, store, faults::add);
            return new FormFuzz(site.port(), job.text(), faults);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        } catch (Site.PortTaken none) {
            throw new IllegalStateException("no port is free", none);
        }
    }

    /** Called once, before the first input: the site takes its time to start. */
    public static void fuzzerInitialize() {
        Fuzz.require(SITE.port > 0, "the site is not open");
    }

    /** The fuzzer's way in; the first two bytes say where the rest goes and as what. */
    public static void fuzzerTestOneInput(byte[] input) {
        if (input.length < 2) {
            return;
        }
        String below = PATHS.get(Math.floorMod(input[0] - 'a', PATHS.size()));
        boolean forPrograms = below.startsWith("/api");
        String path =
                (forPrograms ? "/api/jobs/" : "/jobs/") + SITE.job + below.substring(forPrograms ? "/api".length() : 0);
        String type = TYPES.get(Math.floorMod(input[1] - 'a', TYPES.size()));
        try {
            SITE.send(path, type, input);
        } catch (IOException unreachable) {
            throw new UncheckedIOException(unreachable);
        }
    }

    private void send(String path, String type, byte[] input) throws IOException {
        String head = """
                POST %1$s HTTP/1.1
                Host: localhost:%2$d
                Origin: http://localhost:%2$d
                Cookie: turnalike-token=%3$s
                X-Turnalike-Token: %3$s
                HX-Request: true
                Content-Type: %4$s
                Content-Length: %5$d
                Connection: close

                """.formatted(path, port, TOKEN, type, input.length - 2).replace("\n", "\r\n");
        ByteArrayOutputStream request = new ByteArrayOutputStream();
        request.write(head.getBytes(StandardCharsets.UTF_8));
        request.write(input, 2, input.length - 2);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.getOutputStream().write(request.toByteArray());
            String answer = start(socket.getInputStream());
            Fuzz.require(answer.startsWith("HTTP/1.1 ") && answer.charAt(9) < '5', "answered " + answer);
        } catch (SocketException hungUp) {
            // The server may hang up on what it will not read; whether it went on well, the next one sees.
            Fuzz.require(faults.isEmpty(), "hung up for a fault");
        }
        Exception fault = faults.poll();
        if (fault != null) {
            throw new IllegalStateException("a fault of ours", fault);
        }
    }

    private static String start(InputStream in) throws IOException {
        byte[] all = in.readAllBytes();
        return new String(all, 0, Math.min(60, all.length), StandardCharsets.ISO_8859_1);
    }
}
