package turnalike.pieces.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static turnalike.pieces.control.ControlChartTest.points;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

/** What the self-starting watch makes of series whose change is known. */
class WorkChangeTest {
    private static final double[] STEADY = {10.0, 10.3, 9.8, 10.1, 9.9, 10.2, 9.7, 10.0, 10.1, 9.9};

    private static double[] then(double... more) {
        double[] out = Arrays.copyOf(STEADY, STEADY.length + more.length);
        System.arraycopy(more, 0, out, STEADY.length, more.length);
        return out;
    }

    private static List<WorkChange> changes(double... values) {
        return SelfStarting.changes(points(values));
    }

    @Test
    void steady_pieces_and_equal_pieces_bring_nothing() {
        assertThat(changes(STEADY)).isEmpty();
        assertThat(changes(5, 5, 5, 5, 5, 5, 5)).isEmpty();
        assertThat(changes()).isEmpty();
        assertThat(changes(1, 1, 1, 1, 900)).as("no scatter to judge by").isEmpty();
    }

    @Test
    void a_step_is_told_from_its_first_piece() {
        List<WorkChange> told = changes(then(10.6, 10.7, 10.5, 10.6, 10.7, 10.6));
        assertThat(told).hasSize(1);
        WorkChange change = told.get(0);
        assertThat(change.kind()).isEqualTo(WorkChange.Kind.SHIFT);
        assertThat(change.since()).isEqualTo("p11");
        assertThat(change.stands()).isTrue();
        assertThat(change.by()).isBetween(0.55, 0.7);
        assertThat(change.words("weights", "0.6 g"))
                .isEqualTo("from piece p11 on the weights are 0.6 g more than before");
        assertThat(change.signal().rule()).isEqualTo(RunRule.LASTING_CHANGE);
    }

    @Test
    void a_drift_is_told_as_one_with_its_rise() {
        List<WorkChange> told = changes(then(10.15, 10.3, 10.45, 10.6, 10.75, 10.9));
        WorkChange change = told.get(0);
        assertThat(change.kind()).isEqualTo(WorkChange.Kind.DRIFT);
        assertThat(change.by()).isCloseTo(0.15 * change.pieces(), within(0.1));
        assertThat(change.words("necks", "0.2 mm")).startsWith("the necks grew 0.2 mm over ");
        assertThat(changes(then(9.85, 9.7, 9.55, 9.4, 9.25, 9.1)).get(0).words("necks", "0.2 mm"))
                .startsWith("the necks shrank");
    }

    @Test
    void one_piece_apart_is_told_alone_and_not_taken_into_the_scatter() {
        List<WorkChange> told = changes(then(12.5, 10.0, 10.1, 9.9, 10.2));
        assertThat(told).extracting(WorkChange::kind).containsExactly(WorkChange.Kind.APART);
        assertThat(told.get(0).at()).isEqualTo("p11");
        assertThat(told.get(0).by()).isCloseTo(2.5, within(1e-9));
        assertThat(told.get(0).stands()).as("it is past").isFalse();
        assertThat(changes(then(12.5)).get(0).stands()).isTrue();
        assertThat(changes(then(12.5, 10.0, 12.5))).hasSize(2);
    }

    @Test
    void two_apart_in_a_row_are_a_change_that_lasts() {
        List<WorkChange> told = changes(then(12.5, 12.4, 12.6, 12.5));
        assertThat(told).extracting(WorkChange::kind).containsExactly(WorkChange.Kind.APART, WorkChange.Kind.SHIFT);
        assertThat(told.get(1).since()).isEqualTo("p11");
        assertThat(told.get(1).at()).isEqualTo("p12");
        assertThat(told.get(1).stands()).isTrue();
        assertThat(changes(then(12.5, 7.5))).extracting(WorkChange::kind).containsOnly(WorkChange.Kind.APART);
    }

    @Test
    void after_a_change_the_work_is_judged_by_what_it_has_become() {
        double[] back = then(11, 11.1, 10.9, 11.2, 10.8, 11, 11.1, 10.9, 11, 10, 10.1, 9.9, 10, 10.1, 9.9);
        List<WorkChange> told = changes(back);
        assertThat(told.get(0).by()).isPositive();
        assertThat(told.get(0).stands()).as("it came back").isFalse();
        assertThat(told.get(told.size() - 1).by()).isNegative();
        assertThat(told.get(told.size() - 1).stands()).isTrue();
    }

    /** A unit and a zero of their own change nothing but the size. */
    @Test
    void the_unit_does_not_matter() {
        Seeds.each(40, random -> {
            double[] values = new double[30];
            double[] other = new double[30];
            for (int i = 0; i < 30; i++) {
                values[i] = 50 + random.nextGaussian() + (i < 15 ? 0 : 2.5);
                other[i] = 0.001 * values[i] + 7;
            }
            List<WorkChange> first = changes(values);
            List<WorkChange> second = changes(other);
            assertThat(second)
                    .extracting(WorkChange::at)
                    .isEqualTo(first.stream().map(WorkChange::at).toList());
            for (int i = 0; i < first.size(); i++) {
                assertThat(second.get(i).by()).isCloseTo(0.001 * first.get(i).by(), within(1e-9));
            }
        });
    }

    @Test
    void below_five_pieces_there_is_too_little_to_tell_for_every_choice() {
        for (RuleChoice choice : RuleChoice.values()) {
            Seeds.each(200, random -> {
                double[] four = random.doubles(2 + random.nextInt(3))
                        .map(x -> Math.exp(9 * x))
                        .toArray();
                ControlChart chart = ControlChart.of(points(four), ChartConstants.PRINTED, choice.rules())
                        .get();
                assertThat(chart.signals()).isEmpty();
                assertThat(chart.verdict().orElseThrow()).startsWith("Too few to tell");
            });
            assertThat(RuleChoice.find(choice.word())).contains(choice);
            assertThat(RuleChoice.words()).contains(choice.word());
        }
        double[] fifth = {10, 10.1, 9.9, 10, 100};
        ControlChart chart = ControlChart.of(points(fifth), ChartConstants.PRINTED, RunRule.selfStarting())
                .get();
        assertThat(chart.signals()).hasSize(1);
        assertThat(chart.verdict()).isEmpty();
        assertThat(ControlChart.of(points(STEADY), ChartConstants.PRINTED, RunRule.selfStarting())
                        .get()
                        .verdict())
                .contains("Nothing looks like a change in the work.");
    }
}
