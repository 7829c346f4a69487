package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One edge of the contour from the piece's start to its end, in squared coordinates, with some of the other edge beyond each end. Gives for each
 * of its points where on the piece the ray through it touches, from the contour's course nearby.
 */
final class EdgeChain {
    /** How far to each side a fit may look, in points of about a pixel; the longest that the noise lets pass is taken. */
    private static final int[] REACHES = {4, 7, 12, 20};

    /** How far beside a corner its two sides are judged, and by how many points. */
    private static final int CORNER = 2;

    private static final int SIDE = 6;

    /** The least leap, in pixels, that is not noise. */
    private static final double LEAP = 2.5;

    /** Across by along, from where on a ray's touching place is the noise's: what is seen of it is no more than where it runs. */
    private static final double STEEP = 3;

    private final double[] along;

    private final double[] across;

    /** The edge proper: the points from here to before there. */
    private final int first;

    private final int end;

    private final double focal;

    private final TangentRay[] rays;

    /** The usual distance of a point from a smooth course, in pixels. */
    private final double noise;

    /** What the last fit left over, in pixels. */
    private double left;

    /**
     * Fits the contour at each point of the edge.
     *
     * @param along X of the points, start to end
     * @param across Y of them, either sign
     * @param first the first of the edge proper
     * @param end the one after its last
     * @param focal pixels to one unit
     */
    EdgeChain(double[] along, double[] across, int first, int end, double focal) {
        this.along = along;
        this.across = across;
        this.first = first;
        this.end = end;
        this.focal = focal;
        rays = new TangentRay[end - first];
        noise = noise();
        for (int i = first; i < end; i++) {
            rays[i - first] = touching(i);
        }
    }

    int size() {
        return end - first;
    }

    double along(int i) {
        return along[first + i];
    }

    double across(int i) {
        return across[first + i];
    }

    /** The ray through a point, smoothed by its neighbours, and where it touches. */
    TangentRay ray(int i) {
        return rays[i];
    }

    /** The largest distance of a point across the axis. */
    double widest() {
        double most = 0;
        for (int i = first; i < end; i++) {
            most = Math.max(most, Math.abs(across[i]));
        }
        return most;
    }

    /** The usual distance of a point from a smooth course, in pixels. */
    double noisePixels() {
        return noise;
    }

    private double noise() {
        double[] all = new double[Math.max(1, (end - first) / 5)];
        int count = 0;
        for (int i = first; i < end && count < all.length; i += 5) {
            fit(i, Math.max(0, i - 6), Math.min(along.length - 1, i + 6));
            all[count++] = left;
        }
        Arrays.sort(all, 0, count);
        return Math.max(0.02, count == 0 ? 0 : all[count / 2]);
    }

    /**
     * Where the contour has a hollow corner: on its two sides the rays touch at places apart, and what lies between stands behind the thicker
     * part. Judged a little beside the corner, which the picture's softness rounds.
     *
     * @return pairs of places, each the last seen before and the first seen after
     */
    List<double[]> leaps() {
        double[] leap = new double[along.length];
        double[][] sides = new double[along.length][];
        for (int i = Math.max(first, CORNER + SIDE); i < Math.min(end, along.length - CORNER - SIDE); i++) {
            double before = fit(i - CORNER, i - CORNER - SIDE, i - CORNER).place();
            double after = fit(i + CORNER, i + CORNER, i + CORNER + SIDE).place();
            sides[i] = new double[] {before, after};
            leap[i] = after - before - Math.abs(along[i + CORNER] - along[i - CORNER]);
        }
        List<double[]> leaps = new ArrayList<>();
        for (int i = first; i < end; i++) {
            // A slope that is off by noise moves the touching place the farther, the more aslant the ray.
            double unsure = 4 * noise * along[i] * along[i] * Math.abs(across[i]);
            boolean most = leap[i] > LEAP / focal + unsure;
            for (int k = Math.max(0, i - SIDE); most && k <= Math.min(leap.length - 1, i + SIDE); k++) {
                most = k == i || leap[k] < leap[i] || (leap[k] == leap[i] && k > i);
            }
            if (most) {
                leaps.add(sides[i]);
            }
        }
        return leaps;
    }

    /**
     * Where the contour steps: of rays that run along a shoulder nobody knows where they touch, so between the last ray before it and the first
     * one after it nothing was seen, be it a pixel only.
     *
     * @return pairs of places, each the last seen before and the first seen after
     */
    List<double[]> steps() {
        List<double[]> steps = new ArrayList<>();
        int i = first + 1;
        // What begins or ends with the edge itself is the piece's end.
        while (i < end - 1 && isSteep(i)) {
            i++;
        }
        while (i < end - 1) {
            int from = i;
            while (i < end - 1 && isSteep(i)) {
                i++;
            }
            boolean high = Math.abs(across[i] - across[from - 1]) > LEAP / focal;
            if (i > from && i < end - 1 && high) {
                steps.add(new double[] {middlePlace(from - 2), middlePlace(i + 1)});
            }
            i = Math.max(i, from + 1);
        }
        return steps;
    }

    /** The middle one of three neighbours' touching places: right beside a corner a single one may be the noise's. */
    private double middlePlace(int i) {
        int at = Math.max(1, Math.min(rays.length - 2, i - first));
        double[] places = {rays[at - 1].place(), rays[at].place(), rays[at + 1].place()};
        Arrays.sort(places);
        return places[1];
    }

    private boolean isSteep(int i) {
        return Math.abs(across[i + 1] - across[i - 1]) > STEEP * (along[i + 1] - along[i - 1]);
    }

    private TangentRay touching(int i) {
        TangentRay best = TangentRay.ofSlope(along[i], across[i] * across[i], 0);
        double least = Double.POSITIVE_INFINITY;
        for (int reach : REACHES) {
            boolean passed = false;
            for (int way = 0; way < 3; way++) {
                int from = Math.max(0, way == 2 ? i : i - reach);
                int to = Math.min(along.length - 1, way == 1 ? i : i + reach);
                if (to - from < 4) {
                    continue;
                }
                TangentRay ray = fit(i, from, to);
                // A window that sees both sides counts for more points than one that sees one side; a longer one that
                // passes beats all.
                boolean passes = left <= 1.3 * noise;
                double score = passes ? left / noise * 0.01 - reach - (way == 0 ? 2.5 * reach : 0) : 10 + left / noise;
                if (passes || reach == REACHES[0]) {
                    if (score < least) {
                        least = score;
                        best = ray;
                    }
                }
                passed |= passes;
            }
            if (!passed) {
                break;
            }
        }
        return best;
    }

    /**
     * Fits the points from one to another: Y² as a polynomial of second degree of X, or X of Y² where the edge is steep; each point counts by its
     * distance across the edge in the picture. Straight edges, arrises and spheres all have Y² of second degree in X, exactly.
     */
    private TangentRay fit(int i, int from, int to) {
        double spanAlong = Math.abs(along[to] - along[from]);
        double spanAcross = Math.abs(across[to] - across[from]);
        boolean steep = spanAcross > 1.2 * spanAlong;
        double scale = Math.max(1e-9, steep ? 2 * Math.abs(across[i]) * spanAcross : spanAlong);
        double squaredHere = across[i] * across[i];
        double constant = 0;
        double slope = 0;
        double bend = 0;
        for (int round = 0; round < 2; round++) {
            double w0 = 0;
            double w1 = 0;
            double w2 = 0;
            double w3 = 0;
            double w4 = 0;
            double v0 = 0;
            double v1 = 0;
            double v2 = 0;
            for (int k = from; k <= to; k++) {
                double squared = across[k] * across[k] - squaredHere;
                double t = (steep ? squared : along[k] - along[i]) / scale;
                double value = steep ? along[k] - along[i] : squared;
                double weight = weight(steep, k, (slope + 2 * bend * t) / scale);
                double once = weight * t;
                double twice = once * t;
                w0 += weight;
                w1 += once;
                w2 += twice;
                w3 += twice * t;
                w4 += twice * t * t;
                v0 += weight * value;
                v1 += once * value;
                v2 += twice * value;
            }
            double[] unknown =
                    LeastSquares.solve(new double[][] {{w0, w1, w2, v0}, {w1, w2, w3, v1}, {w2, w3, w4, v2}});
            constant = unknown[0];
            slope = unknown[1];
            bend = unknown[2];
        }
        double sum = 0;
        for (int k = from; k <= to; k++) {
            double squared = across[k] * across[k] - squaredHere;
            double t = (steep ? squared : along[k] - along[i]) / scale;
            double value = steep ? along[k] - along[i] : squared;
            double off = value - constant - t * (slope + t * bend);
            sum += off * off * weight(steep, k, (slope + 2 * bend * t) / scale);
        }
        left = focal * Math.sqrt(sum / Math.max(1, to - from + 1 - 3));
        return steep
                ? TangentRay.ofInverseSlope(along[i] + constant, squaredHere, slope / scale)
                : TangentRay.ofSlope(along[i], Math.max(0, squaredHere + constant), slope / scale);
    }

    /** One over the squared length of the gradient: turns what is off in Y² or X into distance across the edge. */
    private double weight(boolean steep, int k, double slope) {
        double twice = 2 * across[k];
        double size = steep ? 1 + twice * slope * twice * slope : twice * twice + slope * slope;
        return 1 / Math.max(size, 1e-8);
    }
}
