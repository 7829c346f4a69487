package turnalike.pieces;

/** Student's t. */
public final class StudentLaw {
    private StudentLaw() {}

    /**
     * {@return the chance that Student's t lies between -t and t} A finite series whose terms all have one sign. Source: Abramowitz and
     * Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from memory).
     *
     * @param t zero or more
     * @param freedom degrees of freedom, 1 or more
     */
    public static double within(double t, int freedom) {
        double angle = Math.atan(t / Math.sqrt(freedom));
        double cos = Math.cos(angle);
        boolean odd = freedom % 2 == 1;
        double term = odd ? cos : 1;
        double sum = freedom == 1 ? 0 : term;
        for (int k = odd ? 2 : 1; k <= freedom - 3 && term > 1e-18 * sum; k += 2) {
            term *= cos * cos * k / (k + 1);
            sum += term;
        }
        return odd ? 2 / Math.PI * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
    }

    /**
     * {@return the t for which Student's t lies between -t and t with that chance; to 10 digits, by halving}
     *
     * @param probability from 0 to 0.999
     * @param freedom degrees of freedom, 1 or more
     */
    public static double quantileWithin(double probability, int freedom) {
        double from = 0;
        double to = 1;
        while (within(to, freedom) < probability) {
            from = to;
            to *= 2;
        }
        for (int halving = 0; halving < 60; halving++) {
            double middle = (from + to) / 2;
            if (within(middle, freedom) < probability) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return (from + to) / 2;
    }
}
