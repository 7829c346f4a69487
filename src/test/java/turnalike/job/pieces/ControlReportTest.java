package turnalike.job.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.language.Language;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.RuleChoice;
import turnalike.pieces.control.WorkChange;
import turnalike.units.Length;
import turnalike.units.Mass;

/** What stands under a chart does not contradict itself. */
class ControlReportTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"name": "Leg", "stock": {"section": "square", "size": 50, "length": 400},
              "members": [{"kind": "cylinder", "length": 100, "diameter": 40}]},
             "wood": {"density_kg_m3": 600}, "tolerances": {"diameter": 0.5, "mass_pct": 2},
             "checks": [{"name": "belly", "at": 50}]}
            """;

    /** The choice that speaks of changes as often as the others together. */
    private static final List<RuleChoice> CHOICES = List.of(
            RuleChoice.SELF_STARTING,
            RuleChoice.SELF_STARTING,
            RuleChoice.SELF_STARTING,
            RuleChoice.USUAL,
            RuleChoice.WESTERN_ELECTRIC,
            RuleChoice.NELSON);

    private static ControlReport report(double[] diameters, RuleChoice rules, boolean withJob) {
        Job job = JobReader.read(JOB)
                .job()
                .orElseThrow(() -> new AssertionError(JobReader.read(JOB).problems()));
        List<Piece> pieces = new ArrayList<>();
        for (double diameter : diameters) {
            pieces.add(
                    Piece.of("p" + (pieces.size() + 1), Measures.NONE.with(Column.diameter(1), Length.ofMm(diameter))));
        }
        return ControlReport.of(
                        withJob ? Optional.of(job) : Optional.empty(), pieces, "d1", ChartConstants.PRINTED, rules)
                .get();
    }

    private static String under(ControlReport report) {
        return report.chart().verdict().orElse("") + " " + String.join(" ", report.findings());
    }

    private static ControlReport weighed(double... grams) {
        List<Piece> pieces = new ArrayList<>();
        for (double each : grams) {
            pieces.add(Piece.of("p" + (pieces.size() + 1), Measures.ofMass(Mass.ofGrams(each))));
        }
        return ControlReport.of(
                        JobReader.read(JOB).job(), pieces, "mass_g", ChartConstants.PRINTED, RuleChoice.SELF_STARTING)
                .get();
    }

    @Test
    void limits_without_width_are_told_for_what_they_are() {
        ControlReport alike = weighed(566, 566, 566, 566, 566, 566);
        assertThat(alike.findings())
                .contains("All read the same: such limits call the next step of the scale a change; measure finer.")
                .allMatch(Language.GERMAN::knows);
        assertThat(weighed(566, 566, 566, 567, 566, 566).findings()).noneMatch(each -> each.startsWith("All read"));
    }

    @Test
    void weights_are_told_to_one_place_more_than_they_were_read() {
        ControlReport whole = weighed(139, 143, 142, 144, 145, 143);
        assertThat(whole.told(whole.shown().centre())).isEqualTo("142.7");
        assertThat(under(whole)).containsPattern("hold 14\\d\\.\\d to 14\\d\\.\\d g; expect pieces outside it \\(Cpk");
        assertThat(weighed(139.1, 143, 142, 144, 145, 143).told(142.66)).isEqualTo("142.66");
        assertThat(weighed(8.21, 8.2, 8.4).told(8.2715)).isEqualTo("8.272");
        assertThat(weighed(1390, 1430, 1420).told(1413.33)).isEqualTo("1413.3");
        ControlReport thick = report(new double[] {40.1, 40.2, 40}, RuleChoice.SELF_STARTING, true);
        assertThat(thick.told(thick.shown().centre())).isEqualTo("40.100");
    }

    /** Steady, drifting, jumping and rounded series of 2 to 30 pieces, by every choice of rules. */
    @Test
    void nothing_and_check_the_setting_are_never_said_at_once() {
        int[] said = new int[3];
        Seeds.each(600, random -> {
            double[] diameters = new double[2 + random.nextInt(29)];
            int from = random.nextInt(diameters.length);
            double jump = 2 * random.nextInt(3) * random.nextGaussian();
            double drift = random.nextInt(2) * random.nextGaussian() / 5;
            double step = random.nextBoolean() ? 1e-6 : 0.1;
            for (int i = 0; i < diameters.length; i++) {
                double change = i < from ? 0 : jump + drift * (i - from);
                diameters[i] = step * Math.rint((40 + 0.2 * (random.nextGaussian() + change)) / step);
            }
            RuleChoice rules = CHOICES.get(random.nextInt(CHOICES.size()));
            ControlReport report = report(diameters, rules, random.nextBoolean());
            String under = under(report);
            boolean nothing = under.contains("Nothing") || under.contains("Too few to tell");
            boolean check = under.contains("check the setting");
            assertThat(nothing && check).as(under).isFalse();
            assertThat(report.chart().signals().isEmpty()).isEqualTo(nothing);
            said[nothing ? 0 : check ? 1 : 2]++;
        });
        assertThat(said[0]).isGreaterThan(100);
        assertThat(said[1]).isGreaterThan(30);
    }

    @Test
    void a_change_is_told_in_the_columns_words_and_the_power_beside_it() {
        double[] thick = {40, 40.1, 39.9, 40, 40.1, 39.9, 40, 40.1, 39.9, 40, 40.4, 40.5, 40.4, 40.5, 40.4, 40.5};
        ControlReport report = report(thick, RuleChoice.SELF_STARTING, true);
        assertThat(report.change().orElseThrow().change().kind()).isEqualTo(WorkChange.Kind.SHIFT);
        assertThat(report.findings().get(0))
                .startsWith("From piece p11 on the diameters at the belly are 0.4")
                .endsWith("more than before: check the setting before the next piece.");
        double sigma = report.chart().meanMovingRange() / 1.128;
        assertThat(report.howSure())
                .contains("at most 1 set in 20 raises a false alarm")
                .contains("a drift of one tolerance, %.1f times that scatter, over those ten".formatted(0.5 / sigma));
        assertThat(report(thick, RuleChoice.SELF_STARTING, false).howSure())
                .contains("a drift of three times that scatter over");
        assertThat(report(thick, RuleChoice.NELSON, true).howSure())
                .isEqualTo(
                        "If nothing changes, 50 in 100 sets of 40 pieces raise a false alarm, looked at after every piece (simulated).");
    }
}
