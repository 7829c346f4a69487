package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.settings.PatternFamilies.Family;

class StepCountTest {
    @Test
    void steps_are_those_of_going_over_all_pairs_again_and_again() {
        Seeds.each(300, random -> {
            SmallSpans small = SmallSpans.random(random);
            StepCount count = new StepCount(small.spans());
            for (int again = 0; again < 3; again++) {
                int[] chosen = small.draw(4, random);
                count.count(chosen, chosen.length);
                int[] steps = small.steps(chosen);
                assertThat(IntStream.range(0, steps.length).map(count::steps).toArray())
                        .isEqualTo(steps);
                assertThat(count.unreached()).isEqualTo(Long.bitCount(small.unreached(chosen)));
                assertThat(count.sum()).isEqualTo(small.sum(steps));
                if (count.unreached() == 0) {
                    assertThat(count.longestStepMm(chosen, chosen.length))
                            .isEqualTo(longestMm(small.spans(), chosen, steps), Offset.offset(1e-9));
                }
            }
        });
    }

    /** Up to 64 marks go by bits, more by pairs. */
    @Test
    void more_marks_than_a_number_has_bits_are_counted_alike() {
        for (int marks = 62; marks <= 67; marks++) {
            Random random = new Random(marks);
            DividerProblem problem = DividersTest.problem(PatternFamilies.marks(Family.INCH_MEMBERS, marks, random));
            Spans spans = problem.spans(problem.mostSteps(), problem.forbidden());
            StepCount count = new StepCount(spans);
            for (int again = 0; again < 20; again++) {
                int[] chosen =
                        random.ints(9, spans.pinned, spans.openings.size()).toArray();
                count.count(chosen, chosen.length);
                int[] steps = IntStream.range(0, marks).map(count::steps).toArray();
                assertThat(steps).as("%d marks", marks).isEqualTo(overAndOver(spans, chosen));
                assertThat(count.unreached()).isEqualTo((int)
                        Arrays.stream(steps).filter(k -> k == Integer.MAX_VALUE).count());
            }
        }
    }

    private static int[] overAndOver(Spans spans, int[] chosen) {
        int[] steps = new int[spans.marks()];
        for (int mark = 0; mark < steps.length; mark++) {
            steps[mark] = spans.given[mark] ? 0 : Integer.MAX_VALUE;
        }
        int[] openings = IntStream.concat(IntStream.range(0, spans.pinned), Arrays.stream(chosen))
                .toArray();
        for (int step = 1; step <= spans.mostSteps; step++) {
            for (int one = 0; one < steps.length; one++) {
                for (int other = 0; other < steps.length; other++) {
                    if (steps[one] == step - 1 && steps[other] > step && joins(spans, openings, one, other)) {
                        steps[other] = step;
                    }
                }
            }
        }
        return steps;
    }

    /** Only the first of the openings named are counted. */
    @Test
    void openings_beyond_the_count_are_not_counted() {
        Seeds.each(50, random -> {
            SmallSpans small = SmallSpans.random(random);
            int[] chosen = small.draw(4, random);
            int[] first = Arrays.copyOf(chosen, chosen.length / 2);
            StepCount count = new StepCount(small.spans());
            count.count(chosen, first.length);
            assertThat(count.sum()).isEqualTo(small.sum(small.steps(first)));
        });
    }

    /** Of each mark the shortest way to strike it last, nothing where a pinned opening does; of all these the longest. */
    private static double longestMm(Spans spans, int[] chosen, int[] steps) {
        double longest = 0;
        for (int mark = 1; mark < spans.last(); mark++) {
            double shortest = spans.given[mark] ? 0 : Double.POSITIVE_INFINITY;
            for (int other = 0; other < spans.marks(); other++) {
                if (steps[other] == steps[mark] - 1) {
                    if (joins(spans, IntStream.range(0, spans.pinned).toArray(), mark, other)) {
                        shortest = 0;
                    }
                    if (joins(spans, chosen, mark, other)) {
                        shortest = Math.min(shortest, Math.abs(spans.placesMm[mark] - spans.placesMm[other]));
                    }
                }
            }
            longest = Math.max(longest, shortest);
        }
        return longest;
    }

    private static boolean joins(Spans spans, int[] openings, int one, int other) {
        return Arrays.stream(openings).mapToObj(spans.openings::get).anyMatch(opening -> IntStream.range(
                        0, opening.pairs())
                .anyMatch(i -> opening.low()[i] == Math.min(one, other) && opening.high()[i] == Math.max(one, other)));
    }
}
