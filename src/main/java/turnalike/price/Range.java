package turnalike.price;

import java.util.Arrays;

/**
 * Where nine in ten lie.
 *
 * @param from one in twenty lies below
 * @param to one in twenty lies above
 */
public record Range(double from, double to) {
    private static final double TAIL = 0.05;

    static Range of(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Range(quantile(sorted, TAIL), quantile(sorted, 1 - TAIL));
    }

    static double middle(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return quantile(sorted, 0.5);
    }

    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
