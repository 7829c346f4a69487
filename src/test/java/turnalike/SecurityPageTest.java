package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** SECURITY.md promises what a test holds: each class it names is there. */
class SecurityPageTest {
    private static final Pattern TEST = Pattern.compile("`(\\w+(?:Test|IT))`");

    @Test
    void every_test_it_names_is_there() throws IOException {
        Set<String> there;
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            there = files.map(file -> file.getFileName().toString().replace(".java", ""))
                    .collect(Collectors.toSet());
        }
        Set<String> named = TEST.matcher(Files.readString(Path.of("SECURITY.md")))
                .results()
                .map((MatchResult found) -> found.group(1))
                .collect(Collectors.toSet());
        assertThat(named).hasSizeGreaterThan(8);
        assertThat(there).containsAll(named);
    }
}
