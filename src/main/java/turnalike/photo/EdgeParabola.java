package turnalike.photo;

/**
 * A parabola through some neighbouring points of a squared edge: Y² as a polynomial of second degree of X, or X of Y² where the edge is steep; each point
 * counts by its distance across the edge in the picture. Straight edges, arrises and spheres all have Y² of second degree in X, exactly.
 */
final class EdgeParabola {
    private static final double LEAST_SIZE = 1e-8;

    private final double[] along;

    private final double[] across;

    /** Y² of each point, and what it counts where the edge runs level. */
    private final double[] squares;

    private final double[] levels;

    /** The last fit: through which points, about which of them, which of the two courses it took, and what it found. */
    private int from;

    private int to;

    private int about;

    private boolean steep;

    private double perScale;

    private double constant;

    private double slope;

    private double bend;

    /**
     * Takes an edge.
     *
     * @param along X of its points
     * @param across Y of them
     */
    EdgeParabola(double[] along, double[] across) {
        this.along = along;
        this.across = across;
        squares = new double[along.length];
        levels = new double[along.length];
        for (int k = 0; k < along.length; k++) {
            squares[k] = across[k] * across[k];
            levels[k] = weight(false, squares[k], 0);
        }
    }

    /** The ray through a point, where the edge is taken to run level. */
    TangentRay level(int i) {
        return TangentRay.ofSlope(along[i], squares[i], 0);
    }

    /** The ray through the point about which was fitted, by what was. */
    TangentRay ray() {
        return steep
                ? TangentRay.ofInverseSlope(along[about] + constant, squares[about], slope * perScale)
                : TangentRay.ofSlope(along[about], Math.max(0, squares[about] + constant), slope * perScale);
    }

    /**
     * Fits.
     *
     * @param i the point about which
     * @param first the first of the points that count
     * @param last the last of them
     */
    void fit(int i, int first, int last) {
        about = i;
        from = first;
        to = last;
        double spanAlong = Math.abs(along[to] - along[from]);
        double spanAcross = Math.abs(across[to] - across[from]);
        steep = spanAcross > 1.2 * spanAlong;
        perScale = 1 / Math.max(1e-9, steep ? 2 * Math.abs(across[i]) * spanAcross : spanAlong);
        constant = 0;
        slope = 0;
        bend = 0;
        // In the first round each point counts as if the edge ran level, or straight across.
        addUp(false);
        addUp(true);
    }

    private void addUp(boolean again) {
        double[] places = steep ? squares : along;
        double[] values = steep ? along : squares;
        double place = places[about];
        double value = values[about];
        double w0 = 0;
        double w1 = 0;
        double w2 = 0;
        double w3 = 0;
        double w4 = 0;
        double v0 = 0;
        double v1 = 0;
        double v2 = 0;
        double level = slope * perScale;
        double rise = 2 * bend * perScale;
        for (int k = from; k <= to; k++) {
            double t = (places[k] - place) * perScale;
            double off = values[k] - value;
            double weight = again ? weight(steep, squares[k], level + rise * t) : steep ? 1 : levels[k];
            double once = weight * t;
            double twice = once * t;
            w0 += weight;
            w1 += once;
            w2 += twice;
            w3 += twice * t;
            w4 += twice * t * t;
            v0 += weight * off;
            v1 += once * off;
            v2 += twice * off;
        }
        solve(w0, w1, w2, w3, w4, v0, v1, v2);
    }

    /** What the points stray from it by, root mean square across the edge. Many who ask for the parabola do not ask for this. */
    double left() {
        double[] places = steep ? squares : along;
        double[] values = steep ? along : squares;
        double place = places[about];
        double value = values[about];
        double sum = 0;
        double level = slope * perScale;
        double rise = 2 * bend * perScale;
        for (int k = from; k <= to; k++) {
            double t = (places[k] - place) * perScale;
            double off = values[k] - value - constant - t * (slope + t * bend);
            sum += off * off * weight(steep, squares[k], level + rise * t);
        }
        return Math.sqrt(sum / Math.max(1, to - from + 1 - 3));
    }

    /** One over the squared length of the gradient: turns what is off in Y² or X into distance across the edge. */
    private static double weight(boolean steep, double squared, double slope) {
        double twice = 4 * squared;
        double size = steep ? 1 + twice * slope * slope : twice + slope * slope;
        return 1 / (size < LEAST_SIZE ? LEAST_SIZE : size);
    }

    /** A parabola's three numbers from its normal equations, by elimination; one of which they say nothing is 0. */
    private void solve(double w0, double w1, double w2, double w3, double w4, double v0, double v1, double v2) {
        double least = 1e-14 * Math.max(w0, Math.max(w2, w4));
        double first = 1 / w0;
        double slopes = w2 - w1 * w1 * first;
        double both = w3 - w1 * w2 * first;
        double forSlope = v1 - w1 * v0 * first;
        double share = slopes > least ? both / slopes : 0;
        double bends = w4 - w2 * w2 * first - share * both;
        double forBend = v2 - w2 * v0 * first - share * forSlope;
        bend = bends > least ? forBend / bends : 0;
        slope = slopes > least ? (forSlope - both * bend) / slopes : 0;
        constant = (v0 - w1 * slope - w2 * bend) * first;
    }
}
