package turnalike.photo;

import java.util.Optional;

/**
 * A pointed end whose last part is too thin to be seen: the lens spreads what is thinner than itself over the ground, and the contour ends before the
 * point does. The two sides of a cone are seen as straight lines that meet at the picture of its point: they tell where it is.
 */
final class PointedTip {
    /** From here to there from the axis, in pixels, a side is asked. */
    private static final double FROM = 1.8;

    private static final double TO = 9;

    private static final int LEAST_POINTS = 12;

    /** Sides that stray from straight lines by more, in pixels, are no cone's; nor are those that run apart more steeply. */
    private static final double STRAIGHT = 0.25;

    private static final double STEEPEST = 1.2;

    /** Half as thick, in pixels, as what may not be seen. */
    private static final double THIN = 2.2;

    private PointedTip() {}

    /**
     * Reads one end.
     *
     * @param edges X and Y of the points of both sides
     * @param start whether the start end is meant
     * @param focal length, pixels
     */
    static Optional<RoundedEnd> of(double[][][] edges, boolean start, double focal) {
        double apex = edges[0][0][start ? 0 : edges[0][0].length - 1];
        FittedLine side = new FittedLine();
        for (double[][] edge : edges) {
            int n = edge[0].length;
            for (int k = 0; k < n; k++) {
                int i = start ? k : n - 1 - k;
                double y = Math.abs(edge[1][i]) * focal;
                if (y > TO) {
                    break;
                }
                if (y > FROM) {
                    side.add(y, (edge[0][i] - apex) * focal * (start ? -1 : 1));
                }
            }
        }
        if (side.count() < LEAST_POINTS) {
            return Optional.empty();
        }
        double beyond = side.at(0);
        double rise = -1 / side.slope();
        if (!(rise > 0 && rise < STEEPEST && beyond > 0 && beyond * rise < THIN && side.strays() * rise < STRAIGHT)) {
            return Optional.empty();
        }
        return Optional.of(cone(apex + (start ? -1 : 1) * beyond / focal, apex, rise));
    }

    /** A cone of that point, whose sides rise so much in the squared picture: with k the rise of its own, κ² = k² / (1 − k²p²). */
    private static RoundedEnd cone(double point, double apex, double rise) {
        double own = rise * rise / (1 + rise * rise * point * point);
        return new RoundedEnd(point, apex, apex, new Quadric(own * point * point, -2 * own * point, own, 1));
    }
}
