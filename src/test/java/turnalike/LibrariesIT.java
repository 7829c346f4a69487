package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
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

    private static String digest(Path file) throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    @Test
    void every_library_is_to_the_letter_the_one_that_is_listed() throws Exception {
        Map<String, String> listed = listed();
        Map<String, String> found = new TreeMap<>();
        for (Path each : used()) {
            found.put(each.getFileName().toString(), digest(each));
        }
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
        Map<String, String> shipped = new TreeMap<>();
        try (Stream<Path> files = Files.list(Path.of("target/lib"))) {
            // One of an earlier version may have been left there by an earlier build.
            for (Path each : files.filter(
                            file -> listed.containsKey(file.getFileName().toString()))
                    .toList()) {
                shipped.put(each.getFileName().toString(), digest(each));
            }
        }
        assertThat(billed).as("renew with scripts/renew-libraries.sh").isEqualTo(shipped);
    }

    /** They came with the server and are used by no page; each is one more that must be mended in time. */
    @Test
    void what_no_page_uses_is_not_brought_along() throws IOException {
        assertThat(listed().keySet())
                .noneMatch(
                        name -> name.matches(".*(websocket|jndi|transaction|jetty-plus|webapp|annotations-1[12]).*"));
    }
}
