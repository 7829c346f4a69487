package turnalike.frame;

/**
 * The distance between two discs that stand across two axes: the axes lie level, at an angle to one another, one {@code offset} above the
 * other, and each disc's centre stands so far along its axis from where the axes cross as seen from above.
 *
 * <p>A point of a disc is told by how far it lies to the side; its height is then free within the rim. So the squared distance is
 * H²(a, c) + max(0, offset − √(R₁² − a²) − √(R₂² − c²))², with H the level distance, and is convex in the two sideways places. With the second's
 * place c told, the first's nearest point is known in closed form; c is found by a golden section. Derived here.
 */
final class DiscGap {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int CUTS = 26;

    private final double sin;
    private final double cos;
    private final double offset;

    DiscGap(double angle, double offset) {
        this.sin = Math.sin(angle);
        this.cos = Math.cos(angle);
        this.offset = offset;
    }

    double mm(double s1, double r1, double s2, double r2) {
        double best = golden(-r2, r2, c -> squared(s1, r1, s2, r2, c));
        return Math.sqrt(best);
    }

    /** Never more than the distance, and quick: that of the discs as seen from above, and what is left between their heights. */
    double atLeastMm(double s1, double r1, double s2, double r2) {
        double up = Math.max(0, offset - r1 - r2);
        double level = Math.min(
                Math.min(beside(s1, r1, s2, r2), beside(s1, r1, s2, -r2)),
                Math.min(beside(s2, r2, s1, r1), beside(s2, r2, s1, -r1)));
        if (cross(s1, r1, s2, r2)) {
            return up;
        }
        return Math.sqrt(level * level + up * up);
    }

    /** From the end of one disc's edge to the other disc, seen from above; the axes' angle is the same from either. */
    private double beside(double s1, double r1, double s2, double end) {
        // The second's end, in the first's own directions: along its axis and aside.
        double along = s2 * cos - end * sin;
        double aside = Math.abs(s2 * sin + end * cos);
        return Math.hypot(along - s1, Math.max(0, aside - r1));
    }

    private boolean cross(double s1, double r1, double s2, double r2) {
        if (sin == 0) {
            return false;
        }
        double c = (s2 * cos - s1) / sin;
        double a = s2 * sin + c * cos;
        return Math.abs(c) <= r2 && Math.abs(a) <= r1;
    }

    private double squared(double s1, double r1, double s2, double r2, double c) {
        double alongFirst = s1 - s2 * cos + c * sin;
        double aside = s2 * sin + c * cos;
        double up = offset - Math.sqrt(Math.max(0, r2 * r2 - c * c));
        double across = acrossMm(aside, up, r1);
        return alongFirst * alongFirst + across * across;
    }

    /**
     * From the second's lowest point at a place, so far beside and above the first's centre, to the first disc. At that place the second reaches up
     * from there, so the two touch wherever that point lies below the first's upper edge: what counts is that edge, and beside it the disc's sides.
     */
    private static double acrossMm(double aside, double up, double radius) {
        double centre = up > 0 ? Math.sqrt(aside * aside + up * up) : Math.abs(aside);
        return Math.max(0, centre - radius);
    }

    private interface Height {
        double at(double x);
    }

    private static double golden(double from, double to, Height height) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = height.at(left);
        double atRight = height.at(right);
        for (int i = 0; i < CUTS; i++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = height.at(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = height.at(right);
            }
        }
        return Math.min(Math.min(atLeft, atRight), Math.min(height.at(from), height.at(to)));
    }
}
