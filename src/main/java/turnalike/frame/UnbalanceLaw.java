package turnalike.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How large an unbalance is likely to be when its two components scatter: the length of a vector whose components are normally distributed about
 * {@code mean}. Many small errors that know nothing of one another add up to a normal one whatever each is like. The probability is
 * integrated along the spread's longer axis, to about 10⁻⁶. Where part of the scatter was estimated from few pieces, the estimate's own
 * doubt counts too: the probability is the mean over what that part's variance may be, s²·ν/χ² with ν degrees of freedom, as in
 * Student's distribution.
 *
 * @param mean about which it scatters
 * @param known the scatter that is known
 * @param estimated the scatter that was estimated from a sample
 * @param freedom the sample's degrees of freedom; above 0, and of no account where nothing was estimated
 */
public record UnbalanceLaw(Moment mean, Spread known, Spread estimated, int freedom) {
    private static final int STEPS = 64;
    private static final int ESTIMATES = 12;
    private static final int LEAST_DIRECTIONS = 48;
    private static final int MOST_DIRECTIONS = 4096;
    private static final int HALVINGS = 4;
    private static final int MOST_STEPS = 60;
    /** Farther out than so many standard deviations there is nothing left to add. */
    private static final double FAR = 8;

    public UnbalanceLaw {
        if (freedom < 1) {
            throw new IllegalArgumentException("degrees of freedom must be 1 or more, were " + freedom);
        }
    }

    /** {@return the root of the mean square of the deviation from the mean, in g·mm, the estimate taken as it is} */
    public double rmsGMm() {
        return known.plus(estimated).rmsGMm();
    }

    /**
     * {@return how likely the unbalance is at most that}
     *
     * @param gMm in g·mm; not negative
     */
    public double within(double gMm) {
        return within(gMm, spreads());
    }

    private double within(double gMm, List<Spread> each) {
        double sum = 0;
        for (Spread spread : each) {
            sum += within(gMm, spread);
        }
        return sum / each.size();
    }

    /**
     * {@return what the unbalance stays below with that probability, in g·mm}
     *
     * @param probability above 0, below 1
     */
    public double quantileGMm(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1, was " + probability);
        }
        List<Spread> each = spreads();
        double to = farGMm(each);
        return crossing(gMm -> within(gMm, each) - probability, 0, -probability, to, 1 - probability);
    }

    /**
     * Where a rising function passes zero, to 10⁻⁹: the straight line's zero each time, the value at an end that stays being halved:
     * regula falsi by the Illinois rule, from memory.
     */
    private static double crossing(DoubleUnaryOperator rising, double low, double atLow, double high, double atHigh) {
        double from = low;
        double to = high;
        double below = atLow;
        double above = atHigh;
        int kept = 0;
        for (int step = 0; step < MOST_STEPS && to - from > 1e-9 * to; step++) {
            // The function is all but level far out: there halving is quicker.
            double next = step < HALVINGS ? (from + to) / 2 : from + (to - from) * below / (below - above);
            double value = rising.applyAsDouble(next);
            if (value == 0) {
                return next;
            }
            boolean isBelow = value < 0;
            if (isBelow) {
                from = next;
                below = value;
                above *= kept < 0 ? 0.5 : 1;
            } else {
                to = next;
                above = value;
                below *= kept > 0 ? 0.5 : 1;
            }
            kept = isBelow ? -1 : 1;
        }
        return (from + to) / 2;
    }

    /**
     * {@return the expected unbalance in g·mm: the mean of its size} The size is half of what the vector measures along every direction, none
     * twice, ∫ |u·cos φ + v·sin φ| dφ from 0 to π; along one direction it is a normal deviate, whose mean size is known in closed form. Added
     * up over evenly spaced directions, which for a smooth function that comes round again is as good as exact (to about 10⁻⁹ unless the scatter
     * is a thousandth of the unbalance or lies along one line, then to 10⁻⁶). The estimate is taken as it is: the doubt about it widens the
     * range to both sides but does not move what is expected.
     */
    public double expectedGMm() {
        Spread all = known.plus(estimated);
        if (rmsGMm() == 0) {
            return mean.gMm();
        }
        double half = Math.hypot((all.xx() - all.yy()) / 2, all.xy());
        double across = Math.sqrt(Math.max(0, (all.xx() + all.yy()) / 2 - half));
        double bend = across / (mean.gMm() + all.rmsGMm());
        int directions = (int) Math.max(LEAST_DIRECTIONS, Math.min(MOST_DIRECTIONS, Math.ceil(12 / bend)));
        double sum = 0;
        for (int i = 0; i < directions; i++) {
            double at = Math.PI * (i + 0.5) / directions;
            sum += meanAlong(all, Math.cos(at), Math.sin(at));
        }
        return sum * Math.PI / directions / 2;
    }

    /** The mean size of the component along a direction: σ·√(2/π)·e^(−μ²/2σ²) + μ·(1 − 2Φ(−μ/σ)), the folded normal's. */
    private double meanAlong(Spread all, double cos, double sin) {
        double middle = mean.xGMm() * cos + mean.yGMm() * sin;
        double variance = all.xx() * cos * cos + 2 * all.xy() * cos * sin + all.yy() * sin * sin;
        if (!(variance > 0)) {
            return Math.abs(middle);
        }
        double deviation = Math.sqrt(variance);
        double z = middle / deviation;
        return deviation * Math.sqrt(2 / Math.PI) * Math.exp(-z * z / 2) + middle * (1 - 2 * NormalLaw.below(-z));
    }

    private double farGMm(List<Spread> each) {
        double widest = 0;
        for (Spread spread : each) {
            widest = Math.max(widest, spread.rmsGMm());
        }
        return Math.max(mean.gMm() + FAR * widest, Double.MIN_NORMAL);
    }

    /** The scatters that stand for what the estimate may be: equally likely ones, each at the middle of its share. */
    private List<Spread> spreads() {
        if (estimated.rmsGMm() == 0) {
            return List.of(known);
        }
        List<Spread> out = new ArrayList<>();
        for (int i = 0; i < ESTIMATES; i++) {
            double square = NormalLaw.chiSquareQuantile((i + 0.5) / ESTIMATES, freedom);
            out.add(known.plus(estimated.times(freedom / square)));
        }
        return out;
    }

    private double within(double gMm, Spread spread) {
        // The axes along which the two deviations know nothing of one another.
        double turn = 0.5 * Math.atan2(2 * spread.xy(), spread.xx() - spread.yy());
        double half = Math.hypot((spread.xx() - spread.yy()) / 2, spread.xy());
        double middle = (spread.xx() + spread.yy()) / 2;
        double along = Math.sqrt(middle + half);
        double across = Math.sqrt(Math.max(0, middle - half));
        double mx = mean.xGMm() * Math.cos(turn) + mean.yGMm() * Math.sin(turn);
        double my = mean.yGMm() * Math.cos(turn) - mean.xGMm() * Math.sin(turn);
        if (along == 0) {
            return mean.gMm() <= gMm ? 1 : 0;
        }
        double from = Math.max(-gMm, mx - FAR * along);
        double to = Math.min(gMm, mx + FAR * along);
        if (!(from < to)) {
            return 0;
        }
        // x = centre + half·sin t takes the circle's steep ends out of the integrand.
        double centre = (from + to) / 2;
        double reach = (to - from) / 2;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double t = Math.PI * ((i + 0.5) / STEPS - 0.5);
            double x = centre + reach * Math.sin(t);
            double y = Math.sqrt(Math.max(0, gMm * gMm - x * x));
            double z = (x - mx) / along;
            sum += Math.exp(-z * z / 2) * chord(y, my, across) * Math.cos(t);
        }
        return sum * Math.PI / STEPS * reach / along / Math.sqrt(2 * Math.PI);
    }

    /** How likely the component across lies between −y and y. */
    private static double chord(double y, double mean, double deviation) {
        if (deviation < 1e-9 * (y + Math.abs(mean))) {
            return Math.abs(mean) <= y ? 1 : 0;
        }
        return NormalLaw.below((y - mean) / deviation) - NormalLaw.below((-y - mean) / deviation);
    }
}
