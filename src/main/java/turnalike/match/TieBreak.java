package turnalike.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.frame.Wheel;
import turnalike.units.Length;

/**
 * Keeps the best of the ways offered that are balanced alike: the roundest; of those equally round the set most alike; of those the one that
 * comes first by the pieces' order. What is kept does not depend on the order in which they were offered.
 */
final class TieBreak {
    /** Run-outs are told apart no finer than this: no caliper knows better, and adding up lengths is surer. */
    private static final double RUN_OUT_STEP_MM = 1e-6;

    /** Differences are told apart no finer than this share, which adding them up may get wrong. */
    private static final double ALIKE_SHARE = 1e-9;

    private final TradeOff.Rim rim;
    private final TradeOff.Ties ties;
    private Optional<TradeOff.Point> best = Optional.empty();

    TieBreak(TradeOff.Rim rim, TradeOff.Ties ties) {
        this.rim = rim;
        this.ties = ties;
    }

    Optional<TradeOff.Point> best() {
        return best;
    }

    void offer(TradeOff.Point point) {
        if (point.unbalance().gMm() <= limitGMm(point)
                && best.map(there -> isBetter(point, there)).orElse(true)) {
            best = Optional.of(point);
        }
    }

    /** What counts as balanced alike for the pieces of that way. */
    private double limitGMm(TradeOff.Point point) {
        List<Length> reaches = new ArrayList<>();
        for (int place = 0; place < point.order().size(); place++) {
            reaches.add(rim.reach(place, point.order().get(place)));
        }
        return Math.max(Wheel.noiseFloorGMm(ties.scale(), reaches), ties.leastGMm());
    }

    /** Whether {@code point} comes before {@code other}, both balanced alike. */
    boolean isBetter(TradeOff.Point point, TradeOff.Point other) {
        double step = steps(point) - steps(other);
        if (step != 0) {
            return step < 0;
        }
        double unlikeness = unlikeness(point);
        double others = unlikeness(other);
        if (Math.abs(unlikeness - others) > ALIKE_SHARE * (unlikeness + others)) {
            return unlikeness < others;
        }
        for (int place = 0; place < point.order().size(); place++) {
            int before = point.order().get(place).compareTo(other.order().get(place));
            if (before != 0) {
                return before < 0;
            }
        }
        return false;
    }

    private static double steps(TradeOff.Point point) {
        return Math.rint(point.rim().runOut().mm() / RUN_OUT_STEP_MM);
    }

    private double unlikeness(TradeOff.Point point) {
        int[] set = point.places();
        double sum = 0;
        for (int i = 0; i < set.length; i++) {
            for (int j = 0; j < i; j++) {
                sum += ties.unlikeness().between(set[i], set[j]); // asked for seldom, so no table
            }
        }
        return sum;
    }
}
