package turnalike.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whatever is wrong with a job, a table, a drawing, a store or an edit is told in German too: no text of ours lacks it. */
class ProblemWordsInGermanTest {
    /** What shows how to write JSON stands as it is to be typed. */
    private static final Pattern AS_TYPED = Pattern.compile("(?s).*[{\\[`].*");

    @Test
    void every_problem_that_the_sources_tell_of_has_its_german() throws IOException {
        Map<String, String> texts = ProblemTexts.inSources();
        assertThat(texts).hasSizeGreaterThan(400).containsEntry("nothing is pasted", "PastedTable.java");
        Map<String, String> untold = new TreeMap<>(texts);
        untold.keySet().removeIf(each -> AS_TYPED.matcher(each).matches() || Language.GERMAN.knows(each));
        assertThat(untold).isEmpty();
    }
}
