package turnalike.pieces.mend;

/**
 * Sizes of which some are measured and the others likely: a normal law of several figures, narrowed by one linear reading after the other.
 * After h·x was read as y with variance v, the mean moves by K(y - h·x) and the covariance falls by K(hC), where K = Ch/(hCh + v). The order of the
 * readings does not matter. Source: conditioning of the multivariate normal law, any textbook of statistics (from memory).
 */
public final class LikelySizes {
    private final double[] mean;
    private final double[][] covariance;

    /**
     * Figures about zero, independent of each other, before anything is read.
     *
     * @param deviations how far each is likely from zero; zero or above, else {@link IllegalArgumentException}
     */
    public LikelySizes(double... deviations) {
        mean = new double[deviations.length];
        covariance = new double[deviations.length][deviations.length];
        for (int i = 0; i < deviations.length; i++) {
            if (!(deviations[i] >= 0)) {
                throw new IllegalArgumentException("a deviation is zero or above, was " + deviations[i]);
            }
            covariance[i][i] = deviations[i] * deviations[i];
        }
    }

    /**
     * A figure's reading is taken in.
     *
     * @param factors how much each figure counts in the reading
     * @param reading what was read
     * @param deviation of the reading itself; zero when it is exact
     */
    public void read(double[] factors, double reading, double deviation) {
        int count = mean.length;
        double[] along = new double[count];
        double variance = deviation * deviation;
        double expected = 0;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                along[i] += covariance[i][j] * factors[j];
            }
            expected += factors[i] * mean[i];
        }
        for (int i = 0; i < count; i++) {
            variance += factors[i] * along[i];
        }
        if (!(variance > 0)) {
            return;
        }
        for (int i = 0; i < count; i++) {
            mean[i] += along[i] / variance * (reading - expected);
            for (int j = 0; j < count; j++) {
                covariance[i][j] -= along[i] * along[j] / variance;
            }
        }
    }

    /**
     * {@return whether a reading lies within four deviations of what is expected of it; another is a slip rather than a size}
     *
     * @param factors how much each figure counts in the reading
     * @param reading what was read
     * @param deviation of the reading itself
     */
    public boolean isLikely(double[] factors, double reading, double deviation) {
        double variance = deviation * deviation;
        double expected = 0;
        for (int i = 0; i < mean.length; i++) {
            expected += factors[i] * mean[i];
            for (int j = 0; j < mean.length; j++) {
                variance += factors[i] * covariance[i][j] * factors[j];
            }
        }
        return Math.abs(reading - expected) <= 4 * Math.sqrt(variance);
    }

    /**
     * {@return where a figure likely is}
     *
     * @param figure its number, in the order of the deviations, from 0
     */
    public double mean(int figure) {
        return mean[figure];
    }

    /**
     * {@return how far it is likely off that, as a standard deviation}
     *
     * @param figure its number
     */
    public double deviation(int figure) {
        return Math.sqrt(Math.max(0, covariance[figure][figure]));
    }
}
