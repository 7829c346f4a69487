package turnalike.photo;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A flank that runs steeply right behind a sawn end: a bun's above its foot, a vase's or an ogee's that was sawn off. There a radius read a little farther in is not
 * the rim's. But near the end it is a {@link Quadric}, which is followed out to where the end's face cuts it: at p = X₀·(1 − r), for the near point of the
 * face's rim stands farthest out. At the rim itself the flank is seen at the depth z = 1 − r² + p·r·r′ (of the ray that touches a body of revolution there), so at
 * X = p / z.
 */
final class SteepFlank {
    /** So many points are taken first, and so many times as many next, as long as they stray by hardly more. */
    private static final int SHORTEST = 20;

    private static final double LONGER = 1.3;

    private static final double HARDLY_MORE = 1.3;

    /** Points stray by so much, pixels, in any case, and from a flank by no more than this. */
    private static final double STRAYING = 0.2;

    private static final double MOST = 0.8;

    /** So far behind where it touches the rim it is followed, as a share of what a sharp end bulges by, and pixels: there the picture is soft. */
    private static final double CLEAR = 0.15;

    private static final double CLEAR_PIXELS = 2;

    private static final int ROUNDS = 4;

    /** One that is less steep is a taper, and one that is steeper no flank. By trying. */
    private static final double LEAST_STEEP = 0.25;

    private static final double STEEPEST = 2;

    private final double[][][] sides;

    private final boolean start;

    private final double focal;

    private final double apex;

    private final double outward;

    /**
     * Takes an end.
     *
     * @param sides X and Y of the points of either edge
     * @param start whether the start end is meant
     * @param focal length, pixels
     */
    SteepFlank(double[][][] sides, boolean start, double focal) {
        this.sides = sides;
        this.start = start;
        this.focal = focal;
        apex = sides[0][0][start ? 0 : sides[0][0].length - 1];
        outward = start ? -1 : 1;
    }

    /** The flank, if it is a steep one, asked first so deep behind the end. */
    Optional<EndFlank.Seen> seen(double depth) {
        Optional<EndFlank.Seen> best = Optional.empty();
        double from = depth;
        for (int round = 0; round < ROUNDS; round++) {
            Optional<EndFlank.Seen> seen = followed(from);
            if (seen.isEmpty()) {
                break;
            }
            best = seen;
            EndFlank.Seen flank = seen.orElseThrow();
            from = (apex - flank.from().orElseThrow()) * outward
                    + CLEAR * Math.abs(apex) * flank.rim()
                    + CLEAR_PIXELS / focal;
        }
        return best;
    }

    /** The longest stretch from so deep on that one quadric follows. */
    private Optional<EndFlank.Seen> followed(double depth) {
        Optional<EndFlank.Seen> best = Optional.empty();
        int most = Math.min(sides[0][0].length, sides[1][0].length) / 2;
        int skip = Math.max(before(sides[0], depth, most), before(sides[1], depth, most));
        double least = Double.POSITIVE_INFINITY;
        for (int count = SHORTEST; skip + count < most; count = (int) Math.ceil(LONGER * count)) {
            double[] curve = new double[3];
            double strays = focal * Quadric.fitted(sides, start, skip, count, curve);
            least = Math.min(least, Math.max(strays, STRAYING));
            if (strays > HARDLY_MORE * least || strays > MOST) {
                break;
            }
            Optional<EndFlank.Seen> seen = joined(curve, skip + count);
            best = seen.isPresent() ? seen : best;
        }
        return best;
    }

    /** How many points stand before so deep. */
    private int before(double[][] side, double depth, int most) {
        int k = 0;
        while (k < most && (apex - side[0][at(side, k)]) * outward < depth) {
            k++;
        }
        return k;
    }

    private int at(double[][] side, int k) {
        return start ? k : side[0].length - 1 - k;
    }

    /** Where such a curve over X meets the rim of a face that it is cut off by, if it is steep there. */
    private Optional<EndFlank.Seen> joined(double[] curve, int last) {
        Quadric quadric = Quadric.of(curve, apex);
        double place = quadric.sawn(apex);
        double radius = quadric.radius(place);
        if (!(radius > 0 && radius < 1)) {
            return Optional.empty();
        }
        double rise = quadric.rise(place);
        double depth = 1 - radius * radius + place * rise;
        double joint = Math.sqrt(Math.max(0, radius * radius - (1 - depth) * (1 - depth))) / depth;
        double steep = Math.abs(rise / (joint * depth));
        if (!(steep > LEAST_STEEP && steep < STEEPEST)) {
            return Optional.empty();
        }
        double from = place / depth;
        double upTo = Math.min(
                Math.abs(from - sides[0][0][at(sides[0], last)]), Math.abs(from - sides[1][0][at(sides[1], last)]));
        return Optional.of(new EndFlank.Seen(
                radius / Math.sqrt(1 - radius * radius),
                joint,
                OptionalDouble.of(from),
                inward -> {
                    double beside = from - outward * inward - apex;
                    return Math.sqrt(Math.max(0, curve[0] + beside * (curve[1] + beside * curve[2])));
                },
                upTo));
    }
}
