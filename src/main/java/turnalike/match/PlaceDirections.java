package turnalike.match;

/**
 * The directions of places round a wheel, cosine and sine. Directions that mirror one another have exactly opposite components, so that
 * like pieces placed against one another cancel to the last bit.
 */
final class PlaceDirections {
    final int places;
    final double[] cos;
    final double[] sin;

    PlaceDirections(int places) {
        this.places = places;
        cos = new double[places];
        sin = new double[places];
        for (int k = 0; k < places; k++) {
            sin[k] = sineOfTurn(4L * k, 4L * places);
            cos[k] = sineOfTurn((4L * k + places) % (4L * places), 4L * places);
        }
    }

    /** sin(2π·part/whole) for 0 ≤ part &lt; whole, whole a multiple of 4, folded into the first eighth of a turn. */
    private static double sineOfTurn(long part, long whole) {
        if (2 * part > whole) {
            return -sineOfTurn(whole - part, whole);
        }
        if (4 * part > whole) {
            return sineOfTurn(whole / 2 - part, whole);
        }
        if (8 * part > whole) {
            return StrictMath.cos(2 * Math.PI * (whole / 4 - part) / whole);
        }
        return StrictMath.sin(2 * Math.PI * part / whole);
    }
}
