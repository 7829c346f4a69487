package turnalike.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight stretch between two corners of the outline. Most such are cylinders, and a slight taper is seldom turned: a view in which one becomes a
 * cylinder is the likelier for it. In a view that leans by δ too little every radius is too large by the share δ·e of its place e, so a cylinder is seen to widen by just δ of
 * its radius for each unit of the distance.
 *
 * @param widens by how much of its radius it is seen to widen, for each unit along, of the camera's distance
 * @param doubt what that would be uncertain by of a cylinder, one standard deviation
 */
record StraightRun(double widens, double doubt) {
    /** A turned cylinder is straight to so much, and an edge is found to so many pixels from end to end of one. Our choice. */
    private static final double TURNED = 0.0005;

    private static final double PIXELS = 0.15;

    /** So many of such stretches are cylinders; the others are tapers, any as likely that widens or narrows by up to so much: slight tapers are seldom turned. Common practice, no source. */
    private static final double CYLINDERS = 0.5;

    private static final double MOST_TAPER = 0.5;

    /** It strays from a straight line by no more than so many pixels, root mean square, and is no shorter than so many. */
    private static final double STRAIGHT = 0.12;

    private static final double LEAST_PIXELS = 50;

    /** A curve leaves its chord slowly; a corner by so many pixels within such a share of the length. */
    private static final double LEAVES = 1.2;

    private static final double BESIDE = 0.15;

    private static final double LEAST_BESIDE = 4;

    /** The ones of an outline, but for squares. */
    static List<StraightRun> of(RoundOutline outline, Sight sight, KnownSquares squares) {
        List<StraightRun> runs = new ArrayList<>();
        Line line = new Line(outline, sight.focal());
        int from = 0;
        while (from < outline.count()) {
            int to = line.longest(from);
            int middle = (from + to) / 2;
            if (line.pixels(from, to) < LEAST_PIXELS || squares.holds(sight, outline.ray(middle))) {
                from++;
                continue;
            }
            // From a corner a straight line may begin a little later than the first place that it passes for one.
            int best = from;
            int last = to;
            for (int k = from + 1; k < middle; k++) {
                int end = line.longest(k);
                if (end - k > last - best) {
                    best = k;
                    last = end;
                }
            }
            if (line.leaves(best, last)) {
                double slope = line.slope(best, last);
                double doubt = Math.hypot(TURNED, PIXELS / line.pixels(best, last));
                double radius = outline.radiusUnits((best + last) / 2);
                runs.add(new StraightRun(slope / radius, doubt / radius));
            }
            from = last + 1;
        }
        return List.copyOf(runs);
    }

    /** How likely it is, up to a factor, in a view that leans by so much more, radians. */
    double likely(double lean) {
        double off = (widens - lean) / doubt;
        return CYLINDERS * Math.exp(-off * off / 2) / (doubt * Math.sqrt(2 * Math.PI))
                + (1 - CYLINDERS) / (2 * MOST_TAPER);
    }

    /** Straight lines through an outline's steps, from sums up to each. */
    private static final class Line {
        private final RoundOutline outline;

        private final double focal;

        private final double[][] sums = new double[6][];

        Line(RoundOutline outline, double focal) {
            this.outline = outline;
            this.focal = focal;
            int n = outline.count();
            for (int s = 0; s < sums.length; s++) {
                sums[s] = new double[n + 1];
            }
            double middle = outline.alongUnits(n / 2);
            for (int k = 0; k < n; k++) {
                double x = outline.alongUnits(k) - middle;
                double y = outline.radiusUnits(k);
                double[] terms = {1, x, y, x * x, x * y, y * y};
                for (int s = 0; s < sums.length; s++) {
                    sums[s][k + 1] = sums[s][k] + terms[s];
                }
            }
        }

        double pixels(int from, int to) {
            return focal * (outline.alongUnits(to) - outline.alongUnits(from));
        }

        private double sum(int s, int from, int to) {
            return sums[s][to + 1] - sums[s][from];
        }

        double slope(int from, int to) {
            double n = sum(0, from, to);
            double across = sum(3, from, to) - sum(1, from, to) * sum(1, from, to) / n;
            return across > 0 ? (sum(4, from, to) - sum(1, from, to) * sum(2, from, to) / n) / across : 0;
        }

        private double strays(int from, int to) {
            double n = sum(0, from, to);
            double slope = slope(from, to);
            double xy = sum(4, from, to) - sum(1, from, to) * sum(2, from, to) / n;
            double yy = sum(5, from, to) - sum(2, from, to) * sum(2, from, to) / n;
            return focal * Math.sqrt(Math.max(0, (yy - slope * xy) / n));
        }

        /** The last step up to which it is straight from there. */
        int longest(int from) {
            int to = from;
            int step = 1;
            while (step > 0) {
                boolean on = to + step < outline.count() && strays(from, to + step) < STRAIGHT;
                to += on ? step : 0;
                step = on ? 2 * step : step / 2;
            }
            return to;
        }

        /** Whether the outline leaves it at either end as at a corner, or ends there. */
        boolean leaves(int from, int to) {
            return leaves(from, to, -1) && leaves(from, to, 1);
        }

        private boolean leaves(int from, int to, int way) {
            double n = sum(0, from, to);
            double slope = slope(from, to);
            double x0 = sum(1, from, to) / n + outline.alongUnits(outline.count() / 2);
            double y0 = sum(2, from, to) / n;
            double beside = Math.max(LEAST_BESIDE, BESIDE * pixels(from, to)) / focal;
            int at = way > 0 ? to : from;
            for (int k = at; k >= 0 && k < outline.count(); k += way) {
                double x = outline.alongUnits(k);
                if (Math.abs(outline.radiusUnits(k) - y0 - slope * (x - x0)) * focal > LEAVES) {
                    return true;
                }
                if (Math.abs(x - outline.alongUnits(at)) > beside) {
                    return false;
                }
            }
            return true;
        }
    }
}
