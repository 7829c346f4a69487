package turnalike.frame;

/** Probabilities of the normal and the χ² distribution, for unbalances that scatter. */
final class NormalLaw {
    /** 1/k: the series takes a term for each, and a product costs a fraction of a quotient. At 8.3 it ends before 1/301. */
    private static final double[] INVERSE = new double[1 << 9];

    static {
        for (int k = 1; k < INVERSE.length; k++) {
            INVERSE[k] = 1.0 / k;
        }
    }

    private NormalLaw() {}

    /**
     * The probability of a standard normal deviate below z, to about 10⁻¹⁵: ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …), Abramowitz and Stegun,
     * Handbook of Mathematical Functions, 26.2.11 (from memory). All terms have one sign, so none cancels.
     */
    static double below(double z) {
        if (Math.abs(z) > 8.3) {
            return z > 0 ? 1 : 0;
        }
        double square = z * z;
        double term = z;
        double sum = z;
        for (int k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
            term *= square * INVERSE[k];
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
