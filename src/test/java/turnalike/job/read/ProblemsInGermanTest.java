package turnalike.job.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.language.Language;

/** What is wrong with a job file has its German, as page, command line and {@code /api} tell it. */
class ProblemsInGermanTest {
    /** What shows how to write JSON or lists its words stands as it is to be typed. */
    private static final Pattern AS_TYPED = Pattern.compile(".*([{\\[`]|JSON|backslash|one of ).*|Duplicate field.*");

    @Test
    void every_line_that_a_bad_job_is_answered_with_has_its_german() throws IOException {
        Set<String> untold = new TreeSet<>();
        for (String line : Files.readAllLines(Path.of("src/test/resources/turnalike/job/bad/expected.txt"))) {
            if (line.startsWith("  ")) {
                String[] parts = line.strip().split("; ", 2);
                untold.add(parts[0].substring(parts[0].lastIndexOf(": ") + 2));
                untold.add(parts[1]);
            }
        }
        assertThat(untold).hasSizeGreaterThan(150);
        untold.removeIf(each -> AS_TYPED.matcher(each).matches() || Language.GERMAN.knows(each));
        assertThat(untold).isEmpty();
    }
}
