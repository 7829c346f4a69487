package turnalike.trace.drawn;

/**
 * A place in a drawing, in its own units or in millimetres as the holder says.
 *
 * @param isKnot whether the drawing itself has a point here, as the end of a line or an arc, and not only the cutting up of a curve
 */
record Spot(double x, double y, boolean isKnot) {
    static Spot knot(double x, double y) {
        return new Spot(x, y, true);
    }

    double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
