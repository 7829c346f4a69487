package turnalike.photo;

import java.util.Arrays;

/**
 * One edge's points as places and radii, put in order. Where the contour leaps from one place to another between two neighbouring points,
 * what lies between was hidden.
 */
final class SideProfile {
    /** A place that so many times outruns the contour is seen too aslant to be seen at all. */
    private static final double LEAP = 2.5;

    private final double[] place;

    private final double[] radius;

    private final boolean[] leaps;

    private SideProfile(double[] place, double[] radius, boolean[] leaps) {
        this.place = place;
        this.radius = radius;
        this.leaps = leaps;
    }

    /**
     * @param chain the edge
     * @param start its start end
     * @param end its other end
     * @param from where the piece begins along the axis
     * @param to where it ends
     */
    static SideProfile of(EdgeChain chain, EndCap start, EndCap end, double from, double to, double focal) {
        int n = chain.size();
        double[] place = new double[n];
        double[] radius = new double[n];
        int count = 0;
        double pixel = 1 / focal;
        for (int i = 0; i < n; i++) {
            double across = Math.abs(chain.across(i));
            boolean onCap = start.flat() && chain.ray(i).place() < from + 1.5 * pixel && across < 0.97 * start.radius()
                    || end.flat() && chain.ray(i).place() > to - 1.5 * pixel && across < 0.97 * end.radius()
                    || start.flat() && i < n / 2 && isCap(chain, i, start, true)
                    || end.flat() && i >= n / 2 && isCap(chain, i, end, false);
            if (!onCap) {
                place[count] = Math.max(from, Math.min(to, chain.ray(i).place()));
                radius[count++] = chain.ray(i).radius();
            }
        }
        place = Arrays.copyOf(place, count);
        radius = Arrays.copyOf(radius, count);
        rise(place);
        boolean[] leaps = new boolean[Math.max(0, count - 1)];
        for (int i = 0; i + 1 < count; i++) {
            leaps[i] = place[i + 1] - place[i] > LEAP * pixel;
        }
        return new SideProfile(place, radius, leaps);
    }

    private static boolean isCap(EdgeChain chain, int i, EndCap cap, boolean start) {
        double inward = start ? chain.along(i) - cap.apex() : cap.apex() - chain.along(i);
        // Half the bulge is left behind where the edge stands at nearly nine tenths of the rim.
        return Math.abs(chain.across(i)) < 0.85 * cap.radius() && inward < Math.abs(cap.apex()) * cap.radius();
    }

    /** Makes places rise by the least squares: pools neighbours that run back. */
    private static void rise(double[] place) {
        int n = place.length;
        double[] mean = new double[n];
        int[] size = new int[n];
        int blocks = 0;
        for (double value : place) {
            mean[blocks] = value;
            size[blocks++] = 1;
            while (blocks > 1 && mean[blocks - 2] > mean[blocks - 1]) {
                int both = size[blocks - 2] + size[blocks - 1];
                mean[blocks - 2] = (mean[blocks - 2] * size[blocks - 2] + mean[blocks - 1] * size[blocks - 1]) / both;
                size[blocks - 2] = both;
                blocks--;
            }
        }
        int at = 0;
        for (int b = 0; b < blocks; b++) {
            Arrays.fill(place, at, at + size[b], mean[b]);
            at += size[b];
        }
    }

    boolean isEmpty() {
        return place.length < 2;
    }

    /** The radius at a place; beyond the first or last point theirs. */
    double radiusAt(double at) {
        int i = before(at);
        if (i < 0) {
            return radius[0];
        }
        if (i >= place.length - 1) {
            return radius[place.length - 1];
        }
        double gap = place[i + 1] - place[i];
        double share = gap > 0 ? (at - place[i]) / gap : 0.5;
        return radius[i] + share * (radius[i + 1] - radius[i]);
    }

    /** Whether a place lies between two points that the contour leaps between. */
    boolean hiddenAt(double at) {
        int i = before(at);
        return i >= 0 && i < leaps.length && leaps[i];
    }

    /** The last point at or before a place, or -1. */
    private int before(double at) {
        int low = 0;
        int high = place.length - 1;
        while (low <= high) {
            int middle = (low + high) / 2;
            if (place[middle] <= at) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return high;
    }
}
