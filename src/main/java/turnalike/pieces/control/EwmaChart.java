package turnalike.pieces.control;

import java.util.ArrayList;
import java.util.List;

/**
 * The exponentially weighted moving average, which sees a small lasting shift sooner than single values do: zᵢ = λxᵢ + (1 - λ)zᵢ₋₁ from
 * z₀ = start, limits start ± 3s√(λ/(2 - λ)), the value they settle at. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 *
 * @param averages the averages, one for each point
 * @param centre the start
 * @param lower the lower limit
 * @param upper the upper limit
 * @param beyond the labels of the pieces at which the average is beyond a limit
 */
public record EwmaChart(List<ChartPoint> averages, double centre, double lower, double upper, List<String> beyond) {
    private static final double LIMIT_SIGMAS = 3;

    /**
     * Where the average starts and how fast it forgets.
     *
     * @param start the value aimed at
     * @param sigma the standard deviation from piece to piece; zero or above
     * @param lambda the weight of the newest value, above 0 and up to 1; {@link IllegalArgumentException} as for the others
     */
    public record Setting(double start, double sigma, double lambda) {
        /** The weight NIST's example uses, within the customary 0.2 to 0.3. */
        public static final double USUAL_LAMBDA = 0.3;

        public Setting {
            if (!Double.isFinite(start) || !(sigma >= 0) || !Double.isFinite(sigma) || !(lambda > 0 && lambda <= 1)) {
                throw new IllegalArgumentException(
                        "no moving average starts at %s with sigma %s and weight %s".formatted(start, sigma, lambda));
            }
        }
    }

    public EwmaChart {
        averages = List.copyOf(averages);
        beyond = List.copyOf(beyond);
    }

    /**
     * {@return the chart of the points; none give an empty one}
     *
     * @param points in the order they were turned
     * @param setting where the average starts and how fast it forgets
     */
    public static EwmaChart of(List<ChartPoint> points, Setting setting) {
        double half = LIMIT_SIGMAS * setting.sigma() * Math.sqrt(setting.lambda() / (2 - setting.lambda()));
        double average = setting.start();
        List<ChartPoint> averages = new ArrayList<>();
        List<String> beyond = new ArrayList<>();
        for (ChartPoint point : points) {
            average += setting.lambda() * (point.value() - average);
            averages.add(new ChartPoint(point.piece(), average));
            if (Math.abs(average - setting.start()) > half) {
                beyond.add(point.piece());
            }
        }
        return new EwmaChart(averages, setting.start(), setting.start() - half, setting.start() + half, beyond);
    }
}
