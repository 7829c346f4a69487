package turnalike.pieces.control;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Run lengths of a one-sided cumulative sum S = max(0, S + z - k) > h of independent normal scores, by cutting (0, h] into intervals and
 * following the chance of standing in each. Source: Brook and Evans, Biometrika 59 (1972) 539–549 (from memory).
 */
final class RunLengths {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final int intervals;
    private final double[][] step;

    /** Scores have this mean and deviation 1. State 0 is the sum at zero, state i the interval i-1. */
    RunLengths(double slack, double limit, double mean, int intervals) {
        this.intervals = intervals;
        step = new double[intervals + 1][intervals + 1];
        double width = limit / intervals;
        for (int from = 0; from <= intervals; from++) {
            double at = from == 0 ? 0 : (from - 0.5) * width;
            double below = NORMAL.cumulativeProbability(slack - at - mean);
            step[from][0] = below;
            for (int to = 1; to <= intervals; to++) {
                double upTo = NORMAL.cumulativeProbability(to * width + slack - at - mean);
                step[from][to] = upTo - below;
                below = upTo;
            }
        }
    }

    /** The chance that the sum has passed its limit by then. */
    double passedWithin(int looks) {
        double[] standing = start();
        for (int look = 0; look < looks; look++) {
            standing = next(standing);
        }
        return 1 - sum(standing);
    }

    /**
     * The mean number of looks until it passes: the sum of the chances of still standing, which soon fall by the same factor each look; from
     * there on in closed form. Infinite where they do not fall at all.
     */
    double average() {
        double[] standing = start();
        double length = 0;
        double left = 1;
        double factor = 0;
        double before = Double.NEGATIVE_INFINITY;
        while (left > 1e-9 && Math.abs(factor - before) > 1e-11) {
            length += left;
            standing = next(standing);
            before = factor;
            factor = sum(standing) / left;
            left = sum(standing);
        }
        return length + left / (1 - factor);
    }

    private double[] start() {
        double[] standing = new double[intervals + 1];
        standing[0] = 1;
        return standing;
    }

    private double[] next(double[] standing) {
        double[] out = new double[intervals + 1];
        for (int from = 0; from <= intervals; from++) {
            for (int to = 0; to <= intervals; to++) {
                out[to] += standing[from] * step[from][to];
            }
        }
        return out;
    }

    private static double sum(double[] chances) {
        double sum = 0;
        for (double chance : chances) {
            sum += chance;
        }
        return sum;
    }
}
