package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.effort.Effort;
import turnalike.match.TradeOff;
import turnalike.match.Unlikeness;
import turnalike.match.WheelPlacement;
import turnalike.units.Length;

/** How a wheel's balance is weighed against its roundness, and against boring its seats deeper. */
final class WeighedRoundness {
    /** Unbalances nearer than this share of all moments added up are alike: it is what adding them may get wrong. */
    private static final double ALIKE_SHARE = 1e-12;

    private WeighedRoundness() {}

    /**
     * Weighs balance against roundness and boring among all sets that pass. Unless strict, the roundest is chosen among the ways that are as
     * well balanced as the best; when that one is below what the scale can tell, so counts every way that is. Seats are bored only where the
     * frame tells what run-out will do and the rim has more, the least that does it with as good a balance; strictness bores none.
     *
     * @param best the best balanced order
     * @param unlikeness of any two spokes, numbered as {@code rim} has them
     * @param frame which tells what run-out will do, if any
     */
    static Roundness of(
            TradeOff.Rim rim,
            WheelPlacement best,
            Unlikeness unlikeness,
            SetTerms terms,
            OnWheel frame,
            boolean strict) {
        Optional<Length> will = frame.runOut();
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
            curve.replaceAll(
                    point -> Math.abs(Roundness.runOutMm(point) - Roundness.runOutMm(placed)) <= Roundness.ALIKE_MM
                            ? placed
                            : point);
        }
        return new Roundness(
                rim,
                placed,
                curve,
                bored,
                balanced.rim().runOut(),
                costs || boring,
                terms.seat(),
                frame.endsInTips(terms.pattern()),
                terms.units());
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
            if (Roundness.aboutAxleMm(way) < Roundness.aboutAxleMm(chosen) - worthMm) {
                out.add(way);
            }
        }
        return out;
    }

    /** What boring must bring to be told of: who asks for it gets all that can be bored, else no less than seats may be off by anyhow. */
    private static double worthMm(SetTerms terms, Optional<Length> will) {
        return will.isPresent()
                ? Roundness.WORTH_BORING_MM
                : Math.max(Roundness.WORTH_BORING_MM, terms.seat().mm());
    }

    /**
     * Of the order that a person's hand had a part in and no other: every piece stays where it is, and nothing is weighed against it. Its seats
     * are bored as those of any other set are, only where the frame tells what run-out will do, and only as far as balance allows.
     */
    static Roundness ofOrder(TradeOff.Rim rim, WheelPlacement placed, SetTerms terms, OnWheel frame, boolean strict) {
        Optional<Length> will = frame.runOut();
        TradeOff.Point point = asPlaced(rim, placed);
        Length lowest = rim.lowest(point.order());
        Length band = will.orElse(terms.tolerances().mark());
        int[] order = point.order().stream().mapToInt(Integer::intValue).toArray();
        List<TradeOff.Point> bored = Stream.of(lowest.plus(band), lowest)
                .map(level -> rim.bored(level).point(order))
                .filter(way -> Roundness.aboutAxleMm(way) < Roundness.aboutAxleMm(point) - worthMm(terms, will))
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
                frame.endsInTips(terms.pattern()),
                terms.units());
    }

    /** The least bored way that does what is wished at as good a balance; empty where none does, or the rim does already. */
    private static Optional<TradeOff.Point> least(
            List<TradeOff.Point> bored, TradeOff.Point chosen, Length wished, double sameGMm) {
        return Roundness.runOutMm(chosen) <= wished.mm()
                ? Optional.empty()
                : bored.stream()
                        .filter(way -> way.unbalance().gMm() <= sameGMm)
                        .filter(way -> Roundness.runOutMm(way) <= wished.mm() + Roundness.ALIKE_MM)
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
            if (!front.isEmpty() && Roundness.runOutMm(point) >= Roundness.runOutMm(last) - Roundness.ALIKE_MM) {
                continue;
            }
            if (!front.isEmpty() && alike(point, last, alikeGMm)) {
                front.remove(front.size() - 1);
            }
            front.add(point);
        }
        front.replaceAll(point -> alike(point, asPlaced, alikeGMm)
                        && Math.abs(Roundness.runOutMm(point) - Roundness.runOutMm(asPlaced)) <= Roundness.ALIKE_MM
                ? asPlaced
                : point);
        return front;
    }

    private static boolean alike(TradeOff.Point one, TradeOff.Point other, double alikeGMm) {
        return Math.abs(one.unbalance().gMm() - other.unbalance().gMm()) <= alikeGMm;
    }
}
