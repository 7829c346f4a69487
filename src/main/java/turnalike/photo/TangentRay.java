package turnalike.photo;

/**
 * Where a sight ray on the contour touches a surface of revolution, in the squared picture's units.
 *
 * <p>With the camera at the origin and the axis at distance 1, a ray with the squared coordinates X along and Y across touches at depth
 * z = 1 / (1 + G − X·G′/2), where G = Y² and G′ = dG/dX along the contour: the surface's normal there is the normal of the cone of contour
 * rays, and on a surface of revolution it meets the axis. The place along the axis is X·z, the squared radius G·z² + (z − 1)². Derived in
 * {@code docs/photo.md}; exact for any surface of revolution. An error of the slope moves the point along its ray, which touches the
 * profile, so the radius at a place feels it in second order only.
 *
 * @param along the ray's X
 * @param squared its G, not below zero
 * @param place where it touches, along the axis, from the foot of the perpendicular out of the camera
 * @param radius of the piece there, not below zero
 */
record TangentRay(double along, double squared, double place, double radius) {
    /**
     * From the slope of Y² over X, where the contour runs along the axis or slants.
     *
     * @param along X
     * @param squared G = Y², not below zero
     * @param slope G′
     */
    static TangentRay ofSlope(double along, double squared, double slope) {
        return at(along, squared, 1 / (1 + squared - along * slope / 2));
    }

    /**
     * From the slope of X over Y², where the contour is steep: at a shoulder or an end.
     *
     * @param along X
     * @param squared G = Y², not below zero
     * @param inverse dX/dG
     */
    static TangentRay ofInverseSlope(double along, double squared, double inverse) {
        double below = inverse * (1 + squared) - along / 2;
        return at(along, squared, below == 0 ? 1 : inverse / below);
    }

    private static TangentRay at(double along, double squared, double depth) {
        // The ray touches no nearer and no farther than where it passes the axis by the radius it has there; noise
        // alone goes beyond.
        double across = Math.sqrt(Math.max(0, squared));
        double least = Math.max(0.2, 1 - 3 * across - 0.01);
        double most = 1 + 3 * across + 0.01;
        double z = Double.isFinite(depth) ? Math.max(least, Math.min(most, depth)) : 1;
        return new TangentRay(
                along, Math.max(0, squared), along * z, Math.sqrt(Math.max(0, squared * z * z + (z - 1) * (z - 1))));
    }

    /**
     * The least distance from the axis at which a ray passes a place along it: no surface it grazes or misses is thicker there.
     *
     * @param at the place along the axis
     */
    double passing(double at) {
        return Math.sqrt(squaredPassing(at));
    }

    /** That distance squared. */
    double squaredPassing(double at) {
        double z = at / along;
        return squared * z * z + (z - 1) * (z - 1);
    }
}
