package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.settings.FewestSearch.Ending;

class FewestSearchTest {
    @Test
    void none_has_fewer_and_of_those_with_as_few_the_best_is_found() {
        Seeds.each(300, random -> {
            SmallSpans small = SmallSpans.random(random);
            if (small.unreached(small.candidates()) != 0) {
                return;
            }
            int[] best = {99, 999};
            double[] longestMm = {0};
            StepCount count = new StepCount(small.spans());
            small.completions(new int[0], small.candidates(), 99, chosen -> {
                count.count(chosen, chosen.length);
                int sum = small.sum(small.steps(chosen));
                double longest = count.longestStepMm(chosen, chosen.length);
                boolean same = chosen.length == best[0] && sum == best[1];
                if (chosen.length < best[0]
                        || (chosen.length == best[0] && sum < best[1])
                        || (same && longest < longestMm[0])) {
                    best[0] = chosen.length;
                    best[1] = sum;
                    longestMm[0] = longest;
                }
            });
            List<Choice> told = new ArrayList<>();
            FewestSearch search = search(small.spans(), Effort.unlimited(), told);
            for (int fewer = 0; fewer < best[0]; fewer++) {
                assertThat(search.any(fewer)).isEqualTo(Ending.NONE);
            }
            assertThat(search.any(best[0])).isEqualTo(Ending.FOUND);
            assertThat(search.best(best[0])).isIn(Ending.FOUND, Ending.NONE);
            assertThat(search.best().settings()).isEqualTo(best[0]);
            assertThat(search.best().sum()).isEqualTo(best[1]);
            assertThat(search.best().longestMm()).isEqualTo(longestMm[0], Offset.offset(1e-9));
            ProvenChoice proven = DividerSearch.search(small.spans(), Effort.unlimited());
            assertThat(proven.lowerBound()).isEqualTo(best[0]);
            assertThat(proven.ties()).isTrue();
            assertThat(proven.choice().sum()).isEqualTo(best[1]);
        });
    }

    @Test
    void with_the_effort_spent_nothing_is_proven() {
        Spans spans = turning(10, 3);
        assertThat(search(spans, Effort.ofAsks(0), new ArrayList<>()).any(1)).isEqualTo(Ending.STOPPED);
        ProvenChoice proven = DividerSearch.search(spans, Effort.ofAsks(0));
        assertThat(proven.ties()).isFalse();
        assertThat(proven.lowerBound()).isLessThan(proven.choice().settings());
    }

    /** Asks are the measure of the search: so many openings looked at between two. A blunter bound takes more of them. */
    @Test
    void a_turning_is_proven_with_as_few_asks_as_when_its_bounds_were_made() {
        Asks asks = new Asks();
        FewestSearch search = search(turning(18, 5), asks, new ArrayList<>());
        int settings = 1;
        while (search.any(settings) == Ending.NONE) {
            settings++;
        }
        search.best(settings);
        assertThat(search.best().settings()).isEqualTo(settings);
        assertThat(asks.count).isLessThanOrEqualTo(ASKS);
    }

    private static final int ASKS = 290;

    private static final class Asks implements Effort {
        int count;

        @Override
        public boolean spent() {
            count++;
            return false;
        }
    }

    private static Spans turning(int members, long seed) {
        DividerProblem problem = DividersTest.problem(PatternFamilies.turning(members, false, new Random(seed)));
        return problem.spans(problem.mostSteps(), List.of());
    }

    private static FewestSearch search(Spans spans, Effort effort, List<Choice> told) {
        int[] candidates = Reduction.worthTrying(spans);
        Choice sound = Reduction.sound(spans, candidates, Effort.unlimited());
        Annealing beside = new Annealing(spans, candidates, new int[0], 1000, effort);
        return new FewestSearch(spans, candidates, sound, beside, told::add, effort);
    }
}
