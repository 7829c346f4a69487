package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;

/** Orders round the wheel: constructed, swapped into place, met in the middle. */
class OrdersTest {
    @Test
    void pieces_in_even_steps_balance_by_polygons_unless_their_number_is_a_prime_power() {
        for (int n = 1; n <= 60; n++) {
            int[] ascending = IntStream.range(0, n).toArray();
            int[] pieceAt = ConstructedOrders.polygons(ascending);
            boolean primePower = n == 1;
            for (int p = 2; p <= n; p++) {
                for (int power = p; isPrime(p) && power <= n; power *= p) {
                    primePower |= power == n;
                }
            }
            assertThat(pieceAt.length == 0).as("%d pieces", n).isEqualTo(primePower);
            if (!primePower) {
                assertThat(pieceAt).containsExactlyInAnyOrder(ascending);
                double[] weights = IntStream.rangeClosed(1, n).asDoubleStream().toArray();
                assertThat(ring(weights, 0, 0).leftGMm(pieceAt)).isCloseTo(0, within(1e-9));
            }
        }
    }

    private static boolean isPrime(int n) {
        return IntStream.range(2, n).noneMatch(d -> n % d == 0);
    }

    @Test
    void heavy_faces_heavy_as_constructed() {
        for (int n = 1; n <= 40; n++) {
            int[] ascending = IntStream.range(0, n).toArray();
            int[] pieceAt = ConstructedOrders.facing(ascending);
            assertThat(pieceAt).containsExactlyInAnyOrder(ascending);
            assertThat(pieceAt[0]).isZero();
            for (int k = 0; k < n / 2 && n % 2 == 0; k++) {
                assertThat(Math.abs(pieceAt[k] - pieceAt[k + n / 2])).isEqualTo(1);
            }
        }
    }

    @Test
    void after_swapping_no_swap_helps_and_the_moment_is_that_of_the_order() {
        Seeds.each(60, random -> {
            int places = 3 + random.nextInt(6);
            double[] masses =
                    random.doubles(places + random.nextInt(4), 90, 130).toArray();
            WheelArrays ring = new WheelArrays(
                    masses,
                    masses,
                    new PlaceDirections(places),
                    new SetRule(masses, places, 0.2),
                    random.nextInt(3),
                    random.nextInt(3));
            WheelOrder order = new WheelOrder(ring, ring.rule().alikest());
            double before = order.leftGMm();
            order.descend();
            sound(ring, order);
            assertThat(order.leftGMm()).isLessThanOrEqualTo(before);
            for (int i = 0; i < places; i++) {
                for (int j = 0; j < masses.length; j++) {
                    int[] swapped = swapped(order, i, j);
                    if (ring.rule().passes(swapped)) {
                        assertThat(ring.leftGMm(swapped)).isGreaterThan(order.leftGMm() * (1 - 1e-8));
                    }
                }
            }
            WheelOrder copy = order.copy();
            assertThat(copy.pieceAt).isEqualTo(order.pieceAt);
            copy.exchange(new SplitMix64(random.nextLong()), 5);
            sound(ring, copy);
        });
    }

    private static void sound(WheelArrays ring, WheelOrder order) {
        int[] all = IntStream.concat(Arrays.stream(order.pieceAt), Arrays.stream(order.spares))
                .toArray();
        assertThat(all)
                .containsExactlyInAnyOrder(IntStream.range(0, ring.pieces()).toArray());
        assertThat(ring.rule().passes(order.pieceAt)).isTrue();
        double x = ring.givenXGMm();
        double y = ring.givenYGMm();
        for (int place = 0; place < order.pieceAt.length; place++) {
            x += ring.momentsGMm()[order.pieceAt[place]] * Math.cos(2 * Math.PI * place / order.pieceAt.length);
            y += ring.momentsGMm()[order.pieceAt[place]] * Math.sin(2 * Math.PI * place / order.pieceAt.length);
        }
        assertThat(order.leftGMm()).isCloseTo(Math.hypot(x, y), within(1e-9));
        assertThat(order.xGMm).isCloseTo(x, within(1e-9));
        assertThat(order.yGMm).isCloseTo(y, within(1e-9));
    }

    /** The piece of place i changed for piece j, wherever that is. */
    private static int[] swapped(WheelOrder order, int i, int j) {
        int held = order.pieceAt[i];
        return Arrays.stream(order.pieceAt)
                .map(piece -> piece == held ? j : piece == j ? held : piece)
                .toArray();
    }

    @Test
    void meeting_in_the_middle_tells_every_pair_within_the_radius_once() {
        Seeds.each(30, random -> {
            int places = 6 + random.nextInt(4);
            double[] moments = random.doubles(places, 80, 120).toArray();
            PlaceDirections compass = new PlaceDirections(places);
            ArcOrders a = new ArcOrders(places / 2);
            ArcOrders b = new ArcOrders(places - places / 2);
            Arrays.setAll(a.places, i -> i);
            Arrays.setAll(b.places, i -> places / 2 + i);
            Arrays.setAll(a.pieces, i -> 2 * i);
            int[] others = IntStream.range(0, places)
                    .filter(p -> Arrays.stream(a.pieces).noneMatch(q -> q == p))
                    .toArray();
            System.arraycopy(others, 0, b.pieces, 0, others.length);
            double x = 5 * random.nextGaussian();
            double y = 5 * random.nextGaussian();
            WheelArrays ring = ring(moments, x, y);
            CancellingOrders cancelling = new CancellingOrders(moments, compass);
            double radius = 3 + random.nextInt(20);
            Set<String> near = new HashSet<>();
            each(
                    a.pieces.clone(),
                    0,
                    onA -> each(b.pieces.clone(), 0, onB -> {
                        if (ring.leftGMm(join(onA, onB)) < radius) {
                            near.add(Arrays.toString(join(onA, onB)));
                        }
                    }));
            Set<String> told = new HashSet<>();
            boolean ended = cancelling.search(a, b, x, y, radius, Effort.ofAsks(0), (left, onA, onB) -> {
                assertThat(ring.leftGMm(join(onA, onB))).isCloseTo(left, within(1e-9));
                assertThat(told.add(Arrays.toString(join(onA, onB)))).isTrue();
                return radius;
            });
            assertThat(ended).isTrue();
            assertThat(told).isEqualTo(near);
            double[] best = {radius};
            cancelling.search(a, b, x, y, radius, Effort.ofAsks(0), (left, onA, onB) -> {
                assertThat(left).isLessThan(best[0]);
                best[0] = left;
                return left;
            });
            double[] least = {radius};
            each(
                    a.pieces.clone(),
                    0,
                    onA -> each(
                            b.pieces.clone(), 0, onB -> least[0] = Math.min(least[0], ring.leftGMm(join(onA, onB)))));
            assertThat(best[0]).isCloseTo(least[0], within(1e-9));
        });
    }

    @Test
    void whole_orders_tell_every_order_once_with_and_without_a_given_moment() {
        for (int n = 1; n <= 7; n++) {
            for (double given : new double[] {0, 6}) {
                Random random = new Random(n);
                double[] moments = random.doubles(n, 80, 120).toArray();
                WheelArrays ring = ring(moments, given, given / 2);
                Set<String> told = new HashSet<>();
                boolean ended = new ExactOrders(moments, ring.compass(), given, given / 2, false)
                        .search(IntStream.range(0, n).toArray(), 1e9, Effort.unlimited(), (left, order) -> {
                            assertThat(ring.leftGMm(order)).isCloseTo(left, within(1e-9));
                            assertThat(told.add(Arrays.toString(given == 0 ? turned(order) : order)))
                                    .isTrue();
                            return 1e9;
                        });
                assertThat(ended).isTrue();
                int all = IntStream.rangeClosed(1, n).reduce(1, (p, q) -> p * q);
                assertThat(told).hasSize(given == 0 ? Math.max(1, all / n / (n > 2 ? 2 : 1)) : all);
            }
        }
    }

    /** One of all orders that come of one another by turning and mirroring the wheel. */
    private static int[] turned(int[] order) {
        int n = order.length;
        int[] least = order;
        for (int turn = 0; turn < 2 * n; turn++) {
            int by = turn;
            int[] other = IntStream.range(0, n)
                    .map(k -> order[by < n ? (k + by) % n : Math.floorMod(by - k, n)])
                    .toArray();
            least = Arrays.compare(other, least) < 0 ? other : least;
        }
        return least;
    }

    @Test
    void polishing_gives_real_orders_and_true_unbalances() {
        Seeds.each(12, random -> {
            int places = 1 + random.nextInt(14);
            double[] masses =
                    random.doubles(places + random.nextInt(3), 95, 105).toArray();
            WheelArrays ring = new WheelArrays(
                    masses, masses, new PlaceDirections(places), new SetRule(masses, places, 1), 0, random.nextInt(2));
            LargeNeighbourhoodSearch polishing = new LargeNeighbourhoodSearch(ring, 5);
            double before = polishing.leftGMm();
            polishing.run(0, 30, Effort.unlimited());
            assertThat(polishing.leftGMm()).isLessThanOrEqualTo(before);
            assertThat(ring.leftGMm(polishing.pieceAt())).isCloseTo(polishing.leftGMm(), within(1e-9));
            assertThat(Arrays.stream(polishing.pieceAt()).distinct()).hasSize(places);
            LargeNeighbourhoodSearch other = new LargeNeighbourhoodSearch(ring, 5);
            other.offer(polishing.pieceAt());
            assertThat(other.leftGMm()).isCloseTo(polishing.leftGMm(), within(1e-9));
            double kept = other.leftGMm();
            other.offer(ring.rule().alikest());
            other.run(kept, 30, Effort.unlimited());
            assertThat(other.leftGMm()).isLessThanOrEqualTo(kept);
        });
    }

    @Test
    void places_that_mirror_one_another_have_opposite_directions_across_and_the_same_along() {
        for (int n = 1; n <= 16; n++) {
            PlaceDirections compass = new PlaceDirections(n);
            for (int k = 0; k < n; k++) {
                assertThat(compass.cos[k]).isCloseTo(Math.cos(2 * Math.PI * k / n), within(1e-14));
                assertThat(compass.sin[k]).isCloseTo(Math.sin(2 * Math.PI * k / n), within(1e-14));
                assertThat(compass.sin[k] + compass.sin[(n - k) % n]).isZero();
            }
            for (int sum = 0; sum < n; sum++) {
                MirrorLine line = new MirrorLine(new PlaceDirections(2 * n), sum);
                int[] all = IntStream.concat(
                                Arrays.stream(line.onLine),
                                IntStream.concat(Arrays.stream(line.left), Arrays.stream(line.right)))
                        .toArray();
                assertThat(all).containsExactlyInAnyOrder(IntStream.range(0, n).toArray());
                for (int k = 0; k < n; k++) {
                    assertThat(line.along(compass.cos[k], compass.sin[k])).isCloseTo(line.along[k], within(1e-14));
                    assertThat(line.across(compass.cos[k], compass.sin[k])).isCloseTo(line.across[k], within(1e-14));
                }
                for (int i = 0; i < line.pairs(); i++) {
                    assertThat(line.across[line.left[i]]).isPositive();
                    assertThat(line.along[line.right[i]]).isCloseTo(line.along[line.left[i]], within(1e-14));
                    assertThat(i == 0 || line.along[line.left[i - 1]] > line.along[line.left[i]])
                            .isTrue();
                }
                assertThat(Arrays.stream(line.onLine).mapToDouble(k -> line.across[k]))
                        .allMatch(across -> Math.abs(across) < 1e-14);
            }
        }
    }

    private static WheelArrays ring(double[] moments, double x, double y) {
        int n = moments.length;
        return new WheelArrays(moments, moments, new PlaceDirections(n), new SetRule(moments, n, 1e9), x, y);
    }

    private static int[] join(int[] some, int[] others) {
        return IntStream.concat(Arrays.stream(some), Arrays.stream(others)).toArray();
    }

    private static void each(int[] order, int fixed, Consumer<int[]> use) {
        if (fixed == order.length) {
            use.accept(order);
            return;
        }
        for (int i = fixed; i < order.length; i++) {
            int[] next = order.clone();
            next[fixed] = order[i];
            next[i] = order[fixed];
            each(next, fixed + 1, use);
        }
    }
}
