package turnalike.price;

/**
 * Where nine in ten lie.
 *
 * @param from one in twenty lies below
 * @param to one in twenty lies above
 */
public record Range(double from, double to) {
    private static final double TAIL = 0.05;

    /** Of draws in rising order. */
    static Range of(double[] sorted) {
        return new Range(quantile(sorted, TAIL), quantile(sorted, 1 - TAIL));
    }

    /** As many lie below as above; of draws in rising order. */
    static double middle(double[] sorted) {
        return quantile(sorted, 0.5);
    }

    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
