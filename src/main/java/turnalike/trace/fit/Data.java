package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import turnalike.trace.Profile;

/** The stations that were seen, as plain numbers in millimetres: places, radii, and how much each counts (one over its variance). */
final class Data {
    /** Wider apart, bends of the outline are not to be told from the scatter of radii. */
    private static final double FINE_MM = 1.5;

    /** So many times as long as thick and more, what sinks between its ends may be a swell: a choice of ours, tried on tables drawn at random. */
    private static final double HOLLOW = 1.5;

    private static final double SHORT_HOLLOW = 12;
    private static final double LEAST_RISE_MM = 0.4;
    private static final int SWEPT_STATIONS = 40;
    /** So many of a hundred gaps are alike where a piece was swept from end to end; else stations were set at its features. */
    private static final double ALIKE = 0.8;

    /** Over so many pixels along an edge its errors fade into others, to a third: measured on the made pictures. */
    private static final double REACH_PIXELS = 6;

    /**
     * What is stated of a picture's radii, of which two thirds are within, is taken so many times: the forms of what stands there are no
     * ellipses to a tenth of a pixel, and a wrong name is worse than none. Tried on the made pictures, with the figures below.
     */
    private static final double CAUTION = 1.5;

    /** Of a form shorter than so many pixels a picture does not tell the kind; of a level or a point than so much of it. */
    private static final double SHORTEST_PIXELS = 8;

    private static final double SOONER = 0.75;

    /** The median of |N(0, 1)|. */
    private static final double MEDIAN_NORMAL = 0.674490;

    final double[] x;
    final double[] r;
    final double[] weight;
    /** The same where the outline has a corner, which a picture smears. */
    final double[] weightAtCorner;

    final Together together;
    private final double shortestMm;
    final boolean swept;
    final double sigma;
    /** Whether these are rows of a table, set where somebody chose. */
    private final boolean ofRows;

    /** Whether two rows of a table stand at one place somewhere: whoever set them measured shoulders on both sides. */
    final boolean shouldersTwice;

    private final double spacing;
    final Gaps gaps;

    private Data(
            double[] x,
            double[] r,
            double[] weight,
            double[] weightAtCorner,
            Together together,
            double shortestMm,
            boolean swept,
            boolean ofRows,
            double sigma) {
        this.x = x;
        this.r = r;
        this.weight = weight;
        this.weightAtCorner = weightAtCorner;
        this.together = together;
        this.shortestMm = shortestMm;
        this.swept = swept;
        this.ofRows = ofRows && !swept;
        this.sigma = sigma;
        this.shouldersTwice = this.ofRows && isTwice(x);
        this.spacing = x.length > 1 ? medianSpacing(x) : 0;
        this.gaps = new Gaps(x, r, spacing, shortestMm / SHORTEST_PIXELS);
    }

    /**
     * The visible stations. Where they were swept, their own scatter (from second differences, by the median, which steps and corners do not
     * move) is asked too: a station is never trusted further than the scatter lets it be.
     *
     * @param leastSigma no radius is known better than this, in millimetres
     * @param pixelMm what a pixel shows of the piece, in millimetres; zero where it was not read from a picture
     * @param ofRows whether somebody measured it with calipers, row by row
     */
    static Data of(Profile profile, double leastSigma, double pixelMm, boolean ofRows) {
        List<Profile.Station> seen = new ArrayList<>();
        for (Profile.Station each : profile.stations()) {
            double at = each.place().mm();
            boolean hidden = profile.hidden().stream()
                    .anyMatch(gap -> gap.from().mm() < at && at < gap.to().mm());
            if (!hidden) {
                seen.add(each);
            }
        }
        int n = seen.size();
        double[] x = new double[n];
        double[] r = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = seen.get(i).place().mm();
            r[i] = seen.get(i).radius().mm();
        }
        boolean swept = n >= SWEPT_STATIONS && isRegular(x);
        double reachMm = swept ? REACH_PIXELS * pixelMm : 0;
        double least = Math.max(leastSigma, swept && medianSpacing(x) <= FINE_MM ? scatter(x, r, reachMm) : 0);
        double[] weight = new double[n];
        double[] corner = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double stated = seen.get(i).uncertainty().mm() * (reachMm > 0 ? CAUTION : 1);
            double sigma = Math.max(least, stated);
            double smeared = reachMm > 0 ? CornerSmear.mostMm(x, r, i, pixelMm) : 0;
            weight[i] = 1 / (sigma * sigma);
            corner[i] = 1 / (sigma * sigma + smeared * smeared);
            sum += sigma;
        }
        Together together = Together.of(x, weight, reachMm, swept ? CornerSmear.PIXELS * pixelMm : 0);
        return new Data(
                x,
                r,
                weight,
                corner,
                together,
                swept ? SHORTEST_PIXELS * pixelMm : 0,
                swept,
                ofRows,
                n == 0 ? least : sum / n);
    }

    /**
     * What a form costs beside its sizes: its joint's place as one more, and which of the kinds it is, of nine alike likely ones −2 ln(1/9) in χ²'s
     * measure (J. Rissanen, Automatica 14 (1978) 465–471; from memory). Of rows a size costs as much as of so many that this is in it.
     */
    double perForm(double perSize) {
        return perSize + (swept ? 2 * Math.log(Form.values().length) : 0);
    }

    /** A bead, cove or S that rises less is none that anyone would turn, or none that anyone could tell. */
    double leastRise() {
        return Math.max(LEAST_RISE_MM, 2 * sigma);
    }

    /**
     * What a quadratic that sinks between its ends costs more, of rows that somebody set: short, it is a cove with a fillet on either side, which
     * cost more sizes.
     */
    double hollow(double lengthMm, double thickMm) {
        return ofRows && lengthMm < HOLLOW * thickMm ? SHORT_HOLLOW : 0;
    }

    /** Whether a station is so near a corner at that place that the picture smears it. */
    boolean isNear(int station, double placeMm) {
        return Math.abs(x[station] - placeMm) < together.softMm;
    }

    /**
     * What each of some values adds to the one before it, in standard deviations. The first stands alone, as do those near the ends.
     *
     * @param first the station of the first value
     * @param values of as many stations in a row
     */
    double[] apart(int first, double[] values, double fromMm, double toMm) {
        double[] out = new double[values.length];
        boolean linked = false;
        for (int i = 0; i < out.length; i++) {
            int k = first + i;
            boolean near = isNear(k, fromMm) || isNear(k, toMm);
            if (near || !linked) {
                out[i] = Math.sqrt(near ? weightAtCorner[k] : weight[k]) * values[i];
            } else {
                out[i] = together.own[k] * values[i] - together.back[k] * values[i - 1];
            }
            linked = !near;
        }
        return out;
    }

    /** χ² of misses, as {@link #apart} counts them. */
    double chi(int first, double[] misses, double fromMm, double toMm) {
        double sum = 0;
        for (double each : apart(first, misses, fromMm, toMm)) {
            sum += each * each;
        }
        return sum;
    }

    /**
     * Whether a form may be so short: over fewer than {@link #SHORTEST_PIXELS} a picture's own smearing looks like one. A level between two steps
     * and a point are told sooner, and what ends with the piece may be a broken edge.
     */
    boolean isTellable(Form form, Seam from, Seam to) {
        boolean inside = from.last() >= 0 && to.first() < x.length;
        double least = form == Form.LEVEL || form == Form.POINT ? SOONER * shortestMm : shortestMm;
        return !inside || to.placeMm() - from.placeMm() >= least;
    }

    /** Whether it was read from a picture, whose corners are smeared. */
    boolean isOfPicture() {
        return together.softMm > 0;
    }

    int size() {
        return x.length;
    }

    /** The same stations seen from the other end of a piece of that length. */
    Data mirrored(double lengthMm) {
        int n = x.length;
        double[] places = new double[n];
        double[] radii = new double[n];
        double[] weights = new double[n];
        double[] corners = new double[n];
        for (int i = 0; i < n; i++) {
            places[i] = lengthMm - x[n - 1 - i];
            radii[i] = r[n - 1 - i];
            weights[i] = weight[n - 1 - i];
            corners[i] = weightAtCorner[n - 1 - i];
        }
        return new Data(places, radii, weights, corners, together.mirrored(weights), shortestMm, swept, ofRows, sigma);
    }

    /** The first station at that place or beyond it. */
    int firstFrom(double placeMm) {
        int at = 0;
        while (at < x.length && x[at] < placeMm) {
            at++;
        }
        return at;
    }

    private static boolean isRegular(double[] x) {
        double median = medianSpacing(x);
        int alike = 0;
        for (int i = 0; i + 1 < x.length; i++) {
            alike += Math.abs(x[i + 1] - x[i] - median) < 0.25 * median ? 1 : 0;
        }
        return alike >= ALIKE * (x.length - 1);
    }

    /** The fewest stations that a form may rest on. */
    int fewest() {
        return swept && medianSpacing(x) < 1 ? 3 : swept ? 2 : 1;
    }

    /** From a station to the next, most often. */
    double spacing() {
        return spacing;
    }

    private static boolean isTwice(double[] x) {
        boolean twice = false;
        for (int i = 0; i + 1 < x.length; i++) {
            twice |= x[i] == x[i + 1];
        }
        return twice;
    }

    private static double medianSpacing(double[] x) {
        double[] gaps = new double[x.length - 1];
        for (int i = 0; i + 1 < x.length; i++) {
            gaps[i] = x[i + 1] - x[i];
        }
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }

    /** One standard deviation, from rₖ₋₁ − 2rₖ + rₖ₊₁, whose variance is six times that of a radius, or the less the more they stray together. */
    private static double scatter(double[] x, double[] r, double reachMm) {
        double[] bends = new double[x.length];
        int count = 0;
        for (int i = 1; i + 1 < x.length; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            if (before > 0 && after > 0 && before < 1.5 * after && after < 1.5 * before) {
                bends[count++] = Math.abs(r[i - 1] - 2 * r[i] + r[i + 1]);
            }
        }
        if (count < SWEPT_STATIONS / 2) {
            return 0;
        }
        double[] sorted = Arrays.copyOf(bends, count);
        Arrays.sort(sorted);
        double link = reachMm > 0 ? Math.exp(-medianSpacing(x) / reachMm) : 0;
        return sorted[count / 2] / (MEDIAN_NORMAL * Math.sqrt(6 - 8 * link + 2 * link * link));
    }
}
