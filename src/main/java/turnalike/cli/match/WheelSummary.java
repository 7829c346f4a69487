package turnalike.cli.match;

import static java.lang.String.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.job.set.Roundness;
import turnalike.job.set.SpeedGrade;
import turnalike.job.set.WheelSet;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.units.Article;
import turnalike.units.Length;

/** What is known of a placed wheel beyond its balance: how round the rim is, the grade at its speed. */
final class WheelSummary {
    /** More points of the curve than a screen has room for beside the rest are thinned out. */
    private static final int MOST_POINTS = 5;

    /** The finest of the grades; from memory. */
    private static final double FINEST = 0.4;

    /** Takes one line of the summary. */
    interface Line {
        void put(String text, Object... values);
    }

    private final Line line;

    WheelSummary(Line line) {
        this.line = line;
    }

    void text(WheelSet set) {
        set.grade().ifPresent(this::grade);
        set.roundness().ifPresent(roundness -> roundness(set.placement(), roundness));
    }

    private void grade(SpeedGrade grade) {
        List<String> allowed = new ArrayList<>();
        for (SpeedGrade.Permitted each : grade.permitted()) {
            allowed.add(format(Locale.ROOT, "G%.0f allows %s g·mm", each.grade().mmPerS(), Moment.figure(each.gMm())));
        }
        line.put(
                "           at %s turns a minute that is %s, for information; %s",
                SpeedGrade.speed(grade.revPerMin()), reached(grade.reached().mmPerS()), String.join(", ", allowed));
    }

    /** Of a set that cancels by its weights the figure would be told by its last digits alone. */
    private static String reached(double mmPerS) {
        return mmPerS < FINEST
                ? "below balance grade G%s".formatted(FINEST)
                : format(Locale.ROOT, "balance grade G%.2g", mmPerS);
    }

    private void roundness(WheelPlacement placement, Roundness roundness) {
        RimFit rim = roundness.placed().rim();
        line.put(
                "Round      run-out %s about %s best centre, as the lengths were measured",
                both(roundness, rim.runOut()), roundness.tips() ? "the tips'" : "the rim's");
        line.put(
                "           %s %s from %s centre, which lies %s off the axle toward %s",
                roundness.tips() ? "tips" : "rim at",
                rim.radius().formatBoth(roundness.units()),
                roundness.tips() ? "their" : "its",
                both(roundness, rim.offset()),
                rim.offsetAt().formatDirection());
        line.put(
                "           a gauge held to %s as %s on its axle would read %s at most; seats off by up to %s add up to %s, bored or not",
                roundness.theRim(),
                roundness.tips() ? "the wheel turns" : "it turns",
                both(roundness, roundness.aboutAxle(roundness.placed())),
                both(roundness, roundness.seat()),
                both(roundness, roundness.seat().times(2)));
        if (roundness.isBored()) {
            line.put("           bore these seats deeper first: %s", roundness.seats(roundness.placed()));
        }
        curve(placement, roundness);
        if (roundness.choseOrder() && roundness.curve().size() > 1) {
            line.put("           --strict searches below the scale's noise too");
        }
        for (TradeOff.Point way : roundness.bored()) {
            if (!way.equals(roundness.placed())) {
                boring(placement, roundness, way);
            }
        }
    }

    /** Another set or order with its seats bored: all its figures are those after the boring. */
    private void boring(WheelPlacement placement, Roundness roundness, TradeOff.Point way) {
        String seats = roundness.seats(way);
        if (seats.isEmpty()) {
            return;
        }
        line.put(
                "Boring     with %s bored deeper that gauge would read %s at most, the run-out be %s, with %s left:",
                Article.count(roundness.deepened(way), "seat"),
                both(roundness, roundness.aboutAxle(way)),
                both(roundness, way.rim().runOut()),
                placement.told(way.unbalance()));
        line.put("           pieces %s from place 1 on;", String.join(", ", roundness.labels(way)));
        line.put("           seats %s", seats);
    }

    private static String both(Roundness roundness, Length length) {
        return length.formatMeasuredBoth(roundness.units());
    }

    private void curve(WheelPlacement placement, Roundness roundness) {
        List<TradeOff.Point> curve = roundness.curve();
        if (curve.size() < 2) {
            return;
        }
        line.put("Trade-off  without boring, from best balanced to roundest (all with their places in --json):");
        int shown = Math.min(MOST_POINTS, curve.size());
        SortedSet<Integer> indices = new TreeSet<>();
        for (int i = 0; i < shown; i++) {
            indices.add(i * (curve.size() - 1) / (shown - 1));
        }
        int placed = curve.indexOf(roundness.placed());
        if (placed >= 0) {
            indices.add(placed);
        }
        for (int i : indices) {
            TradeOff.Point point = curve.get(i);
            line.put(
                    "           %s with a run-out of %s%s",
                    placement.told(point.unbalance()),
                    both(roundness, point.rim().runOut()),
                    i == placed ? ", as placed" : "");
        }
    }
}
