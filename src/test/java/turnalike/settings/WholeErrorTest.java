package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static turnalike.settings.DividersTest.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.units.Length;

/** A mark's error counts what its openings miss, and a given limit holds for all of it. */
class WholeErrorTest {
    private static final double NOISE_MM = 1e-8;

    private static DividerPlan plan(DividerProblem problem) {
        return Dividers.solve(problem, Effort.unlimited()).findPlan().orElseThrow();
    }

    @Test
    void what_an_opening_misses_adds_up_along_the_path() {
        // Only 30.1 serves both 30.0 and 30.2: a tenth short at the first mark, right at the second, a tenth too far
        // at the third.
        DividerProblem row = problem(0, 30.2, 60.2, 90.2, 200);
        DividerPlan plan = plan(row);
        PlanCheck.isSound(row, plan);
        assertThat(plan.settings()).hasSize(1);
        assertThat(plan.fewestProven()).isTrue();
        assertThat(plan.errors())
                .extracting(each -> each.miss().mm())
                .usingElementComparator(near())
                .containsExactly(0.0, -0.1, 0.0, 0.1, 0.0);
        assertThat(plan.worst().mm()).isEqualTo(0.75 + 0.1, offset(NOISE_MM));
    }

    private static Comparator<Double> near() {
        return (a, b) -> Math.abs(a - b) < NOISE_MM ? 0 : Double.compare(a, b);
    }

    @Test
    void a_limit_that_leaves_no_room_for_a_miss_takes_another_opening() {
        // Two steps of 30 from the one end and 60.1 from the other: one opening leaves a twentieth at either mark, or
        // a tenth at one.
        DividerProblem row = problem(0, 30, 60.1, 140, 170, 200);
        assertThat(plan(row).settings()).hasSize(1);
        DividerProblem tight = row.withLimit(Length.ofMm(0.5));
        DividerPlan plan = plan(tight);
        PlanCheck.isSound(tight, plan);
        assertThat(plan.settings()).hasSize(2);
        assertThat(plan.fewestProven()).isTrue();
        DividerProblem wide = row.withLimit(Length.ofMm(0.55));
        assertThat(plan(wide).settings()).hasSize(1);
        PlanCheck.isSound(wide, plan(wide));
    }

    @Test
    void none_has_fewer_openings_than_the_plan_among_all_on_a_fine_grid() {
        AtomicInteger dearer = new AtomicInteger();
        AtomicInteger proven = new AtomicInteger();
        Seeds.each(60, random -> {
            DividerProblem problem = small(random);
            DividerPlan plan = plan(problem);
            PlanCheck.isSound(problem, plan);
            Optional<EveryGridOpening.Best> best =
                    EveryGridOpening.of(problem, plan.settings().size());
            if (plan.fewestProven()) {
                proven.incrementAndGet();
                best.ifPresent(each -> {
                    assertThat(each.openings())
                            .isGreaterThanOrEqualTo(plan.settings().size());
                    assertThat(each.sumOfSteps()).isGreaterThanOrEqualTo(plan.tiesProven() ? plan.sumOfSteps() : 0);
                });
            }
            DividerPlan loose = plan(problem.withLimit(Length.ofMm(100)));
            dearer.addAndGet(plan.settings().size() > loose.settings().size() ? 1 : 0);
        });
        assertThat(proven).hasValue(Seeds.times(60));
        assertThat(dearer).as("cases that the limit makes dearer").hasValueGreaterThan(10);
    }

    /** Few marks on a grid of 0.05 mm, whose distances nearly repeat; limits that leave little room. */
    private static DividerProblem small(Random random) {
        int count = 4 + random.nextInt(2);
        List<Double> places = new ArrayList<>(List.of(0.0));
        double[] widths = {10, 15, 22};
        for (int i = 1; i < count; i++) {
            double width = widths[random.nextInt(widths.length)] + 0.05 * (random.nextInt(5) - 2);
            places.add(places.get(i - 1) + width);
        }
        places.add(places.get(count - 1) + 41.3);
        DividerProblem problem =
                problem(places.stream().mapToDouble(Double::doubleValue).toArray());
        double steps = 1 + random.nextInt(3);
        return problem.withLimit(Length.ofMm(steps * 0.25 + 0.05 * random.nextInt(5)));
    }

    @Test
    void with_wishes_and_short_dividers_the_limit_is_kept_too() {
        AtomicInteger bind = new AtomicInteger();
        Seeds.each(300, random -> {
            DividerProblem problem = StickMarksTest.small(random)
                    .withMarkError(Length.ofMm(1))
                    .withLimit(Length.ofMm(1 + 0.25 * random.nextInt(12)));
            Optional<DividerPlan> planned =
                    Dividers.solve(problem, Effort.ofAsks(2_000)).findPlan();
            planned.ifPresent(plan -> PlanCheck.isSound(problem, plan));
            assertThat(planned.isPresent())
                    .isEqualTo(Dividers.obstacles(problem).isEmpty());
            bind.addAndGet(problem.spans().whole.isPresent() ? 1 : 0);
        });
        assertThat(bind).as("cases in which misses matter").hasValueGreaterThan(60);
    }

    @Test
    void no_walk_over_the_plan_ends_further_off_than_told() {
        AtomicInteger near = new AtomicInteger();
        Seeds.each(60, random -> {
            double[] places = new double[12];
            for (int i = 1; i < places.length; i++) {
                places[i] = places[i - 1] + 8 * (1 + random.nextInt(4)) + 0.04 * random.nextInt(6);
            }
            DividerProblem problem = problem(places);
            if (random.nextBoolean()) {
                problem = problem.withLimit(Length.ofMm(0.55 + 0.3 * random.nextDouble()));
            }
            double e = problem.markError().mm();
            DividerPlan plan =
                    Dividers.solve(problem, Effort.ofAsks(300)).findPlan().orElseThrow();
            PlanCheck.isSound(problem, plan);
            for (int walk = 0; walk < 400; walk++) {
                Map<Integer, Double> off = PlanCheck.walk(problem, plan, () -> random.nextBoolean() ? e : -e);
                off.forEach((mark, by) -> {
                    double told = plan.errors().get(mark).worst().mm();
                    assertThat(Math.abs(by)).isLessThanOrEqualTo(told + NOISE_MM);
                    near.addAndGet(
                            Math.abs(by) >= told - NOISE_MM
                                            && plan.errors().get(mark).steps() > 1
                                    ? 1
                                    : 0);
                });
            }
        });
        assertThat(near).as("walks that end just as far off as told").hasValueGreaterThan(100);
    }

    @Test
    void openings_stand_where_no_small_change_makes_the_greatest_error_less() {
        Seeds.each(100, random -> {
            double[] places = new double[9];
            for (int i = 1; i < places.length; i++) {
                places[i] = places[i - 1] + 8 * (1 + random.nextInt(3)) + 0.04 * random.nextInt(6);
            }
            DividerProblem problem = problem(places);
            DividerPlan plan = plan(problem);
            double told = worst(problem, plan, new double[plan.settings().size()]);
            assertThat(told).isEqualTo(plan.worst().mm(), offset(NOISE_MM));
            for (int tries = 0; tries < 200; tries++) {
                double[] shift =
                        random.doubles(plan.settings().size(), -0.05, 0.05).toArray();
                if (serves(problem, plan, shift)) {
                    assertThat(worst(problem, plan, shift)).isGreaterThanOrEqualTo(told - NOISE_MM);
                }
            }
        });
    }

    private static DividerPlan shifted(DividerPlan plan, double[] shift) {
        List<DividerSetting> settings = IntStream.range(0, shift.length)
                .mapToObj(i -> {
                    DividerSetting each = plan.settings().get(i);
                    return new DividerSetting(each.opening().plus(Length.ofMm(shift[i])), each.steps(), each.pinned());
                })
                .toList();
        return new DividerPlan(
                settings, plan.given(), plan.errors(), plan.sumOfSteps(), false, false, 0, Ending.STEPS, List.of());
    }

    private static boolean serves(DividerProblem problem, DividerPlan plan, double[] shift) {
        return shifted(plan, shift).settings().stream().allMatch(setting -> setting.steps().stream()
                .allMatch(step -> setting.miss(
                                        problem.marks().get(step.from()),
                                        problem.marks().get(step.to()))
                                .abs()
                                .compareTo(problem.matchTolerance())
                        <= 0));
    }

    private static double worst(DividerProblem problem, DividerPlan plan, double[] shift) {
        Map<Integer, Double> off = PlanCheck.walk(problem, shifted(plan, shift), () -> 0);
        return off.entrySet().stream()
                .mapToDouble(each -> Math.abs(each.getValue())
                        + plan.errors().get(each.getKey()).steps()
                                * problem.markError().mm())
                .max()
                .orElse(0);
    }
}
