package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The libraries that Maven brought are those we worked with, to the letter; {@code scripts/renew-libraries.sh} writes their digests. */
class LibrariesIT {
    private static final Path LIST = Path.of("scripts/libraries.sha256");

    private static final Path BILL = Path.of("docs/sbom.json");

    private static Map<String, String> listed() throws IOException {
        return Files.readAllLines(LIST).stream()
                .map(line -> line.split(" {2}", 2))
                .collect(Collectors.toMap(line -> line[1], line -> line[0], (one, other) -> one, TreeMap::new));
    }

    /** What runs the tests may stand on the path beside what they use. */
    private static List<Path> used() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(Path::of)
                .filter(path -> path.toString().endsWith(".jar"))
                .filter(path ->
                        !path.getFileName().toString().matches("(surefire|junit-platform-console-standalone).*"))
                .toList();
    }

    /** By name. The system's own program takes a tenth of what Java takes for these hundreds of megabytes with its first compiler alone. */
    private static Map<String, String> digests(List<Path> files) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("sha256sum", "--"));
        files.forEach(each -> command.add(each.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close(); // without a file it would wait for one
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said.lines()
                .map(line -> line.split(" {2}", 2))
                .collect(Collectors.toMap(
                        line -> Path.of(line[1]).getFileName().toString(),
                        line -> line[0],
                        (one, other) -> one,
                        TreeMap::new));
    }

    @Test
    void every_library_is_to_the_letter_the_one_that_is_listed() throws Exception {
        Map<String, String> listed = listed();
        Map<String, String> found = digests(used());
        assertThat(found).as("libraries on the path").hasSizeGreaterThan(40);
        assertThat(listed).as("renew with scripts/renew-libraries.sh").containsAllEntriesOf(found);
    }

    /** Scanners read it, to say which of our libraries were found to be unsafe. */
    @Test
    void the_bill_of_materials_names_every_library_that_the_program_ships_with_and_no_other() throws Exception {
        Map<String, String> billed = new TreeMap<>();
        for (JsonNode each : new ObjectMapper().readTree(BILL.toFile()).get("components")) {
            String name = "%s-%s.jar"
                    .formatted(each.get("name").asText(), each.get("version").asText());
            for (JsonNode hash : each.get("hashes")) {
                if (hash.get("alg").asText().equals("SHA-256")) {
                    billed.put(name, hash.get("content").asText());
                }
            }
        }
        Map<String, String> listed = listed();
        List<Path> shipped;
        try (Stream<Path> files = Files.list(Path.of("target/lib"))) {
            // One of an earlier version may have been left there by an earlier build.
            shipped = files.filter(file -> listed.containsKey(file.getFileName().toString()))
                    .toList();
        }
        assertThat(billed).as("renew with scripts/renew-libraries.sh").isEqualTo(digests(shipped));
    }

    /** They came with the server and are used by no page; each is one more that must be mended in time. */
    @Test
    void what_no_page_uses_is_not_brought_along() throws IOException {
        assertThat(listed().keySet())
                .noneMatch(
                        name -> name.matches(".*(websocket|jndi|transaction|jetty-plus|webapp|annotations-1[12]).*"));
    }
}
