package turnalike.trace.fit;

/**
 * How stations stray together. Of an edge in a picture each point has seen its neighbours' pixels, so that a station's error is for the most
 * part its neighbour's: taken apart here into what each adds to the one before, of standard deviation one and each by itself, so that sums of
 * squares are χ² again. Errors fade into one another with the distance along as exp(−distance / reach) (an Ornstein–Uhlenbeck process, whose
 * inverse covariance joins neighbours only).
 */
final class Together {
    /** What a station's value counts with, and its neighbour's before it. */
    final double[] own;

    final double[] back;

    /** So far to either side of a corner a picture smears it, millimetres. */
    final double softMm;

    private final double[] link;

    private Together(double[] link, double[] weight, double softMm) {
        int n = weight.length;
        this.link = link;
        this.softMm = softMm;
        own = new double[n];
        back = new double[n];
        for (int k = 0; k < n; k++) {
            double rest = Math.sqrt(1 - link[k] * link[k]);
            own[k] = Math.sqrt(weight[k]) / rest;
            back[k] = k == 0 ? 0 : link[k] * Math.sqrt(weight[k - 1]) / rest;
        }
    }

    /**
     * Of stations.
     *
     * @param x their places
     * @param weight one over the variance of each
     * @param reachMm over so many millimetres errors fade to a third; zero where each strays by itself
     * @param softMm so far to either side of a corner a picture smears it
     */
    static Together of(double[] x, double[] weight, double reachMm, double softMm) {
        double[] link = new double[x.length];
        for (int k = 1; k < x.length; k++) {
            // Two stations at one place are the two sides of a shoulder.
            boolean linked = reachMm > 0 && x[k] > x[k - 1];
            link[k] = linked ? Math.exp((x[k - 1] - x[k]) / reachMm) : 0;
        }
        return new Together(link, weight, softMm);
    }

    /** The same for other variances. */
    Together with(double[] weight) {
        return new Together(link, weight, softMm);
    }

    /** The same seen from the other end. */
    Together mirrored(double[] weight) {
        double[] other = new double[link.length];
        for (int k = 1; k < other.length; k++) {
            other[k] = link[other.length - k];
        }
        return new Together(other, weight, softMm);
    }
}
