package turnalike.cli.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.drawing.frame.WheelDrawing;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.job.Job;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.job.set.WheelSet;
import turnalike.language.Language;
import turnalike.match.WheelPlacement;
import turnalike.pieces.PiecesFile;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/** Where weight is added or taken off a wheel, and when the scale's noise says that neither is worth doing, in words. */
class BalanceWordsTest {
    private static final Pattern CANCEL =
            Pattern.compile("to cancel it: (\\S+) g at (\\d+)°, .*, or as much off at" + " (\\d+)°");

    /** Six pieces of which one is far heavier: the wheel is heavy at its place, whatever the order. */
    private static WheelSet set(double scaleG) {
        return set(scaleG, "", 6, 56);
    }

    private static WheelSet set(double scaleG, String more, int pieces, double fourthG) {
        Job job = JobReader.read("""
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Spoke", "stock": {"section": "square", "size": 40, "length": 160},
                  "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 100, "diameter": 30},
                   {"kind": "tenon", "length": 10, "diameter": 12}]},
                 "wood": {"density_kg_m3": 700}, "tolerances": {"mass_pct": 50, "scale_g": %s},
                 "frame": {"kind": "wheel", "places": 6, "hub_radius": 60, "counterweight_radius": 50%s}}
                """.formatted(scaleG, more)).job().orElseThrow();
        StringBuilder csv = new StringBuilder("piece,mass_g\n");
        for (int i = 1; i <= pieces; i++) {
            csv.append(String.format(Locale.ROOT, "%d,%s%n", i, i == 4 ? fourthG : 50));
        }
        return (WheelSet) MatchJob.of(
                job, PiecesFile.parse(csv.toString(), UnitSystem.METRIC).pieces(), false, Effort.ofAsks(100));
    }

    private static WheelSet with(WheelSet set, Moment unbalance, double noiseGMm) {
        WheelPlacement of = set.placement();
        return new WheelSet(
                set.frame(),
                new WheelPlacement(
                        of.seats(),
                        of.spares(),
                        unbalance,
                        noiseGMm,
                        of.bestProven(),
                        of.massSpread(),
                        of.warnings(),
                        of.workings()),
                set.roundness(),
                set.grade(),
                set.whole(),
                set.units(),
                set.pulls(),
                set.endedBy(),
                set.handWork(),
                set.nextSet(),
                set.weighing(),
                set.warnings(),
                set.workings());
    }

    /** A thousandth of a gram-millimetre on a kitchen scale is chance: told is that it is far below what the scale can feign. */
    @Test
    void what_is_left_is_told_no_finer_than_a_hundredth_of_what_the_scale_can_feign() {
        WheelSet set = set(1);
        WheelSet chance = with(set, new Moment(0.0012, Angle.ofDegrees(10)), 148.3);
        assertThat(chance.verdict().sentences().get(0)).startsWith("under 2 g·mm left");
        assertThat(MatchSummary.text(chance))
                .contains("Balance    under 2 g·mm left")
                .doesNotContain("0.001");
        WheelSet told = with(set, new Moment(1.5, Angle.ofDegrees(10)), 148.3);
        assertThat(MatchSummary.text(told))
                .contains("Balance    1.50 g·mm left, as if 0.03 g sat 50 mm (1 31/32 in) from the axle");
        assertThat(chance.verdict().sentences()).allMatch(Language.GERMAN::knows);
    }

    /** All alike: what the weights leave is the last digits of the sums, and no grade is told by those. */
    @Test
    void pieces_that_all_weigh_alike_are_told_with_sense_however_many_they_are() {
        String alike = MatchSummary.text(set(1, ", \"rpm\": 90", 80, 50));
        assertThat(alike)
                .contains("that is below balance grade G0.4, for information")
                .contains("masses under 1 g apart");
        assertThat(alike.lines().filter(line -> line.contains("spare: pieces")))
                .singleElement()
                .asString()
                .endsWith(" and 14 more; --json has them all");
        assertThat(MatchSummary.text(set(1, ", \"rpm\": 90", 66, 50))).doesNotContain("more; --json has them all");
        assertThat(MatchSummary.text(set(1, ", \"rpm\": 900", 6, 56))).contains("that is balance grade G");
    }

    /** Whatever has the greatest share in what may be off, and however coarse the scale. */
    @Test
    void what_is_told_of_the_balance_has_its_german_on_any_scale() {
        Set<String> missing = new TreeSet<>();
        for (double scaleG : new double[] {0.01, 0.1, 0.5, 1, 5, 20}) {
            for (double fourthG : new double[] {50, 56}) {
                WheelSet set = set(scaleG, ", \"rpm\": 90", 9, fourthG);
                missing.addAll(set.verdict().sentences());
                missing.addAll(set.remarks());
            }
        }
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
    }

    private static double apart(double degrees, double others) {
        double turned = Math.abs(degrees - others) % 360;
        return Math.min(turned, 360 - turned);
    }

    /** The added weight's pull and the taken-off weight's pull both end the unbalance: moment by moment, not by the side's name. */
    @Test
    void weight_added_opposite_or_taken_off_the_heavy_side_ends_the_unbalance() {
        WheelSet set = set(0.01);
        double heaviest = set.placement().seats().stream()
                .filter(seat -> seat.piece().mass().grams() == 56)
                .findFirst()
                .orElseThrow()
                .angle()
                .degrees();
        Matcher words = CANCEL.matcher(MatchSummary.text(set));
        assertThat(words.find()).isTrue();
        double grams = Double.parseDouble(words.group(1));
        assertThat(grams).isCloseTo(set.placement().unbalance().gMm() / 50, within(0.01 * grams));
        double addAt = Double.parseDouble(words.group(2));
        double removeAt = Double.parseDouble(words.group(3));
        assertThat(apart(removeAt, heaviest)).as("off where it is heavy").isLessThan(0.6);
        assertThat(apart(addAt, heaviest)).as("on where it is light").isGreaterThan(179.4);
        List<Moment> added = new ArrayList<>(List.of(set.placement().unbalance()));
        added.add(new Moment(grams * 50, Angle.ofDegrees(addAt)));
        List<Moment> removed = new ArrayList<>(List.of(set.placement().unbalance()));
        removed.add(new Moment(grams * 50, Angle.ofDegrees(removeAt)).opposite());
        double left = 0.02 * set.placement().unbalance().gMm();
        assertThat(Moment.sum(added).gMm()).isLessThan(left);
        assertThat(Moment.sum(removed).gMm()).isLessThan(left);
    }

    @Test
    void the_drawing_tells_the_same_sides() {
        WheelSet set = with(set(0.01), new Moment(1000, Angle.ofDegrees(30)), 10);
        WheelDrawing drawing = new WheelDrawing(
                set.placement(),
                Length.ofMm(60),
                Optional.of(set.placement().unbalance().counterweight(Length.ofMm(50))),
                new WeighingScale(Mass.ofGrams(0.1)),
                UnitSystem.METRIC);
        assertThat(drawing.statements().get(0)).startsWith("Unbalance 1000 g·mm, heavy at 30°;");
        assertThat(drawing.statements().get(1))
                .startsWith("Counterweight: add 20.0 g at 210°, 50 mm")
                .endsWith("or take the same off at 30°.");
        assertThat(MatchSummary.text(set)).contains("20.00 g at 210°", "or as much off at 30°");
    }

    /** A side is named only where it stands out: all that weigh alike are heavy nowhere. */
    @Test
    void no_side_is_called_heavy_that_does_not_stand_out() {
        WheelSet heavy = with(set(0.01), new Moment(1000, Angle.ofDegrees(30)), 10);
        assertThat(heavy.verdict().sentences().get(0))
                .startsWith("1000 g·mm left, as if 20 g sat 50 mm (1 31/32 in) from the axle, heavy at 30°; ");
        WheelSet level = with(set(0.01), new Moment(4, Angle.ofDegrees(30)), 10);
        assertThat(level.verdict().sentences().get(0))
                .startsWith("4.00 g·mm left, as if 0.08 g sat 50 mm (1 31/32 in) from the axle; ");
    }

    @Test
    void an_unbalance_of_just_the_scales_noise_is_balanced_and_a_little_more_is_not() {
        Moment unbalance = new Moment(1000, Angle.ofDegrees(30));
        WheelSet below = with(set(0.01), unbalance, 1000);
        WheelSet above = with(set(0.01), unbalance, 999);
        assertThat(MatchSummary.text(below))
                .contains("1000 g·mm: balanced to within what your scale can see")
                .doesNotContain("to cancel it", "more than the scale's own noise");
        assertThat(MatchSummary.text(above))
                .contains("999 g·mm: more than the scale's own noise", "to cancel it")
                .doesNotContain("balanced to within");
        WheelDrawing still = new WheelDrawing(
                below.placement(),
                Length.ofMm(60),
                Optional.of(unbalance.counterweight(Length.ofMm(50))),
                new WeighingScale(Mass.ofGrams(0.1)),
                UnitSystem.METRIC);
        assertThat(still.isHeavyOnOneSide()).isFalse();
        assertThat(still.statements())
                .singleElement()
                .asString()
                .contains("balanced to within what your scale can see");
        WheelDrawing heavy = new WheelDrawing(
                above.placement(),
                Length.ofMm(60),
                Optional.of(unbalance.counterweight(Length.ofMm(50))),
                new WeighingScale(Mass.ofGrams(0.1)),
                UnitSystem.METRIC);
        assertThat(heavy.isHeavyOnOneSide()).isTrue();
        assertThat(heavy.statements()).hasSize(2);
    }
}
