package turnalike.pieces.control;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Asks each rule at each point. */
final class Signals {
    private final List<ChartPoint> points;
    private final List<Double> ranges;

    Signals(List<ChartPoint> points, List<Double> ranges) {
        this.points = points;
        this.ranges = ranges;
    }

    List<Signal> find(double centre, double sigma, double rangeUpper, Set<RunRule> rules) {
        Runs runs = new Runs(points.stream().mapToDouble(ChartPoint::value).toArray(), centre, sigma);
        List<Signal> signals = new ArrayList<>();
        Set<RunRule> ordered = EnumSet.noneOf(RunRule.class);
        ordered.addAll(rules);
        for (int at = 0; at < points.size(); at++) {
            for (RunRule rule : ordered) {
                boolean jump = rule == RunRule.RANGE_BEYOND && at > 0 && ranges.get(at - 1) > rangeUpper;
                if (jump || runs.completes(rule, at)) {
                    signals.add(signal(rule, at, centre));
                }
            }
        }
        return signals;
    }

    private Signal signal(RunRule rule, int at, double centre) {
        ChartPoint point = points.get(at);
        String where = rule.points() == 1
                ? "piece " + point.piece()
                : "pieces %s to %s"
                        .formatted(
                                points.get(Math.max(at - rule.points() + 1, 0)).piece(), point.piece());
        String side = point.value() > centre ? "above" : "below";
        String words =
                switch (rule) {
                    case BEYOND_THREE,
                            TWO_OF_THREE_BEYOND_TWO,
                            FOUR_OF_FIVE_BEYOND_ONE,
                            EIGHT_ON_ONE_SIDE,
                            NINE_ON_ONE_SIDE -> "%s: %s, %s the centre".formatted(where, rule.words(), side);
                    case SIX_STEADY,
                            FOURTEEN_ALTERNATING,
                            FIFTEEN_WITHIN_ONE,
                            EIGHT_BEYOND_ONE,
                            RANGE_BEYOND,
                            LASTING_CHANGE,
                            STANDS_APART -> "%s: %s".formatted(where, rule.words());
                };
        return new Signal(point.piece(), rule, words);
    }
}
