package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleSupplier;
import org.assertj.core.data.Offset;
import turnalike.units.Length;

/** Checks a plan against the contract's words alone, with no code of the search. */
final class PlanCheck {
    private static final double NOISE_MM = 1e-8;

    private static final int UNREACHED = 1_000;

    private PlanCheck() {}

    static void isSound(DividerProblem problem, DividerPlan plan) {
        List<Length> marks = problem.marks();
        int last = marks.size() - 1;
        Map<Integer, Integer> depth = new HashMap<>(Map.of(0, 0, last, 0));
        List<Integer> onTheStick = new ArrayList<>(problem.onTheStick());
        problem.squares().forEach(square -> {
            depth.put(square, 0);
            depth.put(square + 1, 0);
        });
        onTheStick.removeAll(depth.keySet());
        onTheStick.addAll(plan.given().outOfReach());
        onTheStick.forEach(mark -> depth.put(mark, 0));
        assertThat(plan.listOnTheStick()).containsExactlyInAnyOrderElementsOf(onTheStick);
        Set<Integer> struck = new HashSet<>();
        plan.settings().stream()
                .flatMap(setting -> setting.steps().stream())
                .sorted((a, b) -> Integer.compare(a.round(), b.round()))
                .forEach(step -> {
                    assertThat(depth)
                            .as("%s starts from a mark that stands", step)
                            .containsKey(step.from());
                    assertThat(struck.add(step.to()))
                            .as("%s strikes anew", step)
                            .isTrue();
                    assertThat(step.round()).isEqualTo(depth.getOrDefault(step.from(), UNREACHED) + 1);
                    depth.put(step.to(), step.round());
                });
        assertThat(depth).as("every mark is reached").hasSize(marks.size());
        for (DividerSetting setting : plan.settings()) {
            assertThat(setting.pinned() || !setting.steps().isEmpty()).isTrue();
            double largest = problem.largest().map(Length::mm).orElse(Double.MAX_VALUE);
            assertThat(setting.pinned() || setting.opening().mm() <= largest + NOISE_MM)
                    .isTrue();
            for (DividerStep step : setting.steps()) {
                double distance = Math.abs(
                        marks.get(step.to()).mm() - marks.get(step.from()).mm());
                assertThat(Math.abs(distance - setting.opening().mm()))
                        .as("%s is served by %s", step, setting.opening())
                        .isLessThanOrEqualTo(problem.matchTolerance().mm() + NOISE_MM);
                for (int square : problem.squares()) {
                    assertThat((step.from() <= square && step.to() <= square)
                                    || (step.from() > square && step.to() > square))
                            .as("%s has square %d under it", step, square)
                            .isTrue();
                }
                for (Length forbidden : problem.forbidden()) {
                    assertThat(Math.abs(setting.opening().mm() - forbidden.mm()))
                            .isGreaterThan(problem.matchTolerance().mm());
                }
            }
        }
        Map<Integer, Double> walked = walk(problem, plan, () -> 0);
        for (MarkError error : plan.errors()) {
            // A line from the stick is off by one mark error itself; what is struck from it counts its own steps.
            int steps = onTheStick.contains(error.mark()) ? 1 : depth.getOrDefault(error.mark(), UNREACHED);
            double e = problem.markError().mm();
            assertThat(error.steps()).isEqualTo(steps);
            double miss = walked.getOrDefault(error.mark(), 0.0);
            assertThat(error.miss().mm()).isEqualTo(miss, Offset.offset(NOISE_MM));
            assertThat(error.worst().mm()).isEqualTo(Math.abs(miss) + steps * e, Offset.offset(NOISE_MM));
            assertThat(error.rootSumSquare().mm())
                    .isEqualTo(Math.abs(miss) + Math.sqrt(steps) * e, Offset.offset(NOISE_MM));
            assertThat(error.scatter().mm()).isEqualTo(Math.sqrt(steps) * e, Offset.offset(NOISE_MM));
            problem.limit()
                    .ifPresentOrElse(
                            limit -> assertThat(error.worst().mm()).isLessThanOrEqualTo(limit.mm() + NOISE_MM),
                            () -> assertThat(steps).isLessThanOrEqualTo(e == 0 ? UNREACHED : 3));
        }
        assertThat(plan.errors()).hasSize(marks.size());
        int sum = plan.settings().stream()
                .flatMap(setting -> setting.steps().stream())
                .mapToInt(DividerStep::round)
                .sum();
        assertThat(plan.sumOfSteps()).isEqualTo(sum);
    }

    /**
     * Lays the marks out by the plan, each step off by what is drawn for it: for each mark struck, how far it then stands too near the far
     * end.
     */
    static Map<Integer, Double> walk(DividerProblem problem, DividerPlan plan, DoubleSupplier error) {
        Map<Integer, Double> stands = new HashMap<>();
        Map<Integer, Double> off = new HashMap<>();
        List<DividerSetting> settings = plan.settings();
        int last = settings.stream()
                .flatMap(setting -> setting.steps().stream())
                .mapToInt(DividerStep::round)
                .max()
                .orElse(0);
        for (int round = 1; round <= last; round++) {
            for (DividerSetting setting : settings) {
                for (DividerStep step : setting.steps()) {
                    if (step.round() == round) {
                        double from = stands.getOrDefault(
                                step.from(), problem.marks().get(step.from()).mm());
                        double way = step.to() > step.from() ? 1 : -1;
                        double place = from + way * setting.opening().mm() + error.getAsDouble();
                        stands.put(step.to(), place);
                        off.put(
                                step.to(),
                                place - problem.marks().get(step.to()).mm());
                    }
                }
            }
        }
        return off;
    }

    /** The longest distance stepped with an opening that is not pinned. */
    static double longestStepMm(DividerProblem problem, DividerPlan plan) {
        return plan.settings().stream()
                .filter(setting -> !setting.pinned())
                .flatMap(setting -> setting.steps().stream())
                .mapToDouble(step -> Math.abs(problem.marks().get(step.to()).mm()
                        - problem.marks().get(step.from()).mm()))
                .max()
                .orElse(0);
    }
}
