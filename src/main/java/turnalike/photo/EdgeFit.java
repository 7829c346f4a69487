package turnalike.photo;

import java.util.Arrays;

/** Puts each point of the contour where {@link EdgeModel} explains best what was written across it. */
final class EdgeFit {
    /** A step of less than this, in codes over brightness and colours, is no edge. */
    private static final double LEAST_STEP = 5;

    /** A place less sure than this, in pixels, is not taken. */
    private static final double LEAST_SURE = 1;

    private static final double MOST_MOVED = 4;

    /** Brighter than this of 255 is as good as full. */
    private static final double BURNT = 250;

    private static final double[] SOFTNESSES = {0.45, 0.6, 0.8, 1.05, 1.4, 1.9, 2.6, 3.6, 5};

    /** So many points of the contour are fitted at most, in the first round and in the second. */
    private static final int FITS_AT_FIRST = 800;

    private static final int FITS = 1200;

    /** To how many points on either side hues are averaged. */
    private static final int HUES = 12;

    private final LocalColours colours;

    private final CoarseColour coarse;

    private final double[] x;

    private final double[] y;

    private final float[] colour = new float[3];

    private final float[] mixed = new float[3];

    private final double[] summed = new double[3];

    private final double[][] seen = new double[3][EdgeModel.SAMPLES];

    /** Of each point the wood's hue and the ground's, each of sum 1. */
    private final double[][][] hues;

    /** A closed contour, points about a pixel apart. */
    EdgeFit(LocalColours colours, CoarseColour coarse, double[] x, double[] y) {
        this.colours = colours;
        this.coarse = coarse;
        this.x = x;
        this.y = y;
        hues = new double[x.length][2][3];
    }

    /**
     * The contour after fitting.
     *
     * @param x of its points
     * @param y of them
     * @param softness of the edges, as a standard deviation in pixels
     * @param sure what a point of them is uncertain by, in the middle, one standard deviation in pixels
     * @param burnt how many of the points lie against a ground that is brighter than the camera could write, 0 to 1
     * @param contrast the middle step from ground to piece, in codes over brightness and colours
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    record Fitted(double[] x, double[] y, double softness, double sure, double burnt, double contrast) {}

    /** What a point strays by, in codes. */
    private record Noise(double bright, double colour) {}

    /** Twice: the first brings the windows in place for the second and tells how much wood and ground stray. */
    Fitted fit() {
        Noise noise = new Noise(2.5, 3);
        learnHues();
        double softness = softness(noise, 0, SOFTNESSES.length - 1);
        // The larger the picture, the smoother its edges run from pixel to pixel, and the farther apart they are fitted.
        Moved once = moved(softness, noise, stride(3, 2 * softness, FITS_AT_FIRST), true);
        EdgeFit again =
                new EdgeFit(colours, coarse, once.fitted().x(), once.fitted().y());
        again.learnHues();
        int rank = 0;
        while (rank < SOFTNESSES.length - 1 && SOFTNESSES[rank + 1] <= softness) {
            rank++;
        }
        double soft =
                again.softness(once.noise(), Math.max(0, rank - 1), Math.min(SOFTNESSES.length - 1, rank + 2));
        return again.moved(soft, once.noise(), stride(2, 1.3 * soft, FITS), false)
                .fitted();
    }

    private int stride(int least, double softnesses, int fits) {
        return (int) Math.max(Math.max(least, Math.round(softnesses)), x.length / fits);
    }

    private record Moved(Fitted fitted, Noise noise) {}

    /** Every so manieth point is fitted: each has seen its neighbours' pixels. */
    private Moved moved(double softness, Noise noise, int stride, boolean wide) {
        int n = x.length;
        double[][] normals = new double[n][];
        double[] offsets = new double[n];
        double[] contrasts = new double[n];
        double[] bright = new double[n];
        double[] sure = new double[n];
        int fitted = 0;
        int burnt = 0;
        double[] colourful = new double[n];
        EdgeSearch model = new EdgeSearch(noise.bright(), noise.colour());
        double before = 0;
        for (int i = 0; i < n; i++) {
            normals[i] = normal(i);
            if (i % stride != 0) {
                continue;
            }
            sample(i, normals[i]);
            model.coarse(coarse.along(normals[i]));
            double last = i >= stride ? offsets[i - stride] : 0;
            double near = Double.isNaN(last) ? 0 : Math.max(-1.5, Math.min(1.5, last));
            double[] starts = wide
                    ? new double[] {near, near - 1.2, near + 1.2, -2.6, 2.6}
                    : new double[] {near - 1.2, near + 1.2};
            model.take(seen, hues[i][0], hues[i][1], softness);
            double least = wide ? model.from(starts) : model.from(near);
            // As good a fit as its neighbour's from its neighbour's place is the same edge; else others are tried, and
            // at each tenth point, so that a wrong one is not handed on for ever.
            if (!wide && (least >= 1.3 * before || i / stride % 10 == 0)) {
                least = model.from(starts);
            }
            double offset = model.settle();
            boolean found =
                    model.contrast() > LEAST_STEP && model.sure() < LEAST_SURE && Math.abs(offset) < MOST_MOVED;
            offsets[i] = found ? offset : Double.NaN;
            contrasts[i] = model.contrast();
            bright[i] = model.brightMiss();
            colourful[i] = model.colourMiss();
            sure[i] = model.sure();
            before = least;
            fitted++;
            burnt += seen[0][EdgeModel.SAMPLES - 3] > BURNT ? 1 : 0;
        }
        between(offsets, stride);
        double[] fittedX = x.clone();
        double[] fittedY = y.clone();
        for (int i = 0; i < n; i++) {
            double usual = usual(offsets, i, Math.max(1, stride / 2));
            // A point that goes its own way has met a knot, a shaving or the grain.
            double offset = Math.abs(offsets[i] - usual) < 0.6 ? offsets[i] : usual;
            fittedX[i] += offset * normals[i][0];
            fittedY[i] += offset * normals[i][1];
        }
        return new Moved(
                new Fitted(
                        fittedX,
                        fittedY,
                        softness,
                        middle(sure, stride),
                        (double) burnt / Math.max(1, fitted),
                        middle(contrasts, stride)),
                new Noise(Math.max(0.7, middle(bright, stride)), Math.max(0.7, middle(colourful, stride)) * 1.5));
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
        int every = Math.max(1, x.length / 40);
        double[] found = new double[x.length / every + 1];
        int count = 0;
        EdgeSearch model = new EdgeSearch(noise.bright(), noise.colour());
        for (int i = 0; i < x.length; i += every) {
            double[] normal = normal(i);
            sample(i, normal);
            model.coarse(coarse.along(normal));
            double[] costs = new double[to - from + 1];
            int least = -1;
            for (int k = from; k <= to; k++) {
                model.take(seen, hues[i][0], hues[i][1], SOFTNESSES[k]);
                costs[k - from] = model.from(0);
                model.settle();
                if ((least < 0 || costs[k - from] < costs[least]) && model.contrast() > 3 * LEAST_STEP) {
                    least = k - from;
                }
            }
            if (least >= 0) {
                found[count++] = between(costs, least, from);
            }
        }
        Arrays.sort(found, 0, count);
        return count == 0 ? 0.8 : found[count / 4];
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

    /** Outward, from the contour some points to both sides; the walk keeps the piece on one side all along. */
    private double[] normal(int i) {
        int n = x.length;
        double tx = 0;
        double ty = 0;
        for (int k = 1; k <= 4; k++) {
            tx += x[(i + k) % n] - x[(i - k + n) % n];
            ty += y[(i + k) % n] - y[(i - k + n) % n];
        }
        double size = Math.max(1e-12, Math.hypot(tx, ty));
        return new double[] {ty / size, -tx / size};
    }

    /** What was written along the normal, half of it from a pixel to either side. */
    private void sample(int i, double[] normal) {
        for (int k = 0; k < EdgeModel.SAMPLES; k++) {
            double d = -EdgeModel.REACH + k * EdgeModel.STEP;
            double px = x[i] + d * normal[0];
            double py = y[i] + d * normal[1];
            Arrays.fill(summed, 0);
            for (int side = -1; side <= 1; side++) {
                colours.between(px + side * normal[1], py - side * normal[0], colour, mixed);
                for (int c = 0; c < 3; c++) {
                    summed[c] += (side == 0 ? 0.5 : 0.25) * mixed[c];
                }
            }
            EdgeModel.split(summed[0], summed[1], summed[2], seen, k);
        }
    }

    /** The hues some pixels within and without, averaged along the contour. */
    private void learnHues() {
        int n = x.length;
        double[][][] light = new double[n][2][3];
        for (int i = 0; i < n; i++) {
            double[] normal = normal(i);
            for (int side = 0; side < 2; side++) {
                for (double d = 2.5; d <= 6; d += 1) {
                    double way = side == 0 ? -d : d;
                    colours.between(x[i] + way * normal[0], y[i] + way * normal[1], colour, mixed);
                    for (int c = 0; c < 3; c++) {
                        light[i][side][c] += Gamma.linear(mixed[c]);
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int side = 0; side < 2; side++) {
                double[] sum = hues[i][side];
                for (int k = -HUES; k <= HUES; k++) {
                    for (int c = 0; c < 3; c++) {
                        sum[c] += light[Math.floorMod(i + k, n)][side][c];
                    }
                }
                double whole = Math.max(1e-9, sum[0] + sum[1] + sum[2]);
                for (int c = 0; c < 3; c++) {
                    sum[c] = (sum[c] + 1e-9 * whole / 3) / whole;
                }
            }
        }
    }
}
