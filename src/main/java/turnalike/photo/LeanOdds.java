package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a piece leans and what its ends are. Sharp, chamfered and rounded rims can explain much the same end, each in a view of its own, so no step leads
 * from the one to the other: every lean that may be is looked at with every form of either end, and each view counts as likely as ends, rims of shoulders, squares
 * and what was known before together make it. Its mean is taken, and its spread is what it is uncertain by.
 */
final class LeanOdds {
    /** How unsure a guess of the focal length is that is weighed in more steps, and read anew where it was found to be. */
    static final double VAGUE = 0.1;

    /** Focal lengths are weighed up to so many standard deviations to either side of the guess, in so many steps. */
    private static final double FAR = 3;

    private static final int STEPS = 4;

    private static final int VAGUE_STEPS = 24;

    /** An end that was read through a lens so far, as a log, from the one that was found is read anew, so often at most. */
    private static final double NEAR = 0.1;

    private static final int READINGS = 2;

    /**
     * No better than this, in its log, does a picture tell a focal length of which nothing else is known: on 55 made pictures stripped of their lens data
     * two in three then lie within what is stated.
     */
    private static final double LEAST_OF_FOCAL = 0.02;

    /** Of what is spread normally a standard deviation is so many times its distance from the mean, in the mean: √(π/2). */
    private static final double NORMAL = 1.25;

    private final ViewFit fit;

    private final FocalGuess focal;

    private final Leans leans;

    private final Rings rings;

    private final KnownSquares squares;

    LeanOdds(ViewFit fit, FocalGuess focal, ViewFit.TiltGuess tilt, Rings rings, KnownSquares squares) {
        this.fit = fit;
        this.focal = focal;
        leans = new Leans(tilt);
        this.rings = rings;
        this.squares = squares;
    }

    /** Whether nothing but the picture tells of the lens. */
    private boolean isVague() {
        return focal.uncertainty() >= VAGUE;
    }

    /** The view in the mean of all, from where the axis is about. */
    ViewFit.View mean(Sight.AxisLine axis) throws Unsure {
        double near = 0;
        for (int reading = 1; ; reading++) {
            Read read = read(axis, near);
            Mean mean = mean(read);
            if (reading == READINGS || Math.abs(mean.focal - near) < NEAR) {
                return view(axis, read, mean);
            }
            near = mean.focal;
        }
    }

    /**
     * What was read through one lens.
     *
     * @param near the log of its focal length over the guess
     * @param start the start end's odds, unless a square ends there
     * @param end the other's
     * @param strays what squares stray by in each lean
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Read(double near, Optional<EndOdds> start, Optional<EndOdds> end, double[] strays) {}

    private Read read(Sight.AxisLine axis, double near) throws Unsure {
        List<Cores.Work<SquaredContour>> begun = new ArrayList<>();
        for (int k = 0; k < leans.count(); k++) {
            double lean = leans.lean(k);
            begun.add(Cores.begin(() -> fit.contour(fit.straightened(axis, near, lean), near, lean)));
        }
        List<SquaredContour> contours = new ArrayList<>();
        for (Cores.Work<SquaredContour> each : begun) {
            contours.add(each.done());
        }
        SquaredContour middle = contours.get(leans.middle());
        Optional<EndOdds> start = squares.atStart() ? Optional.empty() : Optional.of(new EndOdds(true, middle, leans));
        Optional<EndOdds> end = squares.atEnd() ? Optional.empty() : Optional.of(new EndOdds(false, middle, leans));
        double[] strays = new double[leans.count()];
        Cores.each(leans.count(), k -> {
            start.ifPresent(odds -> odds.read(k, contours.get(k)));
            end.ifPresent(odds -> odds.read(k, contours.get(k)));
            strays[k] = squares.strays(contours.get(k));
        });
        start.ifPresent(EndOdds::settle);
        end.ifPresent(EndOdds::settle);
        return new Read(near, start, end, strays);
    }

    /**
     * The mean view and its spread.
     *
     * @param focal log of the focal length over the guess
     * @param tilt radians
     * @param focalSpread one standard deviation
     * @param tiltSpread one standard deviation
     */
    private record Mean(double focal, double tilt, double focalSpread, double tiltSpread) {}

    private Mean mean(Read read) {
        int steps = isVague() ? VAGUE_STEPS : STEPS;
        double[][] costs = new double[2 * steps + 1][leans.fineCount()];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < costs.length; i++) {
            for (int j = 0; j < costs[i].length; j++) {
                costs[i][j] = cost(read, longer(i, steps), leans.fine(j));
                least = Math.min(least, costs[i][j]);
            }
        }
        double[] sums = new double[5];
        for (int i = 0; i < costs.length; i++) {
            double longer = longer(i, steps);
            for (int j = 0; j < costs[i].length; j++) {
                double weight = Math.exp((least - costs[i][j]) / 2);
                double tilt = leans.fine(j);
                sums[0] += weight;
                sums[1] += weight * longer;
                sums[2] += weight * tilt;
                sums[3] += weight * longer * longer;
                sums[4] += weight * tilt * tilt;
            }
        }
        double longer = sums[1] / sums[0];
        double tilt = sums[2] / sums[0];
        return new Mean(
                longer,
                tilt,
                Math.sqrt(Math.max(0, sums[3] / sums[0] - longer * longer)),
                Math.sqrt(Math.max(0, sums[4] / sums[0] - tilt * tilt)));
    }

    private double longer(int i, int steps) {
        return FAR * (i - steps) / steps * focal.uncertainty();
    }

    /** Twice the negative log of how likely a view is. */
    private double cost(Read read, double longer, double tilt) {
        double nearer = longer - read.near;
        return square(longer / focal.uncertainty())
                + square((tilt - leans.guess().tilt()) / leans.guess().uncertainty())
                + rings.strays(longer, tilt)
                + leans.between(tilt).of(read.strays)
                + read.start.map(odds -> odds.cost(tilt, nearer)).orElse(0.0)
                + read.end.map(odds -> odds.cost(tilt, nearer)).orElse(0.0);
    }

    private static double square(double value) {
        return value * value;
    }

    private ViewFit.View view(Sight.AxisLine axis, Read read, Mean mean) throws Unsure {
        Optional<EndOdds.Told> start = read.start.map(odds -> odds.told(mean.tilt, mean.focal - read.near));
        Optional<EndOdds.Told> end = read.end.map(odds -> odds.told(mean.tilt, mean.focal - read.near));
        double[] uncertain = {Math.hypot(isVague() ? LEAST_OF_FOCAL : 0, mean.focalSpread), mean.tiltSpread};
        Sight.AxisLine straight = fit.straightened(axis, mean.focal, mean.tilt);
        ViewFit.View view = fit.seen(straight, mean.focal, mean.tilt, uncertain, edge(start), edge(end));
        return view.withEnds(
                start.map(told -> open(view, true, told)).orElse(view.start()),
                end.map(told -> open(view, false, told)).orElse(view.end()));
    }

    /** A square's end is read as a sawn one until somebody else has found where it stands. */
    private static EndEdge edge(Optional<EndOdds.Told> told) {
        return told.map(EndOdds.Told::edge).orElse(EndEdge.SHARP);
    }

    /** An end with what its place is known to: what has a face may be another one's, or a dome, the pole of which stands farther out. */
    private static EndCap open(ViewFit.View view, boolean start, EndOdds.Told told) {
        EndCap cap = start ? view.start() : view.end();
        if (!cap.isPlaced()) {
            return cap;
        }
        double pole = RoundedEnd.of(view.contour(), start, cap.place()).place();
        return cap.opened(NORMAL * (told.apart() + told.round() * Math.abs(pole - cap.place())));
    }
}
