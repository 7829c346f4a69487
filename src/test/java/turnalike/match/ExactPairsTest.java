package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;

class ExactPairsTest {
    @Test
    void finds_what_going_through_every_order_finds() {
        Seeds.each(60, random -> {
            int n = 1 + random.nextInt(7);
            double[] moments = moments(random, n);
            boolean given = random.nextBoolean();
            double x = given ? 40 * random.nextGaussian() : 0;
            double y = given && random.nextBoolean() ? 40 * random.nextGaussian() : 0;
            WheelArrays ring =
                    new WheelArrays(moments, moments, new PlaceDirections(n), new SetRule(moments, n, 1e9), x, y);
            double smallest = smallest(ring, identity(n), 0);
            Smallest found = new Smallest(ring);
            boolean ended = new ExactPairs(moments, ring.compass(), x, y, true)
                    .search(identity(n), 1e9, Effort.unlimited(), found);
            assertThat(ended).isTrue();
            assertThat(found.leftGMm).isCloseTo(smallest, within(1e-9));
        });
    }

    @Test
    void goes_with_whole_orders_on_ten_and_eleven_places() {
        Seeds.each(4, random -> {
            int n = 10 + random.nextInt(2);
            double[] moments = moments(random, n);
            double x = random.nextBoolean() ? 0 : 30 * random.nextGaussian();
            double radius = 2;
            WheelArrays ring =
                    new WheelArrays(moments, moments, new PlaceDirections(n), new SetRule(moments, n, 1e9), x, 0);
            Smallest pairs = new Smallest(ring);
            new ExactPairs(moments, ring.compass(), x, 0, true).search(identity(n), radius, Effort.unlimited(), pairs);
            Smallest orders = new Smallest(ring);
            new ExactOrders(moments, ring.compass(), x, 0, true)
                    .search(identity(n), radius, Effort.unlimited(), orders);
            assertThat(orders.leftGMm).isLessThan(radius);
            assertThat(pairs.leftGMm).isCloseTo(orders.leftGMm, within(1e-9));
        });
    }

    @Test
    void tells_every_order_once_where_a_given_moment_keeps_the_wheel_from_turning() {
        for (int n : new int[] {4, 5, 6, 7}) {
            Random random = new Random(n);
            double[] moments = moments(random, n);
            Set<String> told = new HashSet<>();
            int[] count = {0};
            new ExactPairs(moments, new PlaceDirections(n), 7, 3, false)
                    .search(identity(n), 1e9, Effort.unlimited(), (left, order) -> {
                        told.add(Arrays.toString(order));
                        count[0]++;
                        return 1e9;
                    });
            int all = n == 4 ? 24 : n == 5 ? 120 : n == 6 ? 720 : 5040;
            assertThat(count[0]).as("%d places", n).isEqualTo(all);
            assertThat(told).hasSize(all);
        }
    }

    @Test
    void one_very_heavy_piece_is_held_against_as_far_as_the_others_can() {
        double[] moments = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 900};
        WheelArrays ring =
                new WheelArrays(moments, moments, new PlaceDirections(13), new SetRule(moments, 13, 1e9), 0, 0);
        WheelSearch search = new WheelSearch(ring, 0, true);
        search.run(Effort.ofAsks(50));
        // Straight against the heavy piece the others cannot pull harder than this (rearrangement inequality).
        double[] cosines = Arrays.copyOfRange(ring.compass().cos, 1, 13);
        Arrays.sort(cosines);
        double leastGMm = 900;
        for (int i = 0; i < 12; i++) {
            leastGMm += cosines[i] * (12 - i);
        }
        assertThat(search.leftGMm).isBetween(leastGMm - 1e-9, leastGMm + 1);
    }

    private static double[] moments(Random random, int n) {
        boolean coarse = random.nextInt(3) == 0;
        double[] moments = new double[n];
        Arrays.setAll(moments, i -> {
            double moment = 100 + 10 * random.nextGaussian();
            return coarse ? Math.rint(moment) : moment;
        });
        return moments;
    }

    private static int[] identity(int n) {
        int[] identity = new int[n];
        Arrays.setAll(identity, i -> i);
        return identity;
    }

    private static double smallest(WheelArrays ring, int[] order, int fixed) {
        if (fixed == order.length) {
            return ring.leftGMm(order);
        }
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = fixed; i < order.length; i++) {
            int[] next = order.clone();
            next[fixed] = order[i];
            next[i] = order[fixed];
            smallest = Math.min(smallest, smallest(ring, next, fixed + 1));
        }
        return smallest;
    }

    /** Keeps the smallest unbalance told of, and sees that it is the order's own. */
    private static final class Smallest implements ExactOrders.Found {
        private final WheelArrays ring;
        double leftGMm = Double.POSITIVE_INFINITY;

        Smallest(WheelArrays ring) {
            this.ring = ring;
        }

        @Override
        public double order(double leftGMm, int[] pieceAt) {
            assertThat(ring.leftGMm(pieceAt)).isCloseTo(leftGMm, within(1e-9));
            assertThat(pieceAt).containsOnlyOnce(identity(pieceAt.length));
            this.leftGMm = Math.min(this.leftGMm, leftGMm);
            return this.leftGMm;
        }
    }
}
