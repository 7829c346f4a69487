package turnalike.photo;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * How a square stands about the axis, by the rim of the piece's end that it is. Along the rim X·z is one and the same, where z is the depth at which the ray
 * enters the section; so of all turns that one counts with which the rim's points agree best on it. A flat that is turned by two degrees from the camera
 * slants there by half a pixel, where its neighbour is a sliver that no light tells.
 *
 * @param arris where its nearest arris stands, as a {@link SquareSection} has it
 * @param pixels by how much the rim's points stray from it, in the mean
 * @param plain whether they do so far less than from any round's rim, however it leans
 */
record EndTurn(double arris, double pixels, boolean plain) {
    /** Turns are tried so far from one another, radians, from a flat that faces the camera to the next. */
    private static final double STEP = Math.toRadians(1.5);

    private static final int STEPS = 60;

    /** So much of the rim is asked, of the width; right at its corners it is rounded. */
    private static final double ASKED = 0.9;

    private static final int LEAST_POINTS = 16;

    /** Points that stray by more, pixels, tell nothing of the turn but that something stands there. */
    private static final double MOST = 2;

    /** A rim that strays so much from the best of all turns, in pixels, or as a share of what it strays from the middle one, is no square's. By trying. */
    private static final double STRAYS = 0.8;

    private static final double STRAYS_SHARE = 0.45;

    /** With a turn so many steps away it must stray by so many pixels more: seen nearly along its face a rim tells no turn. By trying. */
    private static final int AWAY = 4;

    private static final double TELLS = 0.12;

    /** A round's rim may lean by so much, radians, beyond what the view says: the view may be wrong, and an end be cut askew. */
    private static final double LEANS = Math.toRadians(9);

    private static final int LEAN_STEPS = 12;

    /** Its face may be so much narrower than the piece behind it, at so many steps: a chamfer or a rounding is what is left. */
    private static final double LEAST_FACE = 0.7;

    private static final int FACES = 3;

    /** From all of these a plainly square rim strays by so many times more, and by so many pixels: an edge of good wood strays by a quarter of one. */
    private static final double TIMES = 3;

    private static final double MORE = 0.3;

    /** How steep a rim runs is read so far to either side, in units of the distance: less than a pixel. */
    private static final double BESIDE = 5e-4;

    /** Two ends agree on one turn within this, radians. */
    private static final double AGREE = Math.toRadians(5);

    /**
     * Reads one end.
     *
     * @param seen half the width of the square that ends there, Y
     */
    static Optional<EndTurn> of(SquaredContour contour, boolean start, double seen) {
        double focal = contour.sight().focal();
        double[][] rim = rim(contour, start, seen);
        if (rim[0].length < LEAST_POINTS) {
            return Optional.empty();
        }
        double[] strays = new double[STEPS];
        int best = 0;
        for (int k = 0; k < STEPS; k++) {
            strays[k] = focal * strays(rim, SquareSection.showing(seen, arris(k)), MOST / focal);
            best = strays[k] < strays[best] ? k : best;
        }
        double before = strays[Math.floorMod(best - 1, STEPS)];
        double after = strays[Math.floorMod(best + 1, STEPS)];
        double away = Math.min(strays[Math.floorMod(best - AWAY, STEPS)], strays[Math.floorMod(best + AWAY, STEPS)]);
        double[] sorted = strays.clone();
        Arrays.sort(sorted);
        double least = Math.min(STRAYS, STRAYS_SHARE * sorted[STEPS / 2]);
        if (strays[best] > least || away < strays[best] + TELLS) {
            return Optional.empty();
        }
        // Strays grow in proportion to what a turn is off by.
        double slope = Math.max(before, after) - strays[best];
        double within = slope > 0 ? 0.5 * (before - after) / slope : 0;
        double arris = wrapped(arris(best) + within * STEP);
        return Optional.of(new EndTurn(
                arris, strays[best], isPlain(rim, SquareSection.showing(seen, arris), seen, MOST / focal, focal)));
    }

    private static double arris(int k) {
        return -Math.PI / 4 + k * STEP;
    }

    /** A quarter of a turn on, a square is the same. */
    private static double wrapped(double arris) {
        return arris - Math.PI / 2 * Math.floor(arris / (Math.PI / 2) + 0.5);
    }

    /** What two ends tell together; nothing where they contradict one another. */
    Optional<EndTurn> with(EndTurn other) {
        double apart = wrapped(other.arris - arris);
        double share = pixels / (pixels + other.pixels);
        return Math.abs(apart) > AGREE
                ? Optional.empty()
                : Optional.of(new EndTurn(
                        wrapped(arris + share * apart), Math.max(pixels, other.pixels), plain && other.plain));
    }

    /** How far another arris is from it, radians. */
    double from(double other) {
        return Math.abs(wrapped(other - arris));
    }

    /** X and Y of the points from the outermost one to both sides, up to where the square is as wide as it is. */
    private static double[][] rim(SquaredContour contour, boolean start, double seen) {
        double[][] found = new double[2][0];
        for (boolean left : new boolean[] {true, false}) {
            double[][] points = contour.points(left);
            int n = points[0].length;
            int count = 0;
            while (count < n && Math.abs(points[1][start ? count : n - 1 - count]) < ASKED * seen) {
                count++;
            }
            int from = start ? 0 : n - count;
            for (int side = 0; side < 2; side++) {
                int before = found[side].length;
                found[side] = Arrays.copyOf(found[side], before + count);
                System.arraycopy(points[side], from, found[side], before, count);
            }
        }
        boolean turnedAway = found[0].length > 0 && (start ? -found[0][0] : found[0][0]) > 0.05;
        return turnedAway ? found : new double[2][0];
    }

    /** Whether the points of a rim lie on a square's and on no round's, be its face as wide as what is behind it or narrower. */
    private static boolean isPlain(double[][] rim, SquareSection section, double seen, double most, double focal) {
        for (int face = 0; face <= FACES; face++) {
            double wide = seen * (1 - (1 - LEAST_FACE) * face / FACES);
            double[][] inner = within(rim, ASKED * wide);
            if (inner[0].length < LEAST_POINTS
                    || focal * strays(inner, section, 2 * most) * TIMES + MORE
                            > focal * fromRound(inner, wide, 2 * most)) {
                return false;
            }
        }
        return true;
    }

    private static double[][] within(double[][] rim, double across) {
        double[][] inner = new double[2][rim[0].length];
        int count = 0;
        for (int i = 0; i < rim[0].length; i++) {
            if (Math.abs(rim[1][i]) < across) {
                inner[0][count] = rim[0][i];
                inner[1][count++] = rim[1][i];
            }
        }
        return new double[][] {Arrays.copyOf(inner[0], count), Arrays.copyOf(inner[1], count)};
    }

    /** How far the points are, in the mean, from the near half of a circle about the axis that is seen so wide, leaning as it may. */
    private static double fromRound(double[][] rim, double seen, double most) {
        double squared = seen * seen / (1 + seen * seen);
        double least = Double.POSITIVE_INFINITY;
        for (int lean = -LEAN_STEPS; lean <= LEAN_STEPS; lean++) {
            double leans = LEANS * lean / LEAN_STEPS;
            least = Math.min(least, strays(rim, across -> near(squared, across), leans, most));
        }
        return least;
    }

    /** The depth at which a ray meets a circle about the axis first, of its radius' square. */
    private static double near(double squared, double across) {
        double slant = 1 + across * across;
        return (1 - Math.sqrt(Math.max(0, 1 - slant * (1 - squared)))) / slant;
    }

    private static double strays(double[][] rim, SquareSection section, double most) {
        return strays(rim, section::near, 0, most);
    }

    /**
     * How far the points are, in the mean, from a rim in one plane: X·z is from its middle one, and the less of that counts the more the rim runs
     * along the piece there, as it does on a sliver beside a flat.
     *
     * @param depth of the rim, by Y
     * @param lean how much the plane leans, radians
     */
    private static double strays(double[][] rim, DoubleUnaryOperator depth, double lean, double most) {
        double[] places = new double[rim[0].length];
        double[] slants = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            double z = depth.applyAsDouble(rim[1][i]);
            double beside = (depth.applyAsDouble(rim[1][i] + BESIDE) - depth.applyAsDouble(rim[1][i] - BESIDE)) / 2;
            places[i] = rim[0][i] * z + lean * (1 - z);
            slants[i] = Math.hypot(1, rim[0][i] * beside / BESIDE / z);
        }
        double[] sorted = places.clone();
        Arrays.sort(sorted);
        double middle = sorted[sorted.length / 2];
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += Math.min(most, Math.abs(places[i] - middle) / slants[i]);
        }
        return sum / places.length;
    }
}
