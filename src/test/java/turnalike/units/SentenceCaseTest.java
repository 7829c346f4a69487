package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.language.Language;

class SentenceCaseTest {
    @Test
    void a_sentence_becomes_a_clause_and_comes_back() {
        assertThat(SentenceCase.clause("It is short.")).isEqualTo("it is short");
        assertThat(SentenceCase.sentence("it is short")).isEqualTo("It is short.");
        assertThat(SentenceCase.clause("")).isEmpty();
    }

    @Test
    void a_clause_is_told_in_german_as_its_sentence_is() {
        String sentence = "It is hardly a piece of this pattern: 67 % of what was read lies more than 2 mm off it,"
                + " and it is 10 in (254 mm) shorter.";
        assertThat(Language.GERMAN.knows(SentenceCase.clause(sentence))).isTrue();
    }
}
