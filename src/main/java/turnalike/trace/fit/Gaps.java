package turnalike.trace.fit;

/** Where a picture's stations have something hidden between them, and where a joint is to be expected there. */
final class Gaps {
    /** Stations that lie so many times the usual way apart have something hidden between them. */
    private static final double APART = 2.5;

    /**
     * What hides the rest is the edge of a member, which ends so many pixels into the gap in the mean, however wide that is; or one that rounds over,
     * and then the joint lies so large a share of the gap behind where it is last seen. Measured on the made pictures: of 356 edges 1.3 where the
     * gap is as deep as half its width, of 177 rounded ones a quarter.
     */
    private static final double EDGE_PIXELS = 1.3;

    private static final double ROUNDED = 0.25;

    private final double[] x;
    private final double[] r;
    private final double widestMm;
    private final double pixelMm;
    private final boolean inPicture;

    /**
     * Between stations.
     *
     * @param x their places
     * @param r their radii
     * @param spacing how far apart they mostly lie
     * @param pixelMm what a pixel shows; zero where they were not read from a picture: then nothing is hidden
     */
    Gaps(double[] x, double[] r, double spacing, double pixelMm) {
        this.x = x;
        this.r = r;
        this.widestMm = APART * spacing;
        this.pixelMm = pixelMm;
        this.inPicture = pixelMm > 0;
    }

    /** Whether something is hidden between a station and the next. */
    boolean isAfter(int last) {
        boolean inside = inPicture && last >= 0 && last + 1 < x.length;
        return inside && x[last + 1] - x[last] > widestMm;
    }

    /**
     * How unlikely it is that a joint between a station and the next stands there, as χ² counts; none where all places are as likely. What a
     * picture does not show is hidden by what is thicker, so that the joint is sought on that side (an exponential distribution).
     *
     * @param before the form before the joint
     * @param after the one after it
     */
    double unlikely(int last, double placeMm, Form before, Form after) {
        boolean rounds = r[last] >= r[last + 1] ? before.steepAtEnd() : after.steepAtStart();
        return isAfter(last) ? 2 * Math.abs(placeMm - thicker(last)) / behind(last, rounds) : 0;
    }

    /** Where a joint between a station and the next is to be expected before anything is fitted, behind an edge or behind what rounds over. */
    double likeliest(int last, boolean rounds) {
        double from = thicker(last);
        double middle = (x[last] + x[last + 1]) / 2;
        return isAfter(last) ? from + Math.signum(middle - from) * behind(last, rounds) : middle;
    }

    /** How far behind an edge a joint is to be expected in what the edge hides. */
    static double behindEdge(double gapMm, double pixelMm) {
        return Math.min(gapMm, EDGE_PIXELS * pixelMm);
    }

    private double behind(int last, boolean rounds) {
        double gap = x[last + 1] - x[last];
        return rounds ? ROUNDED * gap : behindEdge(gap, pixelMm);
    }

    private double thicker(int last) {
        return r[last] >= r[last + 1] ? x[last] : x[last + 1];
    }
}
