package turnalike.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Whether each end has a sharp rim or a chamfered one. Both can explain much the same contour, each in a view of its own: a chamfer taken for a sharp
 * rim asks for a lens by a fifth too short and a lean of some degrees. So each way is tried, and the one counts that agrees best with the
 * points and with what was known beforehand; how far the others lie from it, the more likely they are, is what the view is uncertain by.
 */
final class RimChoice {
    /** Points of an end that stray by themselves, for each pixel of its radius. */
    static final double POINTS = 0.6;

    /** How often a chamfer is measured anew in the view that it led to. */
    private static final int AGAIN = 2;

    /** By so much the lean is changed first, and last, radians; a way that costs less by so much is gone on from. */
    private static final double FARTHEST = Math.toRadians(3);

    private static final double NEAREST = Math.toRadians(0.5);

    private static final double GAIN = 0.5;

    private static final int MOST_TRIES = 8;

    /** What costs by so much more than sharp rims is not looked at again. */
    private static final double FAR = 12;

    /** What an end that fits no rim at all costs, and what a chamfer or a rounding costs: the usual end of a piece is sawn off. Both by trying. */
    private static final double NO_RIM = 16;

    private static final double SELDOM = 8;

    /** What an end costs that is a ball as far as is seen. By trying. */
    private static final double BALL = 6;

    /** What it costs not to ask one of the ends: shade or a shadow beside it can bend its rim as no view would. By trying. */
    private static final double NOT_ASKED = 14;

    /** What one end can tell of the view at most. By trying. */
    private static final double MOST_TOLD = 24;

    private final ViewFit fit;

    /** How unsure a guess is that is begun at once more from either side: an end's bulge tells its way only from near. */
    static final double VAGUE = 0.1;

    /** How closely in pixels. Set on two pictures: a sawn end that strayed by 0.06, and a drawn page whose edge did by 0.5. */
    private static final double CLOSE = 0.25;

    /**
     * No better than this, in its log, does a picture tell a focal length of which nothing else is known: on 55 made pictures stripped of their lens data
     * two in three then lie within what is stated.
     */
    private static final double LEAST_OF_FOCAL = 0.02;

    /** Two views are one if their lean, in radians, and their focal length's log lie no farther apart, and their costs. */
    private static final double SAME = 0.002;

    private static final double SAME_COST = 0.2;

    private final FocalGuess focal;

    private final KnownSquares squares;

    /** The axis and the lean to begin at. */
    private final Sight.AxisLine guess;

    private final double tilt;

    /** How many points of either end speak for themselves, the start's first: as many in each way, or the one that has the end larger would be the likelier. */
    private final double[] points;

    /** One way to explain the ends, and how ill all that is known and seen agrees with it: twice a negative log likelihood. */
    private record Way(ViewFit.View view, double strays, double start, double end) {
        double cost() {
            return strays + start + end;
        }

        boolean isBroken() {
            return !view.start().edge().isSharp() || !view.end().edge().isSharp();
        }

        /** Whether it is the same come to from another beginning, which counts once. */
        boolean isLike(Way other) {
            return Math.abs(other.view.logFocal() - view.logFocal()) < SAME
                    && Math.abs(other.view.tilt() - view.tilt()) < SAME
                    && Math.abs(other.cost() - cost()) < SAME_COST;
        }

        /** The same, no end of which explains its points worse than the best way does by more than a shade or a knot beside it may feign. */
        Way held(double leastStart, double leastEnd) {
            return new Way(view, strays, Math.min(start, leastStart + MOST_TOLD), Math.min(end, leastEnd + MOST_TOLD));
        }
    }

    RimChoice(ViewFit fit, FocalGuess focal, KnownSquares squares, Sight.AxisLine guess, double tilt) throws Unsure {
        this.squares = squares;
        this.fit = fit;
        this.focal = focal;
        this.guess = guess;
        this.tilt = tilt;
        SquaredContour contour = fit.contour(fit.straightened(guess, 0, tilt), 0, tilt);
        points = new double[] {points(contour, true), points(contour, false)};
    }

    private static double points(SquaredContour contour, boolean start) {
        return POINTS
                * EndCap.face(contour, start, EndEdge.SHARP).behind()
                * contour.sight().focal();
    }

    ViewFit.View best() throws Unsure {
        List<Way> ways = new ArrayList<>();
        List<Cores.Work<List<Way>>> explained = new ArrayList<>();
        for (double near : begun()) {
            explained.add(Cores.begin(() -> explained(fit.straightened(guess, near, tilt), near)));
        }
        for (Cores.Work<List<Way>> each : explained) {
            List<Way> before = List.copyOf(ways);
            ways.addAll(each.done().stream()
                    .filter(way -> before.stream().noneMatch(way::isLike))
                    .toList());
        }
        double leastStart = ways.stream().mapToDouble(Way::start).min().orElse(0);
        double leastEnd = ways.stream().mapToDouble(Way::end).min().orElse(0);
        return weighed(ways.stream()
                .map(way -> way.held(leastStart, leastEnd))
                .sorted(Comparator.comparingDouble(Way::cost))
                .toList());
    }

    /** The ways to explain the ends that are come to from there. */
    private List<Way> explained(Sight.AxisLine axis, double near) throws Unsure {
        Cores.Work<Way> startNotAsked = Cores.begin(() -> way(axis, near, EndEdge.SHARP, EndEdge.SHARP, false, true));
        Cores.Work<Way> endNotAsked = Cores.begin(() -> way(axis, near, EndEdge.SHARP, EndEdge.SHARP, true, false));
        SquaredContour first = fit.contour(axis, near, tilt);
        Cores.Work<List<EndEdge>> seenEnds = Cores.begin(() -> edges(first, false));
        List<EndEdge> starts = edges(first, true);
        List<EndEdge> ends = seenEnds.done();
        Way sharp = way(axis, near, starts.get(0), ends.get(0), true, true);
        List<Cores.Work<List<Way>>> broken = new ArrayList<>();
        // The first of either is the sharp one.
        for (int k = 1; k < starts.size() * ends.size(); k++) {
            EndEdge start = starts.get(k / ends.size());
            EndEdge end = ends.get(k % ends.size());
            broken.add(Cores.begin(() -> broken(axis, near, start, end, sharp.cost() + FAR)));
        }
        List<Way> ways = new ArrayList<>(List.of(sharp));
        for (Cores.Work<List<Way>> each : broken) {
            ways.addAll(each.done());
        }
        Way best = ways.stream().min(Comparator.comparingDouble(Way::cost)).orElseThrow();
        ways.addAll(leaning(best));
        ways.add(startNotAsked.done());
        ways.add(endNotAsked.done());
        return ways;
    }

    /** The ways with such edges, one of them at least not sharp: how far it reaches is told the better, the nearer the view is to the true one. */
    private List<Way> broken(Sight.AxisLine axis, double near, EndEdge start, EndEdge end, double most) throws Unsure {
        List<Way> ways = new ArrayList<>();
        Way last = way(axis, near, start, end, true, true);
        ways.add(last);
        for (int again = 0; again < AGAIN && last.cost() < most; again++) {
            last = measured(last.view, last.view.contour(), start, end);
            ways.add(last);
        }
        return ways;
    }

    /**
     * Further ways beside one. As a broken rim is measured in a view, it asks for much the same view again, whichever it is; so the lean is changed to either
     * side, the rims measured there and the ends asked what they cost, in steps that grow smaller.
     */
    private List<Way> leaning(Way first) throws Unsure {
        List<Way> found = new ArrayList<>();
        Way at = first;
        double far = FARTHEST;
        for (int tries = 0; tries < MOST_TRIES && far > NEAREST && at.isBroken(); tries++) {
            Way from = at;
            double step = far;
            Cores.Work<Way> back = Cores.begin(() -> leaning(from, -step));
            Way ahead = leaning(from, step);
            List<Way> beside = List.of(back.done(), ahead);
            found.addAll(beside);
            for (Way each : beside) {
                at = each.cost() < at.cost() ? each : at;
            }
            far = at.cost() < from.cost() - GAIN ? far : far / 2;
        }
        return found;
    }

    /** The way that the rims lead to which are seen in a view that leans by so much more. */
    private Way leaning(Way from, double more) throws Unsure {
        double focal = from.view.logFocal();
        double lean = from.view.tilt() + more;
        SquaredContour there = fit.contour(fit.straightened(from.view.axis(), focal, lean), focal, lean);
        return measured(
                from.view, there, from.view.start().edge(), from.view.end().edge());
    }

    /** The way that rims of such kinds lead to as they are measured in a view. */
    private Way measured(ViewFit.View from, SquaredContour there, EndEdge start, EndEdge end) throws Unsure {
        return way(
                from.axis(),
                from.logFocal(),
                BrokenRim.again(there, true, start),
                BrokenRim.again(there, false, end),
                true,
                true);
    }

    /** A square's end is asked nothing, as no round's rim is seen there. */
    private List<EndEdge> edges(SquaredContour contour, boolean start) {
        return (start ? squares.atStart() : squares.atEnd()) ? List.of(EndEdge.SHARP) : BrokenRim.kinds(contour, start);
    }

    /**
     * The logs of the focal length over its guess to begin at: the guess, and well beside one that is vague, since an end's bulge tells its way
     * only from near.
     */
    private double[] begun() throws Unsure {
        double vague = focal.uncertainty();
        if (vague < VAGUE) {
            return new double[] {0};
        }
        List<Double> out = new ArrayList<>(List.of(0.0));
        for (double near : new double[] {-vague, vague, 2 * vague}) {
            ViewFit.View view =
                    way(fit.straightened(guess, near, tilt), near, EndEdge.SHARP, EndEdge.SHARP, true, true).view;
            if (isSharp(view.start()) || isSharp(view.end())) {
                out.add(near);
            }
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether an end's rim is seen as closely as a sawn one: what only resembles it may be bent to any lens. */
    private static boolean isSharp(EndCap cap) {
        return cap.flat() && cap.misfit() < CLOSE;
    }

    private Way way(Sight.AxisLine axis, double near, EndEdge start, EndEdge end, boolean askStart, boolean askEnd)
            throws Unsure {
        ViewFit.Tried tried = fit.tried(
                axis, near, new EndEdge[] {start, end}, askStart && !squares.atStart(), askEnd && !squares.atEnd());
        ViewFit.View view = tried.view();
        return new Way(
                view,
                tried.strays() + (askStart && askEnd ? 0 : NOT_ASKED),
                squares.atStart() ? 0 : cost(view.start(), points[0]),
                squares.atEnd() ? 0 : cost(view.end(), points[1]));
    }

    private static double cost(EndCap cap, double points) {
        return form(cap) + 2 * points * cap.astray();
    }

    /** What its form costs beside a sawn end's, before the points are asked. */
    private static double form(EndCap cap) {
        if (cap.isBall()) {
            return BALL;
        }
        return (cap.flat() ? 0 : NO_RIM) + (cap.edge().isSharp() ? 0 : SELDOM);
    }

    private double leastOfFocal() {
        return focal.uncertainty() < VAGUE ? 0 : LEAST_OF_FOCAL;
    }

    /** Midway between all, each counting as likely as it is, its ends as the first has them, and as uncertain as the others leave it. */
    private ViewFit.View weighed(List<Way> ways) throws Unsure {
        ViewFit.View best = ways.get(0).view;
        double weights = 0;
        double length = 0;
        double tilt = 0;
        double focalSquares = 0;
        double tiltSquares = 0;
        for (Way way : ways) {
            double weight = Math.exp((ways.get(0).cost() - way.cost()) / 2);
            double farther = way.view.logFocal() - best.logFocal();
            double leaning = way.view.tilt() - best.tilt();
            weights += weight;
            length += weight * farther;
            tilt += weight * leaning;
            focalSquares += weight * (way.view.focalUncertainty() * way.view.focalUncertainty() + farther * farther);
            tiltSquares += weight * (way.view.tiltUncertainty() * way.view.tiltUncertainty() + leaning * leaning);
        }
        length /= weights;
        tilt /= weights;
        return fit.moved(best, length, tilt)
                .withUncertainty(
                        Math.hypot(leastOfFocal(), Math.sqrt(Math.max(0, focalSquares / weights - length * length))),
                        Math.sqrt(Math.max(0, tiltSquares / weights - tilt * tilt)));
    }
}
