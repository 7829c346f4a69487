package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;

/** The most unlike alone, as the page asks for them of a large table. */
class MostUnlikeTest {
    private static final Job JOB = JobReader.read("""
                    {"format": "turnalike-job", "version": 1, "units": "mm",
                     "pattern": {"stock": {"section": "round", "size": 40, "length": 400},
                      "members": [{"kind": "cylinder", "length": 300, "diameter": 22.5}]},
                     "checks": [{"name": "belly", "at": 100}], "likeness": {"noted": {"colour": 0.5}}, "wood": {"density_kg_m3": 700}, "count": 4}
                    """).job().orElseThrow();

    /** Figures so coarse that many pieces are equally unlike and equally near. */
    @Test
    void the_most_unlike_are_those_of_the_whole_report() {
        Seeds.each(40, random -> agree(random, 2 + random.nextInt(30)));
    }

    /** So many are compared by tables of their figures, in place of the parts of each pair. */
    @Test
    void of_many_pieces_the_nearest_are_found_as_of_few() {
        Seeds.each(4, random -> agree(random, LikenessReport.MOST_PIECES_PAIRED + 1 + random.nextInt(40)));
    }

    private static void agree(Random random, int count) {
        List<Piece> pieces = IntStream.rangeClosed(1, count)
                .mapToObj(i -> {
                    Measures measures = random.nextInt(5) == 0
                            ? Measures.NONE
                            : Measures.ofMass(Mass.ofGrams(100 + random.nextInt(4)));
                    return new Piece(
                            String.valueOf(i),
                            random.nextBoolean()
                                    ? measures
                                    : measures.with(Column.diameter(1), Length.ofMm(22 + random.nextInt(3))),
                            random.nextInt(3) > 0
                                    ? Map.of()
                                    : Map.of(
                                            "colour",
                                            random.nextBoolean() ? "pale" : String.valueOf(random.nextInt(3))));
                })
                .toList();
        List<LikenessReport.PieceLikeness> all =
                LikenessReport.of(JOB, pieces, MassUnit.GRAM).mostUnlikeFirst();
        int most = 1 + random.nextInt(pieces.size());
        assertThat(LikenessReport.mostUnlike(JOB, pieces, MassUnit.GRAM, most)).isEqualTo(all.subList(0, most));
    }
}
