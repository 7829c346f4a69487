package turnalike.photo;

import java.util.Optional;

/**
 * The line between two ends that somebody pointed at, in coarse pixels.
 *
 * @param x of the start
 * @param y of it
 * @param angle towards the end, radians
 * @param length to the end
 */
record PointedPlace(double x, double y, double angle, double length) {
    /** How far a patch may lie off the line, as a share of the line's length. */
    private static final double BESIDE = 0.12;

    private static final double ASKEW = Math.toRadians(12);

    static Optional<PointedPlace> of(Optional<PhotoWish.Ends> ends, int block) {
        return ends.map(each -> {
            double right = (each.end().x() - each.start().x()) / block;
            double down = (each.end().y() - each.start().y()) / block;
            return new PointedPlace(
                    each.start().x() / block,
                    each.start().y() / block,
                    Math.atan2(down, right),
                    Math.max(1, Math.hypot(right, down)));
        });
    }

    /** Whether the patch lies along the line, for most of it. */
    boolean isAt(Blob blob) {
        double askew = Math.abs(Math.IEEEremainder(blob.angle() - angle, Math.PI));
        double along = along(blob.x(), blob.y());
        double beside = Math.abs((blob.y() - y) * Math.cos(angle) - (blob.x() - x) * Math.sin(angle));
        // A patch of many pieces' clutter is longer than the line at both ends; a piece with its tenon a little.
        double one = along - blob.length() / 2;
        double other = along + blob.length() / 2;
        double common = Math.min(length, other) - Math.max(0, one);
        return askew < ASKEW && beside < BESIDE * length && common > 0.6 * length;
    }

    private double along(double px, double py) {
        return (px - x) * Math.cos(angle) + (py - y) * Math.sin(angle);
    }
}
