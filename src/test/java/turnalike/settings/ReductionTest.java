package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;

class ReductionTest {
    /** Any set of openings can be changed for one of those worth trying that is no larger and costs no more steps. */
    @Test
    void what_is_worth_trying_holds_a_best_choice() {
        Seeds.each(150, random -> {
            SmallSpans small = SmallSpans.random(random);
            int[] worth = Reduction.worthTrying(small.spans());
            assertThat(best(small, worth)).isEqualTo(best(small, small.candidates()));
        });
    }

    @Test
    void openings_that_strike_one_mark_are_worth_trying_once_and_only_from_an_end() {
        Seeds.each(150, random -> {
            Spans spans = SmallSpans.random(random).spans();
            Set<Integer> struck = new HashSet<>();
            Set<Integer> worth = new HashSet<>();
            for (int i = spans.pinned; i < spans.openings.size(); i++) {
                Opening opening = spans.openings.get(i);
                int low = opening.low()[0];
                int high = opening.high()[0];
                boolean fromAnEnd = spans.given[low] || spans.given[high];
                boolean single = opening.pairs() == 1;
                if (!single || (fromAnEnd && struck.add(spans.given[low] ? high : low))) {
                    worth.add(i);
                } else if (!fromAnEnd && (isShut(spans, low) || isShut(spans, high))) {
                    worth.add(i);
                }
            }
            assertThat(Reduction.worthTrying(spans)).containsExactlyInAnyOrder(toArray(worth));
        });
    }

    @Test
    void the_first_choice_reaches_every_mark_and_misses_none_of_its_openings() {
        int[] kept = {0, 0};
        Seeds.each(200, random -> {
            SmallSpans small = SmallSpans.random(random);
            if (small.unreached(small.candidates()) != 0) {
                return;
            }
            Choice quick = Reduction.sound(small.spans(), small.candidates(), Effort.ofAsks(0));
            assertThat(small.unreached(quick.openings())).isZero();
            int[] chosen = Reduction.sound(small.spans(), small.candidates(), Effort.unlimited())
                    .openings();
            assertThat(small.unreached(chosen)).isZero();
            for (int dropped : chosen) {
                int[] rest = Arrays.stream(chosen).filter(i -> i != dropped).toArray();
                assertThat(small.unreached(rest)).isNotZero();
            }
            kept[0] += chosen.length;
            kept[1] += best(small, small.candidates())[0];
        });
        assertThat(kept[0]).isLessThan(kept[1] * 11 / 10);
    }

    /** With 64 marks the first choice is still greedy; evenly spaced ones need one opening when steps are not scarce. */
    @Test
    void sixty_four_evenly_spaced_marks_begin_with_one_opening() {
        double[] places = IntStream.range(0, 64).mapToDouble(i -> 10 * i).toArray();
        Spans spans = Spans.along(places, 0.1, 62, new boolean[64], new double[0], new double[0]);
        Choice choice = Reduction.sound(spans, Reduction.worthTrying(spans), Effort.ofAsks(0));
        assertThat(choice.settings()).isEqualTo(1);
        assertThat(choice.sum()).isEqualTo(2 * 31 * 32 / 2);
    }

    @Test
    void the_bound_by_entries_is_never_above_the_fewest_and_mostly_meets_it() {
        int[] met = {0, 0};
        Seeds.each(200, random -> {
            SmallSpans small = SmallSpans.random(random);
            if (small.unreached(small.candidates()) != 0) {
                return;
            }
            int bound = LowerBound.byEntries(small.spans(), small.candidates());
            int fewest = best(small, small.candidates())[0];
            assertThat(bound).isLessThanOrEqualTo(fewest);
            met[0] += bound == fewest ? 1 : 0;
            met[1]++;
        });
        assertThat(met[0]).isGreaterThan(met[1] * 7 / 10);
    }

    private static boolean isShut(Spans spans, int mark) {
        return !spans.given[mark]
                && IntStream.range(0, spans.marks())
                        .noneMatch(from -> spans.given[from] && !spans.isBarred(from, mark));
    }

    /** Fewest openings, and the smallest sum of steps with as few; one far off when no set does. */
    private static int[] best(SmallSpans small, int[] candidates) {
        int[] best = {99, 999};
        small.completions(new int[0], candidates, 99, chosen -> {
            int sum = small.sum(small.steps(chosen));
            if (chosen.length < best[0] || (chosen.length == best[0] && sum < best[1])) {
                best[0] = chosen.length;
                best[1] = sum;
            }
        });
        return best;
    }

    private static int[] toArray(Set<Integer> set) {
        return set.stream().mapToInt(Integer::intValue).toArray();
    }
}
