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

    @Test
    void a_note_in_the_first_line_keeps_its_words() {
        for (String note : List.of(
                "Stück und Gewicht vom 3. Mai\nStück;Gewicht",
                "Länge der Stücke, Zoll\n1\t2",
                "Meine Länge (in Zoll)\t\n1\t2",
                "7;301,2;Schwerpunkt geschätzt\n8;302;")) {
            assertThat(german(note)).isEqualTo(note);
        }
    }

    @Test
    void one_heading_of_ours_makes_the_line_a_row_of_headings() {
        assertThat(german("Nr;Gewicht g;Länge (Zoll)\n1;2;3")).isEqualTo("Nr;Weight g;Length (in)\n1;2;3");
        assertThat(german("Nr\tLänge Zoll")).isEqualTo("Nr\tLength in");
        assertThat(german("\ufeffStück;mass_g")).isEqualTo("\ufeffPiece;mass_g");
        assertThat(german("\"Stück\";\"Gewicht\"")).isEqualTo("\"Piece\";\"Weight\"");
    }
}
