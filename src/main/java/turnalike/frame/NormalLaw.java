package turnalike.frame;

/** Probabilities of the normal and the χ² distribution, for unbalances that scatter. */
final class NormalLaw {
    /** Farther out nothing is left that a double could tell from 0 or 1. */
    private static final double FAR = 8.3;

    private static final int NODES_PER_ONE = 64;
    private static final int TERMS = 7;
    private static final int MIDDLE = (int) (FAR * NODES_PER_ONE) + 1;
    private static final double[] AT_NODE = new double[2 * MIDDLE + 1];
    private static final double[] DENSITY_AT_NODE = new double[AT_NODE.length];

    /** 1/k: a product costs a fraction of a quotient. */
    private static final double[] INVERSE = new double[TERMS + 1];

    static {
        for (int k = 1; k <= TERMS; k++) {
            INVERSE[k] = 1.0 / k;
        }
        for (int i = 0; i < AT_NODE.length; i++) {
            double z = (double) (i - MIDDLE) / NODES_PER_ONE;
            AT_NODE[i] = bySeries(z);
            DENSITY_AT_NODE[i] = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        }
    }

    private NormalLaw() {}

    /**
     * The probability of a standard normal deviate below z, to about 10⁻¹⁵: from the nearest of the nodes, 1/128 away at most, by Taylor's
     * series. The density's derivatives are φ·(−1)ⁿ·Heₙ with Heₙ₊₁ = z·Heₙ − n·Heₙ₋₁, so that each term hangs on the two before. This is
     * asked for by the hundred thousand for each wheel.
     */
    static double below(double z) {
        if (Math.abs(z) > FAR) {
            return z > 0 ? 1 : 0;
        }
        int node = (int) Math.round(z * NODES_PER_ONE);
        double at = (double) node / NODES_PER_ONE;
        double step = z - at;
        double before = 0;
        double term = 1; // Heₙ·(−step)ⁿ/n!
        double sum = 0;
        for (int n = 0; n < TERMS; n++) {
            sum += term * INVERSE[n + 1];
            double next = -step * (at * term + step * before) * INVERSE[n + 1];
            before = term;
            term = next;
        }
        double below = AT_NODE[node + MIDDLE] + DENSITY_AT_NODE[node + MIDDLE] * step * sum;
        return Math.max(0, Math.min(1, below));
    }

    /**
     * The same: ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …), Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 (from memory). All
     * terms have one sign, so none cancels.
     */
    private static double bySeries(double z) {
        double term = z;
        double sum = z;
        for (int k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
            term *= z * z / k;
            sum += term;
        }
        return 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    /**
     * The probability that χ² with that many degrees of freedom is above x: Abramowitz and Stegun, 26.4.4 and 26.4.5 (from memory), a sum of
     * half as many terms as degrees.
     */
    static double chiSquareAbove(double x, int freedom) {
        boolean odd = freedom % 2 == 1;
        double sum = odd ? 2 * (1 - below(Math.sqrt(x))) : Math.exp(-x / 2);
        double term = odd ? Math.sqrt(2 * x / Math.PI) * Math.exp(-x / 2) : Math.exp(-x / 2) * x / 2;
        for (int k = odd ? 3 : 4; k <= freedom; k += 2) {
            sum += term;
            term *= x / k;
        }
        return sum;
    }

    /** The χ² that is not exceeded with that probability, to 9 digits. */
    static double chiSquareQuantile(double probability, int freedom) {
        double from = 0;
        double to = freedom + 40 * Math.sqrt(2.0 * freedom) + 40;
        for (int halving = 0; halving < 60 && to - from > 1e-10 * to; halving++) {
            double middle = (from + to) / 2;
            if (1 - chiSquareAbove(middle, freedom) < probability) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return (from + to) / 2;
    }
}
