package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** The ways of holding a piece, and which of its ends something bears. */
class HeldTest {
    @Test
    void between_centres_both_ends_are_borne_and_there_is_always_a_tailstock() {
        assertThat(Held.BETWEEN_CENTRES.bears(Held.At.START)).isTrue();
        assertThat(Held.BETWEEN_CENTRES.bears(Held.At.END)).isTrue();
        assertThat(Held.BETWEEN_CENTRES.byOneEnd()).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Held(Held.By.CENTRES, Held.At.START, false))
                .withMessageContaining("there is a tailstock");
        assertThat(Held.problem("here", Held.By.CENTRES, false)).isPresent();
        assertThat(Held.problem("here", Held.By.CENTRES, true)).isEmpty();
        assertThat(Held.problem("here", Held.By.JAM, false)).isEmpty();
    }

    @Test
    void without_the_tailstock_the_other_end_is_free() {
        for (Held.By by : new Held.By[] {Held.By.CHUCK, Held.By.SCREW, Held.By.JAM}) {
            for (Held.At at : Held.At.values()) {
                assertThat(new Held(by, at, false).bears(at)).isTrue();
                assertThat(new Held(by, at, false).bears(at.other())).isFalse();
                assertThat(new Held(by, at, true).bears(at.other())).isTrue();
                assertThat(new Held(by, at, true).byOneEnd()).isTrue();
            }
        }
    }

    @Test
    void it_is_told_in_words() {
        assertThat(Held.BETWEEN_CENTRES.text()).isEqualTo("between centres");
        assertThat(new Held(Held.By.CHUCK, Held.At.END, false).text())
                .isEqualTo("in the chuck by its end, without the tailstock");
        assertThat(new Held(Held.By.SCREW, Held.At.START, true).text())
                .isEqualTo("on the screw by its start, with the tailstock");
    }

    @Test
    void the_job_files_words_are_found_again() {
        for (Held.By by : Held.By.values()) {
            assertThat(Held.findBy(by.word())).contains(by);
        }
        for (Held.At at : Held.At.values()) {
            assertThat(Held.findAt(at.word())).contains(at);
        }
        assertThat(Held.findBy("glue")).isEmpty();
        assertThat(Held.findAt("middle")).isEmpty();
    }
}
