package turnalike.photo;

/**
 * A place in the upright picture.
 *
 * @param x pixels to the right of its left side; the middle of the first pixel is at 0.5
 * @param y pixels below its upper side
 */
public record PixelPoint(double x, double y) {
    public PixelPoint {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a place in a picture is finite, was %s, %s".formatted(x, y));
        }
    }
}
