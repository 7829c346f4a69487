package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.language.Language;
import turnalike.web.kit.HtmlWords;

/** Every line of every page has its German. */
class PagesInGermanTest {
    private static final Pattern SVG = Pattern.compile("(?s)<svg\\b.*?</svg>");

    @TempDir
    private Path folder;

    @Test
    void no_line_of_any_page_lacks_its_german() throws Exception {
        Set<String> missing = new TreeSet<>();
        try (Served served = Served.in(folder)) {
            HtmlWords reader = new HtmlWords(words -> {
                if (!Language.GERMAN.knows(words)) {
                    missing.add(words.strip());
                }
                return words;
            });
            // What a picture says is held with the sheets, before it is broken into lines.
            new PageWalk(served, (page, html) -> reader.of(SVG.matcher(html).replaceAll(""))).all();
        }
        assertThat(missing).isEmpty();
    }
}
