package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.language.Language;
import turnalike.web.kit.HtmlWords;

/** Every line of every page has its German. */
class PagesInGermanTest {
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
            new PageWalk(served, (page, html) -> reader.of(html)).all();
        }
        Files.writeString(Path.of("/tmp/missing.txt"), String.join("\n", missing));
        assertThat(missing).isEmpty();
    }
}
