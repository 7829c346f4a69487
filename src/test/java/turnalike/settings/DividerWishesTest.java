package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static turnalike.settings.DividersTest.problem;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

class DividerWishesTest {
    private static final DividerProblem TWO_MARKS = problem(0, 31, 97, 200);

    @Test
    void a_pinned_opening_stands_as_it_was_pinned() {
        DividerPlan plan = plan(TWO_MARKS.withPinned(mm(31.05)));
        assertThat(plan.settings()).hasSize(2);
        DividerSetting pinned = plan.settings().get(0);
        assertThat(pinned.pinned()).isTrue();
        assertThat(pinned.opening()).isEqualTo(Length.ofMm(31.05));
        assertThat(pinned.steps()).containsExactly(new DividerStep(0, 1, 1));
    }

    @Test
    void a_pinned_opening_that_serves_no_mark_is_shown_without_steps() {
        DividerPlan plan = plan(TWO_MARKS.withPinned(mm(12)));
        assertThat(plan.settings()).hasSize(3);
        assertThat(plan.settings().get(0).steps()).isEmpty();
        assertThat(plan.settings().get(0).servesAgain()).isFalse();
        assertThat(plan.fewestProven()).isTrue();
    }

    @Test
    void a_forbidden_opening_is_gone_round() {
        DividerPlan plan = plan(TWO_MARKS.withForbidden(mm(31, 66)));
        assertThat(plan.settings())
                .extracting(setting -> setting.opening().mm())
                .doesNotContain(31.0, 66.0);
        assertThat(plan.settings()).hasSize(2);
    }

    @Test
    void a_mark_from_the_stick_needs_no_setting_and_carries_one_mark_error() {
        DividerPlan plan = plan(TWO_MARKS.withOnTheStick(Set.of(1)));
        assertThat(plan.settings()).hasSize(1);
        assertThat(plan.listOnTheStick()).containsExactly(1);
        assertThat(plan.errors().get(1).worst()).isEqualTo(DividerProblem.MARK_ERROR);
        assertThat(plan(TWO_MARKS.withOnTheStick(Set.of(1, 2))).settings()).isEmpty();
    }

    @Test
    void steps_may_start_from_a_mark_that_the_stick_gave() {
        // 31 to 62 is one step of 31; from the ends it takes 31 twice.
        DividerProblem row = problem(0, 31, 62, 200).withLimit(DividerProblem.MARK_ERROR.times(2));
        DividerPlan plan = plan(row.withOnTheStick(Set.of(1)).withForbidden(mm(62, 138)));
        assertThat(plan.settings().get(0).steps()).containsExactly(new DividerStep(1, 2, 1));
    }

    @Test
    void a_pin_that_is_also_forbidden_is_a_contradiction() {
        assertThat(problems(TWO_MARKS.withPinned(mm(31)).withForbidden(mm(31.1))))
                .extracting(Problem::line)
                .containsExactly(
                        "divider settings: the pinned opening 31 mm is also forbidden, as 31.1 mm; take back one of the two");
    }

    @Test
    void every_bad_wish_is_told_at_once() {
        assertThat(problems(TWO_MARKS.withPinned(mm(31, 31, 0)).withForbidden(mm(-2))))
                .extracting(Problem::what)
                .containsExactly(
                        "the pinned opening 0 mm is no opening",
                        "the forbidden opening -2 mm is no opening",
                        "the opening 31 mm is pinned twice");
    }

    @Test
    void a_limit_below_one_mark_error_reaches_no_inner_mark() {
        List<Problem> problems = problems(TWO_MARKS.withLimit(Length.ofMm(0.2)));
        assertThat(problems)
                .extracting(Problem::where)
                .containsExactly("divider settings: mark 1 at 31 mm", "divider settings: mark 2 at 97 mm");
        assertThat(problems).extracting(Problem::mend).allMatch(mend -> mend.startsWith("raise the limit to 0.25 mm"));
        assertThat(problems(TWO_MARKS.withLimit(Length.ofMm(0.2)).withOnTheStick(Set.of(1, 2))))
                .hasSize(2);
        assertThat(plan(problem(0, 200).withLimit(Length.ZERO)).settings()).isEmpty();
    }

    @Test
    void the_limit_named_is_enough_in_either_units() {
        Seeds.each(200, random -> {
            for (UnitSystem units : UnitSystem.values()) {
                Length error = Length.ofMm(0.05 + random.nextDouble());
                DividerProblem two = new DividerProblem(
                        TWO_MARKS.marks(),
                        Set.of(),
                        DividerProblem.MATCH_TOLERANCE,
                        error,
                        Optional.of(error),
                        Set.of(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        mm(97, 103),
                        units);
                String mend = problems(two).get(0).mend();
                String told = mend.replaceAll(".*raise the limit to ", "").replaceAll(",.*", "");
                DividerProblem raised = two.withLimit(Length.parse(told, units).get());
                assertThat(raised.mostSteps()).as(mend).isEqualTo(2);
                assertThat(plan(raised).settings()).hasSize(2);
            }
        });
    }

    @Test
    void an_unreachable_mark_is_named_with_what_would_free_it() {
        DividerProblem shut =
                problem(0, 31, 97, 200).withForbidden(mm(97, 103, 66)).withLimit(Length.ofMm(0.25));
        assertThat(problems(shut))
                .containsExactly(new Problem(
                        "divider settings: mark 2 at 97 mm",
                        "cannot be reached with the openings allowed",
                        "allow the opening 97 mm, or allow the opening 103 mm, or lay it out from the stick"));
        Problem deep = problems(
                        problem(0, 31, 97, 200).withForbidden(mm(97, 103)).withLimit(Length.ofMm(0.25)))
                .get(0);
        assertThat(deep.what()).startsWith("cannot be reached in fewer than 2 steps");
        assertThat(deep.mend()).contains("raise the limit to 0.5 mm");
    }

    @Test
    void problems_speak_the_jobs_units() {
        DividerProblem inches = new DividerProblem(
                List.of(Length.ZERO, Length.ofInches(1.5), Length.ofInches(20)),
                Set.of(),
                DividerProblem.MATCH_TOLERANCE,
                DividerProblem.MARK_ERROR,
                Optional.of(Length.ZERO),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                UnitSystem.INCH);
        assertThat(problems(inches).get(0).where()).isEqualTo("divider settings: mark 1 at 1 1/2 in");
    }

    @Test
    void no_mark_error_means_no_limit_to_the_steps() {
        double[] row = new double[20];
        for (int i = 0; i < row.length; i++) {
            row[i] = 11.3 * i;
        }
        DividerPlan plan = plan(problem(row).withMarkError(Length.ZERO));
        assertThat(plan.settings()).hasSize(1);
        assertThat(plan.worst()).isEqualTo(Length.ZERO);
    }

    @Test
    void a_limit_that_is_three_errors_but_for_rounding_allows_three_steps() {
        DividerProblem tenth = TWO_MARKS.withMarkError(Length.ofMm(0.1)).withLimit(Length.ofMm(0.3));
        assertThat(problem(0, 1, 2, 3, 4, 5, 6)
                        .withMarkError(Length.ofMm(0.1))
                        .withLimit(Length.ofMm(0.3))
                        .mostSteps())
                .isEqualTo(3);
        assertThat(tenth.mostSteps()).isEqualTo(2);
    }

    /** Ten equal parts of ±0.1: worst case ±1.0, root-sum-square ±0.316 (F. Scholz, Boeing, December 1995; VERIFIED). */
    @Test
    void ten_steps_stack_up_as_in_the_published_example() {
        MarkError tenth = MarkError.of(10, 10, Length.ofMm(0.1), false);
        assertThat(tenth.worst().mm()).isEqualTo(1.0, Offset.offset(1e-9));
        assertThat(tenth.rootSumSquare().mm()).isEqualTo(0.316, Offset.offset(0.0005));
    }

    @Test
    void what_is_no_problem_at_all_cannot_be_made() {
        assertThatThrownBy(() -> problem(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> problem(0, 5, 5, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TWO_MARKS.withLimit(Length.ofMm(-1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TWO_MARKS.withOnTheStick(Set.of(3))).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Problem> problems(DividerProblem problem) {
        DividerOutcome outcome = Dividers.solve(problem, Effort.unlimited());
        assertThat(outcome).isInstanceOf(DividerOutcome.Refused.class);
        return ((DividerOutcome.Refused) outcome).problems();
    }

    private static DividerPlan plan(DividerProblem problem) {
        DividerPlan plan =
                Dividers.solve(problem, Effort.unlimited()).findPlan().orElseThrow();
        PlanCheck.isSound(problem, plan);
        return plan;
    }

    private static List<Length> mm(double... lengths) {
        return java.util.Arrays.stream(lengths).mapToObj(Length::ofMm).toList();
    }
}
