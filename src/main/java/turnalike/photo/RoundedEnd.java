package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a rounded or pointed end stands. From aside its pole is not on the contour: the piece's flank hides it by what the end rounds over. But near
 * its end a ball, a dome, a cone, or a flat disc is a quadric, r² = a + b·p + c·p² over the place p, and of such a one the contour's Y² is of
 * second degree in X (put the ray into it and let both places where it meets the quadric fall together):
 *
 * <p>Y² = g0 + g1·X + g2·X² with g0 = a / (1 − a), g1 = b / (1 − a), g2 = b² / 4(1 − a) + c.
 *
 * <p>The longest stretch from the end inward that the contour follows so tells all three, and r² = 0 the end.
 *
 * @param place of the end along the axis, in units of the camera's distance
 * @param seen where the ray that grazes farthest out touches: from the end to there nothing was seen
 * @param back how far back the end may stand, sawn off flat where nothing is seen or hardly told from round
 * @param level a over 1 − a
 * @param slope b over the same
 * @param bend c over the same
 * @param share one over 1 − a
 */
record RoundedEnd(double place, double seen, double back, double level, double slope, double bend, double share) {
    /** The shortest stretch asked and by how much longer the next one is, in points of each edge. */
    private static final int SHORTEST = 10;

    private static final double LONGER = 1.3;

    /** Up to so many a lathe centre's mark or a shadow at the pole may spoil the fit, and a longer stretch still follows. */
    private static final int ENOUGH = 30;

    /** A stretch is followed if its points stray by no more than so many times their usual noise. */
    private static final double FOLLOWED = 1.3;

    /** By how much edges stray slowly, so that their noise does not show it, pixels. */
    private static final double STRAYING = 0.2;

    /** An end stands no nearer to the axis' foot than this share of where its outermost ray passes the axis: a ball's pole by the radius' share. */
    private static final double NEAREST = 0.8;

    private static final int ROUNDS = 4;

    private static final int HALVINGS = 40;

    /** Of an end that runs back by less than this, in pixels, a flat face is not told from a round one. */
    private static final double LEVEL = 1.5;

    /** An end that no cap has placed; none where one has. */
    static Optional<RoundedEnd> of(SquaredContour contour, EndCap cap, boolean start) {
        return cap.isPlaced() ? Optional.empty() : Optional.of(of(contour, start, reach(contour, start)));
    }

    /** The outermost place that the edges reach at a rounded end: the middle one of the few outermost points, against noise. */
    private static double reach(SquaredContour contour, boolean start) {
        List<Double> places = new ArrayList<>();
        for (boolean left : new boolean[] {true, false}) {
            EdgeChain chain = contour.edge(left);
            for (int k = 0; k < Math.min(5, chain.size()); k++) {
                places.add(chain.ray(start ? k : chain.size() - 1 - k).place());
            }
        }
        places.sort(null);
        return places.get(places.size() / 2);
    }

    /**
     * Reads one end.
     *
     * @param contour squared
     * @param start whether the start end is meant
     * @param otherwise its place if no quadric fits
     */
    static RoundedEnd of(SquaredContour contour, boolean start, double otherwise) {
        double[][][] edges = {contour.points(true), contour.points(false)};
        double noise =
                Math.max(contour.edge(true).noisePixels(), contour.edge(false).noisePixels());
        int most = Math.min(edges[0][0].length, edges[1][0].length) / 2;
        int last = edges[0][0].length - 1;
        double apex = edges[0][0][start ? 0 : last];
        if (!(apex * (start ? -1 : 1) > 0)) {
            return new RoundedEnd(otherwise, otherwise, otherwise, 0, 0, 0, 0);
        }
        Optional<RoundedEnd> tip = PointedTip.of(edges, start, contour.sight().focal());
        if (tip.isPresent()) {
            return tip.orElseThrow();
        }
        // What it may be instead, a flat face smaller than the ball before it, bulges by no more than that ball's whole
        // disc would.
        double bulge = Math.min(0.5, widest(edges, start));
        RoundedEnd best = new RoundedEnd(otherwise, otherwise, otherwise * (1 - bulge), 0, 0, 0, 0);
        for (int count = SHORTEST; count <= most; count = (int) Math.ceil(LONGER * count)) {
            double[] curve = new double[3];
            double left = contour.sight().focal() * fitted(edges, start, apex, count, curve);
            if (left > Math.hypot(FOLLOWED * noise, STRAYING)) {
                if (count > ENOUGH) {
                    break;
                }
                continue;
            }
            best = of(curve, apex, best);
        }
        return best.openBy(Math.abs(apex)
                * blunt(edges, start, apex, LEVEL / contour.sight().focal()));
    }

    /** A face that is flat there, however small, may bulge by so much: the end stands by up to that before what was found. */
    private RoundedEnd openBy(double bulge) {
        double before = place - Math.signum(place) * bulge;
        return Math.abs(back) < Math.abs(before)
                ? this
                : new RoundedEnd(place, seen, before, level, slope, bend, share);
    }

    /** How far out from the axis an end is level, within so much. */
    private static double blunt(double[][][] edges, boolean start, double apex, double within) {
        double most = 0;
        for (double[][] edge : edges) {
            for (int k = 0; k < edge[0].length; k++) {
                int i = start ? k : edge[0].length - 1 - k;
                if (Math.abs(edge[0][i] - apex) > within) {
                    break;
                }
                most = Math.max(most, Math.abs(edge[1][i]));
            }
        }
        return most;
    }

    /** The largest half width near an end. */
    private static double widest(double[][][] edges, boolean start) {
        double most = 0;
        for (double[][] edge : edges) {
            for (int k = 0; k < Math.min(ENOUGH, edge[1].length); k++) {
                most = Math.max(most, Math.abs(edge[1][start ? k : edge[1].length - 1 - k]));
            }
        }
        return most;
    }

    /** The quadric of such a curve over X − apex; what it was thought to be before where that has no end there. */
    private static RoundedEnd of(double[] curve, double apex, RoundedEnd before) {
        double g2 = curve[2];
        double g1 = curve[1] - 2 * g2 * apex;
        double g0 = curve[0] - curve[1] * apex + g2 * apex * apex;
        double share = 1 + g0;
        double bend = g2 * share - g1 * g1 / 4;
        double root = Math.sqrt(Math.max(0, share * (g1 * g1 - 4 * g0 * g2)));
        double one = (-g1 + root) / (2 * bend);
        double other = (-g1 - root) / (2 * bend);
        double place = Math.abs(one - apex) < Math.abs(other - apex) ? one : other;
        if (!(place * apex > 0 && Math.abs(place) > NEAREST * Math.abs(apex))) {
            return before;
        }
        if (Math.abs(place) > Math.abs(apex)) {
            return sawn(new RoundedEnd(place, place, place, g0, g1, bend, share), apex);
        }
        double touched = apex / (1 - apex * curve[1] / 2);
        touched = Math.abs(touched) > Math.abs(place) ? place : touched;
        return new RoundedEnd(place, touched, touched, g0, g1, bend, share);
    }

    /**
     * A quadric whose pole lies beyond what is seen: it is sawn off before, at p, and the near half of the face's rim, of the quadric's radius r there, is what
     * stands farthest out, at X = p / (1 − r). By halving.
     */
    private static RoundedEnd sawn(RoundedEnd whole, double apex) {
        double inner = NEAREST * apex;
        double outer = apex;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (inner + outer) / 2;
            boolean beyond = Math.abs(middle) > Math.abs(apex * (1 - whole.radius(middle)));
            inner = beyond ? inner : middle;
            outer = beyond ? middle : outer;
        }
        return new RoundedEnd(outer, outer, outer, whole.level, whole.slope, whole.bend, whole.share);
    }

    /** Fits Y² over X − apex to so many points of each edge; gives what they stray by, root mean square. */
    private static double fitted(double[][][] edges, boolean start, double apex, int count, double[] curve) {
        double strays = 0;
        double span = 0;
        for (double[][] edge : edges) {
            span = Math.max(span, Math.abs(edge[0][start ? count - 1 : edge[0].length - count] - apex));
        }
        span = Math.max(1e-9, span);
        for (int round = 0; round < ROUNDS; round++) {
            double[][] rows = new double[3][4];
            double squares = 0;
            for (double[][] edge : edges) {
                for (int k = 0; k < count; k++) {
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
            strays = Math.sqrt(squares / (2 * count - 3));
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

    /** The radius by that quadric, in units of the distance. */
    double radius(double at) {
        return share > 1e-9
                ? Math.sqrt(Math.max(0, (level + at * (slope + at * bend)) / share))
                : Double.POSITIVE_INFINITY;
    }
}
