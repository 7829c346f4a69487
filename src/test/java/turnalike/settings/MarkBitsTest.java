package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class MarkBitsTest {
    @Test
    void unreached_marks_are_those_of_counting_steps() {
        Seeds.each(300, random -> {
            SmallSpans small = SmallSpans.random(random);
            MarkBits bits = new MarkBits(small.spans());
            int[] chosen = small.draw(4, random);
            long[] neighbours = bits.pinned();
            for (int opening : chosen) {
                bits.join(neighbours, opening);
            }
            assertThat(bits.unreached(neighbours)).isEqualTo(small.unreached(chosen));
        });
    }

    @Test
    void entries_are_told_apart_by_whether_a_part_can_begin_by_itself() {
        Seeds.each(200, random -> {
            Spans spans = SmallSpans.random(random).spans();
            MarkBits bits = new MarkBits(spans);
            for (int i = 0; i < spans.openings.size(); i++) {
                Opening opening = spans.openings.get(i);
                long[] joined = joined(spans, opening);
                Set<Integer> free = new HashSet<>();
                Set<Set<Integer>> bound = new HashSet<>();
                for (Set<Integer> part : parts(joined)) {
                    boolean begins = part.stream().anyMatch(mark -> spans.given[mark]);
                    if (!begins) {
                        bound.add(part);
                    }
                    part.stream()
                            .filter(mark -> begins && inner(spans, mark) && (joined[mark] & ~bits.given) != 0)
                            .forEach(free::add);
                }
                assertThat(IntStream.of(bits.entry[i]).limit(bits.free[i]).boxed())
                        .containsExactlyInAnyOrderElementsOf(free);
                assertThat(bound(bits, i)).isEqualTo(bound);
                for (int at = 0; at < bits.entry[i].length; at++) {
                    int mark = bits.entry[i][at];
                    assertThat(bits.sources[i][at])
                            .isEqualTo(mark == MarkBits.PART_END ? 0 : joined[mark] & ~bits.given);
                }
                long fromGiven = IntStream.range(0, spans.marks())
                        .filter(mark -> spans.given[mark])
                        .mapToLong(mark -> joined[mark])
                        .reduce(0, (a, b) -> a | b);
                assertThat(bits.fromEnd[i]).isEqualTo(fromGiven & bits.inner);
            }
        });
    }

    @Test
    void sixty_four_marks_fit_and_one_more_is_refused() {
        MarkBits bits = new MarkBits(row(64));
        assertThat(bits.inner).isEqualTo(-1L & ~1L & ~Long.MIN_VALUE);
        assertThat(bits.given | bits.inner).isEqualTo(-1L);
        assertThat(new MarkBits(row(63)).inner).isEqualTo((1L << 62) - 2);
        assertThatThrownBy(() -> new MarkBits(row(65))).isInstanceOf(IllegalArgumentException.class);
    }

    private static Spans row(int marks) {
        double[] places = IntStream.range(0, marks).mapToDouble(i -> 10 * i).toArray();
        return Spans.along(places, 0.1, 3, new boolean[marks], new double[0], new double[0]);
    }

    private static boolean inner(Spans spans, int mark) {
        return !spans.given[mark];
    }

    private static long[] joined(Spans spans, Opening opening) {
        long[] joined = new long[spans.marks()];
        for (int i = 0; i < opening.pairs(); i++) {
            joined[opening.low()[i]] |= 1L << opening.high()[i];
            joined[opening.high()[i]] |= 1L << opening.low()[i];
        }
        return joined;
    }

    private static Set<Set<Integer>> parts(long[] joined) {
        Set<Set<Integer>> parts = new HashSet<>();
        for (int start = 0; start < joined.length; start++) {
            long part = joined[start] == 0 ? 0 : 1L << start;
            for (int again = 0; again < joined.length; again++) {
                part |= MarkBits.neighbours(joined, part);
            }
            if (part != 0) {
                parts.add(marks(part));
            }
        }
        return parts;
    }

    private static Set<Integer> marks(long set) {
        Set<Integer> marks = new HashSet<>();
        IntStream.range(0, Long.SIZE).filter(mark -> (set >> mark & 1) == 1).forEach(marks::add);
        return marks;
    }

    /** The parts after the free entries, each of which an end closes. */
    private static Set<Set<Integer>> bound(MarkBits bits, int opening) {
        Set<Set<Integer>> parts = new HashSet<>();
        List<Integer> part = new ArrayList<>();
        for (int at = bits.free[opening]; at < bits.entry[opening].length; at++) {
            if (bits.entry[opening][at] == MarkBits.PART_END) {
                parts.add(new HashSet<>(part));
                part.clear();
            } else {
                part.add(bits.entry[opening][at]);
            }
        }
        assertThat(part).isEmpty();
        return parts;
    }
}
