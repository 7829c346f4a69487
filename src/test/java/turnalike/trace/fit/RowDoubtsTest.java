package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.pattern.Bead;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.trace.Doubt;
import turnalike.trace.TracedMember;
import turnalike.units.Length;

/** Of rows set with calipers, what they leave open is marked, and what they tell is not. */
@Tag("long-sums")
class RowDoubtsTest {
    private static List<String> words(TracedRows fit) {
        return fit.marked().members().stream()
                .map(each -> each.member().kind().word() + (each.uncertain() ? " ?" : ""))
                .toList();
    }

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static CaliperRows dip(double[]... within) {
        CaliperRows rows = new CaliperRows(1, 0).row(0, 24).row(20, 24).row(40, 24);
        for (double[] each : within) {
            rows.row(each[0], each[1]);
        }
        return rows.row(46, 24).row(66, 24).row(80, 24);
    }

    @Test
    void three_rows_tell_no_vee_from_a_cove_and_one_more_half_way_down_does() {
        TracedRows three = dip(new double[] {43, 18}).fit(0.2);
        assertThat(words(three)).containsExactly("cylinder", "cove ?", "cylinder");
        Doubt doubt = three.doubts().get(0);
        assertThat(doubt.member()).isEqualTo(2);
        assertThat(doubt.rival().orElseThrow().word()).isEqualTo("vee");
        assertThat(doubt.rival().orElseThrow().rows()).isEqualTo(3);
        assertThat(doubt.rival().orElseThrow().at().mm()).isCloseTo(41.2, within(0.4));
        assertThat(words(dip(new double[] {41.5, 21}, new double[] {43, 18}).fit(0.2)))
                .containsExactly("cylinder", "vee", "cylinder");
        double cove = 24 - 6 * Math.sqrt(0.75);
        assertThat(words(dip(new double[] {41.5, cove}, new double[] {43, 18}).fit(0.2)))
                .containsExactly("cylinder", "cove", "cylinder");
    }

    /** A taper of its two ends, a swell of its three sizes. */
    @Test
    void what_has_no_more_rows_than_sizes_is_not_sure() {
        TracedRows fit = new CaliperRows(1, 0)
                .row(0, 20)
                .row(20, 20)
                .row(30, 20)
                .row(30, 30)
                .row(60, 36)
                .row(60, 20)
                .row(70, 20)
                .row(90, 20)
                .fit(0.2);
        assertThat(words(fit)).containsExactly("tenon", "taper ?", "tenon");
        TracedRows three = new CaliperRows(1, 0)
                .row(0, 20)
                .row(20, 20)
                .row(20, 30)
                .row(60, 38)
                .row(100, 27)
                .row(100, 20)
                .row(120, 20)
                .fit(0.2);
        assertThat(words(three)).containsExactly("tenon", "swell ?", "tenon");
        assertThat(three.doubts()).extracting(Doubt::why).containsExactly(Doubt.Why.FEW);
    }

    /** Steps of which one side alone was measured: what lies between two of them may begin and end anywhere. */
    @Test
    void a_short_member_between_steps_that_nobody_measured_is_not_sure() {
        Member bead = new Bead(mm(14), mm(30), mm(40), Details.NONE);
        CaliperRows rows =
                new CaliperRows(1, 0).row(0, 20).row(12, 20).row(23, 20).row(35, 20);
        for (double x : new double[] {3, 5, 7, 10.5}) {
            Length across = RandomRuns.outline(List.of(bead)).radiusAt(mm(x)).times(2);
            rows.row(40 + x, across.mm());
        }
        TracedRows fit = rows.row(56, 20).row(67, 20).row(79, 20).row(90, 20).fit(0.2);
        assertThat(fit.marked().members()).hasSize(3);
        assertThat(fit.marked().members().get(1).uncertain()).isTrue();
        assertThat(fit.doubts()).extracting(Doubt::why).containsExactly(Doubt.Why.ENDS);
    }

    /** What it costs and gives: of the first twelve seeds 4 of 117 that are right are doubted, and 31 of 40 that are not. */
    @Test
    void of_runs_measured_at_their_joints_hardly_any_is_doubted_and_of_others_most_wrong_names_are() {
        int right = 0;
        int doubted = 0;
        int wrong = 0;
        int sure = 0;
        for (int seed = 1; seed <= Seeds.times(12); seed++) {
            List<Member> truth = new RandomRuns(seed).run(8);
            TracedRows joints = new CaliperRows(seed, 0.1).atJoints(truth, 4).fit(0.1);
            TracedRows others = new CaliperRows(seed, 0.1).anywhere(truth, 5).fit(0.1);
            for (TracedMember each : joints.marked().members()) {
                if (isTrue(truth, each)) {
                    right++;
                    doubted += each.uncertain() ? 1 : 0;
                }
            }
            for (TracedMember each : others.marked().members()) {
                if (!isTrue(truth, each)) {
                    wrong++;
                    sure += each.uncertain() ? 0 : 1;
                }
            }
        }
        assertThat(doubted).as("of %s", right).isLessThanOrEqualTo(right / 25);
        assertThat(sure).as("of %s", wrong).isLessThanOrEqualTo(wrong / 3);
    }

    /** Its kind, each end within the rows about it. */
    private static boolean isTrue(List<Member> truth, TracedMember found) {
        double at = 0;
        for (Member member : truth) {
            boolean here = Math.abs(found.from().mm() - at) <= 5
                    && Math.abs(found.to().mm() - at - member.length().mm()) <= 5;
            boolean level = member.sizes().lengths().containsKey("diameter")
                    && found.member().sizes().lengths().containsKey("diameter");
            if (here && (level || found.member().kind() == member.kind())) {
                return true;
            }
            at += member.length().mm();
        }
        return false;
    }

    private static CaliperRows rows(double[][] all) {
        CaliperRows rows = new CaliperRows(1, 0);
        for (double[] each : all) {
            rows.row(each[0], each[1]);
        }
        return rows;
    }

    /** The joint between two that run on into one another was marked by a row, as the shoulder was by two; made up, each row 0.3 mm off. */
    @Test
    void a_row_at_a_smooth_joint_keeps_two_members_from_one_curve() {
        double[][] rows = {
            {0.0, 30.79},
            {3.2, 36.25},
            {6.8, 38.53},
            {9.1, 38.40},
            {11.5, 39.03},
            {14.4, 38.91},
            {16.5, 39.35},
            {19.0, 39.59},
            {22.8, 40.21},
            {25.4, 40.99},
            {29.1, 42.00},
            {32.8, 43.70},
            {35.5, 45.30},
            {39.2, 46.10},
            {41.2, 47.51},
            {44.3, 48.20},
            {47.3, 47.86},
            {50.6, 48.72},
            {53.1, 49.19},
            {56.0, 49.17},
            {56.0, 27.45},
            {70.0, 27.61},
            {85.0, 27.38}
        };
        assertThat(words(rows(rows).fit(0.29))).containsExactly("half-bead", "ogee", "tenon");
    }

    /** A bead, a fillet, a cove and a fillet, none of whose joints was measured; made up, each row 0.05 mm off. */
    @Test
    void what_sinks_between_two_fillets_is_a_cove() {
        double[][] rows = {
            {0.0, 35.84},
            {3.3, 37.82},
            {7.1, 37.85},
            {9.9, 36.35},
            {13.2, 30.96},
            {17.0, 30.91},
            {19.8, 22.91},
            {23.1, 20.73},
            {25.4, 20.78},
            {29.5, 23.77},
            {32.3, 30.89},
            {35.3, 30.91},
            {36.1, 30.91}
        };
        assertThat(words(rows(rows).fit(0.05))).anyMatch(each -> each.startsWith("cove"));
    }

    /** No shoulder where one row stands alone, in a table with two at a shoulder; made up, each row 0.2 mm off. */
    @Test
    void a_single_row_is_no_shoulder_where_shoulders_have_two() {
        double[][] rows = {
            {0.0, 35.32},
            {5.6, 42.86},
            {11.1, 35.72},
            {14.3, 35.72},
            {17.5, 27.38},
            {22.2, 25.40},
            {27.0, 29.37},
            {28.6, 35.72},
            {31.8, 36.12},
            {38.1, 41.27},
            {42.9, 44.05},
            {49.2, 47.62},
            {54.8, 49.61},
            {59.5, 50.40},
            {62.7, 50.80},
            {67.5, 50.40},
            {73.0, 49.61},
            {77.8, 48.42},
            {81.8, 46.83},
            {85.7, 44.45},
            {90.5, 41.67},
            {92.1, 40.48},
            {92.1, 53.97},
            {96.0, 52.39},
            {101.6, 40.08}
        };
        TracedRows fit = rows(rows).fit(0.2);
        assertThat(words(fit)).startsWith("bead", "fillet", "cove").contains("swell");
        assertThat(fit.run().outline().radiusAt(mm(28.9)).mm()).isCloseTo(17.9, within(0.3));
    }

    /** A cylinder and a thinner one, no row at their joint: what leads from one to the other may be an ogee or a step; made up, each row 0.2 mm off. */
    @Test
    void a_step_that_no_row_shows_is_not_surely_an_ogee() {
        double[][] rows = {
            {0.0, 22.1},
            {8.0, 28.3},
            {15.0, 32.4},
            {22.0, 34.2},
            {26.0, 17.4},
            {33.0, 17.3},
            {42.0, 17.5},
            {50.0, 17.6},
            {59.0, 17.4},
            {66.0, 16.3},
            {75.0, 16.7},
            {82.0, 16.4},
            {90.0, 16.5},
            {99.0, 16.3}
        };
        assertThat(words(rows(rows).fit(0.2))).contains("ogee ?").doesNotContain("ogee");
    }

    @Test
    void how_far_rows_stray_is_told_from_the_table_itself() {
        List<Member> truth = new RandomRuns(4).run(8);
        TracedRows fit = new CaliperRows(2, 0.5).atJoints(truth, 3).fit(0.3);
        assertThat(2 * fit.strayMm().orElseThrow()).isCloseTo(0.5, within(0.1));
        assertThat(new CaliperRows(2, 0.5)
                        .row(0, 20)
                        .row(9, 20)
                        .row(20, 20)
                        .row(30, 21)
                        .row(40, 22)
                        .fit(0.3)
                        .strayMm())
                .isEmpty();
    }
}
