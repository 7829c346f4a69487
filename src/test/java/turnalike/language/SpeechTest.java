package turnalike.language;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SpeechTest {
    @Test
    void speaks_the_language_of_the_work_and_no_longer() {
        assertThat(Speech.of("1.5")).isEqualTo("1.5");
        String inGerman = Speech.in(Language.GERMAN, () -> Speech.of("1.5") + Speech.in(Language.ENGLISH, () -> ""));
        assertThat(inGerman).isEqualTo("1,5");
        assertThat(Speech.of("1.5")).isEqualTo("1.5");
    }

    @Test
    void what_was_said_is_not_said_again() {
        String twice = Speech.in(Language.GERMAN, () -> Speech.of(Speech.of("1,234")));
        assertThat(twice).isEqualTo("1.234");
    }
}
