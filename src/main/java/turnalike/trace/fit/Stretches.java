package turnalike.trace.fit;

import java.util.Arrays;
import java.util.List;

/** How well each form explains the stations between two seams, by weighted least squares: χ², the sum of squared standardised misses. */
final class Stretches {
    private static final double LEAST_RADIUS_MM = 0.05;
    private static final double COARSE = 0.1;

    /** Forms of two sizes other than the straight, in the order in which their sums stand. */
    private static final Form[] TWO = {
        Form.STRAIGHT, Form.HUMP, Form.LEVEL_AT_START, Form.LEVEL_AT_END, Form.S, Form.REVERSE_S, Form.POINT
    };

    private final Data data;
    private final double perSize;
    private final double[] weight;
    private final int fewest;
    private final double[] share = new double[TWO.length];
    private final double[][] sums = new double[TWO.length][6];
    private final double[] belly = new double[8];

    Stretches(Data data, double perSize) {
        this.data = data;
        this.perSize = perSize;
        this.weight = weights(data);
        this.fewest = data.fewest();
    }

    /**
     * A seam among fixed places stands up to half a spacing off the joint, and where the outline is steep that alone shifts radii: their
     * variance there is larger by the square of slope times spacing over twelve (that of an even spread).
     */
    private static double[] weights(Data data) {
        double[] out = data.weight.clone();
        // What a joint half a spacing off does to forms that are not steep, roughly: without it, what is drawn exactly
        // would be cut up to follow it.
        double coarse = data.swept ? COARSE * data.spacing() : 0;
        for (int i = 0; i < out.length; i++) {
            out[i] = 1 / (1 / out[i] + coarse * coarse);
        }
        for (int i = 2; data.swept && i + 2 < out.length; i++) {
            double run = data.x[i + 2] - data.x[i - 2];
            double rise = run > 0 ? (data.r[i + 2] - data.r[i - 2]) / 4 : 0;
            out[i] = 1 / (1 / out[i] + rise * rise / 12);
        }
        return out;
    }

    /** The form that explains a stretch at the least cost, and that cost; infinite when none has enough stations. */
    record Best(Form form, double cost) {}

    Best best(Seam from, Seam to) {
        int first = from.first();
        int last = to.last();
        double lengthMm = to.placeMm() - from.placeMm();
        int count = last - first + 1;
        if (count < fewest || !(lengthMm > 0.3)) {
            return new Best(Form.LEVEL, Double.POSITIVE_INFINITY);
        }
        gather(from, to, lengthMm);
        Form best = Form.LEVEL;
        double least = level(belly) + 2 * perSize;
        for (int k = 0; k < TWO.length && count >= 2; k++) {
            double cost = two(TWO[k], sums[k], from, to, lengthMm) + 3 * perSize + TWO[k].rarity();
            if (cost < least) {
                least = cost;
                best = TWO[k];
            }
        }
        if (count >= 3) {
            double cost = three(belly) + 4 * perSize + Form.BELLY.rarity();
            if (cost < least) {
                least = cost;
                best = Form.BELLY;
            }
        }
        return new Best(best, least);
    }

    /**
     * The sums of each form. Of all but the end stations nothing hangs on the seams, so that their loops ask nothing. Added up is only what no
     * other sum gives: the squares of the roots are polynomials of u, whose sums the quadratic needs anyway, and the two S are each other's
     * rest of 2u. Of a long piece millions of stations pass here.
     */
    private void gather(Seam from, Seam to, double lengthMm) {
        for (double[] each : sums) {
            Arrays.fill(each, 0);
        }
        Arrays.fill(belly, 0);
        powers(from, to, lengthMm);
        double w0 = belly[0];
        double w1 = belly[1] + 0.5 * w0;
        double w2 = belly[2] + belly[1] + 0.25 * w0;
        double wr = belly[5];
        double wru = belly[6] + 0.5 * wr;
        put(0, w1, w2, wru);
        roots(from, to, lengthMm, w0, w1, w2, wr);
        bends(from, to, lengthMm, w0, w1, w2, wr, wru);
        for (double[] each : sums) {
            each[0] = w0;
            each[3] = wr;
            each[5] = whole;
        }
        atEnd(from, to, lengthMm, from.first());
        if (to.last() > from.first()) {
            atEnd(from, to, lengthMm, to.last());
        }
        whole = sums[0][5];
    }

    private void put(int form, double share, double squared, double timesRadius) {
        sums[form][1] = share;
        sums[form][2] = squared;
        sums[form][4] = timesRadius;
    }

    /** The weights' and weighted radii's sums with the powers of v = u − ½. */
    private void powers(Seam from, Seam to, double lengthMm) {
        double r0 = data.r[from.first()];
        double w0 = 0;
        double w1 = 0;
        double w2 = 0;
        double w3 = 0;
        double w4 = 0;
        double wr = 0;
        double wrv = 0;
        double wrvv = 0;
        double wrr = 0;
        for (int i = from.first() + 1; i < to.last(); i++) {
            double v = u(i, from, lengthMm) - 0.5;
            double w = weight[i];
            double r = data.r[i] - r0;
            double vv = v * v;
            double wvv = w * vv;
            w0 += w;
            w1 += w * v;
            w2 += wvv;
            w3 += wvv * v;
            w4 += wvv * vv;
            double weighted = w * r;
            wr += weighted;
            wrv += weighted * v;
            wrvv += weighted * vv;
            wrr += weighted * r;
        }
        double[] all = {w0, w1, w2, w3, w4, wr, wrv, wrvv};
        System.arraycopy(all, 0, belly, 0, all.length);
        whole = wrr;
    }

    /** The three arcs: twice the root of u(1 − u), 1 − √(1 − u²), √(1 − (1 − u)²). */
    private void roots(Seam from, Seam to, double lengthMm, double w0, double w1, double w2, double wr) {
        double r0 = data.r[from.first()];
        double hump = 0;
        double humpR = 0;
        double start = 0;
        double startR = 0;
        double end = 0;
        double endR = 0;
        for (int i = from.first() + 1; i < to.last(); i++) {
            double u = u(i, from, lengthMm);
            double w = weight[i];
            double weighted = w * (data.r[i] - r0);
            double both = Math.sqrt(u * (1 - u));
            double atStart = Math.sqrt((1 - u) * (1 + u));
            double atEnd = Math.sqrt(u * (2 - u));
            hump += w * both;
            humpR += weighted * both;
            start += w * atStart;
            startR += weighted * atStart;
            end += w * atEnd;
            endR += weighted * atEnd;
        }
        put(1, 2 * hump, 4 * (w1 - w2), 2 * humpR);
        put(2, w0 - start, 2 * (w0 - start) - w2, wr - startR);
        put(3, end, 2 * w1 - w2, endR);
    }

    /** The two S and the point, which change in the middle. */
    private void bends(Seam from, Seam to, double lengthMm, double w0, double w1, double w2, double wr, double wru) {
        double r0 = data.r[from.first()];
        double bent = 0;
        double bentR = 0;
        double squared = 0;
        double bentU = 0;
        double off = 0;
        double offR = 0;
        for (int i = from.first() + 1; i < to.last(); i++) {
            double u = u(i, from, lengthMm);
            double weighted = weight[i] * (data.r[i] - r0);
            double s = u < 0.5 ? 2 * u * u : 1 - 2 * (1 - u) * (1 - u);
            double ws = weight[i] * s;
            double away = Math.abs(2 * u - 1);
            bent += ws;
            bentR += weighted * s;
            squared += ws * s;
            bentU += ws * u;
            off += weight[i] * away;
            offR += weighted * away;
        }
        put(4, bent, squared, bentR);
        put(5, 2 * w1 - bent, 4 * (w2 - bentU) + squared, 2 * wru - bentR);
        put(6, w0 - off, 2 * (w0 - off) + 4 * (w2 - w1), wr - offR);
    }

    /** How far along the stretch a station stands, from 0 to 1. */
    private double u(int station, Seam from, double lengthMm) {
        return Math.min(1, Math.max(0, (data.x[station] - from.placeMm()) / lengthMm));
    }

    /** The first or last station: half of it where a seam stands on it, none of it for forms that stand upright there. */
    private void atEnd(Seam from, Seam to, double lengthMm, int i) {
        double u = u(i, from, lengthMm);
        double r = data.r[i] - data.r[from.first()];
        boolean half = (i == from.first() && from.isShared()) || (i == to.last() && to.isShared());
        double w = half ? weight[i] / 2 : weight[i];
        shares(u);
        boolean atStart = data.swept && i == from.first();
        boolean atEnd = data.swept && i == to.last();
        for (int k = 0; k < TWO.length; k++) {
            boolean unsure = (atStart && TWO[k].steepAtStart()) || (atEnd && TWO[k].steepAtEnd());
            if (!unsure) {
                add(sums[k], w, share[k], r);
            }
        }
        bend(w, u - 0.5, r);
    }

    private void bend(double w, double v, double r) {
        double wv = w * v;
        double wvv = wv * v;
        belly[0] += w;
        belly[1] += wv;
        belly[2] += wvv;
        belly[3] += wvv * v;
        belly[4] += wvv * v * v;
        belly[5] += w * r;
        belly[6] += wv * r;
        belly[7] += wvv * r;
    }

    /** Σ w r² of the stretch. */
    private double whole;

    private void shares(double u) {
        double rest = 1 - u;
        share[0] = u;
        share[1] = 2 * Math.sqrt(u * rest);
        share[2] = 1 - Math.sqrt(rest * (1 + u));
        share[3] = Math.sqrt(u * (1 + rest));
        share[4] = u < 0.5 ? 2 * u * u : 1 - 2 * rest * rest;
        share[5] = u < 0.5 ? 2 * u * rest : 1 - 2 * u * rest;
        share[6] = 1 - Math.abs(2 * u - 1);
    }

    private static void add(double[] sums, double w, double s, double r) {
        sums[0] += w;
        sums[1] += w * s;
        sums[2] += w * s * s;
        sums[3] += w * r;
        sums[4] += w * s * r;
        sums[5] += w * r * r;
    }

    private double level(double[] b) {
        return Math.max(0, whole - b[5] * b[5] / b[0]);
    }

    private double two(Form form, double[] t, Seam from, Seam to, double lengthMm) {
        if (!(t[0] > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double ss = t[2] - t[1] * t[1] / t[0];
        double sr = t[4] - t[1] * t[3] / t[0];
        double rr = t[5] - t[3] * t[3] / t[0];
        if (!(ss > 1e-9 * t[0])) {
            return Double.POSITIVE_INFINITY;
        }
        double rise = sr / ss;
        double foot = data.r[from.first()] + t[3] / t[0] - rise * t[1] / t[0];
        if (foot < LEAST_RADIUS_MM || foot + rise < LEAST_RADIUS_MM || (form == Form.POINT && rise >= 0)) {
            return Double.POSITIVE_INFINITY;
        }
        if (form != Form.STRAIGHT && Math.abs(rise) < data.leastRise()) {
            return Double.POSITIVE_INFINITY;
        }
        double chi = Math.max(0, rr - rise * sr);
        if (data.swept && form.steepAtStart()) {
            chi += atSteepEnd(
                    form, foot, rise, from.first(), (data.x[from.first()] - from.placeMm()) / lengthMm, false);
        }
        if (data.swept && form.steepAtEnd()) {
            chi += atSteepEnd(form, foot, rise, to.last(), (to.placeMm() - data.x[to.last()]) / lengthMm, true);
        }
        return chi;
    }

    /**
     * Where an arc stands upright, a radius says next to nothing while its end may lie anywhere between two stations: the station next to
     * it only counts with how far it lies outside all that this end allows.
     */
    private double atSteepEnd(Form form, double foot, double rise, int station, double away, boolean atEnd) {
        double furthest = Math.min(1, 2 * away);
        double onEnd = foot + rise * form.share(atEnd ? 1 : 0);
        double inside = foot + rise * form.share(atEnd ? 1 - furthest : furthest);
        double r = data.r[station];
        double outside = Math.max(0, Math.max(Math.min(onEnd, inside) - r, r - Math.max(onEnd, inside)));
        return outside * outside * weight[station];
    }

    /** The quadratic's, by the normal equations about the middle. */
    private double three(double[] b) {
        double[][] m = {{b[0], b[1], b[2]}, {b[1], b[2], b[3]}, {b[2], b[3], b[4]}};
        double[] right = {b[5], b[6], b[7]};
        double[] p = Cholesky.solve(m, right.clone(), 1e-12);
        return p.length == 0
                ? Double.POSITIVE_INFINITY
                : Math.max(0, whole - p[0] * right[0] - p[1] * right[1] - p[2] * right[2]);
    }

    /** The cheapest run of forms from the first seam to the last: dynamic programming, exact over these seams and forms. */
    static Run cheapest(Data data, List<Seam> seams, double perSize) {
        Stretches stretches = new Stretches(data, perSize);
        int n = seams.size();
        double[] cost = new double[n];
        int[] before = new int[n];
        Form[] form = new Form[n];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        Arrays.fill(form, Form.LEVEL);
        cost[0] = 0;
        for (int to = 1; to < n; to++) {
            for (int from = 0; from < to; from++) {
                double soFar = cost[from] + seams.get(to).unmeasured(data) * perSize;
                if (soFar + 2 * perSize < cost[to]) {
                    Best best = stretches.best(seams.get(from), seams.get(to));
                    if (soFar + best.cost() < cost[to]) {
                        cost[to] = soFar + best.cost();
                        before[to] = from;
                        form[to] = best.form();
                    }
                }
            }
        }
        return Run.back(seams, before, form);
    }
}
