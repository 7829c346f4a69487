package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;

class ZoneWeightsTest {
    /** What the weights refute at the root has no plan by trying every set of openings either. */
    @Test
    void as_many_openings_as_suffice_are_never_refuted() {
        Seeds.each(150, random -> {
            DividerProblem problem = small(random);
            int fewest = EveryChoice.of(problem).openings();
            Root root = new Root(problem);
            assertThat(root.sift(fewest)).isTrue();
            assertThat(root.sift(fewest + 1)).isTrue();
        });
    }

    /** Every opening of a plan with the fewest must be left at the root: it belongs to a choice that enters all zones. */
    @Test
    void no_opening_of_a_plan_with_the_fewest_is_dropped() {
        Seeds.each(100, random -> {
            DividerProblem problem =
                    DividersTest.problem(PatternFamilies.turning(6 + random.nextInt(4), random.nextBoolean(), random));
            Root root = new Root(problem);
            Choice best = root.best();
            assertThat(root.sift(best.settings())).isTrue();
            assertThat(root.left())
                    .containsAll(Arrays.stream(best.openings()).boxed().toList());
        });
    }

    /** The weights tell more than counting: this many openings enter enough marks by number, but not these marks. */
    @Test
    void more_is_refuted_than_by_counting_entries() {
        int tighter = 0;
        for (int seed = 1; seed <= 20; seed++) {
            Root root = new Root(DividersTest.problem(PatternFamilies.turning(20, false, new Random(seed))));
            tighter += root.sift(root.byEntries()) ? 0 : 1;
        }
        assertThat(tighter).isPositive();
    }

    private static DividerProblem small(Random random) {
        int count = 4 + random.nextInt(5);
        TreeSet<Integer> places = new TreeSet<>();
        while (places.size() < count) {
            places.add(random.nextInt(count + 16));
        }
        DividerProblem problem = DividersTest.problem(
                places.stream().mapToDouble(place -> place * 1.5875).toArray());
        return problem.withLimit(problem.markError().times(1 + random.nextInt(4)));
    }

    /** The search's first node, made anew for each question. */
    private static final class Root {
        private final Spans spans;
        private final MarkBits bits;
        private final int[] candidates;
        private final SearchLevel level;

        Root(DividerProblem problem) {
            spans = problem.spans(problem.mostSteps(), problem.forbidden());
            bits = new MarkBits(spans);
            candidates = Reduction.worthTrying(spans);
            level = new SearchLevel(bits, candidates.length);
        }

        boolean sift(int budget) {
            System.arraycopy(candidates, 0, level.candidates, 0, candidates.length);
            level.size = candidates.length;
            level.enter(new Zones(bits), bits.inner);
            level.weights.turnTo(bits.inner);
            return level.weights.sift(level, budget, true);
        }

        Set<Integer> left() {
            Set<Integer> left = new TreeSet<>();
            Arrays.stream(level.candidates, 0, level.size).forEach(left::add);
            return left;
        }

        int byEntries() {
            return LowerBound.byEntries(spans, candidates);
        }

        Choice best() {
            Choice sound = Reduction.sound(spans, candidates, Effort.unlimited());
            FewestSearch search = new FewestSearch(
                    spans,
                    candidates,
                    sound,
                    new Annealing(spans, candidates, new int[0], 1000, Effort.unlimited()),
                    better -> {},
                    Effort.unlimited());
            int settings = byEntries();
            while (search.any(settings) == FewestSearch.Ending.NONE) {
                settings++;
            }
            return search.best();
        }
    }
}
