package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a rounded or pointed end stands. From aside its pole is not on the contour: the piece's flank hides it by what the end rounds over. But near
 * its end a ball, a dome, a cone, or a flat disc is a {@link Quadric}. The longest stretch from the end inward that the contour follows as it follows one of those
 * tells which, and where its radius comes to nothing, the end.
 *
 * @param place of the end along the axis, in units of the camera's distance
 * @param seen where the ray that grazes farthest out touches: from the end to there nothing was seen
 * @param back how far back the end may stand, sawn off flat where nothing is seen or hardly told from round
 * @param quadric that it is
 */
record RoundedEnd(double place, double seen, double back, Quadric quadric) {
    /** The shortest stretch asked and by how much longer the next one is, in points of each edge. */
    private static final int SHORTEST = 10;

    private static final double LONGER = 1.3;

    /** Up to so many a lathe centre's mark or a shadow at the pole may spoil the fit, and a longer stretch still follows. */
    private static final int ENOUGH = 30;

    /** A stretch is followed if its points stray by no more than so many times their usual noise. */
    private static final double FOLLOWED = 1.3;

    /** By how much edges stray slowly, so that their noise does not show it, pixels. */
    private static final double STRAYING = 0.2;

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
            return new RoundedEnd(otherwise, otherwise, otherwise, Quadric.NONE);
        }
        Optional<RoundedEnd> tip = PointedTip.of(edges, start, contour.sight().focal());
        if (tip.isPresent()) {
            return tip.orElseThrow();
        }
        // What it may be instead, a flat face smaller than the ball before it, bulges by no more than that ball's whole
        // disc would.
        double bulge = Math.min(0.5, widest(edges, start));
        RoundedEnd best = new RoundedEnd(otherwise, otherwise, otherwise * (1 - bulge), Quadric.NONE);
        for (int count = SHORTEST; count <= most; count = (int) Math.ceil(LONGER * count)) {
            double[] curve = new double[3];
            double left = contour.sight().focal() * Quadric.fitted(edges, start, 0, count, curve);
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
        return Math.abs(back) < Math.abs(before) ? this : new RoundedEnd(place, seen, before, quadric);
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

    /** The end of such a curve over X − apex; what it was thought to be before where that has no end there. */
    private static RoundedEnd of(double[] curve, double apex, RoundedEnd before) {
        Quadric quadric = Quadric.of(curve, apex);
        double place = quadric.pole(apex);
        if (!(place * apex > 0 && Math.abs(place) > Quadric.NEAREST * Math.abs(apex))) {
            return before;
        }
        if (Math.abs(place) > Math.abs(apex)) {
            double sawn = quadric.sawn(apex);
            return new RoundedEnd(sawn, sawn, sawn, quadric);
        }
        double touched = apex / (1 - apex * curve[1] / 2);
        touched = Math.abs(touched) > Math.abs(place) ? place : touched;
        return new RoundedEnd(place, touched, touched, quadric);
    }

    /** The radius by its quadric, in units of the distance. */
    double radius(double at) {
        return quadric.radius(at);
    }
}
