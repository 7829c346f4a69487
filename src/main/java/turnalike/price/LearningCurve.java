package turnalike.price;

/**
 * What one piece takes after so many: every time the count doubles, the same share less. The reading is that of the single piece
 * (Crawford's), y(n) = y₁·n^b with b = log₂ of the rate; Wright's own of 1936 says the same of the average of the first n. Source: T. P.
 * Wright, Factors Affecting the Cost of Airplanes, 1936; published worked cases stand beside the tests.
 *
 * @param first what the first piece takes, above zero, in any unit of time
 * @param rate what a piece takes of what the piece of half its number took, above zero: 0.85 where each doubling saves 15 %; 1 where nothing
 *     is learned
 */
public record LearningCurve(double first, double rate) {
    public LearningCurve {
        if (!(first > 0 && rate > 0 && first < Double.POSITIVE_INFINITY && rate < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a curve needs a time and a rate above zero, not %s and %s".formatted(first, rate));
        }
    }

    /** {@return b, the power of the piece's number} */
    public double exponent() {
        return Math.log(rate) / Math.log(2);
    }

    /**
     * {@return what that piece takes}
     *
     * @param number of the piece, from 1
     */
    public double at(int number) {
        return first * Math.pow(number, exponent());
    }

    /**
     * {@return what the pieces from one to another take together, both counted; 0 where there are none}
     *
     * @param from number of the first of them, from 1
     * @param to number of the last
     */
    public double total(int from, int to) {
        double sum = 0;
        for (int number = from; number <= to; number++) {
            sum += at(number);
        }
        return sum;
    }
}
