package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.Seeds;

/** What the rules promise, simulated with seeds of their own: false signals, and what is seen. */
class FalseAlarmsTest {
    private static double[] stable(int count, Random random) {
        return random.doubles(count)
                .map(each -> 140 + 1.7 * random.nextGaussian())
                .toArray();
    }

    /** Signals, changes and the note on memory, looked at after every piece; 3,000 sets tell 4.5 % to 0.38 %. */
    @Test
    void steady_work_is_left_alone_in_nineteen_sets_of_twenty() {
        Random random = new Random(20_261_129);
        int sets = Seeds.times(3000);
        int spoken = 0;
        for (int set = 0; set < sets; set++) {
            double[] values = stable(40, random);
            boolean any = !SelfStarting.changes(ControlChartTest.points(values)).isEmpty();
            for (int count = ControlChart.ENOUGH; count <= 40 && !any; count++) {
                any = remembers(Arrays.copyOf(values, count));
            }
            spoken += any ? 1 : 0;
        }
        assertThat(spoken / (double) sets).isBetween(0.035, 0.05);
    }

    private static boolean remembers(double[] values) {
        return ControlChart.of(ControlChartTest.points(values), ChartConstants.PRINTED, Set.of())
                .get()
                .memory()
                .isPresent();
    }

    /** The watch's list says what each look said: a change told at a piece is told when that piece is the newest, and kept. */
    @Test
    void what_is_told_is_what_was_told_piece_by_piece() {
        Random random = new Random(8);
        for (int set = 0; set < Seeds.times(100); set++) {
            double[] values = stable(30, random);
            for (int i = 12; i < 30; i++) {
                values[i] += 4;
            }
            values[22] += 30;
            List<String> all = SelfStarting.changes(ControlChartTest.points(values)).stream()
                    .map(WorkChange::at)
                    .toList();
            for (int count = 2; count <= 30; count++) {
                String newest = "p" + count;
                List<WorkChange> now = SelfStarting.changes(ControlChartTest.points(Arrays.copyOf(values, count)));
                assertThat(now.stream().anyMatch(each -> each.at().equals(newest)))
                        .isEqualTo(all.contains(newest));
            }
        }
    }

    /** A scale that reads in steps of up to six deviations does not make steady work speak more often. */
    @ParameterizedTest
    @CsvSource({"0.5", "1", "2", "4", "6"})
    void a_coarse_scale_brings_no_more_signals(double step) {
        Random random = new Random(61);
        int sets = Seeds.times(1500);
        int spoken = 0;
        for (int set = 0; set < sets; set++) {
            double offset = random.nextDouble();
            double[] values = random.doubles(40)
                    .map(each -> step * Math.rint(random.nextGaussian() / step + offset))
                    .toArray();
            spoken += SelfStarting.changes(ControlChartTest.points(values)).isEmpty() ? 0 : 1;
        }
        assertThat(spoken / (double) sets).isLessThan(0.052);
    }

    /** The rates told of each choice; the run rules drawn anew for every look. 750 sets tell 50 % to 1.8 %. */
    @ParameterizedTest
    @EnumSource(RuleChoice.class)
    void the_rates_told_are_those_of_the_rules(RuleChoice choice) {
        Random random = new Random(4711);
        int sets = Seeds.times(750);
        int[] spoken = new int[41];
        for (int set = 0; set < sets; set++) {
            double[] values = stable(40, random);
            for (int count = 2; count <= 40; count++) {
                if (!chart(Arrays.copyOf(values, count), choice).signals().isEmpty()) {
                    spoken[count]++;
                    break;
                }
            }
        }
        int soFar = 0;
        for (int count = 2; count <= 40; count++) {
            soFar += spoken[count];
            if (count % 10 == 0) {
                double told = choice.falseAlarmsPct(count);
                double error = 100 * Math.sqrt(told / 100 * (1 - told / 100) / sets);
                assertThat(100.0 * soFar / sets)
                        .as("%s of %d", choice, count)
                        .isCloseTo(told, within(3.5 * error + 0.2));
            }
        }
        assertThat(choice.falseAlarmsPct(0)).isZero();
        assertThat(choice.falseAlarmsPct(5)).isCloseTo(choice.falseAlarmsPct(10) / 2, within(1e-12));
        assertThat(choice.falseAlarmsPct(400)).isEqualTo(choice.falseAlarmsPct(40));
    }

    private static ControlChart chart(double[] values, RuleChoice choice) {
        return ControlChart.of(ControlChartTest.points(values), ChartConstants.PRINTED, choice.rules())
                .get();
    }

    private static double[] changed(Random random, double jump, double drift) {
        double[] values = new double[20];
        for (int i = 0; i < 20; i++) {
            values[i] = random.nextGaussian() + (i < 10 ? 0 : jump + drift * (i - 9) / 10);
        }
        return values;
    }

    private static double seen(ToDoubleFunction<double[]> most, double limit, double jump, double drift, int sets) {
        Random random = new Random(1234);
        int seen = 0;
        for (int set = 0; set < sets; set++) {
            seen += most.applyAsDouble(changed(random, jump, drift)) > limit ? 1 : 0;
        }
        return seen / (double) sets;
    }

    private static double watched(double[] values) {
        return SelfStarting.changes(ControlChartTest.points(values)).size();
    }

    @Test
    void changes_are_seen_as_often_as_told() {
        int sets = 4000;
        assertThat(100 * seen(FalseAlarmsTest::watched, 0, 2, 0, sets))
                .isCloseTo(Power.jumpOfTwoSigmaPct(), within(3.0));
        for (double sigmas : new double[] {0, 1, 2, 3, 4, 5, 6}) {
            assertThat(100 * seen(FalseAlarmsTest::watched, 0, 0, sigmas, sets))
                    .as("a drift of %s", sigmas)
                    .isCloseTo(Power.driftPct(sigmas), within(3.0));
        }
        assertThat(Power.driftPct(2.5)).isCloseTo((Power.driftPct(2) + Power.driftPct(3)) / 2, within(1e-12));
        assertThat(Power.driftPct(80)).isEqualTo(100);
    }

    /**
     * At the same rate of false signals, other published ways that need no known mean and scatter: the weighted moving average of the same
     * scores, with weights 0.1 to 0.3, and the change point by likelihood. Sources: S. W. Roberts, Technometrics 1 (1959) 239–250; D. M.
     * Hawkins, P. Qiu and C. W. Kang, Journal of Quality Technology 35 (2003) 355–366 (both from memory). Each limit is set by 4,000 stable
     * sets of forty.
     */
    @Test
    void no_other_way_tried_sees_drifts_and_jumps_more_often() {
        double ownDrift = seen(FalseAlarmsTest::watched, 0, 0, 3, 4000);
        double ownJump = seen(FalseAlarmsTest::watched, 0, 2, 0, 4000);
        List<ToDoubleFunction<double[]>> others = List.of(
                values -> average(values, 0.1),
                values -> average(values, 0.2),
                values -> average(values, 0.3),
                FalseAlarmsTest::changePoint);
        for (ToDoubleFunction<double[]> other : others) {
            Random random = new Random(99);
            double[] most = random.ints(4000)
                    .mapToDouble(each -> other.applyAsDouble(stable(40, random)))
                    .sorted()
                    .toArray();
            double limit = most[(int) (4000 * (1 - 0.041))];
            assertThat(seen(other, limit, 0, 3, 4000)).isLessThan(ownDrift + 0.015);
            assertThat(seen(other, limit, 2, 0, 4000)).isLessThan(ownJump + 0.015);
        }
    }

    private static double average(double[] values, double weight) {
        double mean = 0;
        double squares = 0;
        double average = 0;
        double most = 0;
        int judged = 0;
        for (int i = 0; i < values.length; i++) {
            double off = values[i] - mean;
            if (i >= SelfStarting.FIRST) {
                double t = off / Math.sqrt(squares / (i - 1)) * Math.sqrt(i / (i + 1.0));
                average += weight * (TailScore.of(t, i - 1) - average);
                judged++;
                double variance = weight / (2 - weight) * (1 - Math.pow(1 - weight, 2 * judged));
                most = Math.max(most, Math.abs(average) / Math.sqrt(variance));
            }
            mean += off / (i + 1);
            squares += off * (values[i] - mean);
        }
        return most;
    }

    /** The largest two-sample t over all splits, as a score, at each look from the fifth piece on. */
    private static double changePoint(double[] values) {
        double most = 0;
        for (int count = SelfStarting.FIRST + 1; count <= values.length; count++) {
            double total = 0;
            double squares = 0;
            for (int i = 0; i < count; i++) {
                total += values[i];
                squares += values[i] * values[i];
            }
            double about = squares - total * total / count;
            double before = 0;
            double best = 0;
            for (int split = 1; split < count; split++) {
                before += values[split - 1];
                double off = before / split - (total - before) / (count - split);
                best = Math.max(best, off * off * split * (count - split) / count);
            }
            double t = Math.sqrt(best / ((about - best) / (count - 2)));
            most = Math.max(most, TailScore.of(t, count - 2));
        }
        return most;
    }
}
