package turnalike.photo;

import java.util.Arrays;

/** Puts each point of the contour where {@link EdgeModel} explains best what was written across it. */
final class EdgeFit {
    /** A step of less than this, in codes over brightness and colours, is no edge. */
    private static final double LEAST_STEP = 5;

    /** A place less sure than this, in pixels, is not taken. */
    private static final double LEAST_SURE = 1;

    private static final double MOST_MOVED = 4;

    /** Farther than this from where its neighbours are, in pixels, and a point goes its own way; what one is unsure by where no edge was found. */
    private static final double MOST_ALONE = 0.6;

    private static final double NOT_FOUND = 2;

    /**
     * A search that leaves no more than this explains its line as well as noise lets: a line's numbers then stray by two thirds of the noise that is
     * assumed at first.
     */
    private static final double WELL = 30;

    /** So many times the least cost is left by a softness far beyond the best; on none of fifty pictures a better one came after that. */
    private static final double MUCH_WORSE = 1.5;

    private static final double[] SOFTNESSES = {0.45, 0.6, 0.8, 1.05, 1.4, 1.9, 2.6, 3.6, 5};

    /** So many points of the contour are fitted at most, in the first round and in the second. */
    private static final int FITS_AT_FIRST = 800;

    private static final int FITS = 1200;

    /** So many fitted points follow one another; the next ones begin anew, so that threads can share them and none hangs on which thread it was. */
    private static final int RUN = 60;

    private final Picture picture;

    private final CoarseColour coarse;

    private final EdgeLines lines;

    private final Sight.AxisLine axis;

    /** A closed contour, points about a pixel apart, of a piece whose axis lies about there. */
    EdgeFit(Picture picture, CoarseColour coarse, Sight.AxisLine axis, double[] x, double[] y) {
        this.picture = picture;
        this.coarse = coarse;
        this.axis = axis;
        lines = new EdgeLines(picture, x, y);
    }

    /**
     * The contour after fitting.
     *
     * @param x of its points
     * @param y of them
     * @param doubts what each of them is uncertain by, one standard deviation in pixels
     * @param softness of the edges, as a standard deviation in pixels
     * @param sure what a point of them is uncertain by, in the middle, one standard deviation in pixels
     * @param burnt how many of the points lie against a ground that is brighter than the camera could write, 0 to 1
     * @param contrast the middle step from ground to piece, in codes over brightness and colours
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    record Fitted(
            double[] x, double[] y, double[] doubts, double softness, double sure, double burnt, double contrast) {}

    /** What a point strays by, in codes. */
    private record Noise(double bright, double colour) {}

    /** Twice: the first brings the windows in place for the second and tells how much wood and ground stray. */
    Fitted fit() {
        Noise noise = new Noise(2.5, 3);
        double softness = softness(noise, 0, SOFTNESSES.length - 1);
        // The larger the picture, the smoother its edges run from pixel to pixel, and the farther apart they are
        // fitted.
        Moved once = moved(softness, noise, stride(3, 2 * softness, FITS_AT_FIRST), true);
        EdgeFit again = new EdgeFit(
                picture, coarse, axis, once.fitted().x(), once.fitted().y());
        int rank = 0;
        while (rank < SOFTNESSES.length - 1 && SOFTNESSES[rank + 1] <= softness) {
            rank++;
        }
        double soft = again.softness(once.noise(), Math.max(0, rank - 1), Math.min(SOFTNESSES.length - 1, rank + 2));
        Fitted fitted = again.moved(soft, once.noise(), stride(2, 1.3 * soft, FITS), false)
                .fitted();
        HollowCorners.sharpen(fitted.x(), fitted.y(), fitted.doubts(), soft);
        return fitted;
    }

    private int stride(int least, double softnesses, int fits) {
        return (int) Math.max(Math.max(least, Math.round(softnesses)), lines.count() / fits);
    }

    private record Moved(Fitted fitted, Noise noise) {}

    /** What was found at the fitted points, each at its place among all; offsets are NaN where no edge was. */
    private static final class Found {
        private final double[] offsets;

        private final double[] contrasts;

        private final double[] bright;

        private final double[] colourful;

        private final double[] sure;

        private final boolean[] burnt;

        Found(int count) {
            offsets = new double[count];
            contrasts = new double[count];
            bright = new double[count];
            colourful = new double[count];
            sure = new double[count];
            burnt = new boolean[count];
        }
    }

    /** Every so manieth point is fitted: each has seen its neighbours' pixels. */
    private Moved moved(double softness, Noise noise, int stride, boolean wide) {
        int n = lines.count();
        Found found = new Found(n);
        Cores.each(
                (n + stride * RUN - 1) / (stride * RUN),
                run -> fitted(run * stride * RUN, softness, noise, stride, wide, found));
        int burnt = 0;
        for (boolean each : found.burnt) {
            burnt += each ? 1 : 0;
        }
        double[] offsets = found.offsets;
        between(offsets, stride);
        double[] doubts = new double[n];
        double[] fittedX = lines.x().clone();
        double[] fittedY = lines.y().clone();
        Cores.parts(n, (from, end) -> {
            for (int i = from; i < end; i++) {
                double usual = usual(offsets, i, Math.max(1, stride / 2));
                // A point that goes its own way has met a knot, a shaving or the grain.
                double offset = Math.abs(offsets[i] - usual) < MOST_ALONE ? offsets[i] : usual;
                doubts[i] = Double.isNaN(offsets[i])
                        ? NOT_FOUND
                        : Math.hypot(found.sure[i - i % stride], offset - offsets[i]);
                fittedX[i] += offset * lines.normal(i)[0];
                fittedY[i] += offset * lines.normal(i)[1];
            }
        });
        return new Moved(
                new Fitted(
                        fittedX,
                        fittedY,
                        doubts,
                        softness,
                        middle(found.sure, stride),
                        (double) burnt * stride / Math.max(1, n),
                        middle(found.contrasts, stride)),
                new Noise(
                        Math.max(0.7, middle(found.bright, stride)),
                        Math.max(0.7, middle(found.colourful, stride)) * 1.5));
    }

    /** One run of fitted points, each of which begins where the one before ended. */
    private void fitted(int from, double softness, Noise noise, int stride, boolean wide, Found found) {
        EdgeSearch search = new EdgeSearch(noise.bright(), noise.colour());
        EdgeLines.Reader reader = lines.new Reader();
        RimLight within = new RimLight(picture, lines, axis, softness);
        double before = 0;
        double last = 0;
        for (int k = 0; k < RUN && from + k * stride < lines.count(); k++) {
            int i = from + k * stride;
            double[][] seen = reader.read(i);
            search.coarse(coarse.along(lines.normal(i)));
            search.take(seen, lines.inside(i), lines.outside(i), softness);
            search.expect(within.at(i));
            double near = Double.isNaN(last) ? 0 : Math.max(-1.5, Math.min(1.5, last));
            if (wide) {
                // Where the first place tried explains all that noise leaves open, no other can be much better; but
                // before
                // a burnt-out ground, of which little is written, any place explains much.
                boolean burnt = seen[0][EdgeModel.SAMPLES - 3] > EdgeSearch.BURNT;
                boolean well = !burnt && k % 10 != 0 && search.from(near) < WELL;
                if (!well) {
                    search.from(new double[] {near, near - 1.2, near + 1.2, -2.6, 2.6});
                }
                before = search.cost();
            } else {
                double least = search.from(near);
                // As good a fit as its neighbour's from its neighbour's place is the same edge; else others are tried,
                // and at each tenth point, so that a wrong one is not handed on for ever.
                before = least < 1.3 * before && k % 10 != 0
                        ? least
                        : search.from(new double[] {near - 1.2, near + 1.2});
            }
            double offset = search.settle();
            boolean edge =
                    search.contrast() > LEAST_STEP && search.sure() < LEAST_SURE && Math.abs(offset) < MOST_MOVED;
            last = edge ? offset : Double.NaN;
            found.offsets[i] = last;
            found.contrasts[i] = search.contrast();
            found.bright[i] = search.brightMiss();
            found.colourful[i] = search.colourMiss();
            found.sure[i] = search.sure();
            found.burnt[i] = seen[0][EdgeModel.SAMPLES - 3] > EdgeSearch.BURNT;
        }
    }

    /** Between two fitted points the offset runs straight. */
    private static void between(double[] offsets, int stride) {
        int n = offsets.length;
        for (int i = 0; i < n; i++) {
            int from = i - i % stride;
            int to = Math.min(from + stride, n);
            double share = (double) (i - from) / (to - from);
            if (share > 0) {
                offsets[i] = (1 - share) * offsets[from] + share * offsets[to == n ? 0 : to];
            }
        }
    }

    private static double middle(double[] values, int stride) {
        double[] sorted = new double[(values.length + stride - 1) / stride];
        for (int k = 0; k < sorted.length; k++) {
            sorted[k] = values[k * stride];
        }
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    }

    /** The middle one of a point's and its neighbours' offsets; 0 where most have none. */
    private static double usual(double[] offsets, int i, int step) {
        int n = offsets.length;
        double[] near = new double[7];
        int count = 0;
        for (int k = -3; k <= 3; k++) {
            double offset = offsets[Math.floorMod(i + k * step, n)];
            if (!Double.isNaN(offset)) {
                near[count++] = offset;
            }
        }
        if (count < 3) {
            return 0;
        }
        Arrays.sort(near, 0, count);
        return (near[(count - 1) / 2] + near[count / 2]) / 2;
    }

    /**
     * How soft the picture's edges are. Where the piece darkens towards its edge more suddenly than the model has it, the step looks softer than
     * the lens made it, never sharper: so not the usual softness but that of the sharper quarter.
     */
    private double softness(Noise noise, int from, int to) {
        int n = lines.count();
        int every = Math.max(1, n / 40);
        double[] found = new double[(n + every - 1) / every];
        Cores.parts(found.length, (first, end) -> {
            EdgeSearch search = new EdgeSearch(noise.bright(), noise.colour());
            EdgeLines.Reader reader = lines.new Reader();
            RimLight within = new RimLight(picture, lines, axis, SOFTNESSES[(from + to) / 2]);
            for (int k = first; k < end; k++) {
                found[k] = softness(k * every, search, reader, within, from, to);
            }
        });
        double[] told = Arrays.stream(found).filter(each -> each > 0).sorted().toArray();
        return told.length == 0 ? 0.8 : told[told.length / 4];
    }

    /** Of the edge at one point; 0 where there is none. */
    private double softness(int i, EdgeSearch search, EdgeLines.Reader reader, RimLight within, int from, int to) {
        double[][] seen = reader.read(i);
        search.coarse(coarse.along(lines.normal(i)));
        double[] light = within.at(i);
        double[] costs = new double[to - from + 1];
        int least = -1;
        double[] inside = lines.inside(i);
        double[] outside = lines.outside(i);
        // A lens much softer than the best one explains a line ever worse: no need to try those.
        boolean worse = false;
        for (int k = from; k <= to && !worse; k++) {
            search.take(seen, inside, outside, SOFTNESSES[k]);
            search.expect(light);
            costs[k - from] = search.from(0);
            search.judge();
            if ((least < 0 || costs[k - from] < costs[least]) && search.contrast() > 3 * LEAST_STEP) {
                least = k - from;
            }
            worse = least >= 0 && k - from > least + 1 && costs[k - from] > MUCH_WORSE * costs[least];
        }
        return least < 0 ? 0 : between(costs, least, from);
    }

    /** The softness of least cost, by the parabola through the least one and its neighbours; the softnesses grow by factors. */
    private static double between(double[] costs, int least, int from) {
        double here = SOFTNESSES[from + least];
        if (least == 0 || least == costs.length - 1) {
            return here;
        }
        double bend = costs[least - 1] - 2 * costs[least] + costs[least + 1];
        double share = bend > 0 ? 0.5 * (costs[least - 1] - costs[least + 1]) / bend : 0;
        double within = Math.max(-0.5, Math.min(0.5, share));
        double next = SOFTNESSES[from + least + (within < 0 ? -1 : 1)];
        return here * Math.pow(next / here, Math.abs(within));
    }
}
