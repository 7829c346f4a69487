package turnalike.frame;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * The circle that fits a rim best, and how far from round the rim is about that circle's own centre: the centre for which the squares of the
 * distances from point to circle add up to least. Roundness as in ISO 12181-1 (from memory): greatest less smallest distance from the centre
 * of the reference circle, here the least-squares circle. About the axle itself a gauge reads up to twice {@code offset} more.
 *
 * @param radius of the circle
 * @param offset how far its centre is from the axle
 * @param offsetAt toward where; 0° without offset
 * @param runOut greatest less smallest distance of a point from the circle's centre
 * @param residuals how far each point stands outside (positive) or inside the circle, in the order given
 */
public record RimFit(Length radius, Length offset, Angle offsetAt, Length runOut, List<Length> residuals) {
    private static final int MOST_STEPS = 200;

    public RimFit {
        residuals = List.copyOf(residuals);
    }

    /**
     * Fits by Gauss and Newton's steps from the linear estimate (equally spaced radii: R = mean, a = (2/N) Σ R cos θ, b = (2/N) Σ R sin θ).
     * Checked against W. Gander, G. H. Golub and R. Strebel, BIT 34 (1994) 558–578.
     *
     * @param points 3 or more, not in one line, else {@link IllegalArgumentException}
     * @return the circle that fits the points best, by least squares of their distances from it
     * @throws IllegalStateException when the steps do not settle to 1e-12 of the radius, which takes points far from any circle
     */
    public static RimFit of(List<RimPoint> points) {
        if (points.size() < 3) {
            throw new IllegalArgumentException("a circle needs 3 points, were %d".formatted(points.size()));
        }
        double[] x = new double[points.size()];
        double[] y = new double[points.size()];
        double[] circle = new double[3]; // centre x, centre y, radius, in mm
        for (int i = 0; i < x.length; i++) {
            double radiusMm = points.get(i).radius().mm();
            x[i] = radiusMm * Math.cos(points.get(i).at().radians());
            y[i] = radiusMm * Math.sin(points.get(i).at().radians());
            circle[0] += x[i] / x.length;
            circle[1] += y[i] / x.length;
        }
        for (int i = 0; i < x.length; i++) {
            circle[2] += Math.hypot(x[i] - circle[0], y[i] - circle[1]) / x.length;
        }
        settle(x, y, circle);
        return measured(x, y, circle);
    }

    private static void settle(double[] x, double[] y, double[] circle) {
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] move = step(x, y, circle);
            double size = 0;
            for (int k = 0; k < 3; k++) {
                circle[k] += move[k];
                size = Math.max(size, Math.abs(move[k]));
            }
            if (size <= 1e-12 * Math.abs(circle[2])) {
                return;
            }
        }
        throw new IllegalStateException("no circle settles: centre (%s, %s) mm, radius %s mm after %d steps"
                .formatted(circle[0], circle[1], circle[2], MOST_STEPS));
    }

    /** Solves the normal equations of the distances, linear about the present circle. */
    private static double[] step(double[] x, double[] y, double[] circle) {
        double[][] normal = new double[3][4];
        for (int i = 0; i < x.length; i++) {
            double dx = x[i] - circle[0];
            double dy = y[i] - circle[1];
            // The root itself: nothing here is so large or small that its square would not do, and it costs a tenth.
            double distance = Math.sqrt(dx * dx + dy * dy);
            double[] slope = {dx / distance, dy / distance, 1};
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    normal[r][c] += slope[r] * slope[c];
                }
                normal[r][3] += slope[r] * (distance - circle[2]);
            }
        }
        double whole = determinant(normal, -1);
        if (!(Math.abs(whole) > 1e-12)) {
            throw new IllegalArgumentException("the points lie in one line or on one spot: no circle");
        }
        return new double[] {
            determinant(normal, 0) / whole, determinant(normal, 1) / whole, determinant(normal, 2) / whole
        };
    }

    /** Of the left three columns, that one replaced by the fourth (Cramer's rule); −1 for none. */
    private static double determinant(double[][] m, int replaced) {
        int a = replaced == 0 ? 3 : 0;
        int b = replaced == 1 ? 3 : 1;
        int c = replaced == 2 ? 3 : 2;
        return m[0][a] * (m[1][b] * m[2][c] - m[1][c] * m[2][b])
                - m[0][b] * (m[1][a] * m[2][c] - m[1][c] * m[2][a])
                + m[0][c] * (m[1][a] * m[2][b] - m[1][b] * m[2][a]);
    }

    private static RimFit measured(double[] x, double[] y, double[] circle) {
        double nearest = Double.POSITIVE_INFINITY;
        double farthest = 0;
        List<Length> residuals = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            double distance = Math.hypot(x[i] - circle[0], y[i] - circle[1]);
            nearest = Math.min(nearest, distance);
            farthest = Math.max(farthest, distance);
            residuals.add(Length.ofMm(distance - circle[2]));
        }
        double offsetMm = Math.hypot(circle[0], circle[1]);
        return new RimFit(
                Length.ofMm(circle[2]),
                Length.ofMm(offsetMm),
                Angle.ofRadians(Math.atan2(circle[1], circle[0])).aroundOnce(),
                Length.ofMm(farthest - nearest),
                residuals);
    }
}
