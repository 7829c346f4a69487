package turnalike.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import turnalike.cli.page.PageServer;
import turnalike.job.kept.JobStore;

/** What a run of the command line left: its exit code and both streams. */
public record Ran(int code, String out, String err) {
    /** Serving never ends by itself, so a test of it runs a process. */
    private static final PageServer NO_PAGE = new PageServer() {
        @Override
        public DeviceBook devices(Path file) {
            throw new IllegalStateException("no command here asks for devices");
        }

        @Override
        public Page open(Reach reach, JobStore jobs, Consumer<Exception> faults) {
            throw new IllegalStateException("no page is served in a test's own process");
        }

        @Override
        public void begin(JobStore jobs) {
            throw new IllegalStateException("no page is served in a test's own process");
        }
    };

    /** Of a process that lives for seconds: compiling for a long life costs more than it brings. */
    static final List<String> QUICK = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

    /** In this process: quick. */
    public static Ran here(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Program.run(
                List.of(arguments),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                NO_PAGE);
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The Java that runs the tests, told to be quiet about the store's native library as the start script tells it. */
    static List<String> java() {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        if (Runtime.version().feature() >= 24) {
            command.add("--illegal-native-access=allow");
        }
        return command;
    }

    /** The classes under test as they were built, with the libraries that the program has where it is used. */
    static String classPath() {
        String classes = Path.of(URI.create(Program.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toString()))
                .toString();
        return classes + ":" + Path.of("target/lib").toAbsolutePath() + "/*";
    }

    /** The program as a process of its own on the built classes; options of Java first. */
    static List<String> command(String... arguments) {
        List<String> options =
                Stream.of(arguments).takeWhile(each -> each.startsWith("-D")).toList();
        List<String> command = java();
        command.addAll(options);
        command.addAll(QUICK);
        command.addAll(List.of("-Djava.awt.headless=true", "-cp", classPath(), "turnalike.Main"));
        command.addAll(List.of(arguments).subList(options.size(), arguments.length));
        return command;
    }

    /** As its users run it, in a folder. */
    static Ran asProcess(Path folder, String... arguments) throws IOException, InterruptedException {
        List<String> command = command(arguments);
        Path out = folder.resolve("stdout.txt");
        Path err = folder.resolve("stderr.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("did not end: " + command);
        }
        return new Ran(process.exitValue(), java.nio.file.Files.readString(out), java.nio.file.Files.readString(err));
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException notJson) {
            throw new UncheckedIOException(out, notJson);
        }
    }
}
