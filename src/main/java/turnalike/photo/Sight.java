package turnalike.photo;

/**
 * Where a round body's axis lies before the camera, and the picture as a camera would have it that stands at the same point and looks square
 * at the axis: its first coordinate runs along the axis, its second across. There the two edges are mirror images, whatever the pose.
 *
 * <p>All lengths are in units of the distance from the camera to the axis; {@code docs/photo.md} derives what stands here.
 */
final class Sight {
    private final double focal;

    private final double centreX;

    private final double centreY;

    /** Across, towards the axis, along it: the axes of the squared camera in the real one's. */
    private final double[] across;

    private final double[] towards;

    private final double[] along;

    /** Of all rays in the plane of camera and axis the one nearest to the line of sight, and the one square to it towards the end. */
    private final double[] nearest;

    private final double[] beside;

    /**
     * Sets the axis before the camera.
     *
     * @param focal focal length in pixels; the picture's middle is where the camera looks
     * @param width of the picture
     * @param height of the picture
     * @param axis the picture of the axis
     * @param tilt how far the foot of the perpendicular on the axis stands from the axis' nearest point to the line of sight, radians,
     *     positive towards the end
     */
    Sight(double focal, int width, int height, AxisLine axis, double tilt) {
        this.focal = focal;
        centreX = width / 2.0;
        centreY = height / 2.0;
        double cos = Math.cos(axis.angle());
        double sin = Math.sin(axis.angle());
        double[] one = {(axis.x() - centreX) / focal, (axis.y() - centreY) / focal, 1};
        double[] direction = {cos, sin, 0};
        across = unit(cross(direction, one));
        double out = across[2];
        nearest = unit(new double[] {-out * across[0], -out * across[1], 1 - out * out});
        beside = cross(nearest, across);
        if (dot(beside, direction) < 0) {
            for (int i = 0; i < 3; i++) {
                beside[i] = -beside[i];
            }
        }
        towards = towards(tilt);
        along = along(tilt);
    }

    /** The direction from the camera square to the axis, if it were tilted so. */
    double[] towards(double tilt) {
        return mixed(Math.cos(tilt), nearest, Math.sin(tilt), beside);
    }

    /** The axis' direction from start to end, if it were tilted so. */
    double[] along(double tilt) {
        return mixed(Math.cos(tilt), beside, -Math.sin(tilt), nearest);
    }

    private static double[] mixed(double a, double[] one, double b, double[] other) {
        return new double[] {a * one[0] + b * other[0], a * one[1] + b * other[1], a * one[2] + b * other[2]};
    }

    /**
     * The picture of the axis.
     *
     * @param x of a point on it
     * @param y of that point
     * @param angle its direction from start to end, radians, from x towards y
     */
    record AxisLine(double x, double y, double angle) {}

    /** The squared picture's coordinate along the axis. */
    double alongOf(double u, double v) {
        return project(along, u, v) / project(towards, u, v);
    }

    /** The squared picture's coordinate across the axis. */
    double acrossOf(double u, double v) {
        return project(across, u, v) / project(towards, u, v);
    }

    /** Both coordinates of points of the picture. What does not change from point to point stands beside the loop: it is gone through for each view tried. */
    void square(double[] us, double[] vs, double[] alongs, double[] acrosses) {
        double towardsX = towards[0];
        double towardsY = towards[1];
        double towardsZ = towards[2];
        double alongX = along[0];
        double alongY = along[1];
        double alongZ = along[2];
        double acrossX = across[0];
        double acrossY = across[1];
        double acrossZ = across[2];
        for (int i = 0; i < us.length; i++) {
            double x = (us[i] - centreX) / focal;
            double y = (vs[i] - centreY) / focal;
            double depth = 1 / (towardsX * x + towardsY * y + towardsZ);
            alongs[i] = (alongX * x + alongY * y + alongZ) * depth;
            acrosses[i] = (acrossX * x + acrossY * y + acrossZ) * depth;
        }
    }

    private double project(double[] onto, double u, double v) {
        return onto[0] * (u - centreX) / focal + onto[1] * (v - centreY) / focal + onto[2];
    }

    /** Where a point of the squared picture stands in the real one. */
    PixelPoint pixel(double alongSquared, double acrossSquared) {
        double[] ray = new double[3];
        for (int i = 0; i < 3; i++) {
            ray[i] = alongSquared * along[i] + acrossSquared * across[i] + towards[i];
        }
        return new PixelPoint(centreX + focal * ray[0] / ray[2], centreY + focal * ray[1] / ray[2]);
    }

    double focal() {
        return focal;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] a) {
        double size = Math.sqrt(dot(a, a));
        return new double[] {a[0] / size, a[1] / size, a[2] / size};
    }
}
