package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.language.Language;
import turnalike.web.kit.PageWords;

/**
 * What the page refuses, in German: of every refusal that stands in the sources word for word, where, what and how it is mended. Walking all of
 * them would take a mistake of each kind; what is put together of parts is told by the walks.
 */
class RefusalsInGermanTest {
    private static final Pattern REFUSAL = Pattern.compile(
            "(?:Refusal\\.of\\(\\s*\\d+|new Refusal\\(\\s*\\d+|new Problem\\()(.*?)\\)\\s*[;,)]", Pattern.DOTALL);
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    private static Stream<Path> sources() throws IOException {
        List<Path> roots = List.of(Path.of("src/main/java/turnalike/web"), Path.of("src/main/java/turnalike/job/edit"));
        Stream<Path> out = Stream.of();
        for (Path root : roots) {
            out = Stream.concat(out, Files.walk(root));
        }
        // What programs are told is English, or theirs to translate.
        return out.filter(
                each -> each.toString().endsWith(".java") && !each.toString().contains("/api/"));
    }

    /** With a figure or a word where the source puts something in. */
    private static boolean isKnown(String words) {
        return Stream.of("7", "bead", "1 1/2 in")
                .map(value -> PageWords.of(
                        words.replace("%d", "12").replace("%s", value).replace("%%", "%")))
                .anyMatch(Language.GERMAN::knows);
    }

    @Test
    void every_refusal_has_its_german() throws IOException {
        Set<String> missing = new TreeSet<>();
        int seen = 0;
        try (Stream<Path> files = sources()) {
            for (Path file : files.toList()) {
                for (MatchResult refusal :
                        REFUSAL.matcher(Files.readString(file)).results().toList()) {
                    for (MatchResult literal :
                            LITERAL.matcher(refusal.group(1)).results().toList()) {
                        String words = literal.group(1).replace("\\\"", "\"");
                        seen++;
                        if (words.contains(" ") && !words.endsWith(" ") && !words.contains("%.") && !isKnown(words)) {
                            missing.add(file.getFileName() + ": " + words);
                        }
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(100);
        assertThat(missing).isEmpty();
    }
}
