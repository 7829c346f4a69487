package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import turnalike.pieces.PiecesFile;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/** Against worked examples of the NIST/SEMATECH e-Handbook of Statistical Methods (verified, see the README with the data). */
class ControlChartTest {
    static List<ChartPoint> points(double... values) {
        List<ChartPoint> points = new ArrayList<>();
        for (double value : values) {
            points.add(new ChartPoint("p" + (points.size() + 1), value));
        }
        return points;
    }

    @Test
    void nist_6_3_2_2_flow_rates_with_the_printed_constants() {
        ControlChart chart =
                ControlChart.of(Published.series("nist_6322_flowrate")).get();
        assertThat(chart.centre()).isCloseTo(50.81, within(5e-13));
        assertThat(chart.meanMovingRange()).isCloseTo(1.8778, within(5e-5));
        assertThat(chart.upper()).isCloseTo(55.8041, within(5e-5));
        assertThat(chart.lower()).isCloseTo(45.8159, within(5e-5));
        assertThat(chart.rangeUpper()).isCloseTo(6.1349, within(5e-4)); // the suite that quotes it prints 6.135 too
        assertThat(chart.signals()).isEmpty();
        assertThat(chart.isTrial()).isTrue();
    }

    /** By hand: the mean of 10 and 14, and 3 · 4 / 1.128 either side of it. */
    @Test
    void two_pieces_are_enough_and_one_is_not() {
        ControlChart chart = ControlChart.of(points(10, 14)).get();
        assertThat(chart.centre()).isEqualTo(12);
        assertThat(chart.upper()).isCloseTo(12 + 12 / 1.128, within(1e-9));
        assertThat(ControlChart.of(points(10)).<String>fold(made -> "a chart", (what, mend) -> what))
                .isEqualTo("a chart needs two measured pieces, there is 1");
    }

    @Test
    void the_last_points_of_a_chart_keep_the_lines_of_all() {
        ControlChart all = ControlChart.of(points(10, 11, 10, 11, 10, 11, 10, 90, 10, 11, 10, 60))
                .get();
        ControlChart last = all.last(3);
        assertThat(last.points()).isEqualTo(all.points().subList(9, 12));
        assertThat(last.ranges()).containsExactly(1.0, 50.0);
        assertThat(last.centre()).isEqualTo(all.centre());
        assertThat(last.upper()).isEqualTo(all.upper());
        assertThat(last.sample()).isEqualTo(all.sample());
        assertThat(all.signals()).extracting(Signal::piece).contains("p8");
        assertThat(last.signals())
                .isEqualTo(all.signals().stream()
                        .filter(each -> List.of("p10", "p11", "p12").contains(each.piece()))
                        .toList());
        assertThat(all.last(12)).isSameAs(all);
    }

    @Test
    void the_usual_rules_see_a_jump_a_shift_and_a_trend() {
        assertThat(RunRule.usual())
                .containsExactlyInAnyOrder(
                        RunRule.BEYOND_THREE,
                        RunRule.TWO_OF_THREE_BEYOND_TWO,
                        RunRule.FOUR_OF_FIVE_BEYOND_ONE,
                        RunRule.EIGHT_ON_ONE_SIDE,
                        RunRule.SIX_STEADY,
                        RunRule.RANGE_BEYOND);
        assertThat(ControlChart.of(points(10, 10.1, 9.9, 10, 10.1, 9.9, 10, 30, 10, 9.9, 10.1, 10))
                        .get()
                        .signals())
                .extracting(Signal::rule)
                .contains(RunRule.BEYOND_THREE, RunRule.RANGE_BEYOND);
    }

    /** The upper limit with exact constants is ours: computed from d2 = 2/√π. */
    @Test
    void exact_constants_move_the_limit_in_the_third_decimal() {
        ControlChart chart = ControlChart.of(
                        Published.series("nist_6322_flowrate"), ChartConstants.EXACT, RunRule.usual())
                .get();
        assertThat(chart.upper()).isCloseTo(55.8024, within(5e-5));
        assertThat(ChartConstants.EXACT.d2()).isCloseTo(1.128, within(5e-4));
        assertThat(ChartConstants.EXACT.d4()).isCloseTo(3.267, within(6e-4));
    }

    @Test
    void nist_6_3_2_4_moving_average() {
        List<List<String>> rows = Published.rows("spc_worked_series.csv").stream()
                .filter(row -> row.get(0).startsWith("nist_6324"))
                .toList();
        List<ChartPoint> points = Published.series("nist_6324_ewma_lambda0.3_start50");
        EwmaChart chart = EwmaChart.of(points, new EwmaChart.Setting(50, 2.0539, 0.3));
        assertThat(rows).hasSize(20);
        assertThat(chart.upper()).isCloseTo(52.5884, within(5e-5));
        assertThat(chart.lower()).isCloseTo(47.4115, within(1e-4)); // printed cut off, not rounded
        for (int i = 0; i < rows.size(); i++) {
            assertThat(chart.averages().get(i).value())
                    .isCloseTo(Double.parseDouble(rows.get(i).get(3)), within(0.0101)); // printed from rounded steps
        }
        assertThat(chart.beyond()).isEmpty();
    }

    @Test
    void a_moving_average_sees_a_small_lasting_shift() {
        double[] values = new double[30];
        Arrays.fill(values, 51.5);
        EwmaChart chart = EwmaChart.of(points(values), new EwmaChart.Setting(50, 1, 0.3));
        // z = 50 + 1.5(1 - 0.7^i) passes 50 + 3·√(0.3/1.7) = 51.2603 when 0.7^i < 0.1599, so at the sixth.
        assertThat(chart.beyond().get(0)).isEqualTo("p6");
        assertThat(chart.beyond()).hasSize(25);
    }

    @Test
    void nist_6_1_6_capability() {
        Capability capability = Capability.of(16, 2, Capability.Limits.between(8, 20));
        assertThat(capability.potential().orElseThrow()).isCloseTo(1.0, within(1e-15));
        assertThat(capability.upper().orElseThrow()).isCloseTo(0.6667, within(5e-5));
        assertThat(capability.lower().orElseThrow()).isCloseTo(1.3333, within(5e-5));
        assertThat(capability.worst()).isCloseTo(0.6667, within(5e-5));
        assertThat(capability.offCentre().orElseThrow()).isCloseTo(0.3333, within(5e-5));
    }

    /** One-sided cases of the AIAG and VDA manual (verified, as quoted in the project's references). */
    @Test
    void one_sided_capability() {
        Capability first = Capability.of(0.166, 0.0457, Capability.Limits.upTo(0.40));
        Capability second = Capability.of(0.250, 0.0292, Capability.Limits.upTo(0.40));
        assertThat(first.worst()).isCloseTo(1.71, within(5e-3));
        assertThat(second.worst()).isCloseTo(1.71, within(5e-3));
        assertThat(first.potential()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void one_point_is_no_chart_and_equal_points_have_no_signals() {
        assertThat(ControlChart.of(points(1)).isValue()).isFalse();
        ControlChart flat = ControlChart.of(points(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1))
                .get();
        assertThat(flat.sigma()).isZero();
        assertThat(flat.upper()).isEqualTo(0.1);
        assertThat(flat.signals()).isEmpty();
    }

    @Test
    void a_series_that_follows_itself_is_warned_of() {
        double[] wave = new double[40];
        Arrays.setAll(wave, i -> Math.sin(i / 5.0));
        assertThat(ControlChart.of(points(wave)).get().memory())
                .hasValueSatisfying(text -> assertThat(text).contains("tight"));
        assertThat(ControlChart.of(Published.series("nist_6322_flowrate")).get().memory())
                .isEmpty();
    }

    @Test
    void a_series_is_drawn_from_any_column_of_numbers() {
        var pieces = PiecesFile.parse(
                        "piece,mass_oz,length,d1,temp,note\n1,6,559,,\"20,5\",a\n2,,560,22,21,b\n", UnitSystem.METRIC)
                .pieces();
        assertThat(Series.of(pieces, "length", MassUnit.GRAM).get().points())
                .containsExactly(new ChartPoint("1", 559), new ChartPoint("2", 560));
        assertThat(Series.of(pieces, "mass_oz", MassUnit.GRAM)
                        .get()
                        .points()
                        .get(0)
                        .value())
                .isCloseTo(6, within(1e-12));
        assertThat(Series.of(pieces, "mass_g", MassUnit.GRAM)
                        .get()
                        .points()
                        .get(0)
                        .value())
                .isCloseTo(170.09713875, within(1e-9));
        assertThat(Series.of(pieces, "temp", MassUnit.GRAM).get().points())
                .containsExactly(new ChartPoint("1", 20.5), new ChartPoint("2", 21));
        assertThat(Series.of(pieces, "note", MassUnit.GRAM)).isInstanceOf(Parsed.Refused.class);
        assertThat(Series.of(pieces, "d9", MassUnit.GRAM))
                .isInstanceOfSatisfying(Parsed.Refused.class, refused -> assertThat(refused.mend())
                        .isEqualTo("chart one of mass_g, length, d1"));
        assertThat(Series.of(pieces, "mass", MassUnit.OUNCE))
                .isInstanceOfSatisfying(Parsed.Refused.class, refused -> assertThat(refused.mend())
                        .isEqualTo("chart one of mass_oz, length, d1"));
    }
}
