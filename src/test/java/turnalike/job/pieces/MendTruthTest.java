package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.MendCut;
import turnalike.pieces.mend.MendPlan;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;

/**
 * Pieces whose true outline is known: five cylinders between two tenons, each as thick as the pattern says and off by so much. Their true
 * mass and balance point come from a job file written with the true diameters, so by no route that mending uses.
 */
class MendTruthTest {
    private static final double[] WANTED = {40, 24, 48, 22, 36};
    private static final double[] LENGTHS = {60, 20, 120, 15, 80};
    private static final double TOLERANCE = 0.4;

    private static Job job(double[] diameters, double densityKgM3) {
        StringBuilder members = new StringBuilder("{\"kind\": \"tenon\", \"length\": 30, \"diameter\": 20}");
        StringBuilder checks = new StringBuilder();
        double at = 30;
        for (int i = 0; i < diameters.length; i++) {
            members.append(
                    ", {\"kind\": \"cylinder\", \"length\": %s, \"diameter\": %s}".formatted(LENGTHS[i], diameters[i]));
            checks.append(i == 0 ? "" : ", ")
                    .append("{\"name\": \"c%d\", \"at\": %s}".formatted(i, at + LENGTHS[i] / 2));
            at += LENGTHS[i];
        }
        members.append(", {\"kind\": \"tenon\", \"length\": 30, \"diameter\": 20}");
        String text = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Leg", "stock": {"section": "square", "size": 60, "length": 400}, "members": [%s]},
                 "wood": {"density_kg_m3": %s}, "tolerances": {"diameter": %s, "mass_pct": 2, "scale_g": 0.1},
                 "checks": [%s]}
                """.formatted(members, densityKgM3, TOLERANCE, checks);
        return JobReader.read(text)
                .job()
                .orElseThrow(() -> new AssertionError(JobReader.read(text).problems()));
    }

    private static Solid truth(double[] offs, double density) {
        double[] own = new double[WANTED.length];
        for (int i = 0; i < own.length; i++) {
            own[i] = WANTED[i] + offs[i];
        }
        Job job = job(own, density);
        return Solid.of(job.pattern().outline(), job.wood().density());
    }

    private static Piece piece(double[] offs, double density, boolean[] measured) {
        Solid solid = truth(offs, density);
        Measures measures = Measures.ofMass(solid.mass()).with(Column.BALANCE, solid.balance());
        for (int i = 0; i < offs.length; i++) {
            if (measured[i]) {
                measures = measures.with(Column.diameter(i + 1), Length.ofMm(WANTED[i] + offs[i]));
            }
        }
        return Piece.of("7", measures);
    }

    private static MendJob mend(Piece piece, double lessG) {
        Mass aim = Mass.ofGrams(piece.mass().orElseThrow().grams() - lessG);
        return MendJob.of(job(WANTED, 600), List.of(piece), "7", Optional.of(aim));
    }

    private static double[] after(double[] offs, MendPlan.Cuts plan) {
        double[] out = offs.clone();
        for (MendCut cut : plan.cuts()) {
            out[cut.member() - 1] -= cut.takeOff().mm();
        }
        return out;
    }

    private static final boolean[] ALL = {true, true, true, true, true};

    @Test
    void a_measured_piece_comes_out_as_told_and_within_its_tolerance() {
        int[] seen = new int[1];
        Seeds.each(80, random -> {
            double density = 600 * (1 + 0.04 * random.nextGaussian());
            double[] offs = offs(random);
            Piece piece = piece(offs, density, ALL);
            MendJob mend = mend(piece, 0.5 + 4 * random.nextDouble());
            if (mend.plan() instanceof MendPlan.Cuts plan) {
                seen[0]++;
                // To a milligram: the tenons have no check place, so a little of the weight is put down to them.
                double[] left = after(offs, plan);
                Solid solid = truth(left, density);
                assertThat(solid.mass().grams()).isCloseTo(plan.massAfter().grams(), within(1e-3));
                assertThat(plan.massAfter().grams()).isCloseTo(mend.target().grams(), within(1e-9));
                assertThat(solid.balance().mm()).isCloseTo(mend.balanceAfter().mm(), within(1e-3));
                for (int i = 0; i < left.length; i++) {
                    assertThat(left[i]).isGreaterThanOrEqualTo(Math.min(offs[i], -TOLERANCE) - 1e-9);
                }
                assertThat(plan.cuts())
                        .allMatch(cut -> cut.sure() && cut.takeOff().mm() >= 0.1 - 1e-9);
            }
        });
        assertThat(seen[0]).isGreaterThan(50);
    }

    private static double[] offs(Random random) {
        double[] offs = new double[WANTED.length];
        for (int i = 0; i < offs.length; i++) {
            offs[i] = Math.max(-TOLERANCE, Math.min(TOLERANCE, TOLERANCE / 3 * random.nextGaussian()));
        }
        return offs;
    }

    /** Half of the places measured: the mass may then be off, by the wood; a sure cut leaves its diameter out in fewer than one in twenty. */
    @Test
    void where_it_was_not_measured_a_sure_cut_hardly_leaves_the_tolerance() {
        Random random = new Random(2);
        int cuts = 0;
        int outside = 0;
        for (int trial = 0; trial < 300; trial++) {
            boolean[] measured = new boolean[WANTED.length];
            for (int i = 0; i < measured.length; i++) {
                measured[i] = random.nextBoolean();
            }
            double[] offs = offs(random);
            double density = 600 * (1 + 0.04 * random.nextGaussian());
            MendJob mend = mend(piece(offs, density, measured), 0.5 + 4 * random.nextDouble());
            if (mend.plan() instanceof MendPlan.Cuts plan) {
                double[] left = after(offs, plan);
                for (MendCut cut : plan.cuts()) {
                    cuts += cut.sure() ? 1 : 0;
                    outside += cut.sure() && left[cut.member() - 1] < -TOLERANCE - 1e-9 ? 1 : 0;
                }
                assertThat(truth(left, density).mass().grams())
                        .isCloseTo(plan.massAfter().grams(), within(0.05));
            }
        }
        assertThat(cuts).isGreaterThan(200);
        assertThat(outside / (double) cuts).isLessThan(0.05);
    }

    @Test
    void a_thin_belly_is_never_cut_and_a_thick_neck_always() {
        for (double lessG = 0.6; lessG < 6; lessG += 0.3) {
            double[] offs = {0, 0.35, -0.35, 0, 0};
            MendJob mend = mend(piece(offs, 600, ALL), lessG);
            if (mend.plan() instanceof MendPlan.Cuts plan) {
                assertThat(plan.cuts()).extracting(MendCut::member).contains(2).doesNotContain(3);
                assertThat(mend.words(UnitSystem.METRIC).steps().toString())
                        .contains("(measured 0.35 mm thick)", " mm off the diameter")
                        .doesNotContain("take 0 mm");
            }
        }
        List<MendJob.Size> sizes =
                mend(piece(new double[] {0, 0.35, -0.35, 0, 0}, 600, ALL), 1).sizes();
        assertThat(sizes)
                .extracting(MendJob.Size::offMm)
                .satisfiesExactly(
                        off -> assertThat(off).isZero(),
                        off -> assertThat(off).isCloseTo(0.35, within(1e-9)),
                        off -> assertThat(off).isCloseTo(-0.35, within(1e-9)),
                        off -> assertThat(off).isZero(),
                        off -> assertThat(off).isZero());
    }

    /** The end cylinders thick and thin: the balance point tells which, though nothing but weight and balance was measured. */
    @Test
    void the_balance_point_says_where_an_unmeasured_piece_is_thick() {
        double[] offs = {0.4, 0, 0, 0, -0.4};
        Job job = job(WANTED, 600);
        Piece piece = piece(offs, 600, new boolean[5]);
        List<Piece> all = new ArrayList<>(List.of(piece));
        for (String other : List.of("a", "b", "c")) {
            all.add(Piece.of(other, Measures.ofMass(truth(new double[5], 600).mass())));
        }
        MendJob mend = MendJob.of(job, all, "7", Optional.of(Mass.ofGrams(200)));
        assertThat(mend.sizes().get(0).offMm()).isGreaterThan(0.005);
        assertThat(mend.sizes().get(4).offMm()).isLessThan(-0.005);
        assertThat(mend.sizes().get(0).deviationMm()).isBetween(0.05, TOLERANCE / 3);
        assertThat(mend.sizes()).noneMatch(MendJob.Size::measured);
    }
}
