package turnalike.photo;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a square stands about the axis, by the rim of the piece's end that it is. Along the rim X·z is one and the same, where z is the depth at which the ray
 * enters the section; so of all turns that one counts with which the rim's points agree best on it. A flat that is turned by two degrees from the camera
 * slants there by half a pixel, where its neighbour is a sliver that no light tells.
 *
 * @param arris where its nearest arris stands, as a {@link SquareSection} has it
 * @param pixels by how much the rim's points stray from it, in the mean
 */
record EndTurn(double arris, double pixels) {
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
        return Optional.of(new EndTurn(wrapped(arris(best) + within * STEP), strays[best]));
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
                : Optional.of(new EndTurn(wrapped(arris + share * apart), Math.max(pixels, other.pixels)));
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

    /** How far X·z is from its middle one, in the mean. */
    private static double strays(double[][] rim, SquareSection section, double most) {
        double[] places = new double[rim[0].length];
        for (int i = 0; i < places.length; i++) {
            places[i] = rim[0][i] * section.near(rim[1][i]);
        }
        double[] sorted = places.clone();
        Arrays.sort(sorted);
        double middle = sorted[sorted.length / 2];
        double sum = 0;
        for (double place : places) {
            sum += Math.min(most, Math.abs(place - middle));
        }
        return sum / places.length;
    }
}
