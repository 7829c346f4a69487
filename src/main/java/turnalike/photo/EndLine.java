package turnalike.photo;

/**
 * The whole outline that an end with such a rim has: across its face, round its rim and some way along its flank. How far the contour strays from it tells
 * a chamfer from a rounding, whose faces bulge much alike: the one turns into the flank at a corner, the other swings into it from far in.
 */
final class EndLine {
    /** In so many pieces the rim's curve is laid out, closer together the nearer to its side, where it turns. */
    private static final int PIECES = 40;

    /** So far along the flank it is followed beyond where a sharp rim would be seen, as a share of the radius, and so many pixels at least. */
    private static final double ALONG = 0.5;

    private static final double LEAST_ALONG = 4;

    /** One point strays by no more than this, pixels: a speck or the next member is not the rim. */
    private static final double MOST = 1;

    /** Where the contour leaves the flank by so many pixels, the next member begins. */
    private static final double LEAVES = 1.5;

    /** And its flank in so many. */
    private static final int FLANK = 12;

    private final double[] x = new double[PIECES + FLANK + 1];

    private final double[] y = new double[PIECES + FLANK + 1];

    private final double apex;

    private final double outward;

    private final EndFlank.Seen flank;

    private final double focal;

    private final double deepest;

    /** X where the flank begins. */
    private final double begins;

    /** So far out from the axis it is the face that is asked, not what is beside it. */
    private final double face;

    EndLine(SeenRim shape, double apex, double bulge, double outward, EndFlank.Seen flank, double focal) {
        this.apex = apex;
        this.outward = outward;
        this.flank = flank;
        this.focal = focal;
        face = EndCap.asked(flank);
        for (int k = 0; k <= PIECES; k++) {
            y[k] = flank.joint() * Math.sin(Math.PI / 2 * k / PIECES);
            x[k] = apex + bulge * (shape.at(y[k]) - shape.at(0));
        }
        begins = flank.from().orElse(x[PIECES]);
        double bulging = Math.abs(apex) * flank.rim();
        double along = Math.max(ALONG * flank.rim(), LEAST_ALONG / focal);
        deepest = Math.min(bulging + along, (apex - begins) * outward + flank.upTo());
        double far = Math.abs(apex - outward * (2 * (bulging + along) + flank.rim()) - begins);
        for (int k = 1; k <= FLANK; k++) {
            x[PIECES + k] = begins - outward * far * k / FLANK;
            y[PIECES + k] = flank.across().applyAsDouble(far * k / FLANK);
        }
    }

    /** What the contour's points near the end stray by from it, root mean square, in units. */
    double strays(double[][][] sides, boolean start) {
        double squares = 0;
        int count = 0;
        for (double[][] side : sides) {
            int n = side[0].length;
            int near = 0;
            boolean reached = false;
            for (int k = 0; k < n; k++) {
                int i = start ? k : n - 1 - k;
                double deep = (apex - side[0][i]) * outward;
                double across = Math.abs(side[1][i]);
                double beside = across - flank.across().applyAsDouble(Math.max(0, deep - (apex - begins) * outward));
                reached = reached || Math.abs(beside) * focal < LEAVES;
                if (deep > deepest || beside * focal > LEAVES || (reached && beside * focal < -LEAVES)) {
                    break;
                }
                near = nearest(near, side[0][i], across);
                if (across > face) {
                    double off = Math.min(MOST / focal, Math.sqrt(squared(near, side[0][i], across)));
                    squares += off * off;
                    count++;
                }
            }
        }
        return Math.sqrt(squares / Math.max(1, count));
    }

    /** The piece nearest to a point, from that of the point before on: both follow the outline inward. */
    private int nearest(int from, double atX, double atY) {
        int best = from;
        double least = squared(from, atX, atY);
        for (int k = from + 1; k < PIECES + FLANK && k <= best + 3; k++) {
            double squared = squared(k, atX, atY);
            if (squared < least) {
                least = squared;
                best = k;
            }
        }
        return best;
    }

    /** The distance of a point from a piece, squared. */
    private double squared(int k, double atX, double atY) {
        double dx = x[k + 1] - x[k];
        double dy = y[k + 1] - y[k];
        double length = dx * dx + dy * dy;
        double share = length > 0 ? ((atX - x[k]) * dx + (atY - y[k]) * dy) / length : 0;
        double t = Math.max(0, Math.min(1, share));
        double offX = atX - x[k] - t * dx;
        double offY = atY - y[k] - t * dy;
        return offX * offX + offY * offY;
    }
}
