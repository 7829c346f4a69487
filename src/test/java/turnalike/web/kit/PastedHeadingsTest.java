package turnalike.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.language.Language;

class PastedHeadingsTest {
    private static final List<String> HEADINGS = List.of("Piece", "Weight, g", "Length, in", "Balance, in");

    private static String german(String table) {
        return PastedHeadings.inEnglish(Language.GERMAN, table, HEADINGS);
    }

    @Test
    void the_headings_of_a_german_page_are_read_and_what_lies_below_stays() {
        assertThat(german("Stück; Gewicht (g); Länge\n1; 301,2; Länge"))
                .isEqualTo("Piece; Weight (g); Length\n1; 301,2; Länge");
        assertThat(german("\nStück\tGewicht, g\tLänge, Zoll\tSchwerpunkt\n"))
                .isEqualTo("\nPiece\tWeight, g\tLength, in\tBalance\n");
        assertThat(german("piece,mass_g\n1,301.2")).isEqualTo("piece,mass_g\n1,301.2");
        assertThat(PastedHeadings.inEnglish(Language.ENGLISH, "Stück;1", HEADINGS))
                .isEqualTo("Stück;1");
        assertThat(german("")).isEmpty();
    }
}
