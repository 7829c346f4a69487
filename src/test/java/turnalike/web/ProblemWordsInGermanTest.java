package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.language.Language;
import turnalike.web.copy.OptionWords;
import turnalike.web.kit.PageWords;

/** Whatever is wrong with a job, a table, a drawing, a store or an edit, and whatever the page refuses, is told in German too. */
class ProblemWordsInGermanTest {
    /** What shows how to write JSON stands as it is to be typed. */
    private static final Pattern AS_TYPED = Pattern.compile("(?s).*[{\\[`].*");

    @Test
    void every_problem_that_the_sources_tell_of_has_its_german() throws IOException {
        Map<String, String> texts = ProblemTexts.inSources();
        assertThat(texts).hasSizeGreaterThan(400).containsEntry("nothing is pasted", "PastedTable.java");
        Map<String, String> untold = new TreeMap<>(texts);
        untold.keySet().removeIf(each -> AS_TYPED.matcher(each).matches() || isKnown(each));
        assertThat(untold).isEmpty();
    }

    /** As it stands, or as the page words it. */
    private static boolean isKnown(String text) {
        return Language.GERMAN.knows(text)
                || Language.GERMAN.knows(PageWords.of(text))
                || Language.GERMAN.knows(OptionWords.of(text));
    }
}
