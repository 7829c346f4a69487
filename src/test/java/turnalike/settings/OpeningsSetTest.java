package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static turnalike.settings.DividersTest.problem;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.units.Length;
import turnalike.units.Problem;

/** What an opening is set to, between the distances that it serves and those that it must not. */
class OpeningsSetTest {
    private static final double NOISE_MM = 1e-9;

    private static DividerPlan plan(DividerProblem problem) {
        return Dividers.solve(problem, Effort.ofAsks(2_000)).findPlan().orElseThrow();
    }

    private static double[] distances(DividerProblem problem, DividerSetting setting) {
        return setting.steps().stream()
                .mapToDouble(step -> problem.marks()
                        .get(step.to())
                        .minus(problem.marks().get(step.from()))
                        .abs()
                        .mm())
                .sorted()
                .toArray();
    }

    @Test
    void an_opening_that_serves_one_distance_is_that_distance_without_a_hair() {
        DividerProblem row = problem(0, 30, 60, 90, 131.7, 200);
        DividerPlan plan = plan(row);
        assertThat(plan.settings()).isNotEmpty().allSatisfy(setting -> assertThat(setting.opening())
                .isEqualTo(Length.ofMm(distances(row, setting)[0])));
        assertThat(plan.settings()).isSortedAccordingTo(Comparator.comparing(DividerSetting::opening));
    }

    @Test
    void settings_rise_whatever_is_pinned_and_only_what_is_proven_ends_by_proof() {
        DividerProblem row = problem(0, 30, 60, 90, 131.7, 200).withPinned(List.of(Length.ofMm(68.3), Length.ofMm(12)));
        DividerPlan plan = plan(row);
        assertThat(plan.settings())
                .hasSizeGreaterThan(2)
                .isSortedAccordingTo(Comparator.comparing(DividerSetting::opening));
        assertThat(plan.fewestProven() && plan.tiesProven()).isTrue();
        assertThat(plan.endedBy()).isEqualTo(Ending.PROOF);
        double[] many = new double[40];
        for (int i = 1; i < many.length; i++) {
            many[i] = many[i - 1] + 7 + (i * 31 % 17);
        }
        DividerPlan cut =
                Dividers.solve(problem(many), Effort.ofAsks(0)).findPlan().orElseThrow();
        assertThat(cut.fewestProven()).isFalse();
        assertThat(cut.endedBy()).isNotEqualTo(Ending.PROOF);
    }

    @Test
    void an_opening_of_several_distances_leaves_the_farthest_mark_the_least_miss() {
        // 30.1, then twice 30: stepped thrice, 30.1 / 3 of a tenth more than 30 ends on the third mark; the middle
        // would miss it by 0.05.
        DividerPlan plan = plan(problem(0, 30.1, 60.1, 90.1, 400));
        assertThat(plan.settings()).hasSize(1);
        assertThat(plan.settings().get(0).opening().mm()).isEqualTo(90.1 / 3, offset(NOISE_MM));
        assertThat(plan.errors().get(3).miss().mm()).isEqualTo(0, offset(NOISE_MM));
        assertThat(plan.errors().get(1).miss().mm()).isEqualTo(90.1 / 3 - 30.1, offset(NOISE_MM));
    }

    @Test
    void with_very_many_marks_each_opening_stands_in_the_middle_of_what_it_serves() {
        double[] places = new double[PlanBuilder.MOST_FOR_LEAST_MISSES + 12];
        for (int i = 1; i < places.length; i++) {
            places[i] = places[i - 1] + (i % 3 == 0 ? 7.06 : i % 3 == 1 ? 7 : 7.1);
        }
        DividerProblem row = problem(places).withLimit(Length.ofMm(1_000));
        DividerPlan plan = plan(row);
        PlanCheck.isSound(row, plan);
        assertThat(plan.settings()).allSatisfy(setting -> {
            double[] served = distances(row, setting);
            assertThat(setting.opening().mm()).isEqualTo((served[0] + served[served.length - 1]) / 2, offset(NOISE_MM));
        });
        assertThat(plan.settings()).as("one that serves unlike distances").anySatisfy(setting -> assertThat(
                        distances(row, setting))
                .satisfies(served ->
                        assertThat(served[served.length - 1] - served[0]).isGreaterThan(0.01)));
    }

    private static Spans.Rules rules(double toleranceMm, double... forbiddenMm) {
        return new Spans.Rules(toleranceMm, 0, 200, new boolean[0], new double[] {25}, forbiddenMm);
    }

    private static OpeningRange serving(Spans.Rules rules, double... distancesMm) {
        OpeningRange range = new OpeningRange(2 * Spans.SLACK_MM, rules.largestMm(), false);
        for (double distanceMm : distancesMm) {
            range = range.serving(distanceMm, rules);
        }
        return range;
    }

    @Test
    void a_range_narrows_to_what_serves_all_its_distances() {
        OpeningRange range = serving(rules(0.5), 30, 30.7);
        assertThat(range.leastMm()).isEqualTo(30.2, offset(NOISE_MM));
        assertThat(range.mostMm()).isEqualTo(30.5, offset(NOISE_MM));
        assertThat(range.isEmpty()).isFalse();
        assertThat(range.isFixed()).isFalse();
        assertThat(range.nearest(30.3)).isEqualTo(30.3);
        assertThat(range.nearest(40)).isEqualTo(range.mostMm());
        assertThat(range.nearest(3)).isEqualTo(range.leastMm());
        assertThat(serving(rules(0.5), 30, 31.2).isEmpty()).isTrue();
        assertThat(serving(rules(0.5), 199.8).mostMm()).isEqualTo(200);
    }

    @Test
    void distances_just_as_far_apart_as_one_opening_serves_leave_one_place() {
        OpeningRange range = serving(rules(0.1), 30.2, 30, 30.2);
        assertThat(range.isEmpty()).isFalse();
        assertThat(range.nearest(0)).isEqualTo(30.1, offset(NOISE_MM));
        OpeningRange hair = serving(rules(0.1), 30, 30.2 + Spans.SLACK_MM);
        assertThat(hair.isFixed()).isTrue();
        assertThat(hair.isEmpty()).isFalse();
        assertThat(hair.leastMm()).isEqualTo(30.1 + Spans.SLACK_MM / 2, offset(NOISE_MM));
        assertThat(serving(rules(0), 30).isFixed()).isTrue();
    }

    @Test
    void a_forbidden_opening_is_kept_clear_of_on_the_side_of_the_distance() {
        Spans.Rules rules = rules(0.5, 30);
        assertThat(serving(rules, 30.6).leastMm()).isGreaterThan(30.5).isEqualTo(30.5, offset(1e-4));
        assertThat(serving(rules, 29.4).mostMm()).isLessThan(29.5).isEqualTo(29.5, offset(1e-4));
        assertThat(serving(rules, 29.4).leastMm()).isEqualTo(28.9, offset(NOISE_MM));
        assertThat(serving(rules, 30.6).mostMm()).isEqualTo(31.1, offset(NOISE_MM));
    }

    @Test
    void a_pinned_opening_stays() {
        OpeningRange pinned = new OpeningRange(25, 25, true);
        assertThat(pinned.serving(25.05, rules(0.1))).isEqualTo(pinned);
    }

    @Test
    void a_refusal_says_how_far_a_step_errs_and_what_the_limit_is() {
        DividerProblem tight = problem(0, 30, 71, 200).withLimit(Length.ofMm(0.2));
        assertThat(Dividers.obstacles(tight))
                .extracting(Problem::toString)
                .hasSize(2)
                .allSatisfy(said -> assertThat(said)
                        .contains("one step errs by one mark error, 0.25 mm worst case, past the limit of 0.2 mm"));
        assertThat(Dividers.obstacles(tight.withOnTheStick(Set.of(1))))
                .extracting(Problem::toString)
                .anySatisfy(said -> assertThat(said)
                        .contains("even a mark from the stick errs by one mark error, 0.25 mm worst case"));
    }

    @Test
    void an_opening_both_pinned_and_forbidden_is_told_to_within_the_tolerance() {
        DividerProblem row = problem(0, 30, 60, 200).withPinned(List.of(Length.ofMm(30)));
        Stream<Boolean> told = Stream.of(29.9, 30.1, 29.89, 30.11)
                .map(mm -> row.withForbidden(List.of(Length.ofMm(mm))))
                .map(each -> Dividers.obstacles(each).stream()
                        .anyMatch(problem -> problem.toString().contains("is also forbidden")));
        assertThat(told.toList()).isEqualTo(Arrays.asList(true, true, false, false));
    }
}
