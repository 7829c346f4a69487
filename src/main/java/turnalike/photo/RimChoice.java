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
    private static final double POINTS = 0.6;

    /** How often a chamfer is measured anew in the view that it led to. */
    private static final int AGAIN = 2;

    /** What costs by so much more than sharp rims is not looked at again. */
    private static final double FAR = 12;

    /** What an end that fits no rim at all costs, and what a chamfer costs: the usual end of a piece is sawn off. Both by trying. */
    private static final double NO_RIM = 16;

    private static final double SELDOM = 8;

    /** What it costs not to ask one of the ends: shade or a shadow beside it can bend its rim as no view would. By trying. */
    private static final double NOT_ASKED = 14;

    /** What one end can tell of the view at most. By trying. */
    private static final double MOST_TOLD = 24;

    private final ViewFit fit;

    /** How unsure a guess is that is begun at once more from either side: an end's bulge tells its way only from near. */
    static final double VAGUE = 0.1;

    /** How closely in pixels. Set on two pictures: a sawn end that strayed by 0.06, and a drawn page whose edge did by 0.5. */
    private static final double CLOSE = 0.25;

    private final FocalGuess focal;

    private final KnownSquares squares;

    /** One way to explain the ends, and how ill all that is known and seen agrees with it: twice a negative log likelihood. */
    private record Way(ViewFit.View view, double strays, double start, double end) {
        double cost() {
            return strays + start + end;
        }

        /** The same, no end of which explains its points worse than the best way does by more than a shade or a knot beside it may feign. */
        Way held(double leastStart, double leastEnd) {
            return new Way(view, strays, Math.min(start, leastStart + MOST_TOLD), Math.min(end, leastEnd + MOST_TOLD));
        }
    }

    RimChoice(ViewFit fit, FocalGuess focal, KnownSquares squares) {
        this.squares = squares;
        this.fit = fit;
        this.focal = focal;
    }

    ViewFit.View best(Sight.AxisLine guess, double tilt) throws Unsure {
        double near = begun(guess, tilt);
        Sight.AxisLine axis = fit.straightened(guess, near, tilt);
        SquaredContour first = fit.contour(axis, near, tilt);
        Cores.Work<Way> startNotAsked = Cores.begin(() -> way(axis, near, 1, 1, false, true));
        Cores.Work<Way> endNotAsked = Cores.begin(() -> way(axis, near, 1, 1, true, false));
        List<Way> ways = new ArrayList<>();
        for (double start : faces(first, true)) {
            for (double end : faces(first, false)) {
                ways.add(way(axis, near, start, end, true, true));
                // How far a chamfer reaches is told the better, the nearer the view is to the true one.
                Way last = ways.get(ways.size() - 1);
                boolean maybe = start < 1 || end < 1;
                for (int again = 0;
                        again < AGAIN && maybe && last.cost() < ways.get(0).cost() + FAR;
                        again++) {
                    SquaredContour there = last.view.contour();
                    last = way(
                            last.view.axis(),
                            last.view.logFocal(),
                            start < 1 ? chamfered(there, true) : 1,
                            end < 1 ? chamfered(there, false) : 1,
                            true,
                            true);
                    ways.add(last);
                }
            }
        }
        ways.add(startNotAsked.done());
        ways.add(endNotAsked.done());
        double leastStart = ways.stream().mapToDouble(Way::start).min().orElse(0);
        double leastEnd = ways.stream().mapToDouble(Way::end).min().orElse(0);
        return weighed(ways.stream()
                .map(way -> way.held(leastStart, leastEnd))
                .sorted(Comparator.comparingDouble(Way::cost))
                .toList());
    }

    /** A square's end is asked nothing, as no round's rim is seen there. */
    private double[] faces(SquaredContour contour, boolean start) {
        return (start ? squares.atStart() : squares.atEnd()) ? new double[] {1} : EndCap.faces(contour, start);
    }

    /** Where sharp rims agree best from: at the guess of the focal length, or well beside one that is vague. */
    private double begun(Sight.AxisLine guess, double tilt) throws Unsure {
        if (focal.uncertainty() < VAGUE) {
            return 0;
        }
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double near : new double[] {0, -focal.uncertainty(), focal.uncertainty(), 2 * focal.uncertainty()}) {
            Way way = way(fit.straightened(guess, near, tilt), near, 1, 1, true, true);
            double cost = way.cost();
            if (near != 0 && !isSharp(way.view.start()) && !isSharp(way.view.end())) {
                continue;
            }
            if (cost < least) {
                least = cost;
                best = near;
            }
        }
        return best;
    }

    /** Whether an end's rim is seen as closely as a sawn one: what only resembles it may be bent to any lens. */
    private static boolean isSharp(EndCap cap) {
        return cap.flat() && cap.misfit() < CLOSE;
    }

    private static double chamfered(SquaredContour contour, boolean start) {
        double[] faces = EndCap.faces(contour, start);
        return faces[faces.length - 1];
    }

    private Way way(Sight.AxisLine axis, double near, double start, double end, boolean askStart, boolean askEnd)
            throws Unsure {
        ViewFit.Tried tried = fit.tried(
                axis, near, new double[] {start, end}, askStart && !squares.atStart(), askEnd && !squares.atEnd());
        ViewFit.View view = tried.view();
        return new Way(
                view,
                tried.strays() + (askStart && askEnd ? 0 : NOT_ASKED),
                squares.atStart() ? 0 : cost(view, view.start()),
                squares.atEnd() ? 0 : cost(view, view.end()));
    }

    private static double cost(ViewFit.View view, EndCap cap) {
        double points =
                POINTS * cap.radius() / cap.face() * view.contour().sight().focal();
        double misfit = Math.max(0.03, Math.min(10, cap.misfit()));
        return (cap.flat() ? 0 : NO_RIM) + (cap.face() < 1 ? SELDOM : 0) + 2 * points * Math.log(misfit);
    }

    /** Midway between all, each counting as likely as it is, its ends as the first has them, and as uncertain as the others leave it. */
    private ViewFit.View weighed(List<Way> ways) throws Unsure {
        ViewFit.View best = ways.get(0).view;
        double weights = 0;
        double focal = 0;
        double tilt = 0;
        double focalSquares = 0;
        double tiltSquares = 0;
        for (Way way : ways) {
            double weight = Math.exp((ways.get(0).cost() - way.cost()) / 2);
            double farther = way.view.logFocal() - best.logFocal();
            double leaning = way.view.tilt() - best.tilt();
            weights += weight;
            focal += weight * farther;
            tilt += weight * leaning;
            focalSquares += weight * (way.view.focalUncertainty() * way.view.focalUncertainty() + farther * farther);
            tiltSquares += weight * (way.view.tiltUncertainty() * way.view.tiltUncertainty() + leaning * leaning);
        }
        focal /= weights;
        tilt /= weights;
        return fit.moved(best, focal, tilt)
                .withUncertainty(
                        Math.sqrt(Math.max(0, focalSquares / weights - focal * focal)),
                        Math.sqrt(Math.max(0, tiltSquares / weights - tilt * tilt)));
    }
}
