package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.units.Parsed;

class PieceTest {
    private static final String REFUSED = "refused";

    private static String said(Parsed<String> read) {
        return read.fold(text -> text, (what, mend) -> REFUSED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"7", "  7 ", "left 3", "ä"})
    void a_label_is_what_is_written_without_the_blanks_around_it(String typed) {
        assertThat(said(Piece.label(typed))).isEqualTo(typed.strip());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "one\ntwo", "tab\there", "unread\uFFFDable"})
    void no_label_is_empty_or_more_than_a_line_of_letters(String typed) {
        assertThat(said(Piece.label(typed))).isEqualTo(REFUSED);
    }

    @Test
    void a_label_has_sixty_four_letters_at_most() {
        assertThat(said(Piece.label("x".repeat(64)))).isEqualTo("x".repeat(64));
        assertThat(said(Piece.label("x".repeat(65)))).isEqualTo(REFUSED);
    }

    @Test
    void a_note_may_be_empty_and_is_one_line() {
        assertThat(said(Piece.note("  "))).isEmpty();
        assertThat(said(Piece.note(" a knot "))).isEqualTo("a knot");
        assertThat(said(Piece.note("a\nknot"))).isEqualTo(REFUSED);
    }

    @Test
    void what_is_noted_is_kept_and_a_blank_takes_it_out() {
        Piece noted = Piece.of("1", Measures.NONE).noting("colour", "pale");
        assertThat(noted.extra()).containsEntry("colour", "pale");
        assertThat(noted.noting("colour", " ").extra()).isEmpty();
    }
}
