package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.Wheel;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;

class TradeOffTest {
    @Test
    void no_order_beats_a_point_of_the_curve_on_a_small_wheel() {
        TradeOff.Rim rim = random(new Random(4), 6);
        List<TradeOff.Point> curve = TradeOff.curve(rim, Effort.unlimited());
        assertThat(curve).isNotEmpty();
        List<int[]> orders = new ArrayList<>();
        orders(new int[6], 0, orders);
        for (int[] order : orders) {
            TradeOff.Point any = rim.point(order);
            assertThat(curve).anyMatch(point -> point.covers(any));
        }
    }

    @Test
    void balance_is_lost_as_roundness_is_won_along_the_curve() {
        TradeOff.Rim rim = random(new Random(5), 16);
        List<TradeOff.Point> curve = TradeOff.curve(rim, Effort.ofAsks(400));
        assertThat(curve.size()).isGreaterThan(3);
        for (int i = 1; i < curve.size(); i++) {
            assertThat(curve.get(i).unbalance().gMm())
                    .isGreaterThan(curve.get(i - 1).unbalance().gMm());
            assertThat(curve.get(i).rim().runOut().mm())
                    .isLessThan(curve.get(i - 1).rim().runOut().mm());
        }
        for (TradeOff.Point point : curve) {
            int[] order = point.order().stream().mapToInt(i -> i).toArray();
            assertThat(rim.point(order)).isEqualTo(point);
            assertThat(order).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15);
        }
        assertThat(curve.get(0).unbalance().gMm()).isLessThan(1);
    }

    @Test
    void the_curve_is_far_from_what_random_orders_reach() {
        TradeOff.Rim rim = random(new Random(6), 24);
        List<TradeOff.Point> curve = TradeOff.curve(rim, Effort.ofAsks(400));
        Random random = new Random(7);
        SplitMix64 dice = new SplitMix64(random.nextLong());
        int[] order = new int[24];
        for (int i = 0; i < 24; i++) {
            order[i] = i;
        }
        for (int i = 0; i < 3000; i++) {
            dice.bringForward(order, 24);
            TradeOff.Point any = rim.point(order);
            assertThat(curve).anyMatch(point -> point.covers(any));
        }
    }

    /** A kitchen scale shows fives: all that can be placed weigh the same, and only their lengths differ. */
    @Timeout(60)
    @Test
    void pieces_that_weigh_the_same_end_and_are_placed_for_roundness() {
        for (int places : new int[] {8, 14, 60}) {
            TradeOff.Rim rim = weighing(places, place -> 140, place -> 559 + (place * 7 % 5) * 0.25);
            List<TradeOff.Point> curve = TradeOff.curve(rim, Effort.ofAsks(400));
            assertThat(curve.get(curve.size() - 1).unbalance().gMm())
                    .as("%d places", places)
                    .isLessThan(1e-6);
            assertThat(curve.get(curve.size() - 1).rim().runOut().mm()).isLessThanOrEqualTo(1.0 + 1e-9);
        }
    }

    @Timeout(60)
    @Test
    void a_curve_of_anything_ends() {
        for (int places : new int[] {3, 8, 14}) {
            for (double mass : new double[] {1e-6, 140, 1e7}) {
                assertThat(TradeOff.curve(weighing(places, place -> mass, place -> 559), Effort.ofAsks(400)))
                        .as("all alike")
                        .isNotEmpty();
                assertThat(TradeOff.curve(
                                weighing(places, p -> p % 2 == 0 ? mass : 2 * mass, p -> 559), Effort.ofAsks(400)))
                        .as("two masses")
                        .isNotEmpty();
                assertThat(TradeOff.curve(weighing(places, p -> mass, p -> 559 + p % 2), Effort.ofAsks(0)))
                        .as("two lengths, no effort")
                        .isNotEmpty();
            }
        }
    }

    private static TradeOff.Rim weighing(int places, IntToDoubleFunction grams, IntToDoubleFunction lengthMm) {
        List<Spoke> spokes = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            Mass mass = Mass.ofGrams(grams.applyAsDouble(i));
            Candidate piece = new Candidate("p" + i, mass, Length.ofMm(320));
            spokes.add(new Spoke(piece, Length.ofMm(lengthMm.applyAsDouble(i))));
        }
        return new TradeOff.Rim(
                new Wheel(places, Length.ofMm(57)), spokes, Collections.nCopies(places, Length.ZERO), List.of());
    }

    @Test
    void deepening_the_seats_as_told_makes_the_rim_round() {
        TradeOff.Rim rim = random(new Random(8), 5);
        List<Integer> order = List.of(3, 1, 4, 0, 2);
        List<Length> deepenings = rim.deepenings(order);
        List<Length> depths = new ArrayList<>();
        for (int place = 0; place < 5; place++) {
            assertThat(deepenings.get(place).mm()).isGreaterThanOrEqualTo(0);
            depths.add(rim.seatDepths().get(place).plus(deepenings.get(place)));
        }
        TradeOff.Rim cut = new TradeOff.Rim(rim.wheel(), rim.spokes(), depths, rim.given());
        TradeOff.Point point = cut.point(new int[] {3, 1, 4, 0, 2});
        assertThat(point.rim().runOut().mm()).isCloseTo(0, within(1e-9));
        assertThat(point.rim().offset().mm()).isCloseTo(0, within(1e-9));
    }

    private static void orders(int[] order, int filled, List<int[]> into) {
        if (filled == order.length) {
            into.add(order.clone());
            return;
        }
        for (int piece = 0; piece < order.length; piece++) {
            boolean used = false;
            for (int k = 0; k < filled; k++) {
                used |= order[k] == piece;
            }
            if (!used) {
                order[filled] = piece;
                orders(order, filled + 1, into);
            }
        }
    }

    private static TradeOff.Rim random(Random random, int places) {
        List<Spoke> spokes = new ArrayList<>();
        List<Length> depths = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            Candidate piece = new Candidate(
                    "p" + i, Mass.ofGrams(100 + random.nextGaussian()), Length.ofMm(290 + random.nextGaussian()));
            spokes.add(new Spoke(piece, Length.ofMm(400 + 0.3 * random.nextGaussian())));
            depths.add(Length.ofMm(0.2 * random.nextGaussian()));
        }
        List<Moment> given = List.of(new Moment(80, Angle.ofDegrees(40)));
        return new TradeOff.Rim(new Wheel(places, Length.ofMm(60)), spokes, depths, given);
    }
}
