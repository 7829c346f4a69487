package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;

/** Likeness goes by what both pieces have, and says how little that is. */
class LikenessReportTest {
    private static final Job JOB = JobReader.read("""
                    {"format": "turnalike-job", "version": 1, "units": "mm",
                     "pattern": {"name": "Leg", "stock": {"section": "square", "size": 50, "length": 400},
                      "members": [{"kind": "cylinder", "length": 100, "diameter": 40}]},
                     "wood": {"density_kg_m3": 600}, "tolerances": {"diameter": 0.5, "mass_pct": 2},
                     "checks": [{"name": "belly", "at": 50}]}
                    """).job().orElseThrow();

    private static Piece piece(String label, double grams, double... lengthAndDiameter) {
        Measures measures = Measures.ofMass(Mass.ofGrams(grams));
        for (int i = 0; i < lengthAndDiameter.length; i++) {
            measures = measures.with(i == 0 ? Column.LENGTH : Column.diameter(1), Length.ofMm(lengthAndDiameter[i]));
        }
        return Piece.of(label, measures);
    }

    private static LikenessReport.PieceLikeness of(LikenessReport report, String label) {
        return report.pieces().stream()
                .filter(each -> each.figure().piece().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_piece_with_only_a_weight_is_most_like_nothing() {
        LikenessReport report = LikenessReport.of(
                JOB,
                List.of(piece("a", 75, 100, 40), piece("b", 75.2, 100.3, 40.2), piece("w", 75), piece("v", 75)),
                MassUnit.GRAM);
        assertThat(of(report, "w").nearest()).isEmpty();
        assertThat(of(report, "w").twin()).isEqualTo("like none: only its weight to go by");
        assertThat(of(report, "a").nearest().orElseThrow().other()).isEqualTo("b");
        assertThat(of(report, "a").twin()).startsWith("piece b, ").doesNotContain("over");
        // The pair that shares only its weight is listed, with difference 0, but not as the most alike.
        assertThat(report.pairs().get(0).onlyMass()).isFalse();
        assertThat(report.pairs()).hasSize(6);
    }

    @Test
    void little_in_common_does_not_make_pieces_alike_and_is_told() {
        // "half" lacks the diameter; its length is 0.3 off a's, whose true twin b differs by less in each measure.
        LikenessReport report = LikenessReport.of(
                JOB,
                List.of(piece("a", 75, 100, 40), piece("b", 75, 100.1, 40.1), piece("half", 75, 100.3)),
                MassUnit.GRAM);
        assertThat(of(report, "a").nearest().orElseThrow().other()).isEqualTo("b");
        assertThat(of(report, "half").twin()).startsWith("piece b, ").endsWith("over 2 of 3 measures");
        assertThat(of(report, "half").measures()).isEqualTo(3);
    }
}
