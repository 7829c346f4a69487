package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static turnalike.settings.DividersTest.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** The figures told of settings: what they promise, at their bounds too. */
class SettingFiguresTest {
    private static final Offset<Double> NOISE = Offset.offset(1e-9);

    @Test
    void an_opening_is_as_large_as_its_group_allows_and_what_it_leaves_is_told_exactly() {
        Seeds.each(200, random -> {
            double[] finished = random.doubles(1 + random.nextInt(6), 20, 23).toArray();
            double tolerance = random.nextInt(5) / 4.0;
            double allowance = random.nextInt(5) / 4.0;
            List<SizedDiameter> sized = IntStream.range(0, finished.length)
                    .mapToObj(i -> new SizedDiameter(i, Length.ofMm(finished[i])))
                    .toList();
            for (CaliperSetting setting : Calipers.group(sized, Length.ofMm(tolerance), Length.ofMm(allowance))) {
                double[] members =
                        setting.members().stream().mapToDouble(i -> finished[i]).toArray();
                double least = Arrays.stream(members).min().orElseThrow();
                double greatest = Arrays.stream(members).max().orElseThrow();
                double openingMm = setting.opening().mm();
                assertThat(openingMm).isEqualTo(Math.min(greatest, least + tolerance) + allowance, NOISE);
                assertThat(setting.finished().mm()).isEqualTo(openingMm - allowance, NOISE);
                assertThat(setting.leastLeft().mm()).isEqualTo(openingMm - greatest, NOISE);
                assertThat(setting.leastLeft().mm()).isNotNegative();
            }
        });
    }

    @Test
    void a_wish_of_nothing_is_no_bad_figure() {
        SizedDiameter one = new SizedDiameter(0, Length.ofMm(20));
        CaliperSetting setting =
                Calipers.group(List.of(one), Length.ZERO, Length.ZERO).get(0);
        assertThat(setting.opening()).isEqualTo(Length.ofMm(20));
        assertThat(setting.leastLeft()).isEqualTo(Length.ZERO);
    }

    @Test
    void other_uses_are_those_within_the_tolerance_inclusive() {
        List<Length> widths = DoubleStream.of(9.9, 9.8999, 10, 10.1, 10.1001, 30)
                .mapToObj(Length::ofMm)
                .toList();
        List<CaliperSetting> calipers = DoubleStream.of(30, 10.05, 9)
                .mapToObj(mm -> new CaliperSetting(Length.ofMm(mm), Length.ofMm(mm - 0.8), Length.ZERO, List.of()))
                .toList();
        OtherUses uses = OtherUses.of(Length.ofMm(10), widths, calipers, Length.ofMm(0.1));
        assertThat(uses.widths()).containsExactly(0, 2, 3);
        assertThat(uses.calipers()).containsExactly(1);
        assertThat(OtherUses.of(Length.ofMm(10), widths, calipers, Length.ZERO).widths())
                .containsExactly(2);
    }

    @Test
    void a_plan_tells_its_worst_mark_its_gap_and_the_marks_of_the_stick() {
        List<MarkError> errors = List.of(
                MarkError.of(0, 0, Length.ofMm(0.25), false),
                MarkError.of(1, 1, Length.ofMm(0.25), true),
                MarkError.of(2, 3, Length.ofMm(0.25), false),
                MarkError.of(3, 0, Length.ofMm(0.25), false));
        DividerSetting setting = new DividerSetting(Length.ofMm(9), List.of(new DividerStep(0, 2, 3)), false);
        DividerPlan plan = new DividerPlan(
                List.of(setting, setting, setting),
                GivenMarks.NONE,
                errors,
                3,
                false,
                false,
                1,
                Ending.STEPS,
                List.of());
        assertThat(plan.worst()).isEqualTo(Length.ofMm(0.75));
        assertThat(plan.gap()).isEqualTo(2);
        assertThat(plan.listOnTheStick()).containsExactly(1);
        assertThat(setting.servesAgain()).isFalse();
    }

    @Test
    void what_is_proven_and_what_is_not_decided_is_said_in_the_workings() {
        DividerProblem problem = problem(0, 30, 61, 150, 200);
        DividerPlan proven = plan(problem, Effort.unlimited());
        assertThat(proven.workings()).extracting(Working::sureness).contains("proven");
        DividerProblem hard = problem(PatternFamilies.turning(24, false, new Random(15_862)));
        DividerPlan open = plan(hard, Effort.ofAsks(0));
        assertThat(open.fewestProven()).isFalse();
        assertThat(open.tiesProven()).isFalse();
        assertThat(open.gap()).isPositive();
        assertThat(open.workings().get(0).sureness())
                .isEqualTo("best found; between %d and %d is not decided"
                        .formatted(open.lowerBound(), open.settings().size()));
    }

    /** Where several ways to strike a mark are as short in steps: a pinned opening first, then the shortest, then from the lower mark. */
    @Test
    void a_mark_is_struck_over_the_shortest_of_the_steps_that_offer_themselves() {
        Seeds.each(100, random -> {
            double[] places = random.ints(0, 30)
                    .distinct()
                    .limit(6)
                    .sorted()
                    .mapToDouble(i -> 3 * i)
                    .toArray();
            DividerPlan plan = plan(problem(places), Effort.unlimited());
            List<Integer> depth = plan.errors().stream().map(MarkError::steps).toList();
            for (DividerSetting setting : plan.settings()) {
                double[] served = setting.steps().stream()
                        .mapToDouble(step -> Math.abs(places[step.to()] - places[step.from()]))
                        .sorted()
                        .toArray();
                assertThat(setting.opening().mm()).isEqualTo((served[0] + served[served.length - 1]) / 2, NOISE);
                assertThat(setting.servesAgain()).isEqualTo(served.length > 1);
                for (DividerStep step : setting.steps()) {
                    double stepped = Math.abs(places[step.to()] - places[step.from()]);
                    for (DividerSetting other : plan.settings()) {
                        for (int from = 0; from < places.length; from++) {
                            double distance = Math.abs(places[step.to()] - places[from]);
                            if (depth.get(from) == step.round() - 1
                                    && Math.abs(distance - other.opening().mm()) < 1e-9) {
                                assertThat(stepped).isLessThanOrEqualTo(distance + 1e-9);
                                assertThat(stepped < distance - 1e-9 || step.from() <= from)
                                        .isTrue();
                            }
                        }
                    }
                }
                assertThat(setting.steps())
                        .isSortedAccordingTo((a, b) -> a.round() != b.round()
                                ? Integer.compare(a.round(), b.round())
                                : Integer.compare(a.to(), b.to()));
            }
        });
    }

    @Test
    void figures_at_their_bounds_are_taken_and_beyond_them_refused() {
        DividerProblem two = problem(0, 31, 97, 200);
        assertThat(two.withMatchTolerance(Length.ZERO).matchTolerance()).isEqualTo(Length.ZERO);
        assertThat(two.withOnTheStick(Set.of(1, 2)).onTheStick()).hasSize(2);
        List<Runnable> bad = new ArrayList<>();
        bad.add(() -> two.withMatchTolerance(Length.ofMm(-0.1)));
        bad.add(() -> two.withMarkError(Length.ofMm(-0.1)));
        bad.add(() -> two.withOnTheStick(Set.of(0)));
        bad.add(() -> two.withOnTheStick(Set.of(3)));
        bad.add(() -> problem(0, 9, 8));
        for (Runnable each : bad) {
            assertThatThrownBy(each::run).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(two.withLimit(Length.ofMm(0.2))
                        .withMarkError(Length.ofMm(0.2))
                        .limit())
                .isEmpty();
        assertThat(two.withMarkError(Length.ofMm(0.2)).mostByStepsAlone().mm()).isEqualTo(0.6, NOISE);
        assertThat(two.withMarkError(Length.ZERO).mostSteps()).isEqualTo(2);
        Wrench.Opening wide = new Wrench.Opening(Length.ofMm(5), Length.ofMm(5));
        assertThat(wide.least()).isEqualTo(wide.most());
        assertThatThrownBy(() -> new Wrench.Opening(Length.ofMm(5.1), Length.ofMm(5)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_wrench_stands_for_a_hole_up_to_a_tenth_off_and_the_nearest_comes_first() {
        for (Wrench wrench : Wrenches.all()) {
            double mm = wrench.nominal().mm();
            assertThat(Wrenches.forHole(Length.ofMm(mm)).get(0)).isEqualTo(wrench);
            assertThat(Wrenches.forHole(Length.ofMm(mm + 0.1))).contains(wrench);
            assertThat(Wrenches.forHole(Length.ofMm(mm - 0.1))).contains(wrench);
            assertThat(Wrenches.forHole(Length.ofMm(mm + 0.1001))).doesNotContain(wrench);
        }
        assertThat(Wrenches.all()).filteredOn(w -> w.opening().isEmpty()).allMatch(w -> w.name()
                .equals(w.nominal().format(UnitSystem.METRIC)));
    }

    private static DividerPlan plan(DividerProblem problem, Effort effort) {
        DividerPlan plan = Dividers.solve(problem, effort).findPlan().orElseThrow();
        PlanCheck.isSound(problem, plan);
        return plan;
    }

    /** Where the wood is thinner than the caliper is set, what the sizing cut leaves shrinks with the opening, never below nothing. */
    @Test
    void a_caliper_is_opened_no_wider_than_the_wood() {
        CaliperSetting wide = caliper(24, 23.2, 0.5, 1, 4);
        assertThat(wide.atMost(Length.ofMm(24))).isSameAs(wide);
        assertThat(wide.atMost(Length.ofMm(30))).isSameAs(wide);
        CaliperSetting less = wide.atMost(Length.ofMm(23.75));
        assertThat(less.opening()).isEqualTo(Length.ofMm(23.75));
        assertThat(less.finished()).isEqualTo(Length.ofMm(23.2));
        assertThat(less.leastLeft().mm()).isEqualTo(0.25, NOISE);
        assertThat(less.members()).containsExactly(1, 4);
        assertThat(wide.atMost(Length.ofMm(20)).leastLeft()).isEqualTo(Length.ZERO);
    }

    @Test
    void two_calipers_of_one_opening_leave_the_less_and_finish_at_the_greater() {
        CaliperSetting both = caliper(24, 23.2, 0.5, 1, 4).with(caliper(24, 23.6, 0.25, 2, 4));
        assertThat(both.leastLeft()).isEqualTo(Length.ofMm(0.25));
        assertThat(both.finished()).isEqualTo(Length.ofMm(23.6));
        assertThat(both.members()).containsExactly(1, 2, 4);
        assertThat(caliper(24, 23.6, 0.25, 2).with(caliper(24, 23.2, 0.5, 1)).leastLeft())
                .isEqualTo(Length.ofMm(0.25));
        assertThat(caliper(24, 23.6, 0.25, 2).with(caliper(24, 23.2, 0.5, 1)).finished())
                .isEqualTo(Length.ofMm(23.6));
        assertThatThrownBy(() -> both.with(caliper(24.1, 23.2, 0.5, 1))).isInstanceOf(IllegalArgumentException.class);
    }

    private static CaliperSetting caliper(double opening, double finished, double left, Integer... members) {
        return new CaliperSetting(
                Length.ofMm(opening), Length.ofMm(finished), Length.ofMm(left), Arrays.asList(members));
    }

    @Test
    void an_opening_misses_by_what_it_is_wider_and_not_by_rounding() {
        DividerSetting setting = new DividerSetting(Length.ofMm(30), List.of(), false);
        assertThat(setting.miss(Length.ofMm(10), Length.ofMm(39.9)).mm()).isEqualTo(0.1, NOISE);
        assertThat(setting.miss(Length.ofMm(40.1), Length.ofMm(10)).mm()).isEqualTo(-0.1, NOISE);
        assertThat(setting.miss(Length.ZERO, Length.ofMm(30 - Spans.SLACK_MM / 2)))
                .isEqualTo(Length.ZERO);
        assertThat(setting.miss(Length.ZERO, Length.ofMm(30 - 3 * Spans.SLACK_MM)))
                .isNotEqualTo(Length.ZERO);
    }

    /** "Proven" is said where the bound meets what was found, and only there. */
    @Test
    void the_workings_promise_what_is_proven_and_no_more() {
        DividerProblem problem = problem(0, 20, 55, 130);
        GivenMarks none = GivenMarks.NONE;
        assertThat(sure(DividerWorkings.of(problem, none, 3, 3), "fewest divider settings"))
                .isEqualTo("proven");
        assertThat(sure(DividerWorkings.of(problem, none, 4, 3), "fewest divider settings"))
                .isEqualTo("best found; between 3 and 4 is not decided");
        assertThat(DividerWorkings.of(problem, none, 3, 3))
                .noneMatch(each -> each.figure().contains("stick"))
                .noneMatch(each -> each.how().contains("as few marks from the stick"));
        GivenMarks two = new GivenMarks(List.of(), List.of(), List.of(1, 2), 1);
        assertThat(sure(DividerWorkings.of(problem, two, 3, 3), "fewest marks from the stick for want of an opening"))
                .isEqualTo("best found; between 1 and 2 is not decided");
        assertThat(DividerWorkings.of(problem, two, 3, 3)).anyMatch(each -> each.how()
                .contains("no sound plan with as few marks from the stick has fewer than 3"));
        GivenMarks one = new GivenMarks(List.of(), List.of(), List.of(1), 1);
        assertThat(sure(DividerWorkings.of(problem, one, 3, 3), "fewest marks from the stick for want of an opening"))
                .isEqualTo("proven");
        assertThat(DividerWorkings.of(problem.withLimit(problem.markError()), none, 3, 3))
                .anyMatch(each -> each.how().contains("for all of it, so at most 1 step")
                        && !each.how().contains("1 steps"));
        assertThat(DividerWorkings.of(problem.withLimit(problem.markError().times(2)), none, 3, 3))
                .anyMatch(each -> each.how().contains("for all of it, so at most 2 steps"));
    }

    private static String sure(List<Working> workings, String figure) {
        return workings.stream()
                .filter(each -> each.figure().equals(figure))
                .findFirst()
                .orElseThrow()
                .sureness();
    }
}
