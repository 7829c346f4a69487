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

    /** A vague focal length's log is changed by so much for each radian that the lean is. */
    private static final double FOCAL_BY_LEAN = 3;

    private static final double GAIN = 0.5;

    private static final int MOST_TRIES = 8;

    /** From so many kinds of rims that is done, none of which costs by so much more than the best. */
    private static final double NOT_FAR = 60;

    private static final int KINDS = 3;

    /** What costs by so much more than sharp rims is not looked at again. */
    private static final double FAR = 12;

    /** What it costs not to ask one of the ends: shade or a shadow beside it can bend its rim as no view would. By trying. */
    private static final double NOT_ASKED = 14;

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

    private final FocalGuess focal;

    private final KnownSquares squares;

    /** The axis and the lean to begin at. */
    private final Sight.AxisLine guess;

    private final double tilt;

    /** How many points of either end speak for themselves, the start's first: as many in each way, or the one that has the end larger would be the likelier. */
    private final double[] points;

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
        List<RimWay> ways = new ArrayList<>();
        List<Cores.Work<List<RimWay>>> explained = new ArrayList<>();
        for (double near : begun()) {
            explained.add(Cores.begin(() -> explained(fit.straightened(guess, near, tilt), near)));
        }
        for (Cores.Work<List<RimWay>> each : explained) {
            ways.addAll(each.done());
        }
        ways = apart(ways);
        double leastStart = ways.stream().mapToDouble(RimWay::start).min().orElse(0);
        double leastEnd = ways.stream().mapToDouble(RimWay::end).min().orElse(0);
        ViewFit.View view = weighed(ways.stream()
                .map(way -> way.held(leastStart, leastEnd))
                .sorted(Comparator.comparingDouble(RimWay::cost))
                .toList());
        return view.withEnds(
                DomeOrRim.of(view.start(), view.contour(), true, points[0]),
                DomeOrRim.of(view.end(), view.contour(), false, points[1]));
    }

    /** Each once, though it is come to from several beginnings. */
    private static List<RimWay> apart(List<RimWay> ways) {
        List<RimWay> apart = new ArrayList<>();
        for (RimWay way : ways) {
            if (apart.stream().noneMatch(way::isLike)) {
                apart.add(way);
            }
        }
        return apart;
    }

    /** The ways to explain the ends that are come to from there. */
    private List<RimWay> explained(Sight.AxisLine axis, double near) throws Unsure {
        Cores.Work<RimWay> startNotAsked =
                Cores.begin(() -> way(axis, near, EndEdge.SHARP, EndEdge.SHARP, false, true));
        Cores.Work<RimWay> endNotAsked = Cores.begin(() -> way(axis, near, EndEdge.SHARP, EndEdge.SHARP, true, false));
        SquaredContour first = fit.contour(axis, near, tilt);
        Cores.Work<List<EndEdge>> seenEnds = Cores.begin(() -> edges(first, false));
        List<EndEdge> starts = edges(first, true);
        List<EndEdge> ends = seenEnds.done();
        RimWay sharp = way(axis, near, starts.get(0), ends.get(0), true, true);
        List<Cores.Work<List<RimWay>>> broken = new ArrayList<>();
        // The first of either is the sharp one.
        for (int k = 1; k < starts.size() * ends.size(); k++) {
            EndEdge start = starts.get(k / ends.size());
            EndEdge end = ends.get(k % ends.size());
            broken.add(Cores.begin(() -> broken(axis, near, start, end, sharp.cost() + FAR)));
        }
        List<RimWay> ways = new ArrayList<>(List.of(sharp));
        for (Cores.Work<List<RimWay>> each : broken) {
            ways.addAll(each.done());
        }
        for (RimWay each : likelyKinds(ways)) {
            ways.addAll(beside(each));
        }
        ways.add(startNotAsked.done());
        ways.add(endNotAsked.done());
        return ways;
    }

    /** The best way, and the best ones of a few other kinds of rims that cost hardly more. */
    private static List<RimWay> likelyKinds(List<RimWay> ways) {
        List<RimWay> best = new ArrayList<>();
        ways.stream().sorted(Comparator.comparingDouble(RimWay::cost)).forEach(way -> {
            boolean near = best.isEmpty() || way.cost() < best.get(0).cost() + NOT_FAR;
            if (near && best.size() < KINDS && best.stream().noneMatch(way::hasSuchRims)) {
                best.add(way);
            }
        });
        return best;
    }

    /** The ways with such edges, one of them at least not sharp: how far it reaches is told the better, the nearer the view is to the true one. */
    private List<RimWay> broken(Sight.AxisLine axis, double near, EndEdge start, EndEdge end, double most)
            throws Unsure {
        List<RimWay> ways = new ArrayList<>();
        RimWay last = way(axis, near, start, end, true, true);
        ways.add(last);
        for (int again = 0; again < AGAIN && last.cost() < most; again++) {
            ViewFit.View seen = last.view();
            last = measured(seen.axis(), seen.logFocal(), seen.contour(), start, end);
            ways.add(last);
        }
        return ways;
    }

    /**
     * Further ways beside one. As a broken rim is measured in a view, it asks for much the same view again, whichever it is; so the lean is changed to either
     * side, and a focal length that is vague, the rims measured there and the ends asked what they cost, in steps that grow smaller.
     */
    private List<RimWay> beside(RimWay first) throws Unsure {
        List<RimWay> found = new ArrayList<>();
        RimWay at = first;
        double far = FARTHEST;
        for (int tries = 0; tries < MOST_TRIES && far > NEAREST && at.isBroken(); tries++) {
            RimWay from = at;
            double lean = far;
            double longer = focal.uncertainty() < VAGUE ? 0 : FOCAL_BY_LEAN * far;
            List<Cores.Work<RimWay>> tried = new ArrayList<>();
            for (int side = -1; side <= 1; side += 2) {
                int way = side;
                tried.add(Cores.begin(() -> beside(from, 0, way * lean)));
                if (longer > 0) {
                    tried.add(Cores.begin(() -> beside(from, way * longer, 0)));
                }
            }
            for (Cores.Work<RimWay> each : tried) {
                RimWay way = each.done();
                found.add(way);
                at = way.cost() < at.cost() ? way : at;
            }
            far = at.cost() < from.cost() - GAIN ? far : far / 2;
        }
        return found;
    }

    /** The view of so much longer a lens and so much more lean as it is, with rims of the same kinds as they are measured there. */
    private RimWay beside(RimWay from, double longer, double more) throws Unsure {
        ViewFit.View seen = from.view();
        double near = seen.logFocal() + longer;
        double lean = seen.tilt() + more;
        Sight.AxisLine axis = fit.straightened(seen.axis(), near, lean);
        SquaredContour there = fit.contour(axis, near, lean);
        EndEdge[] edges = {
            BrokenRim.again(there, true, seen.start().edge()),
            BrokenRim.again(there, false, seen.end().edge())
        };
        double[] uncertain = {seen.focalUncertainty(), seen.tiltUncertainty()};
        ViewFit.Tried tried = fit.seen(axis, near, lean, uncertain, edges, !squares.atStart(), !squares.atEnd());
        return costing(tried.view(), tried.strays());
    }

    /** The way that rims of such kinds lead to as they are measured in a contour. */
    private RimWay measured(Sight.AxisLine axis, double near, SquaredContour there, EndEdge start, EndEdge end)
            throws Unsure {
        return way(axis, near, BrokenRim.again(there, true, start), BrokenRim.again(there, false, end), true, true);
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
            ViewFit.View view = way(fit.straightened(guess, near, tilt), near, EndEdge.SHARP, EndEdge.SHARP, true, true)
                    .view();
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

    private RimWay way(Sight.AxisLine axis, double near, EndEdge start, EndEdge end, boolean askStart, boolean askEnd)
            throws Unsure {
        ViewFit.Tried tried = fit.tried(
                axis, near, new EndEdge[] {start, end}, askStart && !squares.atStart(), askEnd && !squares.atEnd());
        return costing(tried.view(), tried.strays() + (askStart && askEnd ? 0 : NOT_ASKED));
    }

    private RimWay costing(ViewFit.View view, double strays) {
        return new RimWay(
                view,
                strays,
                squares.atStart() ? 0 : RimWay.cost(view.start(), points[0]),
                squares.atEnd() ? 0 : RimWay.cost(view.end(), points[1]));
    }

    private double leastOfFocal() {
        return focal.uncertainty() < VAGUE ? 0 : LEAST_OF_FOCAL;
    }

    /** The best of the ways that take the ends for flat or for rounded as most likely they are, whatever the view. */
    private static RimWay likeliest(List<RimWay> ways) {
        double most = 0;
        RimWay likeliest = ways.get(0);
        for (RimWay way : ways) {
            double weight = ways.stream()
                    .filter(way::hasSuchEnds)
                    .mapToDouble(each -> Math.exp((ways.get(0).cost() - each.cost()) / 2))
                    .sum();
            if (weight > most * (1 + 1e-9)) {
                most = weight;
                likeliest = way;
            }
        }
        return likeliest;
    }

    /** Midway between all, each counting as likely as it is, its ends as the likeliest kinds have them, and as uncertain as the others leave it. */
    private ViewFit.View weighed(List<RimWay> ways) throws Unsure {
        ViewFit.View best = likeliest(ways).view();
        double weights = 0;
        double length = 0;
        double tilt = 0;
        double focalSquares = 0;
        double tiltSquares = 0;
        for (RimWay way : ways) {
            double weight = Math.exp((ways.get(0).cost() - way.cost()) / 2);
            double farther = way.view().logFocal() - best.logFocal();
            double leaning = way.view().tilt() - best.tilt();
            weights += weight;
            length += weight * farther;
            tilt += weight * leaning;
            focalSquares +=
                    weight * (way.view().focalUncertainty() * way.view().focalUncertainty() + farther * farther);
            tiltSquares += weight * (way.view().tiltUncertainty() * way.view().tiltUncertainty() + leaning * leaning);
        }
        length /= weights;
        tilt /= weights;
        return fit.moved(best, length, tilt)
                .withUncertainty(
                        Math.hypot(leastOfFocal(), Math.sqrt(Math.max(0, focalSquares / weights - length * length))),
                        Math.sqrt(Math.max(0, tiltSquares / weights - tilt * tilt)));
    }
}
