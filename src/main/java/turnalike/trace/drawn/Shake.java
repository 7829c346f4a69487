package turnalike.trace.drawn;

import java.util.Arrays;
import java.util.List;

/**
 * How far a drawn outline wavers: one that was traced by hand, scanned or measured has its points a little off the course they follow, and
 * members that went through each of them would be none that anyone turned.
 */
final class Shake {
    /** Points farther apart, in millimetres or as a share of the length, tell of the shape between and not of the hand. */
    private static final double NEAR_MM = 2;

    private static final double NEAR = 0.005;
    /** Of fewer runs of four points nothing is said. */
    private static final int LEAST = 24;
    /** The median of |N(0, 1)|. */
    private static final double MEDIAN_NORMAL = 0.674490;

    private Shake() {}

    /**
     * One standard deviation of a point across the outline's course, in millimetres: from each four points in a row by how much no parabola
     * passes through them, in the median, which corners do not move. Zero where the drawing's curves are its own or few points lie close.
     *
     * @param spots of a closed outline, in millimetres
     */
    static double of(List<Spot> spots) {
        double left = spots.stream().mapToDouble(Spot::x).min().orElse(0);
        double right = spots.stream().mapToDouble(Spot::x).max().orElse(0);
        double near = Math.max(NEAR_MM, NEAR * (right - left));
        int n = spots.size();
        double[] off = new double[n];
        int count = 0;
        for (int i = 0; i + 3 < n; i++) {
            double each = off(spots.subList(i, i + 4), near);
            if (each >= 0) {
                off[count++] = each;
            }
        }
        if (count < LEAST) {
            return 0;
        }
        double[] sorted = Arrays.copyOf(off, count);
        Arrays.sort(sorted);
        return sorted[count / 2] / MEDIAN_NORMAL;
    }

    /** Of four points how far one strays from the others' course; below zero where they do not tell it. */
    private static double off(List<Spot> four, double near) {
        for (int i = 0; i < 3; i++) {
            if (four.get(i).distance(four.get(i + 1)) > near) {
                return -1;
            }
        }
        double[] x = four.stream().mapToDouble(Spot::x).toArray();
        double[] y = four.stream().mapToDouble(Spot::y).toArray();
        double dx = Math.abs(x[3] - x[0]);
        double dy = Math.abs(y[3] - y[0]);
        boolean level = dx >= dy;
        if (runs(level ? x : y)) {
            return Math.max(dx, dy) / Math.hypot(dx, dy) * off(level ? x : y, level ? y : x);
        }
        // A zigzag that goes farther across than along.
        return runs(level ? y : x) ? off(level ? y : x, level ? x : y) : -1;
    }

    private static boolean runs(double[] along) {
        double sign = along[3] - along[0];
        return (along[1] - along[0]) * sign > 0 && (along[2] - along[1]) * sign > 0 && (along[3] - along[2]) * sign > 0;
    }

    /** The third divided difference, scaled to the deviation of one. */
    private static double off(double[] along, double[] across) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 4; i++) {
            double share = 1;
            for (int k = 0; k < 4; k++) {
                share /= k == i ? 1 : along[i] - along[k];
            }
            sum += share * across[i];
            squares += share * share;
        }
        return Math.abs(sum) / Math.sqrt(squares);
    }
}
