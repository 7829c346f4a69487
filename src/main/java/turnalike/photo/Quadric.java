package turnalike.photo;

/**
 * A ball, a dome, a cone, a cylinder or a flat disc: r² = a + b·p + c·p² over the place p. Of such a one the contour's Y² is of second degree in X (put
 * the ray into it and let both places where it meets the quadric fall together):
 *
 * <p>Y² = g0 + g1·X + g2·X² with g0 = a / (1 − a), g1 = b / (1 − a), g2 = b² / 4(1 − a) + c.
 *
 * @param level a over 1 − a
 * @param slope b over the same
 * @param bend c over the same
 * @param share one over 1 − a; 0 where there is none
 */
record Quadric(double level, double slope, double bend, double share) {
    static final Quadric NONE = new Quadric(0, 0, 0, 0);

    /** An end stands no nearer to the axis' foot than this share of where its outermost ray passes the axis: a ball's pole by the radius' share. */
    static final double NEAREST = 0.8;

    private static final int ROUNDS = 4;

    private static final int HALVINGS = 40;

    /** The quadric of such a curve over X − apex. */
    static Quadric of(double[] curve, double apex) {
        double g2 = curve[2];
        double g1 = curve[1] - 2 * g2 * apex;
        double g0 = curve[0] - curve[1] * apex + g2 * apex * apex;
        double share = 1 + g0;
        return new Quadric(g0, g1, g2 * share - g1 * g1 / 4, share);
    }

    /** Where its radius comes to nothing nearest to there. */
    double pole(double apex) {
        double root = Math.sqrt(Math.max(0, slope * slope - 4 * level * bend));
        double one = (-slope + root) / (2 * bend);
        double other = (-slope - root) / (2 * bend);
        return Math.abs(one - apex) < Math.abs(other - apex) ? one : other;
    }

    /** The radius at a place, in units of the distance. */
    double radius(double at) {
        return share > 1e-9
                ? Math.sqrt(Math.max(0, (level + at * (slope + at * bend)) / share))
                : Double.POSITIVE_INFINITY;
    }

    /** Half of what r² rises by along the axis there. */
    double rise(double at) {
        return (slope / 2 + at * bend) / share;
    }

    /**
     * Where it is sawn off if the near half of the face's rim, of its radius r there, at p, is what stands farthest out, at X = p / (1 − r). By halving.
     */
    double sawn(double apex) {
        double inner = NEAREST * apex;
        double outer = apex;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (inner + outer) / 2;
            boolean beyond = Math.abs(middle) > Math.abs(apex * (1 - radius(middle)));
            inner = beyond ? inner : middle;
            outer = beyond ? middle : outer;
        }
        return outer;
    }

    /**
     * Fits Y² over X − apex to points of each edge.
     *
     * @param start whether they are counted from the start end
     * @param skip so many at the end are left out
     * @param count so many are taken
     * @param curve takes what is found: what does not hang on X, what does, and what its square does
     * @return what they stray by, root mean square
     */
    static double fitted(double[][][] edges, boolean start, int skip, int count, double[] curve) {
        double apex = edges[0][0][start ? 0 : edges[0][0].length - 1];
        double strays = 0;
        double span = 0;
        for (double[][] edge : edges) {
            span = Math.max(span, Math.abs(edge[0][start ? skip + count - 1 : edge[0].length - skip - count] - apex));
        }
        span = Math.max(1e-9, span);
        for (int round = 0; round < ROUNDS; round++) {
            double[][] rows = new double[3][4];
            double squares = 0;
            for (double[][] edge : edges) {
                for (int k = skip; k < skip + count; k++) {
                    int i = start ? k : edge[0].length - 1 - k;
                    double t = edge[0][i] - apex;
                    double squared = edge[1][i] * edge[1][i];
                    double rise = curve[1] + 2 * curve[2] * t;
                    double off = squared - curve[0] - t * (curve[1] + t * curve[2]);
                    // In the first round as if the contour ran straight across.
                    double weight = round == 0 ? 1 : 1 / (4 * squared + rise * rise);
                    squares += weight * off * off;
                    add(rows, new double[] {1, t / span, t * t / span / span}, squared, weight);
                }
            }
            strays = Math.sqrt(squares / (edges.length * count - 3));
            double[] solved = LeastSquares.solve(rows);
            curve[0] = solved[0];
            curve[1] = solved[1] / span;
            curve[2] = solved[2] / span / span;
        }
        return strays;
    }

    private static void add(double[][] rows, double[] terms, double value, double weight) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                rows[i][j] += weight * terms[i] * terms[j];
            }
            rows[i][3] += weight * terms[i] * value;
        }
    }
}
