package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.language.Language;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;

/** What the page says of a piece that is brought to weight is told by its scale's step, and has its German, whatever comes of it. */
class MendInGermanTest {
    private static Job job(double scaleG) {
        return JobReader.read("""
                {"format": "turnalike-job", "version": 1, "units": "mm", "count": 4,
                 "pattern": {"name": "Leg", "stock": {"section": "square", "size": 50, "length": 400},
                  "members": [{"kind": "tenon", "length": 40, "diameter": 20}, {"kind": "square", "length": 60, "side": 50},
                   {"kind": "cylinder", "length": 100, "diameter": 40}, {"kind": "cylinder", "length": 80, "diameter": 30},
                   {"kind": "tenon", "length": 30, "diameter": 12}]},
                 "wood": {"density_kg_m3": 600}, "tolerances": {"diameter": 0.4, "mass_pct": 1, "scale_g": %s}}
                """.formatted(scaleG)).job().orElseThrow();
    }

    private static Piece weighed(String label, double grams) {
        return Piece.of(label, Measures.ofMass(Mass.ofGrams(grams)));
    }

    /** Beside others of 233 to 235 g. */
    private static MendJob mended(double scaleG, double grams) {
        return MendJob.of(
                job(scaleG),
                List.of(weighed("a", 233), weighed("b", 234), weighed("c", 235), weighed("7", grams)),
                "7",
                Optional.empty());
    }

    private static String verdict(double scaleG, double grams) {
        return mended(scaleG, grams).words(UnitSystem.METRIC).verdict();
    }

    @Test
    void the_reason_to_leave_a_piece_is_the_one_that_holds() {
        assertThat(verdict(1, 235)).isEqualTo("1 g too much is no more than a step of the scale: leave it.");
        assertThat(verdict(1, 233)).isEqualTo("1 g too little is no more than a step of the scale: leave it.");
        assertThat(verdict(1, 234)).isEqualTo("near enough, leave it.");
        // Here the scale tells it, but the least cut, 0.1 mm off the thin cylinder, takes more.
        assertThat(verdict(0.01, 234.1)).startsWith("0.10 g too much is less than the smallest cut worth making");
        assertThat(verdict(0.1, 234.1)).isEqualTo("0.1 g too much is no more than a step of the scale: leave it.");
    }

    @Test
    void no_weight_is_told_finer_than_the_scale_shows_it() {
        MendWords words = mended(1, 236).words(UnitSystem.METRIC);
        assertThat(words.head()).isEqualTo("Piece 7 weighs 236 g, wanted 234 g");
        assertThat(words.steps()).last().isEqualTo("It will then weigh 234 g. Weigh between cuts.");
        assertThat(mended(5, 248).words(UnitSystem.METRIC).head()
                        + mended(1, 229).words(UnitSystem.METRIC))
                .doesNotContain(".0 g");
    }

    /** Of 234.5 g the scale of fives tells 235: what is told to be too much is what stands between the two figures. */
    @Test
    void what_is_too_much_is_the_difference_of_the_two_figures_told() {
        MendJob mend = MendJob.of(
                job(5), List.of(weighed("a", 230), weighed("b", 235), weighed("7", 250)), "7", Optional.empty());
        MendWords words = mend.words(UnitSystem.METRIC);
        assertThat(words.head()).isEqualTo("Piece 7 weighs 250 g, wanted 233 g");
        assertThat(words.verdict()).startsWith("17 g too much, ");
    }

    @Test
    void every_outcome_has_its_german() {
        Set<String> missing = new TreeSet<>();
        Set<Class<?>> outcomes = new java.util.HashSet<>();
        boolean nearly = false; // as the scale tells it, the cuts take off what is too much
        for (double scaleG : new double[] {0.01, 0.1, 1}) {
            for (double grams = 225; grams < 245; grams += 0.13) {
                MendJob mend = mended(scaleG, grams);
                outcomes.add(mend.plan().getClass());
                for (UnitSystem units : UnitSystem.values()) {
                    MendWords words = mend.words(units);
                    assertThat(words.verdict()).doesNotContainPattern("(\\S+ g) too much, and .* take off \\1\\.");
                    nearly |= words.verdict().endsWith("do not take off quite as much. Turn another.");
                    missing.add(words.head() + ", the median of the others: " + words.verdict());
                    missing.addAll(words.steps());
                }
            }
        }
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
        assertThat(nearly).isTrue();
        assertThat(outcomes)
                .containsExactlyInAnyOrder(
                        MendPlan.Leave.class, MendPlan.Light.class, MendPlan.Cuts.class, MendPlan.MakeAnother.class);
    }
}
