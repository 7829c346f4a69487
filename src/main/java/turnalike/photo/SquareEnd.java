package turnalike.photo;

import java.util.Arrays;
import java.util.Optional;

/**
 * Where a square section ends. Its end is a plane e along the axis, and a ray that grazes the rim there runs at X = e/z, where z is the depth of that
 * point of the rim: of a face turned away from the camera the near rim is seen, of one turned towards it the far rim, where the ray leaves the
 * section. So every height of the contour's fall tells the end by itself, e = X·z; the heights are asked one by one, and where most of them agree it is.
 * A rounded shoulder lets them stray, which is its uncertainty.
 *
 * @param place along the axis, from the foot of the perpendicular out of the camera, in units of the distance
 * @param doubt of it, one standard deviation
 * @param foot where along the axis what follows is seen again
 */
record SquareEnd(double place, double doubt, double foot) {
    /** So many heights of the fall are asked, between these parts of it: above it is not sure that it falls, the root below is rounded by the lens. */
    private static final int HEIGHTS = 24;

    private static final double HIGHEST = 0.1;

    private static final double LOWEST = 0.8;

    /** Of a fall into the turned part so much is asked, of the half width: what comes after may be a member's slope. */
    private static final double FALL = 0.25;

    /** It is looked for so far on from the place where the width was seen to end, in half widths. */
    private static final double BEYOND = 0.8;

    private static final double BEFORE = 0.5;

    /** A corner of the contour is found no better than this, in pixels. */
    private static final double PIXELS = 0.2;

    /**
     * Reads one end.
     *
     * @param contour squared
     * @param section of the square
     * @param middle X in its middle
     * @param guess X where its width was seen to end
     */
    static Optional<SquareEnd> of(SquaredContour contour, SquareSection section, double middle, double guess) {
        Optional<Side> left = side(contour.edge(true), section, middle, guess);
        Optional<Side> right = side(contour.edge(false), section, middle, guess);
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        Side one = left.orElseThrow();
        Side other = right.orElseThrow();
        double pixel = PIXELS / contour.sight().focal();
        return Optional.of(new SquareEnd(
                (one.place + other.place) / 2,
                Math.hypot(pixel, Math.hypot(one.place - other.place, Math.max(one.spread, other.spread)) / 2),
                guess > middle ? Math.max(one.foot, other.foot) : Math.min(one.foot, other.foot)));
    }

    /** What one edge tells. */
    private record Side(double place, double spread, double foot) {}

    private static Optional<Side> side(EdgeChain edge, SquareSection section, double middle, double guess) {
        int way = guess > middle ? 1 : -1;
        double width = width(edge, middle, guess);
        boolean positive = edge.across(edge.size() / 2) > 0;
        double deep = 2.2 * section.half() * Math.abs(guess);
        double begin = guess - way * (deep + BEFORE * width);
        double limit = guess + way * (deep + BEYOND * width);
        int first = way > 0 ? 0 : edge.size() - 1;
        while (inside(edge, first) && way * (edge.along(first) - begin) < 0) {
            first += way;
        }
        int last = first;
        double floor = width;
        while (inside(edge, last) && way * (edge.along(last) - limit) < 0) {
            floor = Math.min(floor, Math.abs(edge.across(last)));
            last += way;
        }
        // Where the piece goes on only the upper part of the fall is surely the square's own.
        boolean goesOn = inside(edge, last);
        double fall = width - (goesOn ? Math.max(floor, (1 - FALL) * width) : floor);
        boolean facing = guess * way < 0;
        double[] places = new double[HEIGHTS];
        int count = 0;
        double foot = guess;
        for (int height = 0; height < HEIGHTS; height++) {
            double level = width - fall * (HIGHEST + (LOWEST - HIGHEST) * (height + 0.5) / HEIGHTS);
            double along = crossing(edge, first, last, way, level);
            if (Double.isFinite(along)) {
                double across = (positive ? 1 : -1) * level / width * section.seen(positive);
                foot = along;
                places[count++] = along * (facing ? section.far(across) : section.near(across));
            }
        }
        return count < HEIGHTS / 2 ? Optional.empty() : Optional.of(agreed(Arrays.copyOf(places, count), foot));
    }

    private static boolean inside(EdgeChain edge, int i) {
        return i >= 0 && i < edge.size();
    }

    /** How far out the edge usually stands from the middle on to where the width ends. */
    private static double width(EdgeChain edge, double middle, double guess) {
        double[] widths = new double[edge.size()];
        int count = 0;
        for (int i = 0; i < edge.size(); i++) {
            double share = (edge.along(i) - middle) / (guess - middle);
            if (share > -0.6 && share < 0.6) {
                widths[count++] = Math.abs(edge.across(i));
            }
        }
        double[] found = Arrays.copyOf(widths, count);
        Arrays.sort(found);
        return count == 0 ? 0 : found[count / 2];
    }

    /** X where the edge first falls below a height; nothing if it does not. */
    private static double crossing(EdgeChain edge, int first, int last, int way, double level) {
        for (int i = first; i != last && i + way != last; i += way) {
            double here = Math.abs(edge.across(i));
            double next = Math.abs(edge.across(i + way));
            if (here >= level && next < level) {
                return edge.along(i) + (here - level) / (here - next) * (edge.along(i + way) - edge.along(i));
            }
        }
        return Double.NaN;
    }

    /** The middle of the shortest stretch that holds half of the places. */
    private static Side agreed(double[] places, double foot) {
        Arrays.sort(places);
        int half = (places.length + 1) / 2;
        int best = 0;
        for (int i = 0; i + half <= places.length; i++) {
            if (places[i + half - 1] - places[i] < places[best + half - 1] - places[best]) {
                best = i;
            }
        }
        double sum = 0;
        for (int i = best; i < best + half; i++) {
            sum += places[i];
        }
        return new Side(sum / half, places[best + half - 1] - places[best], foot);
    }
}
