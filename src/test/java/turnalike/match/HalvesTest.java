package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;

/** Arcs and mirrored halves: what they list without storing it, against each order by itself. */
class HalvesTest {
    @Test
    void an_arc_lists_every_order_once_with_the_sum_it_has() {
        Seeds.each(40, random -> {
            int size = random.nextInt(7);
            ArcOrders arc = new ArcOrders(size);
            Arrays.setAll(arc.places, i -> 2 + i);
            Arrays.setAll(arc.pieces, i -> 3 * i);
            long[][] packed = new long[9][20];
            for (long[] line : packed) {
                Arrays.setAll(line, i -> random.nextInt(1_000_000));
            }
            int sign = random.nextBoolean() ? 1 : -1;
            Set<String> told = new HashSet<>();
            boolean ended = arc.list(packed, 55, sign, Effort.ofAsks(0), (head, tails, count, first) -> {
                for (int i = 0; i < count; i++) {
                    int[] pieceAt = new int[size];
                    arc.order(first + i, pieceAt);
                    long sum = 0;
                    for (int at = 0; at < size; at++) {
                        sum += packed[arc.places[at]][pieceAt[at]];
                    }
                    assertThat(head + tails[i]).isEqualTo(55 + sign * sum);
                    assertThat(pieceAt).containsExactlyInAnyOrder(arc.pieces);
                    assertThat(told.add(Arrays.toString(pieceAt))).isTrue();
                }
            });
            assertThat(ended).isTrue();
            assertThat(told).hasSize(arc.orders());
            assertThat(arc.size()).isEqualTo(size);
        });
    }

    /** Nine pieces have more than a third of a million orders, eight a tenth of that. */
    @Test
    void a_long_arc_stops_when_the_effort_is_spent_and_a_short_one_does_not_ask() {
        long[][] packed = new long[10][10];
        int[] lists = {0};
        assertThat(new ArcOrders(9).list(packed, 0, 1, Effort.ofAsks(0), (head, tails, count, first) -> lists[0]++))
                .isFalse();
        assertThat(lists[0]).isZero();
        assertThat(new ArcOrders(8).list(packed, 0, 1, Effort.ofAsks(0), (head, tails, count, first) -> lists[0]++))
                .isTrue();
        assertThat(lists[0]).isEqualTo(70 * 24);
    }

    @Test
    void a_half_s_ways_are_each_dealing_once_and_their_sums_lie_between_its_least_and_most() {
        Seeds.each(40, random -> {
            Half half = new Half(1 + random.nextInt(8), random);
            MirroredHalf side = half.side;
            Set<String> told = new HashSet<>();
            for (int number = 0; number < side.ways(); number++) {
                int[] way = side.way(number);
                assertThat(way).containsExactlyInAnyOrder(side.pieces);
                int[] unordered = way.clone();
                for (int i = 0; i + 1 < way.length; i += 2) {
                    Arrays.sort(unordered, i, i + 2);
                }
                assertThat(told.add(Arrays.toString(unordered))).isTrue();
                double alongGMm = half.along(way);
                assertThat(alongGMm).isBetween(half.least() - 1e-9, half.most() + 1e-9);
                assertThat(half.laid(number) * half.stepGMm)
                        .isCloseTo(half.sign * alongGMm + half.startGMm, within(half.stepGMm * (side.size() + 2)));
            }
            assertThat(told).hasSize(Permutations.pairedCount(side.size()));
        });
    }

    @Test
    void the_least_and_the_most_are_reached_by_some_way_and_each_tail_lies_within_its_bounds() {
        Seeds.each(40, random -> {
            Half half = new Half(1 + random.nextInt(7), random);
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int number = 0; number < half.side.ways(); number++) {
                least = Math.min(least, half.along(half.side.way(number)));
                most = Math.max(most, half.along(half.side.way(number)));
            }
            assertThat(half.least()).isCloseTo(least, within(1e-9));
            assertThat(half.most()).isCloseTo(most, within(1e-9));
            MirroredHalf side = half.side;
            for (int choice = 0; choice < side.choices(); choice++) {
                int[] tails = Arrays.copyOfRange(side.tails, choice * side.tailWays, (choice + 1) * side.tailWays);
                assertThat(side.tailLow[choice])
                        .isEqualTo(Arrays.stream(tails).min().orElseThrow());
                assertThat(side.tailHigh[choice])
                        .isEqualTo(Arrays.stream(tails).max().orElseThrow());
            }
            double reachSteps = side.reach(half.moments, half.line) / half.stepGMm + side.size();
            assertThat(Arrays.stream(side.tails).mapToDouble(Math::abs)).allMatch(tail -> tail <= reachSteps);
        });
    }

    /** Nothing within the radius of a marked sum is lost, and of the others few pass. */
    @Test
    void the_sieve_loses_no_sum_that_is_near_and_lets_few_others_through() {
        int[] passed = {0, 0};
        for (int seed = 0; seed < 30; seed++) {
            Random random = new Random(seed);
            Half one = new Half(6 + random.nextInt(2), random);
            Half other = new Half(one.side.size(), random);
            int near = 1 + random.nextInt(3000);
            int low = -2_000_000;
            int high = 2_000_000;
            boolean fine = random.nextBoolean();
            BloomFilter filter = new BloomFilter();
            filter.empty(near, one.side.ways(), fine);
            filter.mark(one.side, low, high);
            BloomFilter.Kept kept = new BloomFilter.Kept();
            filter.sieve(other.side, low, high, kept);
            sieved(one.side, other, near, low, high, kept, passed);
            int[] marked = Arrays.copyOf(kept.sums, kept.count);
            // The other way round, from those kept, and once more with other spreading.
            filter.empty(near, kept.count, true);
            filter.mark(kept);
            BloomFilter.Kept back = new BloomFilter.Kept();
            filter.sieve(one.side, low, high, back);
            assertThat(Arrays.stream(back.sums, 0, back.count)
                            .filter(sum -> sum >= low && sum <= high && nearest(marked, sum) <= near))
                    .hasSize((int) sums(one.side, low, high)
                            .filter(sum -> nearest(marked, sum) <= near)
                            .count());
            int[] again = Arrays.copyOf(back.sums, back.count);
            filter.empty(near, back.count, true);
            filter.mark(back);
            int before = kept.count;
            filter.sieve(kept);
            assertThat(Arrays.stream(kept.sums, 0, kept.count).filter(sum -> nearest(again, sum) <= near))
                    .hasSize((int) Arrays.stream(marked)
                            .filter(sum -> nearest(again, sum) <= near)
                            .count());
            assertThat(kept.count).isLessThanOrEqualTo(before);
            long[] sorted = kept.sorted();
            for (int i = 0; i < sorted.length; i++) {
                assertThat(i == 0 || sorted[i - 1] <= sorted[i]).isTrue();
                assertThat((int) (sorted[i] >> 32)).isEqualTo(other.laid((int) sorted[i]));
            }
        }
        assertThat(passed[0]).isLessThanOrEqualTo(PASSED);
        assertThat(passed[1]).isPositive();
    }

    private static final int PASSED = 6100;

    private static void sieved(
            MirroredHalf marked, Half other, int near, int low, int high, BloomFilter.Kept kept, int[] passed) {
        int[] all = sums(marked, low, high).toArray();
        Set<Integer> ways = new HashSet<>();
        for (int i = 0; i < kept.count; i++) {
            assertThat(ways.add(kept.ways[i])).isTrue();
            assertThat(kept.sums[i]).isEqualTo(other.laid(kept.ways[i]));
            passed[nearest(all, kept.sums[i]) <= near ? 1 : 0]++;
        }
        for (int number = 0; number < other.side.ways(); number++) {
            int sum = other.laid(number);
            if (sum >= low && sum <= high && nearest(all, sum) <= near) {
                assertThat(ways).contains(number);
            }
        }
    }

    private static IntStream sums(MirroredHalf side, int low, int high) {
        return IntStream.range(0, side.ways())
                .map(number -> side.heads[number / side.tailWays] + tail(side, number))
                .filter(sum -> sum >= low && sum <= high);
    }

    private static int tail(MirroredHalf side, int number) {
        int choice = number / (side.headWays * side.tailWays);
        return side.tails[choice * side.tailWays + number % side.tailWays];
    }

    private static int nearest(int[] sums, int sum) {
        int nearest = Integer.MAX_VALUE;
        for (int each : sums) {
            nearest = Math.min(nearest, Math.abs(each - sum));
        }
        return nearest;
    }

    /** A half with invented moments on some line, its sums laid in steps. */
    private static final class Half {
        final double[] moments;
        final MirrorLine line;
        final MirroredHalf side;
        final int sign;
        final double stepGMm;
        final double startGMm;

        Half(int size, Random random) {
            int places = 2 * size + 2;
            moments = random.doubles(size, 80, 120).toArray();
            line = new MirrorLine(new PlaceDirections(2 * places), random.nextInt(places));
            side = new MirroredHalf(size);
            Arrays.setAll(side.pieces, i -> size - 1 - i);
            Arrays.setAll(side.pairs, k -> k);
            sign = random.nextBoolean() ? 1 : -1;
            stepGMm = 1e-5;
            double mean = Arrays.stream(moments).average().orElse(0);
            double middle = Arrays.stream(side.slots(line)).average().orElse(0);
            // What is the same in every way is taken off, so that the sums of two halves lie about the same middle.
            startGMm = random.nextInt(5) - 2 - sign * mean * middle * size;
            side.lay(moments, line, stepGMm, sign, startGMm);
        }

        int laid(int number) {
            return side.heads[number / side.tailWays] + tail(side, number);
        }

        double along(int[] way) {
            double sum = 0;
            for (int i = 0; i < way.length; i++) {
                sum += moments[way[i]] * line.along[line.left[side.pairs[i / 2]]];
            }
            return sum;
        }

        double least() {
            return side.least(moments, line);
        }

        double most() {
            return side.most(moments, line);
        }
    }
}
