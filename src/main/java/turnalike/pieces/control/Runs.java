package turnalike.pieces.control;

import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/** Where the rules' patterns are complete; values are in sigmas from the centre. */
final class Runs {
    private final double[] z;

    /** {@code sigma} may be 0: then every value off the centre is infinitely far from it. */
    Runs(double[] values, double centre, double sigma) {
        z = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            double off = values[i] - centre;
            z[i] = off == 0 ? 0 : off / sigma;
        }
    }

    /**
     * Whether the rule's pattern is complete at the point; never for the rule of the range nor for those of the self-starting watch, which
     * are not about these values.
     */
    boolean completes(RunRule rule, int at) {
        if (at + 1 < rule.fewest()) {
            return false;
        }
        return switch (rule) {
            case BEYOND_THREE -> Math.abs(z[at]) > 3;
            case TWO_OF_THREE_BEYOND_TWO -> someBeyond(at, 2, 3, 2);
            case FOUR_OF_FIVE_BEYOND_ONE -> someBeyond(at, 4, 5, 1);
            case EIGHT_ON_ONE_SIDE, NINE_ON_ONE_SIDE -> all(at, rule, z -> z > 0) || all(at, rule, z -> z < 0);
            case SIX_STEADY ->
                steps(at, rule).allMatch(step -> step > 0) || steps(at, rule).allMatch(step -> step < 0);
            case FOURTEEN_ALTERNATING -> alternates(at, rule);
            case FIFTEEN_WITHIN_ONE -> all(at, rule, z -> Math.abs(z) < 1);
            case EIGHT_BEYOND_ONE -> all(at, rule, z -> Math.abs(z) > 1);
            case RANGE_BEYOND, LASTING_CHANGE, STANDS_APART -> false;
        };
    }

    private boolean someBeyond(int at, int some, int of, double line) {
        double side = Math.signum(z[at]);
        return z[at] * side > line
                && IntStream.rangeClosed(Math.max(at - of + 1, 0), at)
                                .filter(i -> z[i] * side > line)
                                .count()
                        >= some;
    }

    private boolean all(int at, RunRule rule, DoublePredicate test) {
        return IntStream.rangeClosed(at - rule.points() + 1, at)
                .mapToDouble(i -> z[i])
                .allMatch(test);
    }

    /** The direction of each step of the pattern: 1, 0 or -1. */
    private IntStream steps(int at, RunRule rule) {
        return IntStream.rangeClosed(at - rule.points() + 2, at).map(i -> Double.compare(z[i], z[i - 1]));
    }

    private boolean alternates(int at, RunRule rule) {
        int[] steps = steps(at, rule).toArray();
        return IntStream.range(1, steps.length).allMatch(i -> steps[i] * steps[i - 1] < 0);
    }
}
