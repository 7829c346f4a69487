package turnalike.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import turnalike.units.Angle;

/** The contour of a body that is nowhere hollow: the hull of its circles seen one by one, by no formula of the program's. */
final class HullContour {
    /** A usual camera's picture, and where a piece's axis lies in it. */
    static final int WIDTH = 1600;

    static final int HEIGHT = 1200;

    static final double FOCAL = 1400;

    static final Sight.AxisLine AXIS = new Sight.AxisLine(WIDTH / 2.0, HEIGHT / 2.0 + 40, 0.03);

    private static final int TURNS = 720;

    private HullContour() {}

    /** What is seen, to be fitted by a camera of which the lens is known and which was held square by eye. */
    static ViewFit fit(List<double[]> circles, Sight sight, int width, int height, double noise) {
        Angle view = Angle.ofDegrees(Math.toDegrees(2 * Math.atan(width / 2.0 / sight.focal())));
        FocalGuess guess = FocalGuess.of(Optional.of(view), CameraData.NONE, width, height);
        double[][] points = of(circles, sight, noise);
        double[] doubts = new double[points[0].length];
        return new ViewFit(points[0], points[1], doubts, width, height, guess, ViewFit.TiltGuess.BY_EYE);
    }

    /** The same of a piece that leans by so many degrees before the usual camera. */
    static ViewFit fit(List<double[]> circles, double leanDegrees, double noise) {
        Sight sight = new Sight(FOCAL, WIDTH, HEIGHT, AXIS, Math.toRadians(leanDegrees));
        return fit(circles, sight, WIDTH, HEIGHT, noise);
    }

    /**
     * X and Y of a point to each pixel of the contour.
     *
     * @param circles round the axis: place and radius, over the distance from the camera to the axis
     * @param sight how they are seen
     * @param noise of each point, pixels
     */
    static double[][] of(List<double[]> circles, Sight sight, double noise) {
        List<double[]> points = new ArrayList<>();
        for (double[] circle : circles) {
            for (int k = 0; k < TURNS; k++) {
                double turn = 2 * Math.PI * k / TURNS;
                double depth = 1 - circle[1] * Math.sin(turn);
                PixelPoint point = sight.pixel(circle[0] / depth, circle[1] * Math.cos(turn) / depth);
                points.add(new double[] {point.x(), point.y()});
            }
        }
        double[][] round = everyPixel(hull(points));
        SplittableRandom dice = new SplittableRandom(8);
        for (double[] line : round) {
            for (int i = 0; i < line.length; i++) {
                line[i] += noise * dice.nextGaussian();
            }
        }
        return round;
    }

    /** Andrew's chain, the points in order round. */
    private static List<double[]> hull(List<double[]> points) {
        points.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
        List<double[]> whole = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            List<double[]> half = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                double[] p = points.get(side == 0 ? i : points.size() - 1 - i);
                while (half.size() > 1 && turns(half.get(half.size() - 2), half.get(half.size() - 1), p) <= 0) {
                    half.remove(half.size() - 1);
                }
                half.add(p);
            }
            whole.addAll(half.subList(0, half.size() - 1));
        }
        return whole;
    }

    private static double turns(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }

    /** Points a pixel apart along a closed line of such corners. */
    static double[][] everyPixel(List<double[]> corners) {
        List<double[]> out = new ArrayList<>();
        double left = 0;
        for (int i = 0; i < corners.size(); i++) {
            double[] a = corners.get(i);
            double[] b = corners.get((i + 1) % corners.size());
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            double at = left;
            for (; at < length; at++) {
                out.add(new double[] {a[0] + at / length * (b[0] - a[0]), a[1] + at / length * (b[1] - a[1])});
            }
            left = at - length;
        }
        double[][] lines = new double[2][out.size()];
        for (int i = 0; i < lines[0].length; i++) {
            lines[0][i] = out.get(i)[0];
            lines[1][i] = out.get(i)[1];
        }
        return lines;
    }
}
