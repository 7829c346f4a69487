package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import turnalike.trace.Profile;

/** The stations that were seen, as plain numbers in millimetres: places, radii, and how much each counts (one over its variance). */
final class Data {
    /** Wider apart, bends of the outline are not to be told from the scatter of radii. */
    private static final double FINE_MM = 1.5;

    private static final double LEAST_RISE_MM = 0.4;
    private static final int SWEPT_STATIONS = 40;
    /** So many of a hundred gaps are alike where a piece was swept from end to end; else stations were set at its features. */
    private static final double ALIKE = 0.8;

    /** The median of |N(0, 1)|. */
    private static final double MEDIAN_NORMAL = 0.674490;

    final double[] x;
    final double[] r;
    final double[] weight;
    final boolean swept;
    final double sigma;

    private Data(double[] x, double[] r, double[] weight, boolean swept, double sigma) {
        this.x = x;
        this.r = r;
        this.weight = weight;
        this.swept = swept;
        this.sigma = sigma;
    }

    /**
     * The visible stations. Where they were swept, their own scatter (from second differences, by the median, which steps and corners do not
     * move) is asked too: a station is never trusted further than the scatter lets it be.
     *
     * @param leastSigma no radius is known better than this, in millimetres
     */
    static Data of(Profile profile, double leastSigma) {
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
        double least = Math.max(leastSigma, swept && medianSpacing(x) <= FINE_MM ? scatter(x, r) : 0);
        double[] weight = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double sigma = Math.max(least, seen.get(i).uncertainty().mm());
            weight[i] = 1 / (sigma * sigma);
            sum += sigma;
        }
        return new Data(x, r, weight, swept, n == 0 ? least : sum / n);
    }

    /** A bead, cove or S that rises less is none that anyone would turn, or none that anyone could tell. */
    double leastRise() {
        return Math.max(LEAST_RISE_MM, 2 * sigma);
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
        for (int i = 0; i < n; i++) {
            places[i] = lengthMm - x[n - 1 - i];
            radii[i] = r[n - 1 - i];
            weights[i] = weight[n - 1 - i];
        }
        return new Data(places, radii, weights, swept, sigma);
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
        return medianSpacing(x);
    }

    private static double medianSpacing(double[] x) {
        double[] gaps = new double[x.length - 1];
        for (int i = 0; i + 1 < x.length; i++) {
            gaps[i] = x[i + 1] - x[i];
        }
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }

    /** One standard deviation, from rₖ₋₁ − 2rₖ + rₖ₊₁, whose variance is six times that of a radius. */
    private static double scatter(double[] x, double[] r) {
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
        return sorted[count / 2] / (MEDIAN_NORMAL * Math.sqrt(6));
    }
}
