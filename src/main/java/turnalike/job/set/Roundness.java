package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.frame.RimPoint;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How round the rim comes out, and what roundness costs in balance.
 *
 * @param rim the set's spokes, numbered as the best balanced order has them
 * @param placed the order that was placed
 * @param curve balance against roundness, from best balanced to roundest; the placed order is on it unless strictness kept one that
 *     another equals in balance and beats in roundness
 * @param balanced the best balanced order's run-out
 * @param choseOrder whether roundness, not balance, chose the order placed
 */
public record Roundness(
        TradeOff.Rim rim, TradeOff.Point placed, List<TradeOff.Point> curve, Length balanced, boolean choseOrder) {
    /** Run-outs nearer than this are alike: no caliper knows better, and adding up lengths is surer. */
    private static final double ALIKE_MM = 1e-6;

    /** Unbalances nearer than this share of all moments added up are alike: it is what adding them may get wrong. */
    private static final double ALIKE_SHARE = 1e-12;

    public Roundness {
        curve = List.copyOf(curve);
    }

    /**
     * Weighs balance against roundness among the orders of the set that was placed. Unless strict, the roundest is chosen among the orders
     * that are as well balanced as the best; when that one is below what the scale can tell, so counts every order that is.
     *
     * @param best where each spoke of {@code rim} stands as numbered
     */
    static Roundness of(TradeOff.Rim rim, WheelPlacement best, boolean strict, Effort effort) {
        double alikeGMm = ALIKE_SHARE
                * rim.spokes().stream()
                        .mapToDouble(each -> each.piece().mass().grams()
                                * each.piece().reach().mm())
                        .sum();
        TradeOff.Point asPlaced = asPlaced(rim, best.unbalance());
        List<TradeOff.Point> all = new ArrayList<>();
        all.add(asPlaced);
        all.addAll(TradeOff.curve(rim, atLeastBriefly(effort, rim.wheel().places())));
        List<TradeOff.Point> curve = front(all, asPlaced, alikeGMm);
        TradeOff.Point chosen = asPlaced;
        if (curve.get(0).unbalance().gMm() < asPlaced.unbalance().gMm() - alikeGMm) {
            chosen = curve.get(0); // the placing stopped early, and this search came by a better balanced order
        }
        TradeOff.Point balanced = chosen;
        double sameGMm = Math.max(best.noiseFloorGMm(), balanced.unbalance().gMm() + alikeGMm);
        for (TradeOff.Point point : curve) {
            boolean same = point.unbalance().gMm() <= sameGMm;
            boolean rounder = runOutMm(point) < runOutMm(chosen) - ALIKE_MM;
            if (!strict && same && rounder) {
                chosen = point;
            }
        }
        boolean costs = chosen.unbalance().gMm() > balanced.unbalance().gMm() + alikeGMm;
        return new Roundness(rim, chosen, curve, balanced.rim().runOut(), costs);
    }

    /**
     * The placing leaves a share of the effort, but that may be little; a curve is drawn all the same, with about a tenth of a second's work.
     * Measured: each ask of the search costs about n^2.5 steps, and its opening up to a hundred asks that cost little.
     */
    private static Effort atLeastBriefly(Effort effort, int places) {
        double affordable = 3e6 / Math.pow(places, 2.5);
        Effort few = Effort.ofAsks((long) (Math.min(760, affordable) + Math.min(100, 2 * affordable)));
        return () -> few.spent() && effort.spent();
    }

    private static TradeOff.Point asPlaced(TradeOff.Rim rim, Moment unbalance) {
        int places = rim.wheel().places();
        List<RimPoint> points = IntStream.range(0, places)
                .mapToObj(place -> new RimPoint(rim.wheel().angle(place), rim.radius(place, place)))
                .toList();
        return new TradeOff.Point(IntStream.range(0, places).boxed().toList(), unbalance, RimFit.of(points));
    }

    /** The points none of which another covers, up to rounding; the placed order stands for its like, such as itself turned round the hub. */
    private static List<TradeOff.Point> front(List<TradeOff.Point> points, TradeOff.Point asPlaced, double alikeGMm) {
        points.sort(Comparator.comparingDouble(point -> point.unbalance().gMm()));
        List<TradeOff.Point> front = new ArrayList<>();
        for (TradeOff.Point point : points) {
            TradeOff.Point last = front.isEmpty() ? point : front.get(front.size() - 1);
            if (!front.isEmpty() && runOutMm(point) >= runOutMm(last) - ALIKE_MM) {
                continue;
            }
            if (!front.isEmpty() && alike(point, last, alikeGMm)) {
                front.remove(front.size() - 1);
            }
            front.add(point);
        }
        front.replaceAll(
                point -> alike(point, asPlaced, alikeGMm) && Math.abs(runOutMm(point) - runOutMm(asPlaced)) <= ALIKE_MM
                        ? asPlaced
                        : point);
        return front;
    }

    private static boolean alike(TradeOff.Point one, TradeOff.Point other, double alikeGMm) {
        return Math.abs(one.unbalance().gMm() - other.unbalance().gMm()) <= alikeGMm;
    }

    private static double runOutMm(TradeOff.Point point) {
        return point.rim().runOut().mm();
    }

    /**
     * {@return the pieces' labels in the order of the places}
     *
     * @param point one of the orders of this set, such as one of the curve
     */
    public List<String> labels(TradeOff.Point point) {
        return point.order().stream()
                .map(spoke -> rim.spokes().get(spoke).piece().label())
                .toList();
    }

    /** {@return how much deeper each seat must be cut for the rim to be a circle about the axle, in the order of the places} */
    public List<Length> deepenings() {
        return rim.deepenings(placed.order());
    }

    String note() {
        return String.format(
                Locale.ROOT,
                "the scale cannot tell these orders apart in balance, so the roundest was placed, with a run-out of"
                        + " %s instead of %s; a search below the scale's noise too places the best balanced",
                placed.rim().runOut().formatFinestBoth(UnitSystem.METRIC),
                balanced.formatFinestBoth(UnitSystem.METRIC));
    }

    List<Working> workings() {
        boolean every = rim.wheel().places() <= 7; // as TradeOff.curve promises
        return List.of(
                new Working(
                        "run-out",
                        "largest less smallest distance from the centre of the least-squares circle through the spokes' rim ends;"
                                + " each at hub radius − seat depth + measured length − tenons",
                        "the circle: W. Gander, G. H. Golub and R. Strebel, BIT 34 (1994) 558–578; roundness after ISO 12181-1"
                                + " (from memory)",
                        "as sure as the lengths measured; tenons count as long as the pattern has them, and the far end is"
                                + " the rim tenon's shoulder where there is one"),
                new Working(
                        "balance against roundness",
                        "the orders of this set of which none is beaten in both unbalance and run-out",
                        Working.DERIVED,
                        every ? "every order was looked at" : "the best found; better orders may exist"));
    }
}
