package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.language.Language;
import turnalike.language.Speech;

/** What is said of a page again, and what is said already. */
class HtmlWordsTest {
    @Test
    void what_a_picture_bears_in_german_is_not_read_as_english_once_more() {
        String said = Speech.in(Language.GERMAN, () -> {
            String line = Speech.of("What was read over the members found");
            String drawn = "<svg class=\"drawing\"><title>%1$s</title><text x=\"1\">%1$s</text></svg>".formatted(line);
            assertThat(HtmlWords.in(Language.GERMAN, drawn)).isEqualTo(drawn);
            return line;
        });
        // The trap: "was" is English too.
        assertThat(said).startsWith("Was gelesen");
        assertThat(Language.GERMAN.say(said)).startsWith("War gelesen");
    }

    @Test
    void what_a_picture_bears_in_english_is_said_and_so_is_what_its_parts_show() {
        String drawn = "<svg><title>The photograph</title><g><title>bead</title><text>cove</text></g></svg><p>bead</p>";
        assertThat(HtmlWords.in(Language.GERMAN, drawn))
                .isEqualTo(
                        "<svg><title>Das Foto</title><g><title>Rundstab</title><text>Hohlkehle</text></g></svg><p>Rundstab</p>");
        assertThat(HtmlWords.in(Language.ENGLISH, drawn)).isEqualTo(drawn);
    }
}
