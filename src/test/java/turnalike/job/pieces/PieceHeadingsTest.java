package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

class PieceHeadingsTest {
    private static final Job JOB = JobText.read("""
                    {"format": "turnalike-job", "version": 1, "title": "Rungs", "units": "in",
                     "pattern": {"stock": {"section": "round", "size": 2, "length": 10},
                      "members": [{"kind": "cylinder", "length": 10, "diameter": "1 1/2"}]},
                     "wood": {"species": "White ash"},
                     "checks": [{"name": "belly", "at": 5}]}
                    """).text().orElseThrow().job();

    private static PiecesFile.Read read(String text) {
        return PiecesFile.parseWithoutMass(PieceHeadings.plain(JOB, text), UnitSystem.INCH);
    }

    /** 142.5 g, 10.01 in long, 1.502 in at the belly, however it is written. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Piece\tWeight, g\tLength, in\tBelly, in\n7\t142.5\t10.01\t1.502\n",
                "Belly, in\tPiece\tLength, in\tWeight, g\n1.502\t7\t10.01\t142.5\n",
                "piece,mass_g,length,d1\n7,142.5,10.01,1.502\n",
                "PIECE;WEIGHT (kg);BELLY [mm];LENGTH (mm)\n7;0,1425;38,1508;254,254\n",
                "No.\tWeight\tBelly\tOverall length\n7\t142.5 g\t38.1508 mm\t254.254 mm\n",
                "Label\tGrams\tDiameter 1\tLength\n7\t142.5\t1.502\t10.01 in\n",
                "\"Piece\",\"Weight, g\",\"Length, in\",\"Belly, in\"\n7,142.5,10.01,1.502\n",
            })
    void the_pages_own_headings_are_read_in_any_order_with_units_in_heading_or_cell(String table) {
        PiecesFile.Read read = read(table);
        assertThat(read.problems()).isEmpty();
        assertThat(read.pieces()).hasSize(1);
        assertThat(read.pieces().get(0).label()).isEqualTo("7");
        Measures measures = read.pieces().get(0).measures();
        assertThat(measures.figure(Column.MASS).orElseThrow()).isCloseTo(142.5, within(1e-9));
        assertThat(measures.figure(Column.LENGTH).orElseThrow()).isCloseTo(254.254, within(1e-9));
        assertThat(measures.figure(Column.diameter(1)).orElseThrow()).isCloseTo(38.1508, within(1e-9));
    }

    @Test
    void ounces_of_a_heading_are_the_tables_unit_of_mass() {
        PiecesFile.Read read = read("Weight, oz\tPiece\n5 1/8\tA\n5.0 oz\tB\n145 g\tC\n");
        assertThat(read.problems()).isEmpty();
        assertThat(read.pieces().get(0).mass().orElseThrow().ounces()).isCloseTo(5.125, within(1e-9));
        assertThat(read.pieces().get(2).mass().orElseThrow().grams()).isCloseTo(145, within(1e-9));
    }

    @Test
    void a_wrong_figure_is_told_on_its_own_line_and_other_columns_are_kept() {
        PiecesFile.Read read = read("Piece\tNote\tWeight, g\n\n1\t\"two\nlines\"\t142\n2\tx\theavy\n");
        assertThat(read.problems().stream().map(problem -> problem.where()).toList())
                .isEqualTo(List.of("line 5, column mass_g"));
        assertThat(read.pieces().get(0).extra()).containsEntry("Note", "two lines");
    }

    @Test
    void what_is_no_table_of_pieces_stays_to_the_letter() {
        for (String text : List.of("", "stone,load\n1,2", "piece\t\"open\n1")) {
            assertThat(PieceHeadings.plain(JOB, text)).isEqualTo(text);
        }
    }
}
