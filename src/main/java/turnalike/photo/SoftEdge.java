package turnalike.photo;

/**
 * What a lens of a given softness makes of light that ends at an edge, in units of that softness: of a level, of the root of the depth under
 * the edge and of the depth itself, each nothing beyond it. The softness is taken for a normal law.
 */
final class SoftEdge {
    private static final int PER_UNIT = 32;

    private static final int LEAST = -16;

    private static final int MOST = 5;

    private static final double[] ROOT = new double[(MOST - LEAST) * PER_UNIT + 1];

    static {
        // The integral over the depth t of its root times the density at u + t, in steps of a 40th; with t = w² the
        // root's steep
        // beginning becomes smooth: the midpoint rule is then off by less than 1e-5.
        for (int i = 0; i < ROOT.length; i++) {
            double u = LEAST + (double) i / PER_UNIT;
            double step = 1.0 / 40;
            double sum = 0;
            for (double w = step / 2; w * w < 6 - u; w += step) {
                double far = u + w * w;
                sum += 2 * w * w * Math.exp(-far * far / 2) * step;
            }
            ROOT[i] = sum / Math.sqrt(2 * Math.PI);
        }
    }

    private SoftEdge() {}

    /** A level of 1 within: how much of it is seen at u outside the edge, below 0 within. */
    static double level(double u) {
        return NormalShare.below(-u);
    }

    /** The root of the depth. */
    static double root(double u) {
        double at = (u - LEAST) * PER_UNIT;
        if (at <= 0) {
            // The softness lowers a smooth curve by half its second derivative.
            double depth = -u;
            return Math.sqrt(depth) - 0.125 / (depth * Math.sqrt(depth));
        }
        if (at >= ROOT.length - 1) {
            return 0;
        }
        int i = (int) at;
        return ROOT[i] + (at - i) * (ROOT[i + 1] - ROOT[i]);
    }

    /** The depth: by parts, exact. */
    static double depth(double u) {
        return -u * NormalShare.below(-u) + Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI);
    }
}
