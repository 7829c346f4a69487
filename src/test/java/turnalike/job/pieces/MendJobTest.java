package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.MendCut;
import turnalike.pieces.mend.MendPlan;
import turnalike.solid.Solid;
import turnalike.units.Mass;

/** What mending may touch: the shaped members alone, and those no deeper than a tenth of their thinnest diameter. */
class MendJobTest {
    /** Tenons of 20 and 12 mm, a square, and two cylinders; 600 kg/m³. */
    private static Job job(double diameterMm, double thickMm, double thinMm) {
        String text = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Leg", "stock": {"section": "square", "size": 50, "length": 400},
                  "members": [{"kind": "tenon", "length": 40, "diameter": 20}, {"kind": "square", "length": 60, "side": 50},
                   {"kind": "cylinder", "length": 100, "diameter": %s}, {"kind": "cylinder", "length": 80, "diameter": %s},
                   {"kind": "tenon", "length": 30, "diameter": 12}]},
                 "wood": {"density_kg_m3": 600}, "tolerances": {"diameter": %s, "mass_pct": 2, "scale_g": 0.1}}
                """.formatted(thickMm, thinMm, diameterMm);
        return JobReader.read(text)
                .job()
                .orElseThrow(() -> new AssertionError(JobReader.read(text).problems()));
    }

    private static Piece weighed(String label, double grams) {
        return Piece.of(label, Measures.ofMass(Mass.ofGrams(grams)));
    }

    private static MendPlan plan(Job job, double tooMuchG) {
        // As heavy as its outline in the job's wood: nothing then speaks for other diameters or another density.
        double own =
                Solid.of(job.pattern().outline(), job.wood().density()).mass().grams();
        return MendJob.of(job, List.of(weighed("7", own)), "7", Optional.of(Mass.ofGrams(own - tooMuchG)))
                .plan();
    }

    /** Off a cylinder of 600 kg/m³, in grams. */
    private static double ring(double lengthMm, double fromMm, double takeOffMm) {
        double to = fromMm - takeOffMm;
        return 600e-6 * Math.PI / 4 * lengthMm * (fromMm * fromMm - to * to);
    }

    @Test
    void tenons_and_squares_are_never_shaved() {
        Job job = job(0.4, 40, 30);
        double most = ring(100, 40, 0.4) + ring(80, 30, 0.4);
        for (double tooMuch : new double[] {0.3, 1, 0.5 * most, 0.99 * most}) {
            MendPlan.Cuts cuts = (MendPlan.Cuts) plan(job, tooMuch);
            assertThat(cuts.cuts()).extracting(MendCut::member).isSubsetOf(2, 3);
            double off = cuts.cuts().stream()
                    .mapToDouble(cut -> cut.member() == 2
                            ? ring(100, 40, cut.takeOff().mm())
                            : ring(80, 30, cut.takeOff().mm()))
                    .sum();
            assertThat(off).isCloseTo(tooMuch, within(1e-6));
        }
        MendPlan.MakeAnother another = (MendPlan.MakeAnother) plan(job, most + 0.2);
        assertThat(another.cutsTakeOff().grams()).isCloseTo(most, within(1e-6));
    }

    @Test
    void a_cut_goes_no_deeper_than_a_tenth_of_the_members_diameter() {
        // A tolerance of 3 mm; a tenth of 20 mm is 2 and holds, a tenth of 40 mm is 4 and does not.
        MendPlan.MakeAnother another = (MendPlan.MakeAnother) plan(job(3, 40, 20), 150);
        assertThat(another.cutsTakeOff().grams()).isCloseTo(ring(100, 40, 3) + ring(80, 20, 2), within(1e-6));
    }

    @Test
    void a_cut_is_named_by_its_marks_and_its_place() {
        MendPlan.Cuts cuts = (MendPlan.Cuts) plan(job(0.4, 40, 30), 1);
        MendCut cut = cuts.cuts().get(0);
        assertThat(cut.name()).isEqualTo("cylinder between marks 2 and 3");
        assertThat(cut.from().mm()).isEqualTo(100);
        assertThat(cut.to().mm()).isEqualTo(200);
    }

    @Test
    void what_the_scale_cannot_tell_is_left_and_what_it_can_is_cut() {
        assertThat(plan(job(0.4, 40, 30), 0.09)).isInstanceOf(MendPlan.Leave.class);
        // The smallest cut, 0.1 mm off the thin cylinder, takes 0.23 g.
        assertThat(ring(80, 30, 0.1)).isBetween(0.22, 0.23);
        assertThat(plan(job(0.4, 40, 30), 0.22)).isInstanceOf(MendPlan.Leave.class);
        assertThat(plan(job(0.4, 40, 30), 0.23)).isInstanceOf(MendPlan.Cuts.class);
        assertThat(plan(job(0.4, 40, 30), -0.11)).isInstanceOf(MendPlan.Light.class);
    }

    @Test
    void without_a_target_the_others_median_is_aimed_at() {
        List<Piece> pieces = List.of(weighed("a", 300), weighed("7", 309), weighed("b", 302), weighed("c", 301));
        MendJob mended = MendJob.of(job(0.4, 40, 30), pieces, "7", Optional.empty());
        assertThat(mended.target().grams()).isEqualTo(301);
        assertThat(MendJob.lack(job(0.4, 40, 30), pieces, "7", Optional.empty()))
                .isEmpty();
        assertThat(MendJob.lack(job(0.4, 40, 30), pieces, "8", Optional.empty()))
                .contains(MendJob.Lack.PIECE);
        assertThat(MendJob.lack(job(0.4, 40, 30), List.of(weighed("7", 1)), "7", Optional.empty()))
                .contains(MendJob.Lack.TARGET);
        assertThat(MendJob.lack(job(0.4, 40, 30), List.of(weighed("7", 1)), "7", Optional.of(Mass.ofGrams(2))))
                .isEmpty();
        assertThat(MendJob.lack(job(0.4, 40, 30), List.of(Piece.of("7", Measures.NONE)), "7", Optional.empty()))
                .contains(MendJob.Lack.MASS);
    }
}
