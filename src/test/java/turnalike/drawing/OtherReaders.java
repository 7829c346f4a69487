package turnalike.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Programs that are not ours, started to read what we wrote; {@code ./check} installs them. */
public final class OtherReaders {
    private static final Path RESOURCES = Path.of("src/test/resources/turnalike/drawing");

    private OtherReaders() {}

    /** A script or source of the tests' own. */
    public static Path resource(String name) {
        return RESOURCES.resolve(name);
    }

    /** The lines that a Python script prints, with Debian's own Python. */
    public static List<String> python(Path script, List<String> files) throws IOException, InterruptedException {
        String python = Files.exists(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";
        return run(Stream.concat(Stream.of(python, script.toString()), files.stream())
                .toList());
    }

    /** What a program prints, line by line; one that fails or is not there fails the test with what it says. */
    public static List<String> run(List<String> command) throws IOException, InterruptedException {
        Path said = Files.createTempFile("turnalike-reader", ".txt");
        try {
            Process process =
                    new ProcessBuilder(command).redirectError(said.toFile()).start();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor())
                    .as("%s: %s", command, Files.readString(said))
                    .isZero();
            return out.lines().toList();
        } finally {
            Files.deleteIfExists(said);
        }
    }
}
