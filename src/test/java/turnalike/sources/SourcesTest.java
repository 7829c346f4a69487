package turnalike.sources;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** docs/sources.md names whatever comments and shown texts lean on, and nothing else. */
class SourcesTest {
    private static final Path TESTS = Path.of("src/test/java/turnalike");

    private static List<Mention> mentions = List.of();
    private static List<SourceRow> rows = List.of();

    @BeforeAll
    static void read() throws IOException {
        mentions = Mentions.all();
        rows = SourceRow.page();
    }

    private static List<String> faults(List<Mention> of, List<SourceRow> by) {
        List<String> out = new ArrayList<>();
        of.forEach(mention -> mention.faults(by).forEach(fault -> out.add(fault + ": " + mention)));
        return out;
    }

    @Test
    void every_source_has_a_row() {
        assertThat(faults(mentions, rows)).isEmpty();
    }

    /** Also what shows that the test above would see a row go. */
    @Test
    @SuppressWarnings("ReferenceEquality") // that row itself, not one like it
    void no_row_is_there_for_nothing() {
        for (SourceRow row : rows) {
            List<SourceRow> others = rows.stream().filter(each -> each != row).toList();
            // The other mentions stay as they are.
            List<Mention> its = mentions.stream()
                    .filter(mention -> row.names(mention.toString()))
                    .toList();
            assertThat(faults(its, others))
                    .as("without the row '%s'", row.what())
                    .isNotEmpty();
        }
    }

    @Test
    void every_name_of_a_row_is_found() {
        for (SourceRow row : rows) {
            assertThat(row.names()).as("names of '%s'", row.what()).isNotEmpty();
            for (String name : row.names()) {
                assertThat(mentions).as("'%s' of '%s'", name, row.what()).anyMatch(mention -> mention.toString()
                        .contains(name));
            }
        }
    }

    @Test
    void a_row_says_where_it_is_used() {
        for (SourceRow row : rows) {
            Set<String> used = mentions.stream()
                    .filter(mention -> row.names(mention.toString()))
                    .map(Mention::feature)
                    .collect(Collectors.toCollection(TreeSet::new));
            if (used.size() > 1) {
                used.remove(Mention.TESTS);
            }
            assertThat(row.where()).as("where '%s' is used", row.what()).isEqualTo(String.join(", ", used));
        }
    }

    @Test
    void a_row_is_checked_by_a_test_there_is() throws IOException {
        Set<String> tests;
        try (Stream<Path> walk = Files.walk(TESTS)) {
            tests = walk.map(file -> file.getFileName().toString().replace(".java", ""))
                    .collect(Collectors.toSet());
        }
        for (SourceRow row : rows) {
            assertThat(row.checkedBy())
                    .as("tests of '%s'", row.what())
                    .isNotEmpty()
                    .isSubsetOf(tests);
        }
    }

    @Test
    void a_source_nobody_has_listed_is_a_fault() {
        assertThat(
                        added(
                                "/** The circle by least squares (Nobody and Noone, Annals of Nowhere 3 (1971) 5; from memory). */"))
                .isNotEmpty();
        assertThat(added("/** Source: Nobody, Handbook of Nothing. */")).isNotEmpty();
        assertThat(added("// Sizes as in ISO 99999.")).isNotEmpty();
        assertThat(
                        added(
                                "/** Stodola's method (Timoshenko, Vibration Problems in Engineering; also Nobody 1971; from memory). */"))
                .contains("no row names '1971'");
        assertThat(added("/** Two turns are enough. Common practice, no source. */"))
                .isNotEmpty();
    }

    @Test
    void a_status_better_than_the_text_says_is_a_fault() {
        assertThat(added("/** Stodola's method (Timoshenko, Vibration Problems in Engineering; VERIFIED). */"))
                .containsExactly("no row of it says VERIFIED");
        assertThat(added("/** W. Thomson, Theory of Vibration, table 9.5-1, from memory. */"))
                .containsExactly("no row of it says FROM MEMORY");
    }

    @Test
    void a_working_that_cites_what_nobody_has_listed_is_a_fault() throws IOException {
        assertThat(working("\"likeness\"", "\"Nobody's test of trend, Annals of Nowhere 3 (1971) 5\""))
                .isNotEmpty();
        assertThat(working("\"likeness of a new kind\"", "Working.COMMON_PRACTICE"))
                .isNotEmpty();
        assertThat(working("\"likeness\"", "Working.COMMON_PRACTICE")).isEmpty();
        assertThat(working("\"balance grade\"", "\"ISO 99999\"")).isNotEmpty();
        assertThat(working("\"rocking\"", "where()"))
                .as("a source that is not written out")
                .isNotEmpty();
    }

    private static List<String> working(String figure, String source) throws IOException {
        List<Mention> shown = Mentions.shown(
                "class Added { Object o = new Working(%s, \"how\", %s, \"sure\"); }".formatted(figure, source));
        assertThat(shown).anyMatch(Mention::strict);
        return shown.stream()
                .filter(Mention::leans)
                .flatMap(mention -> mention.faults(rows).stream())
                .toList();
    }

    /** The formulas on screen that are asked about most: each has a row with a source, or says that there is none. */
    @Test
    void every_formula_of_the_wheel_the_charts_and_the_lathe_has_a_row() {
        for (String formula : List.of(
                "balance grades",
                "unbalance from rocking",
                "circle through the rim's ends",
                "run rules",
                "likeness of two pieces",
                "the self-starting watch",
                "noise floor",
                "what a cut takes off",
                "spindle speeds")) {
            assertThat(rows).as(formula).anyMatch(row -> row.what().contains(formula));
        }
    }

    private static List<String> added(String java) {
        List<Mention> out = new ArrayList<>();
        Mentions.comments(out, Path.of("Added.java"), "turning", java);
        return out.stream()
                .filter(Mention::leans)
                .flatMap(mention -> mention.faults(rows).stream())
                .toList();
    }

    /** So that a reader that finds nothing cannot pass. */
    @Test
    void the_workings_of_every_feature_are_among_what_was_read() {
        assertThat(mentions.stream().filter(Mention::strict).map(Mention::feature))
                .contains("frame", "job", "match", "pieces", "settings", "solid", "stock", "turning", "wood");
        assertThat(mentions.toString()).doesNotContain(ShownTexts.UNREADABLE);
    }
}
