package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.language.Language;
import turnalike.web.kit.HtmlWords;

/** Every line of every page has its German, and the English of none is a developer's: one walk for both. */
class PagesInGermanTest {
    /** What a picture says, and how far a search has come, which no two runs tell alike. */
    private static final Pattern PASSED_OVER = Pattern.compile("(?s)<svg\\b.*?</svg>|<p id=\"progress\">.*?</p>");

    private static final int LONGEST_SEARCH_S = 90;

    @TempDir
    private static Path folder;

    private static final Set<String> MISSING = new TreeSet<>();
    private static final List<String> SAID_BADLY = new ArrayList<>();

    @BeforeAll
    static void walk() throws Exception {
        try (Served served = Served.in(folder)) {
            awaitMatch(served);
            HtmlWords reader = new HtmlWords(words -> {
                if (!Language.GERMAN.knows(words)) {
                    MISSING.add(words.strip());
                }
                return words;
            });
            new PageWalk(served, (page, html) -> {
                        // What a picture says is held with the sheets, before it is broken into lines.
                        reader.of(PASSED_OVER.matcher(html).replaceAll(""));
                        WordsOnPagesTest.judge(page, html, SAID_BADLY);
                    })
                    .all();
        }
    }

    @Test
    void no_line_of_any_page_lacks_its_german() {
        assertThat(MISSING).isEmpty();
    }

    @Test
    void no_page_speaks_as_a_developer_or_with_a_wrong_article() {
        assertThat(SAID_BADLY).isEmpty();
    }

    /** What is told of the found set is read too. */
    private static void awaitMatch(Served served) throws Exception {
        String match = "/jobs/" + served.demo().text() + "/match";
        for (int s = 0; s < LONGEST_SEARCH_S; s++) {
            if (!served.get(match).body().contains("id=\"progress\"")) {
                return;
            }
            Thread.sleep(1000);
        }
    }
}
