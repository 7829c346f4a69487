package turnalike.frame;

import java.util.ArrayList;
import java.util.List;

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
        double from = 0;
        double to = farGMm(each);
        for (int halving = 0; halving < 50 && to - from > 1e-9 * to; halving++) {
            double middle = (from + to) / 2;
            if (within(middle, each) < probability) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return (from + to) / 2;
    }

    /**
     * {@return the expected unbalance in g·mm: the mean of its size, ∫ (1 − probability of being within) by Simpson's rule} The estimate is
     * taken as it is: the doubt about it widens the range to both sides but does not move what is expected.
     */
    public double expectedGMm() {
        Spread all = known.plus(estimated);
        double far = mean.gMm() + FAR * all.rmsGMm();
        if (rmsGMm() == 0) {
            return mean.gMm();
        }
        // Nothing happens nearer than so far from the mean: there the probability is 0 and the integrand 1.
        double from = Math.max(0, 2 * mean.gMm() - far);
        int panels = 160;
        double sum = 0;
        for (int i = 0; i <= panels; i++) {
            double weight = i == 0 || i == panels ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * (1 - within(from + (far - from) * i / panels, all));
        }
        return from + sum * (far - from) / panels / 3;
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
