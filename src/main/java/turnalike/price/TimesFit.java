package turnalike.price;

import java.util.List;
import java.util.SplittableRandom;

/**
 * A learning curve through timed pieces: the least squares' line through the logarithms of times over those of the pieces' numbers, whose
 * errors are taken for normal, of one unknown scatter. What comes next is drawn from the predictive law of that line (flat prior; any
 * textbook of regression), with a fixed seed, so that the same times give the same range.
 */
final class TimesFit {
    /** Fewer leave no scatter to be told from. */
    static final int LEAST = 4;

    private static final long SEED = 20_261_128;
    private static final int SERIES_BEYOND = 30;

    private final int count;
    private final double meanX;
    private final double meanY;
    private final double slope;
    private final double spreadX;
    private final double variance;

    private TimesFit(double[] x, double[] y) {
        this.count = x.length;
        this.meanX = mean(x);
        this.meanY = mean(y);
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < count; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        this.spreadX = xx;
        this.slope = xy / xx;
        double squares = 0;
        for (int i = 0; i < count; i++) {
            double miss = y[i] - meanY - slope * (x[i] - meanX);
            squares += miss * miss;
        }
        this.variance = squares / (count - 2);
    }

    /**
     * The curve.
     *
     * @param minutes of the pieces in the order they were made, {@link #LEAST} or more
     */
    static TimesFit of(List<Double> minutes) {
        double[] x = new double[minutes.size()];
        double[] y = new double[minutes.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.log(i + 1.0);
            y[i] = Math.log(minutes.get(i));
        }
        return new TimesFit(x, y);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double each : values) {
            sum += each;
        }
        return sum / values.length;
    }

    LearningCurve curve() {
        return new LearningCurve(Math.exp(meanY - slope * meanX), Math.pow(2, slope));
    }

    /**
     * Draws of what the pieces still to come take together.
     *
     * @param to the last piece's number
     * @param draws how many
     * @param stage its number, so that stages are drawn apart
     */
    double[] toCome(int to, int draws, int stage) {
        SplittableRandom random = new SplittableRandom(SEED + stage);
        double[] logs = new double[Math.max(0, to - count)];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.log(count + 1.0 + i) - meanX;
        }
        double[] out = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            double scatter = Math.sqrt(variance / chiSquareShare(random));
            double level = meanY + scatter * random.nextGaussian() / Math.sqrt(count);
            double fall = slope + scatter * random.nextGaussian() / Math.sqrt(spreadX);
            for (double log : logs) {
                out[draw] += Math.exp(level + fall * log + scatter * random.nextGaussian());
            }
        }
        return out;
    }

    /** A chi-square over its degrees of freedom; of many, by the cube of a normal (Wilson and Hilferty 1931, from memory). */
    private double chiSquareShare(SplittableRandom random) {
        int freedom = count - 2;
        if (freedom > SERIES_BEYOND) {
            double part = 2 / (9.0 * freedom);
            return Math.pow(1 - part + random.nextGaussian() * Math.sqrt(part), 3);
        }
        double sum = 0;
        for (int i = 0; i < freedom; i++) {
            double each = random.nextGaussian();
            sum += each * each;
        }
        return sum / freedom;
    }
}
