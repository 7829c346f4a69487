package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.settings.PatternFamilies.Family;

class AnnealingTest {
    private static final int EXCHANGES = 20_000;

    @Test
    void going_on_finds_fewer_openings_and_what_it_finds_reaches_every_mark() {
        Task task = new Task(PatternFamilies.marks(Family.MM_MEMBERS, 45, new Random(7)));
        Choice first = task.improve.from(task.sound, 1);
        Choice best = first;
        for (int i = 0; i < 5; i++) {
            Choice next = task.improve.goOn(best, 1, EXCHANGES);
            assertThat(best.betterThan(next)).isFalse();
            best = next;
            task.count.count(best.openings(), best.settings());
            assertThat(task.count.unreached()).isZero();
            assertThat(task.count.sum()).isEqualTo(best.sum());
        }
        assertThat(best.settings()).isLessThan(first.settings());
    }

    @Test
    void going_on_with_the_fewest_known_only_saves_steps() {
        Task task = new Task(PatternFamilies.marks(Family.MM_TENTHS, 45, new Random(8)));
        Choice first = task.improve.from(task.sound, 1);
        Choice best = first;
        for (int i = 0; i < 10; i++) {
            best = task.improve.goOn(best, first.settings(), EXCHANGES);
        }
        assertThat(best.settings()).isEqualTo(first.settings());
        assertThat(best.sum()).isLessThan(first.sum());
    }

    /** The search alone finds no ten openings in so many asks. */
    @Test
    void a_long_search_ends_when_the_annealing_beside_it_finds_what_was_asked_for() {
        Task task = new Task(PatternFamilies.marks(Family.MM_MEMBERS, 45, new Random(7)));
        List<Choice> told = new ArrayList<>();
        FewestSearch search = new FewestSearch(
                task.spans, task.candidates, task.sound, task.improve, told::add, Effort.ofAsks(3_000));
        assertThat(task.sound.settings()).isGreaterThan(10);
        assertThat(search.any(10)).isEqualTo(FewestSearch.Ending.FOUND);
        assertThat(search.best().settings()).isEqualTo(10);
        assertThat(told).isNotEmpty().last().isSameAs(search.best());
    }

    private static final class Task {
        final Spans spans;
        final int[] candidates;
        final Choice sound;
        final Annealing improve;
        final StepCount count;

        Task(double... marks) {
            DividerProblem problem = DividersTest.problem(marks);
            spans = problem.spans(problem.mostSteps(), List.of());
            candidates = Reduction.worthTrying(spans);
            sound = Reduction.sound(spans, candidates, Effort.unlimited());
            improve = new Annealing(spans, candidates, new int[0], EXCHANGES, Effort.unlimited());
            count = new StepCount(spans);
        }
    }
}
