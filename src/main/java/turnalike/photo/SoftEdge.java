package turnalike.photo;

/**
 * What a lens of a given softness makes of light that ends at an edge, in units of that softness: of a level, of the root of the depth under
 * the edge and of the depth itself, each nothing beyond it. The softness is taken for a normal law. All are read from one table, between its
 * entries: they are asked some million times for one picture.
 */
final class SoftEdge {
    /** What stands at each place of the table, and in what {@link #fill} writes. */
    static final int LEVEL = 0;

    static final int DEPTH = 1;

    static final int ROOT = 2;

    /** How fast level and root fall outward; the depth falls by the level. */
    static final int LEVEL_FALL = 3;

    static final int ROOT_FALL = 4;

    static final int SHAPES = 5;

    private static final int PER_UNIT = 64;

    private static final int LEAST = -16;

    private static final int MOST = 6;

    private static final int LAST = (MOST - LEAST) * PER_UNIT;

    private static final double[] TABLE = new double[(LAST + 1) * SHAPES];

    static {
        for (int i = 0; i <= LAST; i++) {
            double u = LEAST + (double) i / PER_UNIT;
            double level = NormalShare.below(-u);
            double density = Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI);
            int at = i * SHAPES;
            TABLE[at + LEVEL] = level;
            TABLE[at + ROOT] = softenedRoot(u);
            // By parts, exact.
            TABLE[at + DEPTH] = -u * level + density;
            TABLE[at + LEVEL_FALL] = density;
        }
        for (int i = 0; i <= LAST; i++) {
            int before = Math.max(0, i - 1);
            int after = Math.min(LAST, i + 1);
            TABLE[i * SHAPES + ROOT_FALL] =
                    (TABLE[before * SHAPES + ROOT] - TABLE[after * SHAPES + ROOT]) * PER_UNIT / (after - before);
        }
    }

    private SoftEdge() {}

    /**
     * The integral over the depth t of its root times the density at u + t, in steps of a 40th; with t = w² the root's steep beginning becomes
     * smooth: the midpoint rule is then off by less than 1e-5.
     */
    private static double softenedRoot(double u) {
        double step = 1.0 / 40;
        double sum = 0;
        for (double w = step / 2; w * w < 6 - u; w += step) {
            double far = u + w * w;
            sum += 2 * w * w * Math.exp(-far * far / 2) * step;
        }
        return sum / Math.sqrt(2 * Math.PI);
    }

    /**
     * All shapes at a place, to about 3e-5.
     *
     * @param u outside the edge, below 0 within
     * @param to where they go
     * @param from at which index first
     */
    static void fill(double u, double[] to, int from) {
        double at = (u - LEAST) * PER_UNIT;
        if (at <= 0) {
            // The softness lowers a smooth curve by half its second derivative.
            double depth = -u;
            double root = Math.sqrt(depth);
            to[from + LEVEL] = 1;
            to[from + ROOT] = root - 0.125 / (depth * root);
            to[from + DEPTH] = depth;
            to[from + LEVEL_FALL] = 0;
            to[from + ROOT_FALL] = 0.5 / root;
            return;
        }
        if (at >= LAST) {
            for (int k = 0; k < SHAPES; k++) {
                to[from + k] = 0;
            }
            return;
        }
        int i = (int) at;
        double share = at - i;
        int here = i * SHAPES;
        for (int k = 0; k < SHAPES; k++) {
            double value = TABLE[here + k];
            to[from + k] = value + share * (TABLE[here + SHAPES + k] - value);
        }
    }

    /**
     * Level and depth alone, to the same digits.
     *
     * @param u outside the edge, below 0 within
     * @param to where they go
     * @param from at which index first
     */
    static void fillDepth(double u, double[] to, int from) {
        double at = (u - LEAST) * PER_UNIT;
        if (at <= 0) {
            to[from + LEVEL] = 1;
            to[from + DEPTH] = -u;
            return;
        }
        if (at >= LAST) {
            to[from + LEVEL] = 0;
            to[from + DEPTH] = 0;
            return;
        }
        int i = (int) at;
        double share = at - i;
        int here = i * SHAPES;
        double level = TABLE[here + LEVEL];
        double depth = TABLE[here + DEPTH];
        to[from + LEVEL] = level + share * (TABLE[here + SHAPES + LEVEL] - level);
        to[from + DEPTH] = depth + share * (TABLE[here + SHAPES + DEPTH] - depth);
    }
}
