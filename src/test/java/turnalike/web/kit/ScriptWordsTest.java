package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.language.Language;

class ScriptWordsTest {
    @Test
    void no_sentence_of_any_script_lacks_its_german() throws IOException {
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources/turnalike/web"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".js")).toList()) {
                ScriptWords.each(Files.readString(file), sentence -> {
                    if (Language.GERMAN.translation(sentence.strip()).isEmpty()) {
                        missing.add(file.getFileName() + ": " + sentence);
                    }
                });
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void sentences_change_and_nothing_else_does() {
        String script =
                "const at = \"#hand tr\"; say(`Piece ${sent.values.piece} is kept.`); told(\"Put back\", \"Put\");";
        assertThat(ScriptWords.in(Language.GERMAN, script))
                .isEqualTo("const at = \"#hand tr\"; say(`Stück ${sent.values.piece} ist gespeichert.`);"
                        + " told(\"Zurücklegen\", \"Put\");");
    }

    @Test
    void a_page_changes_in_its_words_alone() {
        String page =
                "<p class=\"piece\" title=\"Put back\">12.5 g</p><script>Put back</script><b translate=\"no\">Put back</b>"
                        + "<svg><path d=\"M1.5 2\"/></svg><!-- Put back --><p>Put back &amp; <i>1.5</i></p>";
        assertThat(new HtmlWords(Language.GERMAN::say).of(page))
                .isEqualTo("<p class=\"piece\" title=\"Zurücklegen\">12,5 g</p><script>Put back</script>"
                        + "<b translate=\"no\">Put back</b><svg><path d=\"M1.5 2\"/></svg><!-- Put back -->"
                        + "<p>Put back &amp; <i>1,5</i></p>");
    }

    @Test
    void a_tag_of_a_hundred_thousand_letters_is_read() {
        String page = "<path d=\"" + "M1.5 2 ".repeat(15_000) + "\"/>";
        assertThat(new HtmlWords(Language.GERMAN::say).of(page)).isEqualTo(page);
    }
}
