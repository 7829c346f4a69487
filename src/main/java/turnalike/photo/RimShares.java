package turnalike.photo;

/**
 * Light across a round body, seen at some sines of the angle from its rim, as shares of three shapes: what comes evenly from all round, what grows with the
 * sine, and what a lamp gives that first reaches the body at a bend. Many bends are tried at one edge: what hangs on none of them is added up once.
 */
final class RimShares {
    /** A bend at the axis: no lamp comes later. */
    static final double NO_BEND = 1;

    /** How much of what no lamp's place changes is taken to be even; the rest falls with the cosine. */
    private static final double EVEN = 0.5;

    /** Before a lamp reaches it a body is lit evenly, as far as few places tell: so strongly is that held. */
    private static final double EVENLY = 0.02;

    private final double[] sines;

    private final double[] light;

    private final double[] cosines;

    private final double[] even;

    /** The light of the lamp that comes at the bend last fitted. */
    private final double[] late;

    /** The three shapes' weight at each place, the places near the rim counting for more; the last one is the late light's, for the bend at hand. */
    private final double[] weights;

    private final double[] evenWeighed;

    private final double[] sineWeighed;

    /** Normal equations without the late light. */
    private final double[][] known = new double[2][3];

    /**
     * Takes what was seen.
     *
     * @param sines of the angle from the rim
     * @param light there
     */
    RimShares(double[] sines, double[] light) {
        this.sines = sines;
        this.light = light;
        int count = sines.length;
        cosines = new double[count];
        even = new double[count];
        late = new double[count];
        weights = new double[count];
        evenWeighed = new double[count];
        sineWeighed = new double[count];
        for (int k = 0; k < count; k++) {
            cosines[k] = cosine(sines[k]);
            even[k] = even(cosines[k]);
            weights[k] = 1 / (0.2 + sines[k]);
            evenWeighed[k] = weights[k] * even[k];
            sineWeighed[k] = weights[k] * sines[k];
            known[0][0] += evenWeighed[k] * even[k];
            known[0][1] += evenWeighed[k] * sines[k];
            known[0][2] += evenWeighed[k] * light[k];
            known[1][0] += sineWeighed[k] * even[k];
            known[1][1] += sineWeighed[k] * sines[k];
            known[1][2] += sineWeighed[k] * light[k];
        }
    }

    static double cosine(double sine) {
        return Math.sqrt(1 - sine * sine);
    }

    private static double even(double cosine) {
        return EVEN + (1 - EVEN) * cosine;
    }

    /** The light that such shares give somewhere. */
    static double value(double[] shares, double sine, double bend) {
        double cosine = cosine(sine);
        return shares[0] * even(cosine)
                + shares[1] * sine
                + shares[2] * Math.max(0, sine * cosine(bend) - cosine * bend);
    }

    /** What each shape counts that agrees best with a lamp that first reaches at a bend. */
    double[] fitted(double bend) {
        double bendCosine = cosine(bend);
        double evenLate = 0;
        double sineLate = 0;
        double lateEven = 0;
        double lateSine = 0;
        double lateLate = 0;
        double lateLight = 0;
        for (int k = 0; k < late.length; k++) {
            double here = Math.max(0, sines[k] * bendCosine - cosines[k] * bend);
            double weighed = weights[k] * here;
            late[k] = here;
            evenLate += evenWeighed[k] * here;
            sineLate += sineWeighed[k] * here;
            lateEven += weighed * even[k];
            lateSine += weighed * sines[k];
            lateLate += weighed * here;
            lateLight += weighed * light[k];
        }
        return LeastSquares.solve(new double[][] {
            {known[0][0], known[0][1], evenLate, known[0][2]},
            {known[1][0], known[1][1] + (bend < NO_BEND ? EVENLY : 0), sineLate, known[1][2]},
            {lateEven, lateSine, lateLate + 1e-6, lateLight}
        });
    }

    /**
     * The mean square that shares leave, which were just fitted, with that of noise.
     *
     * @param noise the noise's
     * @param most what it must stay below to be of interest: else only that it does not is told
     */
    double left(double[] shares, double noise, double most) {
        double sum = 0;
        for (int k = 0; k < late.length && sum + noise < most; k++) {
            double off = light[k] - (shares[0] * even[k] + shares[1] * sines[k] + shares[2] * late[k]);
            sum += off * off / late.length;
        }
        return sum + noise;
    }
}
