package turnalike.photo;

import java.util.Arrays;
import java.util.Optional;

/**
 * A contour mended where one of its two edges went astray: those of a round piece are mirror images, so where one stands farther out than the other, by a
 * shadow at the foot or where a stripe of the ground meets wood of its hue, the less sure one is laid where the surer one's image lies, to be looked for there.
 */
final class MirroredContour {
    /** Edges that stand apart by less than this, in pixels, may both be true: the axis is known no better. */
    private static final double LEAST_APART = 2;

    /** So many pixels along, together, must stand apart so, and no more than this share of the length: beyond, nobody knows which edge is the true one. */
    private static final int LEAST_ALONG = 8;

    private static final double MOST_ALONG = 0.4;

    /** So far along, in pixels, the other edge is looked at. */
    private static final int REACH = 2;

    /** A point laid anew is found if it is sure to so many pixels; so large a share of them must be. */
    private static final double FOUND = 0.5;

    private static final double MOST_FOUND = 0.7;

    /** An edge that is so many times less sure than the one farther out runs through the wood. */
    private static final double SURER = 1.5;

    private final SquaredContour contour;

    private final double pixel;

    private final double start;

    private final double[][] radii;

    /** What each edge is uncertain by, pixel by pixel along the axis. */
    private final double[][] doubts;

    private MirroredContour(SquaredContour contour) {
        this.contour = contour;
        pixel = 1 / contour.sight().focal();
        double[][] left = contour.points(true);
        start = left[0][0];
        double end = left[0][left[0].length - 1];
        int count = Math.max(0, (int) ((end - start) / pixel) + 1);
        radii = new double[2][count];
        doubts = new double[2][count];
        follow(0, left, contour.doubts(true));
        follow(1, contour.points(false), contour.doubts(false));
    }

    /**
     * A closed contour, of which some points were laid where the other edge's image lies.
     *
     * @param x of its points, about a pixel apart
     * @param y of them
     * @param anew which ones were
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    record Mended(double[] x, double[] y, boolean[] anew) {
        /** Whether an edge was found at most of the points laid anew: two alike of which one is but the other's image say nothing. */
        boolean isBorneOut(EdgeFit.Fitted fitted) {
            int count = 0;
            int found = 0;
            for (int i = 0; i < anew.length; i++) {
                count += anew[i] ? 1 : 0;
                found += anew[i] && fitted.doubts()[i] < FOUND ? 1 : 0;
            }
            return found > MOST_FOUND * count;
        }
    }

    /**
     * The contour so mended.
     *
     * @param contour in the view found, whole
     * @param lens how the picture bends
     * @return none where its edges stand apart nowhere, or nearly everywhere
     */
    static Optional<Mended> of(SquaredContour contour, Lens lens) {
        return new MirroredContour(contour).mended(lens);
    }

    /** How far out an edge stands, at its outermost, and how sure that is. */
    private void follow(int side, double[][] edge, double[] unsure) {
        for (int k = 1; k < edge[0].length; k++) {
            double from = (edge[0][k - 1] - start) / pixel;
            double to = (edge[0][k] - start) / pixel;
            int first = Math.max(0, (int) Math.ceil(Math.min(from, to)));
            int last = Math.min(radii[side].length - 1, (int) Math.floor(Math.max(from, to)));
            for (int t = first; t <= last; t++) {
                double share = to == from ? 1 : (t - from) / (to - from);
                double across = Math.abs(edge[1][k - 1] + share * (edge[1][k] - edge[1][k - 1]));
                if (across >= radii[side][t]) {
                    radii[side][t] = across;
                    doubts[side][t] = unsure[k];
                }
            }
        }
    }

    private Optional<Mended> mended(Lens lens) {
        int count = radii[0].length;
        boolean[] apart = new boolean[count];
        int sum = 0;
        for (int t = 0; t < count; t++) {
            apart[t] = isApart(t);
            sum += apart[t] ? 1 : 0;
        }
        if (sum < LEAST_ALONG || sum > MOST_ALONG * count) {
            return Optional.empty();
        }
        apart = widened(apart);
        int[] surer = surer(apart);
        double sign = Math.signum(Arrays.stream(contour.points(true)[1]).sum());
        double[][] once = new double[2][2 * count];
        boolean[] anew = new boolean[2 * count];
        for (int t = 0; t < count; t++) {
            anew[t] = apart[t] && surer[t] == 1;
            anew[2 * count - 1 - t] = apart[t] && surer[t] == 0;
            put(once, t, t, sign * radii[apart[t] ? surer[t] : 0][t], lens);
            put(once, 2 * count - 1 - t, t, -sign * radii[apart[t] ? surer[t] : 1][t], lens);
        }
        return Optional.of(evenly(once, anew));
    }

    /** Of each stretch in which the edges stand apart, the edge that is the surer one along it, in the middle; where both are alike, the inner one. */
    private int[] surer(boolean[] apart) {
        int[] surer = new int[apart.length];
        int from = 0;
        while (from < apart.length) {
            int to = from + 1;
            while (to < apart.length && apart[to] == apart[from]) {
                to++;
            }
            double[] middle = {middle(doubts[0], from, to), middle(doubts[1], from, to)};
            double[] out = {middle(radii[0], from, to), middle(radii[1], from, to)};
            int inner = out[0] < out[1] ? 0 : 1;
            int side = middle[inner] > SURER * middle[1 - inner] ? 1 - inner : inner;
            Arrays.fill(surer, from, to, side);
            from = to;
        }
        return surer;
    }

    /** With what lies right beside, from where an edge goes astray. */
    private static boolean[] widened(boolean[] apart) {
        boolean[] wide = new boolean[apart.length];
        for (int t = 0; t < apart.length; t++) {
            if (apart[t]) {
                Arrays.fill(wide, Math.max(0, t - REACH - 1), Math.min(apart.length, t + REACH + 2), true);
            }
        }
        return wide;
    }

    private static double middle(double[] values, int from, int to) {
        double[] sorted = Arrays.copyOfRange(values, from, to);
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private boolean isApart(int t) {
        return Math.max(off(0, 1, t), off(1, 0, t)) > LEAST_APART * pixel;
    }

    /** By how much one edge stands farther out than the other does within two pixels along: where they step, no place is quite the same on both. */
    private double off(int one, int other, int t) {
        double most = 0;
        for (int k = Math.max(0, t - REACH); k <= Math.min(radii[0].length - 1, t + REACH); k++) {
            most = Math.max(most, radii[other][k]);
        }
        return Math.max(0, radii[one][t] - most);
    }

    private void put(double[][] points, int at, int t, double across, Lens lens) {
        PixelPoint straight = contour.sight().pixel(start + t * pixel, across);
        PixelPoint seen = lens.bent(straight.x(), straight.y());
        points[0][at] = seen.x();
        points[1][at] = seen.y();
    }

    /** A closed line's points a pixel apart, in the order that keeps the piece on the side that a walk has it. */
    private static Mended evenly(double[][] line, boolean[] anew) {
        int n = line[0].length;
        double[] run = new double[n + 1];
        double area = 0;
        for (int k = 0; k < n; k++) {
            int next = (k + 1) % n;
            run[k + 1] = run[k] + Math.hypot(line[0][next] - line[0][k], line[1][next] - line[1][k]);
            area += line[0][k] * line[1][next] - line[0][next] * line[1][k];
        }
        int count = (int) Math.floor(run[n]);
        double[][] even = new double[2][count];
        boolean[] there = new boolean[count];
        int k = 0;
        for (int i = 0; i < count; i++) {
            double at = i * run[n] / count;
            while (run[k + 1] < at) {
                k++;
            }
            int next = (k + 1) % n;
            double share = run[k + 1] == run[k] ? 0 : (at - run[k]) / (run[k + 1] - run[k]);
            int to = area > 0 ? i : count - 1 - i;
            there[to] = anew[k] && anew[next];
            even[0][to] = line[0][k] + share * (line[0][next] - line[0][k]);
            even[1][to] = line[1][k] + share * (line[1][next] - line[1][k]);
        }
        return new Mended(even[0], even[1], there);
    }
}
