package turnalike.photo;

/**
 * A square section about the axis as the camera sees it, in units of the distance between the two. A ray Y across runs in the section's plane from the
 * camera through (Y·z, z); where it enters the section and where it leaves it is all that its ends' places need.
 *
 * @param half half its side
 * @param arris where its nearest arris stands about the axis, radians, from straight towards the camera to the side on which Y is positive; within an
 *     eighth of a turn, at which a flat faces the camera
 */
record SquareSection(double half, double arris) {
    private static final double SLIVER = Math.toRadians(6);

    /** One flat that faces the camera: its two arrises are seen, at the depth 1 − half. */
    static SquareSection facing(double seen) {
        return new SquareSection(seen / (1 + seen), Math.PI / 4);
    }

    /**
     * Two flats with an arris between.
     *
     * @param seen the mean Y of its two edges
     * @param between Y of the arris between them
     */
    static SquareSection turned(double seen, double between) {
        // The edges stand at the depths 1 ∓ d·sin φ, so their mean is a little more than d·cos φ; the arris stands at
        // 1 − d·cos φ.
        double cosine = seen;
        double sine = 0;
        for (int round = 0; round < 4; round++) {
            sine = between * (1 - cosine);
            cosine = seen * (1 - sine * sine);
        }
        return new SquareSection(Math.hypot(cosine, sine) / Math.sqrt(2), Math.atan2(sine, cosine));
    }

    /**
     * One whose turn is known.
     *
     * @param seen the mean Y of its two edges
     * @param arris where its nearest arris stands
     */
    static SquareSection showing(double seen, double arris) {
        SquareSection section = new SquareSection(seen / (Math.sqrt(2) * Math.cos(arris)), arris);
        for (int round = 0; round < 4; round++) {
            double mean = (section.seen(true) + section.seen(false)) / 2;
            section = new SquareSection(section.half * seen / mean, arris);
        }
        return section;
    }

    /** Whether one flat faces the camera so nearly that the next is a sliver at most: a tenth of what is seen across. */
    boolean isFaceOn() {
        return Math.abs(Math.abs(arris) - Math.PI / 4) < SLIVER;
    }

    /** How far out its edge is seen, Y without its sign, on the side where Y is positive or on the other. */
    double seen(boolean positive) {
        double most = 0;
        for (int corner = 0; corner < 4; corner++) {
            double angle = arris + corner * Math.PI / 2;
            double across = Math.sqrt(2) * half * Math.sin(angle) / (1 - Math.sqrt(2) * half * Math.cos(angle));
            most = Math.max(most, positive ? across : -across);
        }
        return most;
    }

    /** The depth at which a ray enters the section; of one that misses it, at which it passes the arris most nearly. */
    double near(double across) {
        return depth(across, true);
    }

    /** The depth at which a ray leaves it. */
    double far(double across) {
        return depth(across, false);
    }

    private double depth(double across, boolean near) {
        double enters = Double.NEGATIVE_INFINITY;
        double leaves = Double.POSITIVE_INFINITY;
        for (double side : new double[] {Math.PI / 4, -Math.PI / 4}) {
            // Between two flats opposite one another: |cos·(1 − z) + sin·Y·z| is half the side at most.
            double cos = Math.cos(arris + side);
            double rise = across * Math.sin(arris + side) - cos;
            if (Math.abs(rise) > 1e-12) {
                double one = (half - cos) / rise;
                double other = (-half - cos) / rise;
                enters = Math.max(enters, Math.min(one, other));
                leaves = Math.min(leaves, Math.max(one, other));
            }
        }
        return enters > leaves ? (enters + leaves) / 2 : near ? enters : leaves;
    }
}
