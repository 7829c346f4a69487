package turnalike.trace.against;

import java.util.Arrays;

/**
 * How far the edges between members may have wandered, to half a millimetre: the cheapest shifts by dynamic programming, exact over the
 * steps tried. A start for {@link BendFit}, which finds only what is near, and by its cost the way round that a piece lies.
 *
 * @param shiftMm of each edge, both ends of the piece included
 * @param cost how ill the piece then fits: squares of radii off in half millimetres, none counted above {@link #MOST_OFF_MM}, by station
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record RoughShifts(double[] shiftMm, double cost) {
    private static final double STEP_MM = 0.5;

    /** No edge is looked for further off than this beyond what the piece's length accounts for. */
    private static final double REACH_MM = 6;

    private static final int MOST_STEPS = 64;
    private static final int MOST_STATIONS = 700;
    private static final double MOST_OFF_MM = 3;
    private static final double UNIT_MM = 0.5;

    /** One member longer or shorter by this is likely enough (a choice of ours). */
    private static final double STRETCH_MM = 1.5;

    /** No member is looked for at less than this share of its length, or at more than its inverse. */
    private static final double SHORTEST = 0.4;

    static RoughShifts of(double[] edgeMm, BentLine pattern, Seen seen, double startMm, double endMm) {
        double low = Math.min(startMm, endMm) - REACH_MM;
        double high = Math.max(startMm, endMm) + REACH_MM;
        int steps = (int) Math.min(MOST_STEPS, Math.ceil((high - low) / STEP_MM)) + 1;
        double[] shift = new double[steps];
        for (int k = 0; k < steps; k++) {
            shift[k] = low + (high - low) * k / (steps - 1);
        }
        int thin = Math.max(1, seen.size() / MOST_STATIONS);
        int last = edgeMm.length - 1;
        double[][] cost = new double[edgeMm.length][steps];
        int[][] from = new int[edgeMm.length][steps];
        for (int j = 0; j < last; j++) {
            Arrays.fill(cost[j + 1], Double.POSITIVE_INFINITY);
            for (int a = 0; a < steps; a++) {
                if (!Double.isFinite(cost[j][a]) || (j == 0 && a > 0)) {
                    continue;
                }
                double begins = j == 0 ? startMm : shift[a];
                for (int b = 0; b < steps; b++) {
                    if (j + 1 == last && b > 0) {
                        continue;
                    }
                    double ends = j + 1 == last ? endMm : shift[b];
                    double all = cost[j][a] + member(edgeMm[j], edgeMm[j + 1], begins, ends, pattern, seen, thin);
                    if (all < cost[j + 1][b]) {
                        cost[j + 1][b] = all;
                        from[j + 1][b] = a;
                    }
                }
            }
        }
        double[] found = new double[edgeMm.length];
        found[last] = endMm;
        int at = 0;
        for (int j = last; j > 1; j--) {
            at = from[j][at];
            found[j - 1] = shift[at];
        }
        found[0] = startMm;
        return new RoughShifts(found, cost[last][0] / Math.max(1, seen.size() / thin));
    }

    /** What one member costs that stands from one edge so far off to another. */
    private static double member(
            double fromMm, double toMm, double begins, double ends, BentLine pattern, Seen seen, int thin) {
        double length = toMm - fromMm;
        double now = length + ends - begins;
        if (now < SHORTEST * length || now * SHORTEST > length) {
            return Double.POSITIVE_INFINITY;
        }
        double stretch = (ends - begins) / STRETCH_MM;
        double sum = stretch * stretch;
        int i = firstFrom(seen.x(), fromMm + begins);
        i += (thin - i % thin) % thin;
        for (; i < seen.size() && seen.x()[i] < toMm + ends; i += thin) {
            double place = fromMm + (seen.x()[i] - fromMm - begins) * length / now;
            double off = Math.min(MOST_OFF_MM, Math.abs(seen.r()[i] - pattern.radius(place))) / UNIT_MM;
            sum += off * off;
        }
        return sum;
    }

    private static int firstFrom(double[] x, double placeMm) {
        int at = Arrays.binarySearch(x, placeMm);
        at = at < 0 ? -at - 1 : at;
        while (at > 0 && x[at - 1] >= placeMm) {
            at--;
        }
        return at;
    }
}
