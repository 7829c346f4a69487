package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import turnalike.Seeds;

/** Against the NIST Statistical Reference Datasets, certified values (verified, see the README with the data). */
class SampleStatisticsTest {
    static Stream<List<String>> certified() {
        return Published.rows("nist_strd_univariate.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("certified")
    void certified_sets_agree_to_twelve_digits(List<String> row) {
        List<Double> values = Arrays.stream(row.get(5).strip().split(" "))
                .map(Double::valueOf)
                .toList();
        SampleStatistics sample = SampleStatistics.of(values);
        assertThat(values).hasSize(Integer.parseInt(row.get(1)));
        assertDigits(sample.mean(), Double.parseDouble(row.get(2)), 14);
        assertDigits(sample.deviation(), Double.parseDouble(row.get(3)), 12);
        assertDigits(sample.neighbours(), Double.parseDouble(row.get(4)), 12);
    }

    /**
     * The sets made to break sums of squares: a first value, then 500 pairs. The data themselves are rounded when they become doubles
     * (10000000.1 is off by about 1e-9, that is 1e-8 of the spread), so no algorithm on doubles can promise more digits than asked here.
     */
    @ParameterizedTest
    @CsvSource({
        "NumAcc2, 1.2, 1.1, 1.3, 13",
        "NumAcc3, 1000000.2, 1000000.1, 1000000.3, 9",
        "NumAcc4, 10000000.2, 10000000.1, 10000000.3, 8",
    })
    void sets_far_from_zero_keep_the_digits_their_data_have(
            String name, double first, double low, double high, int digits) {
        List<Double> values = new ArrayList<>(List.of(first));
        for (int i = 0; i < 500; i++) {
            values.add(low);
            values.add(high);
        }
        SampleStatistics sample = SampleStatistics.of(values);
        assertThat(sample.count()).as(name).isEqualTo(1001);
        assertDigits(sample.mean(), first, 14);
        assertDigits(sample.deviation(), 0.1, digits);
        assertDigits(sample.neighbours(), -0.999, digits);
    }

    private static void assertDigits(double actual, double certified, int digits) {
        assertThat(actual).isCloseTo(certified, within(Math.abs(certified) * Math.pow(10, -digits)));
    }

    @Test
    void equal_values_have_no_spread_at_all() {
        SampleStatistics sample = SampleStatistics.of(Collections.nCopies(37, 0.1));
        assertThat(sample).isEqualTo(new SampleStatistics(37, 0.1, 0, 0));
        assertThat(SampleStatistics.of(List.of(7.0))).isEqualTo(new SampleStatistics(1, 7, 0, 0));
        assertThatThrownBy(() -> SampleStatistics.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_shift_moves_the_mean_and_nothing_else() {
        Seeds.each(50, random -> {
            List<Double> values = random.doubles(20).boxed().toList();
            SampleStatistics here = SampleStatistics.of(values);
            SampleStatistics there =
                    SampleStatistics.of(values.stream().map(x -> x + 1024).toList());
            assertThat(there.mean()).isCloseTo(here.mean() + 1024, within(1e-12));
            assertThat(there.deviation()).isCloseTo(here.deviation(), within(1e-12));
            assertThat(there.neighbours()).isCloseTo(here.neighbours(), within(1e-11));
        });
    }
}
