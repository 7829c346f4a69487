package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static turnalike.settings.DividersTest.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** What the stick gives because no opening does, and what squares leave to the dividers. */
class StickMarksTest {
    private static final Offset<Double> NOISE = Offset.offset(1e-9);

    @Test
    void small_patterns_with_short_dividers_agree_with_trying_every_set_of_marks_and_openings() {
        int[] taken = new int[5];
        Seeds.each(400, random -> taken[Math.min(4, agrees(small(random)))]++);
        // The cases are worth something: the stick gives one, two and more marks in many of them.
        assertThat(taken[1]).isGreaterThan(50);
        assertThat(taken[2]).isGreaterThan(50);
        assertThat(taken[3] + taken[4]).isGreaterThan(20);
    }

    /** How many marks the stick gives. */
    private static int agrees(DividerProblem problem) {
        EveryChoice.Best best = EveryChoice.of(problem);
        DividerOutcome outcome = Dividers.solve(problem, Effort.unlimited());
        if (best.openings() < 0) {
            assertThat(outcome).isInstanceOf(DividerOutcome.Refused.class);
            return 0;
        }
        DividerPlan plan = outcome.findPlan().orElseThrow();
        PlanCheck.isSound(problem, plan);
        assertThat(plan.given().fewestProven() && plan.fewestProven() && plan.tiesProven())
                .isTrue();
        assertThat(plan.given().outOfReach()).hasSize(best.stick());
        assertThat(plan.settings()).hasSize(best.openings() + problem.pinned().size());
        assertThat(plan.sumOfSteps()).isEqualTo(best.sumOfSteps());
        assertThat(PlanCheck.longestStepMm(problem, plan)).isEqualTo(best.longestMm(), NOISE);
        return best.stick();
    }

    /** Few marks whose distances often repeat, the largest opening one that leaves some out of reach; squares and wishes now and then. */
    static DividerProblem small(Random random) {
        int count = 4 + random.nextInt(5);
        double[] places = random.ints(0, 2 * count + random.nextInt(30))
                .distinct()
                .limit(count)
                .sorted()
                .mapToDouble(place -> place * 2.5)
                .toArray();
        DividerProblem problem = problem(places);
        problem = DividersTest.stepsAtMost(1 + random.nextInt(4), problem)
                .withMatchTolerance(Length.ofMm(random.nextInt(3) == 0 ? 1.3 : 0.1))
                .withLargest(Length.ofMm(
                        random.nextInt(3) == 0 ? 2.45 + 5 * random.nextInt(3) : 2.5 * (1 + random.nextInt(6))));
        if (random.nextInt(3) == 0) {
            problem = problem.withSquares(squares(count, random));
        }
        if (random.nextInt(3) == 0) {
            problem = problem.withPinned(List.of(between(problem.marks(), random)));
        }
        if (random.nextInt(3) == 0) {
            List<Length> pinned = problem.pinned();
            Length tolerance = problem.matchTolerance();
            List<Length> forbidden = new ArrayList<>(List.of(between(problem.marks(), random)));
            forbidden.removeIf(
                    f -> pinned.stream().anyMatch(pin -> pin.minus(f).abs().mm() <= tolerance.mm() + 1e-6));
            problem = problem.withForbidden(forbidden);
        }
        if (random.nextInt(4) == 0) {
            problem = problem.withOnTheStick(Set.of(1 + random.nextInt(count - 2)));
        }
        return problem;
    }

    private static Set<Integer> squares(int count, Random random) {
        Set<Integer> squares = new HashSet<>();
        IntStream.range(0, count - 1).filter(i -> random.nextInt(4) == 0).forEach(squares::add);
        return squares;
    }

    private static Length between(List<Length> marks, Random random) {
        int low = random.nextInt(marks.size() - 1);
        return marks.get(low + 1 + random.nextInt(marks.size() - 1 - low)).minus(marks.get(low));
    }

    @Test
    void covers_are_the_smallest_of_all_and_the_bound_never_above() {
        Seeds.each(200, random -> {
            Spans spans = scattered(14, random);
            StickCover cover = StickCover.of(spans, Effort.unlimited());
            int[] all = IntStream.range(0, spans.openings.size()).toArray();
            assertThat(unreached(spans.giving(cover.best()), all)).isZero();
            int fewest = IntStream.range(0, 1 << cover.wanting.length)
                    .filter(set -> unreached(spans.giving(picked(cover.wanting, set)), all) == 0)
                    .map(Integer::bitCount)
                    .min()
                    .orElseThrow();
            assertThat(cover.best()).hasSize(fewest);
            assertThat(cover.bound()).isEqualTo(fewest);
            StickCover stopped = StickCover.of(spans, Effort.ofAsks(0));
            assertThat(unreached(spans.giving(stopped.best()), all)).isZero();
            assertThat(stopped.bound()).isLessThanOrEqualTo(fewest);
            assertThat(stopped.best().length).isGreaterThanOrEqualTo(fewest);
        });
    }

    /** Joined at random, not by distance: no greedy rule along the piece finds these covers. */
    private static Spans scattered(int marks, Random random) {
        double[] places = IntStream.range(0, marks).mapToDouble(i -> 10 * i).toArray();
        List<Opening> openings = new ArrayList<>();
        for (int i = 0; i < marks * 5 / 4; i++) {
            int low = 2 + random.nextInt(marks - 4);
            int high = low + 1 + random.nextInt(marks - 2 - low);
            openings.add(new Opening(List.of(new double[] {places[high] - places[low], low, high})));
        }
        return new Spans(places, 1 + random.nextInt(3), new boolean[marks], openings, 0, new boolean[marks][marks]);
    }

    private static int[] picked(int[] from, int set) {
        return IntStream.range(0, from.length)
                .filter(i -> (set >> i & 1) == 1)
                .map(i -> from[i])
                .toArray();
    }

    private static int unreached(Spans spans, int[] openings) {
        StepCount count = new StepCount(spans);
        count.count(openings, openings.length);
        return count.unreached();
    }

    @Test
    void the_middle_of_a_long_piece_comes_from_the_stick_and_is_stepped_from() {
        // 200 reaches 400 from either end in two steps; 1000 is out of reach, and from it 200 reaches 800 and 1200.
        DividerProblem post =
                problem(0, 200, 400, 800, 1000, 1200, 1600, 1800, 2000).withLargest(Length.ofMm(200));
        DividerPlan plan = plan(post);
        assertThat(plan.given().outOfReach()).containsExactly(4);
        assertThat(plan.given().leastOutOfReach()).isEqualTo(1);
        assertThat(plan.settings()).hasSize(1);
        assertThat(plan.settings().get(0).opening()).isEqualTo(Length.ofMm(200));
        assertThat(plan.settings().get(0).steps()).contains(new DividerStep(4, 3, 1), new DividerStep(4, 5, 1));
        assertThat(plan.sumOfSteps()).isEqualTo(6 + 2);
        assertThat(plan.errors().get(4).fromTheStick()).isTrue();
        assertThat(plan.errors().get(4).worst()).isEqualTo(DividerProblem.MARK_ERROR);
        assertThat(plan.workings())
                .filteredOn(each -> each.figure().startsWith("fewest marks from the stick"))
                .extracting(Working::sureness)
                .containsExactly("proven");
        assertThat(plan(post.withAnyOpening()).listOnTheStick()).isEmpty();
    }

    @Test
    void what_the_search_takes_from_the_stick_the_turner_may_ask_for_with_the_same_plan() {
        DividerProblem post =
                problem(0, 200, 400, 800, 1000, 1200, 1600, 1800, 2000).withLargest(Length.ofMm(200));
        DividerPlan wished = plan(post.withOnTheStick(Set.of(4)));
        assertThat(wished.settings()).isEqualTo(plan(post).settings());
        assertThat(wished.errors()).isEqualTo(plan(post).errors());
        assertThat(wished.given().outOfReach()).isEmpty();
        assertThat(wished.given().wished()).containsExactly(4);
    }

    @Test
    void an_opening_serves_a_distance_above_the_largest_by_no_more_than_the_match_tolerance() {
        DividerProblem near = problem(0, 200.1, 1000).withLargest(Length.ofMm(200));
        assertThat(plan(near).settings().get(0).opening()).isEqualTo(Length.ofMm(200));
        assertThat(plan(problem(0, 200.11, 1000).withLargest(Length.ofMm(200)))
                        .given()
                        .outOfReach())
                .containsExactly(1);
    }

    @Test
    void a_pinned_opening_is_used_though_it_is_wider_than_the_largest() {
        DividerPlan plan =
                plan(problem(0, 300, 1000).withLargest(Length.ofMm(200)).withPinned(List.of(Length.ofMm(300))));
        assertThat(plan.given().outOfReach()).isEmpty();
        assertThat(plan.settings().get(0).steps()).containsExactly(new DividerStep(0, 1, 1));
    }

    @Test
    void with_a_largest_opening_below_the_smallest_gap_the_stick_gives_everything() {
        DividerPlan plan = plan(problem(0, 31, 97, 200).withLargest(Length.ofMm(5)));
        assertThat(plan.given().outOfReach()).containsExactly(1, 2);
        assertThat(plan.settings()).isEmpty();
        assertThat(plan.fewestProven() && plan.tiesProven()).isTrue();
        double[] many = IntStream.range(0, 100).mapToDouble(i -> 20 * i).toArray();
        DividerPlan all = plan(problem(many).withLargest(Length.ofMm(5)));
        assertThat(all.given().outOfReach()).hasSize(98);
        assertThat(all.fewestProven()).isTrue();
    }

    @Test
    void one_mark_out_of_reach_and_no_mark_at_all() {
        assertThat(plan(problem(0, 500, 1000).withLargest(Length.ofMm(200)))
                        .given()
                        .outOfReach())
                .containsExactly(1);
        DividerPlan none = plan(problem(0, 1000).withLargest(Length.ofMm(200)));
        assertThat(none.listOnTheStick()).isEmpty();
        assertThat(none.fewestProven()).isTrue();
    }

    @Test
    void shoulders_are_given_and_nothing_is_stepped_over_or_from_a_square() {
        // A square at either end and one in the middle; both turned runs have a mark 40 from a shoulder.
        DividerProblem leg = problem(0, 100, 140, 260, 330, 370, 500, 600).withSquares(Set.of(0, 3, 6));
        DividerPlan plan = plan(leg);
        assertThat(plan.given().shoulders()).containsExactly(1, 3, 4, 6);
        assertThat(plan.settings()).hasSize(1);
        assertThat(plan.settings().get(0).steps()).containsExactly(new DividerStep(1, 2, 1), new DividerStep(4, 5, 1));
        assertThat(plan.errors().get(3).worst()).isEqualTo(Length.ZERO);
        assertThat(plan.listOnTheStick()).isEmpty();
    }

    @Test
    void two_squares_side_by_side_give_the_line_between_them_but_no_place_for_a_leg() {
        DividerPlan plan = plan(problem(0, 50, 100, 160, 300).withSquares(Set.of(0, 1)));
        assertThat(plan.given().shoulders()).containsExactly(1, 2);
        assertThat(plan.settings().get(0).steps()).containsExactly(new DividerStep(2, 3, 1));
        DividerPlan all = plan(problem(0, 50, 100).withSquares(Set.of(0, 1)));
        assertThat(all.given().shoulders()).containsExactly(1);
        assertThat(all.settings()).isEmpty();
    }

    @Test
    void a_shoulder_that_is_also_wished_from_the_stick_is_a_shoulder() {
        DividerPlan plan = plan(problem(0, 50, 100, 300).withSquares(Set.of(0)).withOnTheStick(Set.of(1, 2)));
        assertThat(plan.given()).isEqualTo(new GivenMarks(List.of(1), List.of(2), List.of(), 0));
    }

    /** Seven feet in inches, 34 members and some 50 marks: the best found in a short while is sound and tells what it proved. */
    @Test
    void a_seven_foot_post_of_34_members_has_a_sound_plan_with_its_bounds() {
        double[] turning = PatternFamilies.turning(34, false, new Random(7));
        double scale = 7 * 12 * 25.4 / turning[turning.length - 1];
        double[] sixteenths = Arrays.stream(turning)
                .map(x -> Math.round(x * scale / 25.4 * 16) * 25.4 / 16)
                .distinct()
                .toArray();
        DividerProblem post = DividerProblem.of(
                        Arrays.stream(sixteenths).mapToObj(Length::ofMm).toList(), UnitSystem.INCH)
                .withLargest(DividerProblem.LARGEST_INCH);
        int fewest = fewestFromTheStick(post.spans(post.mostSteps(), List.of()));
        assertThat(fewest).isPositive();
        for (int asks : new int[] {0, 3000}) {
            DividerPlan plan =
                    Dividers.solve(post, Effort.ofAsks(asks)).findPlan().orElseThrow();
            PlanCheck.isSound(post, plan);
            assertThat(plan.given().fewestProven()).isTrue();
            assertThat(plan.given().outOfReach()).hasSize(fewest);
            assertThat(plan.gap()).isNotNegative();
        }
    }

    /** By trying ever more marks in every way. */
    private static int fewestFromTheStick(Spans spans) {
        int[] all = IntStream.range(0, spans.openings.size()).toArray();
        int size = 0;
        while (!anyWay(spans, all, new int[size], 0, 1)) {
            size++;
        }
        return size;
    }

    private static boolean anyWay(Spans spans, int[] all, int[] stick, int at, int from) {
        if (at == stick.length) {
            return unreached(spans.giving(stick), all) == 0;
        }
        boolean any = false;
        for (int mark = from; mark < spans.last() && !any; mark++) {
            stick[at] = mark;
            any = anyWay(spans, all, stick, at + 1, mark + 1);
        }
        return any;
    }

    @Test
    void no_opening_is_narrower_than_dividers_close() {
        DividerProblem tip = problem(0, 1, 2, 25).withSmallest(Length.ofMm(1.5));
        DividerPlan plan = plan(tip);
        assertThat(plan.settings()).allMatch(each -> each.opening().mm() >= 1.5);
        // 2 is two from the start; 1 is 24 from the far end.
        assertThat(plan.given().outOfReach()).isEmpty();
        assertThat(plan(tip.withLargest(Length.ofMm(20))).given().outOfReach()).containsExactly(1);
        assertThat(plan(problem(0, 1, 2, 25)).settings())
                .as("dividers that close to nothing")
                .anyMatch(each -> each.opening().mm() < 1.5);
        assertThat(plan(tip.withPinned(List.of(Length.ofMm(1)))).settings())
                .as("an opening that the turner pinned")
                .anyMatch(each -> each.opening().mm() == 1);
        assertThat(plan(problem(0, 1.5, 25).withSmallest(Length.ofMm(1.5)))
                        .given()
                        .outOfReach())
                .isEmpty();
    }

    @Test
    void the_plan_with_narrow_openings_left_out_is_the_best_by_trying_every_choice() {
        Seeds.each(40, random -> {
            double[] places = PatternFamilies.marks(PatternFamilies.Family.INCH_MEMBERS, 6, random);
            double end = places[places.length - 1];
            DividerProblem problem = problem(places)
                    .withSmallest(Length.ofMm(end * (0.02 + 0.2 * random.nextDouble())))
                    .withLargest(Length.ofMm(end / (1 + random.nextInt(3))));
            DividerPlan plan = plan(problem);
            EveryChoice.Best best = EveryChoice.of(problem);
            assertThat(plan.given().outOfReach()).hasSize(best.stick());
            assertThat(plan.settings()).hasSize(best.openings());
            assertThat(plan.settings())
                    .allMatch(
                            each -> each.opening().compareTo(problem.smallest().orElseThrow()) >= 0);
        });
    }

    @Test
    void the_mirrored_pattern_takes_as_many_marks_openings_and_steps() {
        Seeds.each(10, random -> {
            double[] places = PatternFamilies.marks(PatternFamilies.Family.INCH_MEMBERS, 14, random);
            double end = places[places.length - 1];
            double[] mirrored = Arrays.stream(places).map(x -> end - x).sorted().toArray();
            Length largest = Length.ofMm(end / (6 + random.nextInt(8)));
            DividerPlan one = plan(problem(places).withLargest(largest));
            DividerPlan other = plan(problem(mirrored).withLargest(largest));
            assertThat(other.given().outOfReach()).hasSameSizeAs(one.given().outOfReach());
            assertThat(other.settings()).hasSameSizeAs(one.settings());
            assertThat(other.sumOfSteps()).isEqualTo(one.sumOfSteps());
        });
    }

    private static DividerPlan plan(DividerProblem problem) {
        DividerPlan plan =
                Dividers.solve(problem, Effort.unlimited()).findPlan().orElseThrow();
        PlanCheck.isSound(problem, plan);
        return plan;
    }
}
