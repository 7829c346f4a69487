package turnalike.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.frame.RimPoint;
import turnalike.frame.Wheel;
import turnalike.units.Length;

/** Balance against roundness: the orders of one set of spokes for which neither can be had better without losing some of the other. */
public final class TradeOff {
    private TradeOff() {}

    /**
     * A wheel to be made both balanced and round.
     *
     * @param wheel its places and its hub; 3 places at least, else {@link IllegalArgumentException}
     * @param spokes the chosen set, one for each place
     * @param seatDepths how much deeper than meant each place's seat lies in the hub, in the order of the places; negative where it is
     *     shallow
     * @param given what the hub, the rim and its joint add by themselves
     */
    public record Rim(Wheel wheel, List<Spoke> spokes, List<Length> seatDepths, List<Moment> given) {
        public Rim {
            spokes = List.copyOf(spokes);
            seatDepths = List.copyOf(seatDepths);
            given = List.copyOf(given);
            if (wheel.places() < 3 || spokes.size() != wheel.places() || seatDepths.size() != wheel.places()) {
                throw new IllegalArgumentException(
                        "a rim needs 3 or more places and a spoke and a seat for each, were %d, %d, %d"
                                .formatted(wheel.places(), spokes.size(), seatDepths.size()));
            }
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
            Length lowest = radius(0, order.get(0));
            for (int place = 1; place < order.size(); place++) {
                Length radius = radius(place, order.get(place));
                lowest = radius.compareTo(lowest) < 0 ? radius : lowest;
            }
            List<Length> deepenings = new ArrayList<>();
            for (int place = 0; place < order.size(); place++) {
                deepenings.add(radius(place, order.get(place)).minus(lowest));
            }
            return deepenings;
        }

        Point point(int[] order) {
            List<Moment> pulls = new ArrayList<>(given);
            List<RimPoint> points = new ArrayList<>();
            List<Integer> listed = new ArrayList<>();
            for (int place = 0; place < order.length; place++) {
                Candidate piece = spokes.get(order[place]).piece();
                pulls.add(wheel.moment(place, piece.mass(), piece.reach()));
                points.add(new RimPoint(wheel.angle(place), radius(place, order[place])));
                listed.add(order[place]);
            }
            return new Point(listed, Moment.sum(pulls), RimFit.of(points));
        }
    }

    /**
     * One way to settle it.
     *
     * @param order the spoke at each place, by number from 0 in the list given
     * @param unbalance what is left over
     * @param rim the best circle and the run-out left about its centre
     */
    public record Point(List<Integer> order, Moment unbalance, RimFit rim) {
        public Point {
            order = List.copyOf(order);
        }

        /** Whether it is at least as good as the other in both. */
        boolean covers(Point other) {
            return unbalance.gMm() <= other.unbalance.gMm()
                    && rim.runOut().mm() <= other.rim.runOut().mm();
        }
    }

    /**
     * The curve, from best balanced to roundest. Up to 7 places every order is looked at and the curve is exact; beyond, it is made of
     * the best orders that a search by swaps came by for many weightings of the two aims, and better ones may exist.
     *
     * @param rim the wheel with its spokes
     * @param effort what the search beyond 7 places may spend
     * @return the points none of which another is as good as in both, by unbalance from the smallest; at least one
     * @throws IllegalStateException when a rim is too far from round for a circle to be fitted, see {@link RimFit#of}
     */
    public static List<Point> curve(Rim rim, Effort effort) {
        Front front = new Front();
        new TradeOffSearch(rim, front).run(effort);
        front.points.sort(Comparator.comparingDouble(point -> point.unbalance().gMm()));
        return List.copyOf(front.points);
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
