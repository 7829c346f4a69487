package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.effort.Effort;
import turnalike.match.TradeOff;
import turnalike.match.Unlikeness;
import turnalike.match.WheelPlacement;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How round the rim comes out, and what roundness costs in balance and in boring.
 *
 * @param rim all spokes that were measured, in the order listed
 * @param placed what was placed, its figures those after its seats are bored as it tells
 * @param curve balance against roundness without boring, from best balanced to roundest; what was placed is on it unless its seats are
 *     bored, or strictness kept an order that another equals in balance and beats in roundness
 * @param bored ways of boring seats deeper, least bored first, each with the order that goes with it
 * @param balanced the best balanced order's run-out
 * @param choseOrder whether roundness, not balance, chose the order placed
 * @param seat how far a seat's depth may be off from what is told of it, either way
 * @param units in which lengths are told
 */
public record Roundness(
        TradeOff.Rim rim,
        TradeOff.Point placed,
        List<TradeOff.Point> curve,
        List<TradeOff.Point> bored,
        Length balanced,
        boolean choseOrder,
        Length seat,
        UnitSystem units) {
    /** Run-outs nearer than this are alike: no caliper knows better, and adding up lengths is surer. */
    private static final double ALIKE_MM = 1e-6;

    /** Unbalances nearer than this share of all moments added up are alike: it is what adding them may get wrong. */
    private static final double ALIKE_SHARE = 1e-12;

    /** Nobody bores for less, nor can: a sheet of paper under the bit's stop (common practice, no source). */
    private static final double WORTH_BORING_MM = 0.1;

    public Roundness {
        curve = List.copyOf(curve);
        bored = List.copyOf(bored);
    }

    /**
     * Weighs balance against roundness and boring among all sets that pass. Unless strict, the roundest is chosen among the ways that are as
     * well balanced as the best; when that one is below what the scale can tell, so counts every way that is. Seats are bored only where the
     * frame tells what run-out will do and the rim has more, the least that does it with as good a balance; strictness bores none.
     *
     * @param best the best balanced order
     * @param unlikeness of any two spokes, numbered as {@code rim} has them
     * @param will what run-out will do, if told
     */
    static Roundness of(
            TradeOff.Rim rim,
            WheelPlacement best,
            Unlikeness unlikeness,
            SetTerms terms,
            Optional<Length> will,
            boolean strict) {
        double alikeGMm = alikeGMm(best);
        TradeOff.Point asPlaced = asPlaced(rim, best);
        double leastGMm = best.unbalance().gMm() + alikeGMm;
        TradeOff.Ties ties = new TradeOff.Ties(unlikeness, terms.scale(), leastGMm);
        TradeOff.Weighed weighed = TradeOff.weigh(rim, ties, List.of(asPlaced.order()), Effort.unlimited());
        List<TradeOff.Point> all = new ArrayList<>(List.of(asPlaced));
        all.addAll(weighed.curve());
        List<TradeOff.Point> curve = front(all, asPlaced, alikeGMm);
        TradeOff.Point balanced = asPlaced;
        if (curve.get(0).unbalance().gMm() < asPlaced.unbalance().gMm() - alikeGMm) {
            balanced = curve.get(0); // the placing stopped early, and this search came by a better balanced order
        }
        double sameGMm = Math.max(best.noiseFloorGMm(), balanced.unbalance().gMm() + alikeGMm);
        TradeOff.Point chosen = strict ? balanced : roundest(curve, weighed, balanced, sameGMm);
        List<TradeOff.Point> bored =
                bored(rim, chosen, ties, will.orElse(terms.tolerances().mark()), worthMm(terms, will));
        TradeOff.Point placed = will.filter(wished -> !strict)
                .flatMap(wished -> least(bored, chosen, wished, sameGMm))
                .orElse(chosen);
        boolean costs = placed.unbalance().gMm() > balanced.unbalance().gMm() + alikeGMm;
        boolean boring = placed.bored().isPositive();
        if (!boring && !strict) { // of the ways equally round, the one that the tie chose stands for all
            curve.replaceAll(point -> Math.abs(runOutMm(point) - runOutMm(placed)) <= ALIKE_MM ? placed : point);
        }
        return new Roundness(
                rim, placed, curve, bored, balanced.rim().runOut(), costs || boring, terms.seat(), terms.units());
    }

    private static TradeOff.Point roundest(
            List<TradeOff.Point> curve, TradeOff.Weighed weighed, TradeOff.Point balanced, double sameGMm) {
        TradeOff.Point best = weighed.best().orElse(balanced);
        if (best.unbalance().gMm() > sameGMm) {
            return balanced; // the tie was about what the placing had found, and that was not the best
        }
        // The curve has it as it was placed, figures rounded likewise.
        return curve.stream()
                .filter(point -> point.order().equals(best.order()))
                .findFirst()
                .orElse(best);
    }

    /** Seats bored until no spoke stands out by more than {@code band}, and seats bored until the rim is a circle about the axle. */
    private static List<TradeOff.Point> bored(
            TradeOff.Rim rim, TradeOff.Point chosen, TradeOff.Ties ties, Length band, double worthMm) {
        List<TradeOff.Point> out = new ArrayList<>();
        Length lowest = rim.lowest(chosen.order());
        for (Length level : List.of(lowest.plus(band), lowest)) {
            TradeOff.Weighed weighed =
                    TradeOff.weigh(rim.bored(level), ties, List.of(chosen.order()), Effort.unlimited());
            TradeOff.Point way = weighed.best().orElse(weighed.curve().get(0));
            if (aboutAxleMm(way) < aboutAxleMm(chosen) - worthMm) {
                out.add(way);
            }
        }
        return out;
    }

    /** What boring must bring to be told of: who asks for it gets all that can be bored, else no less than seats may be off by anyhow. */
    private static double worthMm(SetTerms terms, Optional<Length> will) {
        return will.isPresent()
                ? WORTH_BORING_MM
                : Math.max(WORTH_BORING_MM, terms.seat().mm());
    }

    /**
     * Of the order that a person's hand had a part in and no other: every piece stays where it is, and nothing is weighed against it. Its seats
     * are bored as those of any other set are, only where the frame tells what run-out will do, and only as far as balance allows.
     */
    static Roundness ofOrder(
            TradeOff.Rim rim, WheelPlacement placed, SetTerms terms, Optional<Length> will, boolean strict) {
        TradeOff.Point point = asPlaced(rim, placed);
        Length lowest = rim.lowest(point.order());
        Length band = will.orElse(terms.tolerances().mark());
        int[] order = point.order().stream().mapToInt(Integer::intValue).toArray();
        List<TradeOff.Point> bored = Stream.of(lowest.plus(band), lowest)
                .map(level -> rim.bored(level).point(order))
                .filter(way -> aboutAxleMm(way) < aboutAxleMm(point) - worthMm(terms, will))
                .toList();
        double sameGMm = Math.max(placed.noiseFloorGMm(), point.unbalance().gMm() + alikeGMm(placed));
        TradeOff.Point settled = strict
                ? point
                : will.flatMap(wished -> least(bored, point, wished, sameGMm)).orElse(point);
        return new Roundness(
                rim,
                settled,
                List.of(point),
                bored,
                point.rim().runOut(),
                settled.bored().isPositive(),
                terms.seat(),
                terms.units());
    }

    /** The least bored way that does what is wished at as good a balance; empty where none does, or the rim does already. */
    private static Optional<TradeOff.Point> least(
            List<TradeOff.Point> bored, TradeOff.Point chosen, Length wished, double sameGMm) {
        return runOutMm(chosen) <= wished.mm()
                ? Optional.empty()
                : bored.stream()
                        .filter(way -> way.unbalance().gMm() <= sameGMm)
                        .filter(way -> runOutMm(way) <= wished.mm() + ALIKE_MM)
                        .findFirst();
    }

    private static double alikeGMm(WheelPlacement placed) {
        return ALIKE_SHARE
                * placed.seats().stream()
                        .mapToDouble(seat ->
                                seat.piece().mass().grams() * seat.reach().mm())
                        .sum();
    }

    private static TradeOff.Point asPlaced(TradeOff.Rim rim, WheelPlacement best) {
        List<String> labels =
                rim.spokes().stream().map(spoke -> spoke.piece().label()).toList();
        int[] order = best.seats().stream()
                .mapToInt(seat -> labels.indexOf(seat.piece().label()))
                .toArray();
        TradeOff.Point point = rim.point(order);
        return new TradeOff.Point(point.order(), best.unbalance(), point.rim());
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

    private static double aboutAxleMm(TradeOff.Point point) {
        return runOutMm(point) + 2 * point.rim().offset().mm();
    }

    /**
     * {@return what a gauge held to the rim reads at most while the wheel turns on its axle, seats as deep as told: the run-out and, twice,
     * how far the rim's centre is off the axle} {@link #seat} either way may add twice itself.
     *
     * @param way one of the ways of boring, of the curve, or what was placed
     */
    public Length aboutAxle(TradeOff.Point way) {
        return Length.ofMm(aboutAxleMm(way));
    }

    private static double runOutMm(TradeOff.Point point) {
        return point.rim().runOut().mm();
    }

    /**
     * {@return the pieces' labels in the order of the places}
     *
     * @param point one of the orders, such as one of the curve
     */
    public List<String> labels(TradeOff.Point point) {
        return point.order().stream()
                .map(spoke -> rim.spokes().get(spoke).piece().label())
                .toList();
    }

    /** {@return how much deeper each seat is bored for what was placed, in the order of the places; every figure counts it as done} */
    public List<Length> deepenings() {
        return placed.deepenings();
    }

    /** {@return whether any seat is bored deeper for what was placed} */
    public boolean isBored() {
        return placed.bored().isPositive();
    }

    /**
     * {@return which seats are bored and by how much more than they are, {@code 4 by 0.94 mm, 6 by 0.42 mm}; empty where none is worth a bit} Those
     * that would be bored by less than can be set are counted, and told by how much the farthest of their spokes then stands out.
     *
     * @param way one of the ways of boring, or what was placed
     */
    public String seats(TradeOff.Point way) {
        List<String> seats = new ArrayList<>();
        int left = 0;
        double mostLeftMm = 0;
        for (int place = 0; place < way.deepenings().size(); place++) {
            Length by = way.deepenings().get(place);
            if (by.mm() >= WORTH_BORING_MM) {
                seats.add("%d by %s".formatted(place + 1, by.formatFine(units)));
            } else if (by.mm() > ALIKE_MM) {
                left++;
                mostLeftMm = Math.max(mostLeftMm, by.mm());
            }
        }
        String listed = String.join(", ", seats);
        return left == 0 || seats.isEmpty()
                ? listed
                : "%s; %d by less than %s left out, which adds %s at most to what a gauge at the rim reads"
                        .formatted(
                                listed,
                                left,
                                Length.ofMm(WORTH_BORING_MM).formatFine(units),
                                Length.ofMm(mostLeftMm).formatFineUp(units));
    }

    /**
     * {@return how many seats that are}
     *
     * @param way one of the ways of boring
     */
    public int deepened(TradeOff.Point way) {
        return (int) way.deepenings().stream()
                .filter(by -> by.mm() >= WORTH_BORING_MM)
                .count();
    }

    String note() {
        if (isBored()) {
            return String.format(
                    Locale.ROOT,
                    "the rim would run out by more than you want, so these seats are to be bored deeper: %s; boring brings it to %s;"
                            + " all that is told of the set holds once that is done",
                    seats(placed),
                    placed.rim().runOut().formatFinestBoth(units));
        }
        return String.format(
                Locale.ROOT,
                "the scale cannot tell these sets and orders apart in balance, so the roundest was placed, with a run-out of"
                        + " %s instead of %s; a search below the scale's noise too places the best balanced",
                placed.rim().runOut().formatFinestBoth(units),
                balanced.formatFinestBoth(units));
    }

    /** What to say where the rim runs out by more than will do, and no boring was advised since it would cost balance. */
    Optional<String> unmet(Optional<Length> will) {
        return will.filter(wished -> runOutMm(placed) > wished.mm() + ALIKE_MM)
                .map(wished -> String.format(
                        Locale.ROOT,
                        "the rim runs out by more than the %s you want: no way of boring was found with as good a balance, so none is"
                                + " advised; what boring would cost is told beside it",
                        wished.formatFineBoth(units)));
    }

    List<Working> workings() {
        boolean every =
                rim.wheel().places() <= 7 && rim.spokes().size() == rim.wheel().places(); // as TradeOff promises
        return List.of(
                new Working(
                        "run-out",
                        "largest less smallest distance from the centre of the least-squares circle through the spokes' rim ends;"
                                + " each at hub radius − seat depth, bored as told, + measured length − tenons",
                        "the circle: W. Gander, G. H. Golub and R. Strebel, BIT 34 (1994) 558–578; roundness after ISO 12181-1"
                                + " (from memory)",
                        "as sure as the lengths measured; tenons count as long as the pattern has them, and the far end is"
                                + " the rim tenon's shoulder where there is one"),
                new Working(
                        "balance against roundness",
                        "the sets and orders of which none is beaten in both unbalance and run-out, no seat bored",
                        Working.DERIVED,
                        every ? "every order was looked at" : "the best found; better orders may exist"));
    }
}
