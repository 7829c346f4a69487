package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.Seeds;

class RunRuleTest {
    /** The points, counted from 1, that complete the rule's pattern in values given in sigmas from the centre. */
    private static List<Integer> completes(RunRule rule, String values) {
        double[] z = Arrays.stream(values.strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        Runs runs = new Runs(z, 0, 1);
        return IntStream.range(0, z.length)
                .filter(i -> runs.completes(rule, i))
                .mapToObj(i -> i + 1)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BEYOND_THREE | 0 3 3.01 -3 -3.01 | 3 5",
                "TWO_OF_THREE_BEYOND_TWO | 2.1 0 2.1 0 0 2.1 | 3",
                "TWO_OF_THREE_BEYOND_TWO | 2.1 0 -2.1 2.1 2 | ''",
                "TWO_OF_THREE_BEYOND_TWO | 0 -2.1 -2.1 0 0 | 3",
                "TWO_OF_THREE_BEYOND_TWO | 2.1 2.1 2 0 2.1 | 2",
                "TWO_OF_THREE_BEYOND_TWO | 2.1 0 0 2.1 0 2.1 2.1 | 6 7",
                "FOUR_OF_FIVE_BEYOND_ONE | 1.1 1.1 1.1 1.1 1 | 4",
                "FOUR_OF_FIVE_BEYOND_ONE | 1.1 1.1 0 1.1 1.1 0 | 5",
                "FOUR_OF_FIVE_BEYOND_ONE | 1.1 1.1 -1.1 1.1 1 1.1 | ''",
                "FOUR_OF_FIVE_BEYOND_ONE | -1.1 -1.1 -1.1 0 -1.1 -1.1 | 5 6",
                "EIGHT_ON_ONE_SIDE | .1 .1 .1 .1 .1 .1 .1 .1 .1 -.1 | 8 9",
                "EIGHT_ON_ONE_SIDE | .1 .1 .1 .1 0 .1 .1 .1 .1 .1 .1 | ''",
                "NINE_ON_ONE_SIDE | -.1 -.1 -.1 -.1 -.1 -.1 -.1 -.1 -.1 -.1 | 9 10",
                "SIX_STEADY | 0 .1 .2 .3 .4 .5 .6 .5 | 6 7",
                "SIX_STEADY | .5 .4 .3 .2 .1 .1 0 -.1 | ''",
                "SIX_STEADY | .5 .4 .3 .2 .1 0 | 6",
                "FOURTEEN_ALTERNATING | 0 1 0 1 0 1 0 1 0 1 0 1 0 1 0 0 | 14 15",
                "FOURTEEN_ALTERNATING | 0 1 0 1 0 1 1 0 1 0 1 0 1 0 1 0 | ''",
                "FIFTEEN_WITHIN_ONE | 0 .9 -.9 0 .9 -.9 0 .9 -.9 0 .9 -.9 0 .9 -.9 1 | 15",
                "EIGHT_BEYOND_ONE | 1.1 -1.1 1.1 -1.1 1.1 -1.1 1.1 -1.1 1 | 8",
            })
    void patterns_complete_where_the_rule_says(RunRule rule, String values, String at) {
        List<Integer> expected = at.isEmpty()
                ? List.of()
                : Arrays.stream(at.split(" ")).map(Integer::valueOf).toList();
        assertThat(completes(rule, values)).isEqualTo(expected);
    }

    @Test
    void rules_know_no_up_or_down() {
        Seeds.each(100, random -> {
            double[] up = random.doubles(60, -4, 4).toArray();
            double[] down = Arrays.stream(up).map(x -> -x).toArray();
            for (RunRule rule : RunRule.values()) {
                Runs a = new Runs(up, 0, 1);
                Runs b = new Runs(down, 0, 1);
                IntStream.range(0, 60)
                        .forEach(i -> assertThat(a.completes(rule, i)).isEqualTo(b.completes(rule, i)));
            }
        });
    }

    /**
     * The chance of a signal at one point of a process in order, by counting or from the normal distribution: beyond three sigmas 0.0027;
     * eight on one side 2/2^8 = 0.0078; nine 2/2^9 = 0.0039; six steady 2/6! = 0.0028; fifteen within one sigma 0.6827^15 = 0.0033; eight
     * beyond it 0.3173^8 = 0.0001; fourteen alternating 2·199360981/14! = 0.0046, the zigzag number of fourteen being a secant number.
     */
    @ParameterizedTest
    @CsvSource({
        "BEYOND_THREE, 0.0027",
        "EIGHT_ON_ONE_SIDE, 0.0078125",
        "NINE_ON_ONE_SIDE, 0.00390625",
        "SIX_STEADY, 0.00277778",
        "FIFTEEN_WITHIN_ONE, 0.00326",
        "EIGHT_BEYOND_ONE, 0.000103",
        "FOURTEEN_ALTERNATING, 0.0045736",
    })
    void false_alarms_are_as_rare_as_the_distribution_says(RunRule rule, double chance) {
        int points = 400_000;
        Random random = new Random(11);
        double[] z = IntStream.range(0, points)
                .mapToDouble(i -> random.nextGaussian())
                .toArray();
        Runs runs = new Runs(z, 0, 1);
        long alarms =
                IntStream.range(0, points).filter(i -> runs.completes(rule, i)).count();
        // Alarms come in clumps (a run of eight makes a run of nine likely), so five times the deviation of single
        // ones.
        assertThat(Math.abs(alarms - chance * points)).isLessThan(5 * Math.sqrt(chance * points) * 1.6);
    }

    @Test
    void signals_name_the_piece_the_rule_and_the_side() {
        List<ChartPoint> points = ControlChartTest.points(10, 10.1, 9.9, 10, 10.1, 9.9, 10, 10.1, 9.9, 14, 10);
        Set<RunRule> rules = EnumSet.of(RunRule.BEYOND_THREE, RunRule.RANGE_BEYOND);
        List<Signal> signals =
                ControlChart.of(points, ChartConstants.PRINTED, rules).get().signals();
        assertThat(signals)
                .extracting(Signal::piece, Signal::rule)
                .containsExactly(
                        tuple("p10", RunRule.BEYOND_THREE),
                        tuple("p10", RunRule.RANGE_BEYOND),
                        tuple("p11", RunRule.RANGE_BEYOND));
        assertThat(signals.get(0).words()).isEqualTo("piece p10: one point beyond 3 sigma, above the centre");
        assertThat(signals.get(1).words()).isEqualTo("pieces p9 to p10: a moving range above its limit");
    }

    @Test
    void only_the_rules_asked_for_speak() {
        List<ChartPoint> points = ControlChartTest.points(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
        Set<RunRule> trend = EnumSet.of(RunRule.SIX_STEADY);
        List<Signal> signals =
                ControlChart.of(points, ChartConstants.PRINTED, trend).get().signals();
        assertThat(signals).extracting(Signal::piece).containsExactly("p6", "p7", "p8", "p9", "p10");
        assertThat(RunRule.nelson()).hasSize(8);
        assertThat(RunRule.westernElectric()).hasSize(4);
    }
}
