package turnalike.pieces.control;

import java.util.List;

/**
 * Figures of a sample that keep their digits however far from zero the values lie.
 *
 * <p>The mean is Welford's running mean with one correction over the residuals; the sum of squares is taken about it and corrected for
 * what rounding left in it. Welford, Technometrics 4 (1962) 419; the corrected two-pass sum: Chan, Golub and LeVeque, The American
 * Statistician 37 (1983) 242 (both from memory). Accuracy: see the test on the NIST StRD sets, certified values.
 *
 * @param count how many values; at least one
 * @param mean their mean
 * @param deviation the standard deviation with {@code count - 1}; 0 for one value
 * @param neighbours the correlation of each value with the one before it (lag 1), -1 to 1; 0 when all values are equal
 */
public record SampleStatistics(int count, double mean, double deviation, double neighbours) {
    /**
     * {@return the figures of values in their order}
     *
     * @param values finite; {@link IllegalArgumentException} when there are none
     */
    public static SampleStatistics of(List<Double> values) {
        double[] x = values.stream().mapToDouble(Double::doubleValue).toArray();
        if (x.length == 0) {
            throw new IllegalArgumentException("a sample needs at least one value");
        }
        double mean = mean(x);
        double squares = 0;
        double left = 0;
        double products = 0;
        for (int i = 0; i < x.length; i++) {
            double residual = x[i] - mean;
            squares += residual * residual;
            left += residual;
            products += i == 0 ? 0 : residual * (x[i - 1] - mean);
        }
        squares -= left * left / x.length;
        double deviation = x.length == 1 ? 0 : Math.sqrt(Math.max(squares, 0) / (x.length - 1));
        return new SampleStatistics(x.length, mean, deviation, squares > 0 ? products / squares : 0);
    }

    private static double mean(double[] x) {
        double mean = 0;
        for (int i = 0; i < x.length; i++) {
            mean += (x[i] - mean) / (i + 1);
        }
        double left = 0;
        for (double each : x) {
            left += each - mean;
        }
        return mean + left / x.length;
    }
}
