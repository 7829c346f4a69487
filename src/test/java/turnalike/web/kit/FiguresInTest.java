package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FiguresInTest {
    @Test
    void figures_are_kept_with_a_point_and_shown_with_the_sign_of_the_language() {
        assertThat(FiguresIn.ALL.kept("12,5; 30\n7,25 ; 1.5")).isEqualTo("12.5; 30\n7.25 ; 1.5");
        assertThat(FiguresIn.ALL.kept("1,234.5"))
                .as("which of them is the decimal sign?")
                .isEqualTo("1,234.5");
        assertThat(FiguresIn.ALL.shown("12.5; 30\n7.25 ; 1 1/2", ",")).isEqualTo("12,5; 30\n7,25 ; 1 1/2");
    }

    @Test
    void names_before_the_last_semicolon_stay() {
        assertThat(FiguresIn.LINE_ENDS.kept("neck 2,5; upper ; 3,5\r\nfoot ; 4,5\r\n7,5"))
                .isEqualTo("neck 2,5; upper ; 3.5\r\nfoot ; 4.5\r\n7.5");
        assertThat(FiguresIn.LINE_ENDS.shown("Model 1.5 ; 3.5\n7.5", ",")).isEqualTo("Model 1.5 ; 3,5\n7,5");
        assertThat(FiguresIn.NOWHERE.kept("Model 2,5")).isEqualTo("Model 2,5");
        assertThat(FiguresIn.NOWHERE.shown("Model 2.5", ",")).isEqualTo("Model 2.5");
    }
}
