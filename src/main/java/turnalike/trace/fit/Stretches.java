package turnalike.trace.fit;

import java.util.EnumSet;
import java.util.Set;

/** How well each form explains the stations between two seams, by weighted least squares: χ², the sum of squared standardised misses. */
final class Stretches {
    private static final double LEAST_RADIUS_MM = 0.05;
    private static final Set<Form> NONE = EnumSet.noneOf(Form.class);

    private final Data data;
    private final double perSize;
    private final StretchSums sums;
    private final int fewest;

    /** Whether the quadratic found last sinks between its ends. */
    private boolean isHollow;

    /** By how much the form of two sizes found last rises. */
    private double rise;

    /** Between seams at fixed places, up to half a spacing off where joints belong. */
    Stretches(Data data, double perSize) {
        this(data, perSize, new SeamWeights(data));
    }

    private Stretches(Data data, double perSize, SeamWeights weights) {
        this.data = data;
        this.perSize = perSize;
        this.sums = new StretchSums(data, weights);
        this.fewest = data.fewest();
    }

    /** Between seams that stand wherever a joint may. */
    static Stretches ofJoints(Data data, double perSize) {
        return new Stretches(data, perSize, new SeamWeights(data.weight, data.weightAtCorner));
    }

    /** The form that explains a stretch at the least cost, and that cost; infinite when none has enough stations. */
    record Best(Form form, double cost) {}

    Best best(Seam from, Seam to) {
        return best(from, to, NONE);
    }

    /** The same of all forms but some. */
    Best best(Seam from, Seam to, Set<Form> barred) {
        int first = from.first();
        int last = to.last();
        double lengthMm = to.placeMm() - from.placeMm();
        int count = last - first + 1;
        if (count < fewest || !(lengthMm > 0.3)) {
            return new Best(Form.LEVEL, Double.POSITIVE_INFINITY);
        }
        sums.gather(from, to, lengthMm);
        double perForm = data.perForm(perSize);
        double thickMm = 2 * data.r[first];
        Form best = Form.LEVEL;
        double least = !barred.contains(Form.LEVEL) && data.isTellable(Form.LEVEL, from, to)
                ? level(sums.belly()) + perForm + perSize
                : Double.POSITIVE_INFINITY;
        for (int k = 0; k < TwoSizes.FORMS.length && count >= 2; k++) {
            Form form = TwoSizes.FORMS[k];
            double cost = two(form, sums.of(k), from, to, lengthMm) + perForm + 2 * perSize;
            cost += form.rarity(lengthMm, thickMm, rise);
            if (cost < least && !barred.contains(form) && data.isTellable(form, from, to)) {
                least = cost;
                best = form;
            }
        }
        if (count >= 3 && !barred.contains(Form.BELLY) && data.isTellable(Form.BELLY, from, to)) {
            double cost = three(sums.belly()) + perForm + 3 * perSize + Form.BELLY.rarity(lengthMm, thickMm, 0);
            cost += isHollow ? data.hollow(lengthMm, thickMm) : 0;
            if (cost < least) {
                least = cost;
                best = Form.BELLY;
            }
        }
        return new Best(best, least);
    }

    private double level(double[] b) {
        return Math.max(0, sums.whole() - b[6] * b[6] / b[0]);
    }

    private double two(Form form, double[] t, Seam from, Seam to, double lengthMm) {
        rise = 0;
        if (!(t[0] > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double ss = t[2] - t[1] * t[1] / t[0];
        double sr = t[4] - t[1] * t[3] / t[0];
        double rr = t[5] - t[3] * t[3] / t[0];
        if (!(ss > 1e-9 * t[0])) {
            return Double.POSITIVE_INFINITY;
        }
        rise = sr / ss;
        double foot = data.r[from.first()] + t[3] / t[0] - rise * t[1] / t[0];
        if (foot < LEAST_RADIUS_MM || foot + rise < LEAST_RADIUS_MM || (form == Form.POINT && rise >= 0)) {
            return Double.POSITIVE_INFINITY;
        }
        if (form != Form.STRAIGHT && Math.abs(rise) < data.leastRise()) {
            return Double.POSITIVE_INFINITY;
        }
        double chi = Math.max(0, rr - rise * sr);
        if (data.swept && form.steepAtStart()) {
            chi += atSteepEnd(form, foot, from.first(), (data.x[from.first()] - from.placeMm()) / lengthMm, false);
        }
        if (data.swept && form.steepAtEnd()) {
            chi += atSteepEnd(form, foot, to.last(), (to.placeMm() - data.x[to.last()]) / lengthMm, true);
        }
        return chi;
    }

    /**
     * Where an arc stands upright, a radius says next to nothing while its end may lie anywhere between two stations: the station next to
     * it only counts with how far it lies outside all that this end allows.
     */
    private double atSteepEnd(Form form, double foot, int station, double away, boolean atEnd) {
        double furthest = Math.min(1, 2 * away);
        double onEnd = foot + rise * form.share(atEnd ? 1 : 0);
        double inside = foot + rise * form.share(atEnd ? 1 - furthest : furthest);
        double r = data.r[station];
        double outside = Math.max(0, Math.max(Math.min(onEnd, inside) - r, r - Math.max(onEnd, inside)));
        return outside * outside * sums.weight(station);
    }

    /** The quadratic's, by the normal equations about the middle. */
    private double three(double[] b) {
        double[][] m = {{b[0], b[1], b[3]}, {b[1], b[2], b[4]}, {b[3], b[4], b[5]}};
        double[] right = {b[6], b[7], b[8]};
        double[] p = Cholesky.solve(m, right.clone(), 1e-12);
        isHollow = p.length > 0 && p[2] > 0;
        return p.length == 0
                ? Double.POSITIVE_INFINITY
                : Math.max(0, sums.whole() - p[0] * right[0] - p[1] * right[1] - p[2] * right[2]);
    }
}
