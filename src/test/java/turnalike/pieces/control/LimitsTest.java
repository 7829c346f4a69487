package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.Seeds;
import turnalike.units.MassUnit;

/** Both sides of the limits at which a chart, a drift or a capability says something else, and what it refuses. */
class LimitsTest {
    private static List<ChartPoint> points(double... values) {
        List<ChartPoint> out = new ArrayList<>();
        for (double value : values) {
            out.add(new ChartPoint("p" + (out.size() + 1), value));
        }
        return out;
    }

    @Test
    void twenty_points_make_firm_limits_and_nineteen_are_a_trial() {
        ControlChart nineteen = ControlChart.of(
                        points(DoubleStream.iterate(1, x -> 3 - x).limit(19).toArray()))
                .get();
        ControlChart twenty = ControlChart.of(
                        points(DoubleStream.iterate(1, x -> 3 - x).limit(20).toArray()))
                .get();
        assertThat(nineteen.isTrial()).isTrue();
        assertThat(nineteen.working().toString()).contains("19 pieces give trial limits");
        assertThat(twenty.isTrial()).isFalse();
        assertThat(twenty.working().toString()).contains("by chance alone");
        assertThat(twenty.memory().orElseThrow()).contains("take turns", "too wide");
    }

    /** Random series of twenty, some with memory: the lag-1 correlation as worked out here from its definition. */
    @Test
    void memory_is_told_beyond_three_over_the_root_of_twenty_and_more() {
        boolean[] seen = new boolean[3];
        Seeds.each(60, random -> {
            double[] x = new double[20];
            double keeps = 1.8 * random.nextDouble() - 0.9;
            for (int i = 0; i < 20; i++) {
                x[i] = random.nextGaussian() + (i == 0 ? 0 : keeps * x[i - 1]);
            }
            double mean = Arrays.stream(x).average().orElseThrow();
            double squares = 0;
            double products = 0;
            for (int i = 0; i < 20; i++) {
                squares += (x[i] - mean) * (x[i] - mean);
                products += i == 0 ? 0 : (x[i] - mean) * (x[i - 1] - mean);
            }
            double lag = products / squares;
            double bound = 3 / Math.sqrt(20);
            assertThat(ControlChart.of(points(x)).get().memory().orElse("nothing"))
                    .startsWith(lag > bound ? "each piece follows" : lag < -bound ? "heavy and light" : "nothing");
            seen[lag > bound ? 2 : lag < -bound ? 0 : 1] = true;
        });
        assertThat(seen).containsExactly(true, true, true);
    }

    @ParameterizedTest
    @CsvSource({"0, are 0", "1, is 1"})
    void too_few_points_are_counted_in_the_refusal(int count, String words) {
        assertThat(ControlChart.of(points(new double[count])).toString()).contains("there " + words);
    }

    /** 205 with a deviation of 2 between 198 and 210: the handbook's formulas by hand. */
    @Test
    void capability_is_that_of_the_nearer_limit() {
        Capability figures = Capability.of(205, 2, Capability.Limits.between(198, 210));
        assertThat(figures.potential().getAsDouble()).isCloseTo(1, within(1e-12));
        assertThat(figures.upper().getAsDouble()).isCloseTo(5 / 6.0, within(1e-12));
        assertThat(figures.lower().getAsDouble()).isCloseTo(7 / 6.0, within(1e-12));
        assertThat(figures.worst()).isCloseTo(5 / 6.0, within(1e-12));
        assertThat(figures.offCentre().getAsDouble()).isCloseTo(1 / 6.0, within(1e-12));
        assertThat(Capability.of(205, 1, Capability.Limits.between(198, 210))
                        .offCentre()
                        .getAsDouble())
                .as("how far off the middle of the limits, whatever the scatter")
                .isCloseTo(1 / 6.0, within(1e-12));
        assertThat(Capability.of(204, 2, Capability.Limits.around(204, 6)).worst())
                .isCloseTo(1, within(1e-12));
        Capability.Limits least = new Capability.Limits(OptionalDouble.of(1), OptionalDouble.empty());
        assertThat(Capability.of(4, 1, least).worst()).isCloseTo(1, within(1e-12));
        assertThat(Capability.of(4, 1, least).potential()).isEmpty();
        assertThat(Capability.of(4, 1, Capability.Limits.upTo(10)).worst()).isCloseTo(2, within(1e-12));
    }

    @Test
    void limits_that_cross_or_meet_and_deviations_of_nothing_are_faults() {
        assertThatThrownBy(() -> Capability.Limits.between(2, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Capability.Limits.between(3, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Capability.Limits(OptionalDouble.empty(), OptionalDouble.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        Capability.Limits limits = Capability.Limits.between(1, 2);
        for (double deviation : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Capability.of(1.5, deviation, limits))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Capability.of(Double.NaN, 1, limits)).isInstanceOf(IllegalArgumentException.class);
    }

    /** λ = 1 follows the values themselves, so a value of just three sigmas is on the limit. */
    @Test
    void an_average_on_its_limit_is_not_beyond_it() {
        EwmaChart chart = EwmaChart.of(points(13, 13.01, 7, 6.99), new EwmaChart.Setting(10, 1, 1));
        assertThat(chart.lower()).isEqualTo(7);
        assertThat(chart.upper()).isEqualTo(13);
        assertThat(chart.beyond()).containsExactly("p2", "p4");
        assertThat(EwmaChart.of(points(14, 14), new EwmaChart.Setting(10, 1, 0.5))
                        .averages())
                .extracting(ChartPoint::value)
                .containsExactly(12.0, 13.0);
    }

    @ParameterizedTest
    @CsvSource({"NaN, 1, 0.3", "1, -0.1, 0.3", "1, Infinity, 0.3", "1, NaN, 0.3", "1, 1, 0", "1, 1, 1.01", "1, 1, NaN"})
    void a_moving_average_of_nonsense_is_a_fault(double start, double sigma, double lambda) {
        assertThatThrownBy(() -> new EwmaChart.Setting(start, sigma, lambda))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 3", "-1, 3", "1, 0.99", "Infinity, 3", "1, Infinity", "NaN, 3", "1, NaN"})
    void chart_factors_of_nonsense_are_a_fault(double d2, double d4) {
        assertThatThrownBy(() -> new ChartConstants(d2, d4)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void factors_and_settings_at_their_edges_are_taken() {
        assertThat(new ChartConstants(0.1, 1).d4()).isEqualTo(1);
        assertThat(new EwmaChart.Setting(1, 0, 1).sigma()).isZero();
    }

    @Test
    void a_series_tells_its_unit() {
        assertThat(new Series("mass_oz", points(1, 2)).unit()).isEqualTo("oz");
        assertThat(new Series("mass_g", points(1, 2)).unit()).isEqualTo("g");
        assertThat(new Series("d1", points(1, 2)).unit()).isEqualTo("mm");
        assertThat(new Series("grain", points(1, 2)).unit()).isEmpty();
        assertThat(new Series(" MASS_OZ ", points(1, 2)).massUnit()).isEqualTo(MassUnit.OUNCE);
    }

    @Test
    void one_value_has_no_deviation_and_none_are_a_fault() {
        assertThat(SampleStatistics.of(List.of(5.0))).isEqualTo(new SampleStatistics(1, 5, 0, 0));
        assertThat(SampleStatistics.of(List.of(1.0, 3.0)).deviation()).isCloseTo(Math.sqrt(2), within(1e-15));
        assertThatThrownBy(() -> SampleStatistics.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
