package turnalike.match;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.frame.RimPoint;
import turnalike.frame.Wheel;
import turnalike.units.Length;
import turnalike.units.Mass;

/** Balance against roundness: the sets and orders of spokes for which neither can be had better without losing some of the other. */
public final class TradeOff {
    private TradeOff() {}

    /**
     * A wheel to be made both balanced and round.
     *
     * @param wheel its places and its hub; 3 places at least, else {@link IllegalArgumentException}
     * @param spokes all there are to choose from, one for each place or more
     * @param seatDepths how much deeper than meant each place's seat lies in the hub, in the order of the places; negative where it is
     *     shallow
     * @param given what the hub, the rim and its joint add by themselves
     * @param tolerancePct a set passes when (heaviest − lightest) / mean of its masses is at most this many hundredths
     * @param level how far from the axle a spoke may reach: where it would stand farther out its seat is bored deeper, down to here;
     *     empty when no seat is bored
     */
    public record Rim(
            Wheel wheel,
            List<Spoke> spokes,
            List<Length> seatDepths,
            List<Moment> given,
            double tolerancePct,
            Optional<Length> level) {
        public Rim {
            spokes = List.copyOf(spokes);
            seatDepths = List.copyOf(seatDepths);
            given = List.copyOf(given);
            if (wheel.places() < 3 || spokes.size() < wheel.places() || seatDepths.size() != wheel.places()) {
                throw new IllegalArgumentException(
                        "a rim needs 3 or more places and a spoke and a seat for each, were %d, %d, %d"
                                .formatted(wheel.places(), spokes.size(), seatDepths.size()));
            }
        }

        /**
         * Any set passes, and no seat is bored.
         *
         * @param wheel its places and its hub
         * @param spokes all there are to choose from
         * @param seatDepths how much deeper than meant each place's seat lies
         * @param given what the hub, the rim and its joint add by themselves
         */
        public Rim(Wheel wheel, List<Spoke> spokes, List<Length> seatDepths, List<Moment> given) {
            this(wheel, spokes, seatDepths, given, Double.MAX_VALUE, Optional.empty());
        }

        /**
         * {@return the same wheel with its seats bored deeper where a spoke would reach farther}
         *
         * @param to how far from the axle a spoke may reach
         */
        public Rim bored(Length to) {
            return new Rim(wheel, spokes, seatDepths, given, tolerancePct, Optional.of(to));
        }

        /**
         * {@return where the rim comes to be at a place when that spoke stands there: hub radius − seat depth + length, from the axle}
         *
         * @param place from 0, in the order of the wheel's directions
         * @param spoke by number from 0 in the list given
         */
        public Length radius(int place, int spoke) {
            return wheel.hubRadius()
                    .minus(seatDepths.get(place))
                    .plus(spokes.get(spoke).length());
        }

        /**
         * {@return how much deeper each seat must be cut for the rim to be a circle about the axle, in the order of the places: down to
         * the lowest place, so that nothing need be added anywhere} None is negative, and at the lowest place it is zero.
         *
         * @param order the spoke at each place, by number from 0 in the list given
         */
        public List<Length> deepenings(List<Integer> order) {
            Length lowest = lowest(order);
            List<Length> deepenings = new ArrayList<>();
            for (int place = 0; place < order.size(); place++) {
                deepenings.add(radius(place, order.get(place)).minus(lowest));
            }
            return deepenings;
        }

        /**
         * {@return how far from the axle the spoke reaches that reaches least far, no seat bored}
         *
         * @param order the spoke at each place, by number from 0 in the list given
         */
        public Length lowest(List<Integer> order) {
            Length lowest = radius(0, order.get(0));
            for (int place = 1; place < order.size(); place++) {
                Length radius = radius(place, order.get(place));
                lowest = radius.compareTo(lowest) < 0 ? radius : lowest;
            }
            return lowest;
        }

        /**
         * {@return how much deeper that place's seat is bored when that spoke stands there; none where it does not reach too far}
         *
         * @param place from 0, in the order of the wheel's directions
         * @param spoke by number from 0 in the list given
         */
        public Length deepening(int place, int spoke) {
            return level.map(to -> radius(place, spoke).minus(to))
                    .filter(Length::isPositive)
                    .orElse(Length.ZERO);
        }

        /**
         * {@return how far from the axle that spoke's balance point stands there, in the seat as it lies and as it is bored}
         *
         * @param place from 0, in the order of the wheel's directions
         * @param spoke by number from 0 in the list given
         */
        public Length reach(int place, int spoke) {
            return spokes.get(spoke)
                    .piece()
                    .reach()
                    .minus(seatDepths.get(place))
                    .minus(deepening(place, spoke));
        }

        /**
         * {@return that order with what it leaves over and how round it is, each seat bored as told}
         *
         * @param order the spoke at each place, by number from 0 in the list given
         */
        public Point point(int[] order) {
            List<Moment> pulls = new ArrayList<>(given);
            List<RimPoint> points = new ArrayList<>();
            List<Integer> listed = new ArrayList<>();
            List<Length> deepenings = new ArrayList<>();
            for (int place = 0; place < order.length; place++) {
                Mass mass = spokes.get(order[place]).piece().mass();
                Length deepening = deepening(place, order[place]);
                pulls.add(wheel.moment(place, mass, reach(place, order[place])));
                points.add(new RimPoint(
                        wheel.angle(place), radius(place, order[place]).minus(deepening)));
                deepenings.add(deepening);
                listed.add(order[place]);
            }
            return new Point(listed, Moment.sum(pulls), RimFit.of(points), deepenings);
        }
    }

    /**
     * One way to settle it.
     *
     * @param order the spoke at each place, by number from 0 in the list given
     * @param unbalance what is left over once the seats are bored as told
     * @param rim the best circle and the run-out left about its centre, likewise
     * @param deepenings how much deeper each seat is bored, in the order of the places
     */
    public record Point(List<Integer> order, Moment unbalance, RimFit rim, List<Length> deepenings) {
        public Point {
            order = List.copyOf(order);
            deepenings = List.copyOf(deepenings);
        }

        /**
         * No seat bored.
         *
         * @param order the spoke at each place, by number from 0 in the list given
         * @param unbalance what is left over
         * @param rim the best circle and the run-out left about its centre
         */
        public Point(List<Integer> order, Moment unbalance, RimFit rim) {
            this(order, unbalance, rim, Collections.nCopies(order.size(), Length.ZERO));
        }

        /** {@return how much is bored in all} */
        public Length bored() {
            return deepenings.stream().reduce(Length.ZERO, Length::plus);
        }

        int[] places() {
            return order.stream().mapToInt(Integer::intValue).toArray();
        }

        /** Whether it is at least as good as the other in both. */
        boolean covers(Point other) {
            return unbalance.gMm() <= other.unbalance.gMm()
                    && rim.runOut().mm() <= other.rim.runOut().mm();
        }
    }

    /**
     * Which of the ways that are balanced alike is best: the roundest; of those equally round the set whose pieces look most alike; of those
     * the one that goes by the order in which the pieces are listed.
     *
     * @param unlikeness of any two spokes, by number from 0 in the list given
     * @param scale the step of the scale: ways whose unbalance is below what it can feign are balanced alike
     * @param leastGMm the smallest unbalance known, in g·mm: ways no worse are balanced alike too
     */
    public record Ties(Unlikeness unlikeness, Mass scale, double leastGMm) {}

    /**
     * What weighing came to.
     *
     * @param curve the points none of which another is as good as in both, by unbalance from the smallest; at least one
     * @param best of those balanced alike; empty when none is so well balanced
     */
    public record Weighed(List<Point> curve, Optional<Point> best) {
        public Weighed {
            curve = List.copyOf(curve);
        }
    }

    /**
     * The curve, from best balanced to roundest, over all sets that pass. Up to 7 places without spares, and as long as there are no more
     * than some ten thousand sets and orders in all, each is looked at and the curve is exact; beyond, it is made of the best that a
     * search by swaps came by for many weightings of the two aims, in a fixed count of steps, and better ones may exist.
     *
     * @param rim the wheel with its spokes
     * @param effort what the search beyond may spend
     * @return the points none of which another is as good as in both, by unbalance from the smallest; at least one
     * @throws IllegalStateException when a rim is too far from round for a circle to be fitted, see {@link RimFit#of}
     */
    public static List<Point> curve(Rim rim, Effort effort) {
        return weigh(rim, new Ties((a, b) -> 0, Mass.ofGrams(0), 0), List.of(), effort)
                .curve();
    }

    /**
     * The curve and the best of the ways that are balanced alike.
     *
     * @param rim the wheel with its spokes
     * @param ties what is balanced alike, and which of these is best
     * @param known orders found elsewhere, each the spoke at each place by number from 0 in the list given
     * @param effort what the search may spend where not every order is looked at
     * @return both; see {@link #curve}
     * @throws IllegalStateException when a rim is too far from round for a circle to be fitted, see {@link RimFit#of}
     */
    public static Weighed weigh(Rim rim, Ties ties, List<List<Integer>> known, Effort effort) {
        Front front = new Front();
        TieBreak best = new TieBreak(rim, ties);
        Consumer<Point> found = point -> {
            front.offer(point);
            best.offer(point);
        };
        known.forEach(order -> found.accept(
                rim.point(order.stream().mapToInt(Integer::intValue).toArray())));
        new TradeOffSearch(rim, found).run(effort);
        front.points.sort(Comparator.comparingDouble(point -> point.unbalance().gMm()));
        return new Weighed(front.points, best.best());
    }

    /** The points none of which another covers. */
    static final class Front {
        final List<Point> points = new ArrayList<>();

        void offer(Point point) {
            for (Point there : points) {
                if (there.covers(point)) {
                    return;
                }
            }
            points.removeIf(point::covers);
            points.add(point);
        }
    }
}
