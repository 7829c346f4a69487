package turnalike.frame;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Segment;
import turnalike.units.Length;

/**
 * The least level distance between two upright bodies that stand beside one another, the second so much higher than the first. Between two
 * heights at which neither outline turns, the sum of the radii is at most that of the larger ones at the ends; such stretches are halved until
 * that says enough. A square counts with half its diagonal, as nobody knows how it is turned. Derived here.
 */
public final class RowGap {
    private static final double WITHIN_MM = 1e-4;

    private final Outline lower;
    private final Outline upper;
    private final double rise;
    private double best = Double.NEGATIVE_INFINITY;
    private double at;

    private RowGap(Outline lower, Outline upper, double rise) {
        this.lower = lower;
        this.upper = upper;
        this.rise = rise;
    }

    /**
     * Where two bodies come nearest.
     *
     * @param left what is left between them, measured level; below zero where they run into one another. Exact where they stand level, else
     *     within a ten-thousandth of a millimetre
     * @param at where on the lower one, from its outline's start
     */
    public record Nearest(Length left, Length at) {}

    /**
     * {@return where two of them come nearest}
     *
     * @param body the exposed part of a piece
     * @param apart from axis to axis, level
     * @param rise how much higher the second one stands, not below zero
     */
    public static Nearest of(Outline body, Length apart, Length rise) {
        return of(body, body, apart, rise);
    }

    /**
     * {@return where two that differ come nearest}
     *
     * @param lower the exposed part of the one that begins lower
     * @param upper of the other
     * @param apart from axis to axis, level
     * @param rise how much higher the other begins, not below zero
     */
    public static Nearest of(Outline lower, Outline upper, Length apart, Length rise) {
        RowGap gap = new RowGap(lower, upper, rise.mm());
        if (rise.mm() >= lower.length().mm()) {
            return new Nearest(apart, lower.length()); // one begins above where the other ends
        }
        gap.search();
        return new Nearest(apart.minus(Length.ofMm(gap.best)), Length.ofMm(gap.at));
    }

    /**
     * {@return the greatest distance of the body from its axis, a square with half its diagonal}
     *
     * @param body the exposed part of a piece
     */
    public static Length reach(Outline body) {
        return of(body, Length.ZERO, Length.ZERO).left().times(-0.5);
    }

    private void search() {
        TreeSet<Double> turns = new TreeSet<>();
        double end = Math.min(lower.length().mm(), rise + upper.length().mm());
        add(turns, lower, 0, end);
        add(turns, upper, rise, end);
        turns.add(end);
        turns.add(rise);
        double last = rise;
        for (double turn : turns.tailSet(rise, false)) {
            if (turn - last > 1e-12) {
                between(last, turn);
            }
            last = turn;
        }
    }

    private static void add(Set<Double> turns, Outline body, double higher, double end) {
        double start = body.start().mm();
        for (Segment segment : body.segments()) {
            double from = segment.start().mm() - start + higher;
            turns.add(Math.min(end, from));
            for (double x : segment.curve().levelPlacesMm()) {
                turns.add(Math.min(end, from + x));
            }
        }
    }

    private void between(double from, double to) {
        double start = lower.start().mm();
        double startAbove = upper.start().mm() - rise;
        double middle = (from + to) / 2;
        On below = on(lower, start + middle);
        On above = on(upper, startAbove + middle);
        Deque<double[]> open = new ArrayDeque<>();
        open.push(new double[] {from, to});
        while (!open.isEmpty()) {
            double[] stretch = open.pop();
            double first = below.radius(start + stretch[0]);
            double second = below.radius(start + stretch[1]);
            double otherFirst = above.radius(startAbove + stretch[0]);
            double otherSecond = above.radius(startAbove + stretch[1]);
            found(stretch[0], first + otherFirst);
            found(stretch[1], second + otherSecond);
            double most = Math.max(first, second) + Math.max(otherFirst, otherSecond);
            boolean straight = below.curve() instanceof Line && above.curve() instanceof Line;
            if (!straight && most > best + WITHIN_MM) {
                double half = (stretch[0] + stretch[1]) / 2;
                open.push(new double[] {stretch[0], half});
                open.push(new double[] {half, stretch[1]});
            }
        }
    }

    private void found(double where, double sum) {
        if (sum > best) {
            best = sum;
            at = where;
        }
    }

    private static On on(Outline body, double place) {
        for (Segment segment : body.segments()) {
            if (place <= segment.end().mm()) {
                return new On(segment);
            }
        }
        return new On(body.segments().get(body.segments().size() - 1));
    }

    private record On(Segment segment) {
        Curve curve() {
            return segment.curve();
        }

        double radius(double place) {
            return segment.section().reachFactor()
                    * segment.curve().radiusMm(place - segment.start().mm());
        }
    }
}
