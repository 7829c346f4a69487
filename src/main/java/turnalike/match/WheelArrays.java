package turnalike.match;

/**
 * A placement on a wheel as bare numbers.
 *
 * @param massesG of all pieces to choose from
 * @param momentsGMm mass × reach of the same pieces
 * @param compass the places
 * @param rule which sets pass
 * @param givenXGMm what the hub and rim add, toward 0°
 * @param givenYGMm and toward 90°
 */
@SuppressWarnings("ArrayRecordComponent") // one problem in hand, never compared
record WheelArrays(
        double[] massesG,
        double[] momentsGMm,
        PlaceDirections compass,
        SetRule rule,
        double givenXGMm,
        double givenYGMm) {
    int places() {
        return compass.places;
    }

    int pieces() {
        return massesG.length;
    }

    /** Whether the wheel may be turned and mirrored without changing anything. */
    boolean free() {
        return givenXGMm == 0 && givenYGMm == 0;
    }

    /** What adding up this ring's moments may get wrong by rounding alone: an unbalance below it is none. */
    double roundingGMm() {
        double sum = Math.abs(givenXGMm) + Math.abs(givenYGMm);
        for (double moment : momentsGMm) {
            sum += moment;
        }
        return (places() + 2) * Math.ulp(sum) * Math.min(1, 1.0 * places() / pieces());
    }

    /** How much is left over by an order, summed afresh, place after place. */
    double leftGMm(int[] pieceAt) {
        return new WheelOrder(this, pieceAt).leftGMm();
    }
}
