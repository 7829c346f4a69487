package turnalike.promises;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/promises.md names every word of certainty that is shown, with the assumption under which it is true. */
class PromisesTest {
    private static final Path PAGE = Path.of("docs/promises.md");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    /** A row of the page: its words, what it is true under, the tests that hold it. */
    private record Row(List<String> words, String meant, String trueWhen, List<String> heldBy) {}

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("| `")) {
                String[] cells = line.substring(2).split(" \\|(?: |$)", -1);
                assertThat(cells).as(line).hasSize(5);
                rows.add(new Row(code(cells[0]), cells[1], cells[2], code(cells[3])));
            }
        }
        return rows;
    }

    private static List<String> code(String cell) {
        List<String> out = new ArrayList<>();
        Matcher code = CODE.matcher(cell);
        while (code.find()) {
            out.add(code.group(1));
        }
        return out;
    }

    private static List<String> words() throws IOException {
        return rows().stream().flatMap(row -> row.words().stream()).toList();
    }

    private static List<Shown> uncovered(List<Shown> shown) throws IOException {
        List<String> words = words();
        return shown.stream()
                .filter(Shown::promises)
                .filter(each -> !each.isCovered(words))
                .toList();
    }

    @Test
    void every_promise_that_is_shown_has_a_row() throws IOException {
        assertThat(Shown.all().stream().filter(Shown::promises)).hasSizeGreaterThan(30);
        assertThat(uncovered(Shown.all())).isEmpty();
    }

    @Test
    void every_word_of_a_row_is_shown() throws IOException {
        List<Shown> promises = Shown.all().stream().filter(Shown::promises).toList();
        for (String words : words()) {
            assertThat(promises).as("'%s'", words).anyMatch(shown -> shown.has(words));
        }
    }

    @Test
    void a_row_says_under_what_it_is_true_and_is_held_by_tests_there_are() throws IOException {
        Set<String> tests;
        try (Stream<Path> walk = Files.walk(Path.of("src/test/java"))) {
            tests = walk.map(file -> file.getFileName().toString().replace(".java", ""))
                    .collect(Collectors.toSet());
        }
        assertThat(rows()).hasSizeGreaterThan(10);
        for (Row row : rows()) {
            assertThat(row.meant()).as("%s", row.words()).isNotBlank();
            assertThat(row.trueWhen()).as("%s", row.words()).isNotBlank();
            assertThat(row.heldBy()).as("%s", row.words()).isNotEmpty().isSubsetOf(tests);
        }
    }

    @Test
    void a_promise_nobody_has_listed_is_a_fault() throws IOException {
        assertThat(uncovered(Shown.java("Added.java", "String s = \"exact to the last micron\";")))
                .hasSize(1);
        assertThat(uncovered(Shown.java("Added.java", "String s = \"a false alarm one time in twenty\";")))
                .hasSize(1);
        assertThat(uncovered(Shown.java("Added.java", "// exact\nString s = \"off by %s at worst\"; /* \"proven\" */")))
                .isEmpty();
        List<Shown> template = new ArrayList<>();
        Shown.template(template, "added.jte", "<p>\n  guaranteed to fit\n</p> <%-- exact --%>");
        assertThat(uncovered(template)).hasSize(1);
    }
}
