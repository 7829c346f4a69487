package turnalike.trace.fit;

import java.util.Arrays;

/**
 * What every form between two seams makes of the stations there, as the sums that its least-squares fit asks for: all forms in one pass, as of a
 * long piece millions of stations pass here.
 */
final class StretchSums {
    private static final Form[] TWO = TwoSizes.FORMS;

    private final Data data;
    private final double[] weight;
    private final double[] weightAtCorner;
    private final Together together;
    /** What a level of one, and the radii themselves, come to at each station beside the one before it. */
    private final double[] ones;

    private final double[] radii;
    private final double[] share = new double[TWO.length];
    private final double[] shareBefore = new double[TWO.length];
    private final double[][] sums = new double[TWO.length][6];
    private final double[] belly = new double[9];

    /** Σ w r² of the stretch. */
    private double whole;

    StretchSums(Data data, SeamWeights weights) {
        this.data = data;
        this.weight = weights.alone;
        this.weightAtCorner = weights.atCorner;
        this.together = data.together.with(weight);
        this.ones = new double[data.size()];
        this.radii = new double[data.size()];
        for (int i = 1; i < ones.length; i++) {
            ones[i] = together.own[i] - together.back[i];
            radii[i] = together.own[i] * data.r[i] - together.back[i] * data.r[i - 1];
        }
    }

    /** What a station counts with. */
    double weight(int station) {
        return weight[station];
    }

    /** Those of a form of two sizes: of one, its share and the radius, with one another. */
    double[] of(int form) {
        return sums[form];
    }

    /** Those of a level and of a quadratic: of one, v = u − ½, v² and the radius. */
    double[] belly() {
        return belly;
    }

    double whole() {
        return whole;
    }

    /**
     * The sums of each form. Of all but the few stations beside the seams nothing hangs on these, so that the loops ask nothing. Added up is only
     * what no other sum gives: the two S are each other's rest of 2u. Of a long piece millions of stations pass here.
     */
    void gather(Seam from, Seam to, double lengthMm) {
        for (double[] each : sums) {
            Arrays.fill(each, 0);
        }
        Arrays.fill(belly, 0);
        whole = 0;
        int last = to.last();
        int low = from.first() + 2;
        int high = last - 1;
        if (together.softMm > 0) {
            while (low <= high && isNear(low - 1, from, to)) {
                low++;
            }
            while (high >= low && isNear(high, from, to)) {
                high--;
            }
        }
        if (low <= high) {
            between(from, lengthMm, low, high);
        }
        for (int i = from.first(); i < Math.min(low, last + 1); i++) {
            atEnd(from, to, lengthMm, i);
        }
        for (int i = Math.max(low, high + 1); i <= last; i++) {
            atEnd(from, to, lengthMm, i);
        }
        if (together.softMm > 0) {
            atPoint(from, to, lengthMm, low, high);
        }
        whole = sums[0][5];
    }

    private boolean isNear(int station, Seam from, Seam to) {
        return data.isNear(station, from.placeMm()) || data.isNear(station, to.placeMm());
    }

    private void between(Seam from, double lengthMm, int low, int high) {
        powers(from, lengthMm, low, high);
        double w0 = belly[0];
        double w1 = belly[1] + 0.5 * w0;
        double w2 = belly[2] + belly[1] + 0.25 * w0;
        double wr = belly[6];
        double wru = belly[7] + 0.5 * wr;
        put(0, w1, w2, wru);
        roots(from, lengthMm, low, high);
        bends(from, lengthMm, low, high);
        for (double[] each : sums) {
            each[0] = w0;
            each[3] = wr;
            each[5] = whole;
        }
    }

    /** The point's tip is a corner of its own: the stations beside it count as such, and each alone. */
    private void atPoint(Seam from, Seam to, double lengthMm, int low, int high) {
        double tip = (from.placeMm() + to.placeMm()) / 2;
        double r0 = data.r[from.first()];
        double[] sum = sums[TwoSizes.POINT];
        boolean before = false;
        for (int i = low; i <= high; i++) {
            boolean near = data.isNear(i, tip);
            if (!near && !before) {
                continue;
            }
            double s = Form.POINT.share(u(i, from, lengthMm));
            double line = together.own[i] * s - together.back[i] * Form.POINT.share(u(i - 1, from, lengthMm));
            double r = radii[i] - ones[i] * r0;
            double alone = Math.sqrt(near ? weightAtCorner[i] : weight[i]);
            double was = alone * (data.r[i] - r0);
            sum[0] += alone * alone - ones[i] * ones[i];
            sum[1] += alone * alone * s - ones[i] * line;
            sum[2] += alone * s * alone * s - line * line;
            sum[3] += alone * was - ones[i] * r;
            sum[4] += alone * s * was - line * r;
            sum[5] += was * was - r * r;
            before = near;
        }
    }

    private void put(int form, double share, double squared, double timesRadius) {
        sums[form][1] = share;
        sums[form][2] = squared;
        sums[form][4] = timesRadius;
    }

    /** The sums of what one, v = u − ½, v² and the radius come to at each station beside the one before it, with one another. */
    private void powers(Seam from, double lengthMm, int first, int last) {
        double r0 = data.r[from.first()];
        double w0 = 0;
        double w1 = 0;
        double w11 = 0;
        double w2 = 0;
        double w12 = 0;
        double w22 = 0;
        double wr = 0;
        double wrv = 0;
        double wrvv = 0;
        double wrr = 0;
        double before = u(first - 1, from, lengthMm) - 0.5;
        for (int i = first; i <= last; i++) {
            double v = u(i, from, lengthMm) - 0.5;
            double own = together.own[i];
            double back = together.back[i];
            double one = ones[i];
            double r = radii[i] - one * r0;
            double line = own * v - back * before;
            double square = own * v * v - back * before * before;
            w0 += one * one;
            w1 += one * line;
            w11 += line * line;
            w2 += one * square;
            w12 += line * square;
            w22 += square * square;
            wr += r * one;
            wrv += r * line;
            wrvv += r * square;
            wrr += r * r;
            before = v;
        }
        double[] all = {w0, w1, w11, w2, w12, w22, wr, wrv, wrvv};
        System.arraycopy(all, 0, belly, 0, all.length);
        whole = wrr;
    }

    /** The three arcs: twice the root of u(1 − u), 1 − √(1 − u²), √(1 − (1 − u)²). */
    private void roots(Seam from, double lengthMm, int first, int last) {
        double w0 = belly[0];
        double wr = belly[6];
        double r0 = data.r[from.first()];
        double[] hump = new double[3];
        double[] start = new double[3];
        double[] end = new double[3];
        double u = u(first - 1, from, lengthMm);
        double humpBefore = Math.sqrt(u * (1 - u));
        double startBefore = Math.sqrt((1 - u) * (1 + u));
        double endBefore = Math.sqrt(u * (2 - u));
        for (int i = first; i <= last; i++) {
            u = u(i, from, lengthMm);
            double own = together.own[i];
            double back = together.back[i];
            double r = radii[i] - ones[i] * r0;
            double both = Math.sqrt(u * (1 - u));
            double atStart = Math.sqrt((1 - u) * (1 + u));
            double atEnd = Math.sqrt(u * (2 - u));
            add(hump, ones[i], own * both - back * humpBefore, r);
            add(start, ones[i], own * atStart - back * startBefore, r);
            add(end, ones[i], own * atEnd - back * endBefore, r);
            humpBefore = both;
            startBefore = atStart;
            endBefore = atEnd;
        }
        put(1, 2 * hump[0], 4 * hump[1], 2 * hump[2]);
        put(2, w0 - start[0], w0 - 2 * start[0] + start[1], wr - start[2]);
        put(3, end[0], end[1], end[2]);
    }

    private static void add(double[] sums, double one, double s, double r) {
        sums[0] += one * s;
        sums[1] += s * s;
        sums[2] += r * s;
    }

    /** The two S and the point, which change in the middle. */
    private void bends(Seam from, double lengthMm, int first, int last) {
        double w0 = belly[0];
        double wr = belly[6];
        double r0 = data.r[from.first()];
        double[] bent = new double[3];
        double[] off = new double[3];
        double bentU = 0;
        double before = u(first - 1, from, lengthMm);
        double bentBefore = Form.S.share(before);
        for (int i = first; i <= last; i++) {
            double u = u(i, from, lengthMm);
            double own = together.own[i];
            double back = together.back[i];
            double r = radii[i] - ones[i] * r0;
            double s = u < 0.5 ? 2 * u * u : 1 - 2 * (1 - u) * (1 - u);
            double curved = own * s - back * bentBefore;
            add(bent, ones[i], curved, r);
            add(off, ones[i], own * Math.abs(2 * u - 1) - back * Math.abs(2 * before - 1), r);
            bentU += curved * (own * u - back * before);
            before = u;
            bentBefore = s;
        }
        put(4, bent[0], bent[1], bent[2]);
        put(5, 2 * sums[0][1] - bent[0], 4 * (sums[0][2] - bentU) + bent[1], 2 * sums[0][4] - bent[2]);
        put(6, w0 - off[0], w0 - 2 * off[0] + off[1], wr - off[2]);
    }

    /** How far along the stretch a station stands, from 0 to 1. */
    private double u(int station, Seam from, double lengthMm) {
        return Math.min(1, Math.max(0, (data.x[station] - from.placeMm()) / lengthMm));
    }

    /** One of the stations at an end: half of it where a seam stands on it, none of it for forms that stand upright there. */
    private void atEnd(Seam from, Seam to, double lengthMm, int i) {
        int first = from.first();
        double r0 = data.r[first];
        boolean half = (i == first && from.isShared()) || (i == to.last() && to.isShared());
        boolean near = isNear(i, from, to);
        boolean stands = half || near || i == first || isNear(i - 1, from, to);
        double alone = Math.sqrt(half ? weight[i] / 2 : near ? weightAtCorner[i] : weight[i]);
        double own = stands ? alone : together.own[i];
        double back = stands ? 0 : together.back[i];
        double r = own * (data.r[i] - r0) - (back == 0 ? 0 : back * (data.r[i - 1] - r0));
        TwoSizes.shares(u(Math.max(first, i - 1), from, lengthMm), shareBefore);
        double before = shareBefore[0] - 0.5;
        TwoSizes.shares(u(i, from, lengthMm), share);
        for (int k = 0; k < TWO.length; k++) {
            int begin = data.swept && TWO[k].steepAtStart() ? first + 1 : first;
            int end = data.swept && TWO[k].steepAtEnd() ? to.last() - 1 : to.last();
            if (i == begin && i <= end) {
                addAll(sums[k], alone, alone * share[k], alone * (data.r[i] - r0));
            } else if (i > begin && i <= end) {
                addAll(sums[k], own - back, own * share[k] - back * shareBefore[k], r);
            }
        }
        double v = share[0] - 0.5;
        bend(own - back, own * v - back * before, own * v * v - back * before * before, r);
    }

    private void bend(double one, double line, double square, double r) {
        belly[0] += one * one;
        belly[1] += one * line;
        belly[2] += line * line;
        belly[3] += one * square;
        belly[4] += line * square;
        belly[5] += square * square;
        belly[6] += r * one;
        belly[7] += r * line;
        belly[8] += r * square;
    }

    /** To the sums of one form: of one, its share and the radius, with one another. */
    private static void addAll(double[] sums, double one, double s, double r) {
        sums[0] += one * one;
        sums[1] += one * s;
        sums[2] += s * s;
        sums[3] += one * r;
        sums[4] += s * r;
        sums[5] += r * r;
    }
}
