package turnalike.web.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A server in a process of its own, started as the start script starts it, so that its memory is its own. */
final class ServerProcess implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("(http://localhost:\\d+)/");
    private static final Pattern PEAK = Pattern.compile("VmHWM:\\s*(\\d+) kB");

    /** How the threads are called that are not counted, as far as Linux keeps a name. */
    private static final List<String> BESIDE = List.of("C1 Compiler", "C2 Compiler", "turnalike-rehea");

    private final Process process;
    private final Map<String, Double> beside = new HashMap<>();
    private final String origin;

    private ServerProcess(Process process, String origin) {
        this.process = process;
        this.origin = origin;
    }

    /** @param command the class with its arguments; what {@code -Dturnalike.load.java} holds goes to its Java, CLASS in it being that class */
    static ServerProcess start(List<String> command) throws IOException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Xms160m", // as the start scripts have it
                "-Xmn96m",
                "-Djava.awt.headless=true"));
        Stream.of(System.getProperty("turnalike.load.java", "").split(" "))
                .filter(each -> !each.isEmpty())
                .map(each -> each.replace("CLASS", command.get(0)))
                .forEach(line::add);
        line.addAll(List.of("-cp", System.getProperty("java.class.path")));
        line.addAll(command);
        Process process = new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader told = process.inputReader();
        for (String each = told.readLine(); each != null; each = told.readLine()) {
            Matcher matcher = ADDRESS.matcher(each);
            if (matcher.find()) {
                return new ServerProcess(process, matcher.group(1));
            }
        }
        throw new IOException("the server ended without an address");
    }

    String origin() {
        return origin;
    }

    /** The most memory it ever held, in MB; 0 where the system does not tell. */
    long peakMb() throws IOException {
        Path status = Path.of("/proc", Long.toString(process.pid()), "status");
        Matcher matcher = PEAK.matcher(Files.exists(status) ? Files.readString(status) : "");
        return matcher.find() ? Long.parseLong(matcher.group(1)) / 1024 : 0;
    }

    /**
     * The processor time it took so far, in ms; of all its threads but Java's compilers and the rehearsal, which go on for a while after a
     * start and then no more. Linux alone tells it.
     */
    double cpuMs() throws IOException {
        try (Stream<Path> threads = Files.list(Path.of("/proc", Long.toString(process.pid()), "task"))) {
            for (Path each : threads.toList()) {
                String name = read(each.resolve("comm")).strip();
                if (BESIDE.stream().anyMatch(name::startsWith)) {
                    beside.put(each.getFileName().toString(), firstNumber(each.resolve("schedstat")));
                }
            }
        }
        return wholeMs() - beside.values().stream().mapToDouble(each -> each).sum() / 1e6;
    }

    private double wholeMs() {
        return process.toHandle()
                        .info()
                        .totalCpuDuration()
                        .orElseThrow(() -> new IllegalStateException("this system tells no processor time"))
                        .toNanos()
                / 1e6;
    }

    /** Of a thread that ended meanwhile, nothing. */
    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException ended) {
            return "";
        }
    }

    private static double firstNumber(Path file) {
        String text = read(file);
        return text.isEmpty() ? 0 : Double.parseDouble(text.substring(0, text.indexOf(' ')));
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
