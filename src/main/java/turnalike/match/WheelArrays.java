package turnalike.match;

import java.util.Arrays;

/**
 * A placement on a wheel as bare numbers. Where the seats differ in depth, a piece's moment depends on its place: the searches then work
 * with the mean seat and the mean mass, and what that leaves out is added by {@link #trueGMm}.
 *
 * @param massesG of all pieces to choose from
 * @param momentsGMm mass × reach of the same pieces, in a seat of the mean depth
 * @param compass the places
 * @param rule which sets pass
 * @param givenXGMm what the hub and rim add, toward 0°, and what a piece of the mean mass adds where seats are not of the mean depth
 * @param givenYGMm and toward 90°
 * @param unevenMm how much deeper than the mean each place's seat lies; empty when all lie alike
 * @param meanMassG the mass that {@code givenXGMm} and {@code givenYGMm} count the uneven seats with
 */
@SuppressWarnings("ArrayRecordComponent") // one problem in hand, never compared
record WheelArrays(
        double[] massesG,
        double[] momentsGMm,
        PlaceDirections compass,
        SetRule rule,
        double givenXGMm,
        double givenYGMm,
        double[] unevenMm,
        double meanMassG) {
    /** Seats all alike. */
    WheelArrays(
            double[] massesG,
            double[] momentsGMm,
            PlaceDirections compass,
            SetRule rule,
            double givenXGMm,
            double givenYGMm) {
        this(massesG, momentsGMm, compass, rule, givenXGMm, givenYGMm, new double[0], 0);
    }

    int places() {
        return compass.places;
    }

    int pieces() {
        return massesG.length;
    }

    /** Whether the wheel may be turned and mirrored without changing anything. */
    boolean free() {
        return givenXGMm == 0 && givenYGMm == 0 && unevenMm.length == 0;
    }

    /** What adding up this ring's moments may get wrong by rounding alone: an unbalance below it is none. */
    double roundingGMm() {
        double sum = Math.abs(givenXGMm) + Math.abs(givenYGMm);
        for (double moment : momentsGMm) {
            sum += moment;
        }
        return (places() + 2) * Math.ulp(sum) * Math.min(1, 1.0 * places() / pieces());
    }

    /** How much is left over by an order, summed afresh, place after place, each piece in its own seat. */
    double leftGMm(int[] pieceAt) {
        double[] left = trueGMm(pieceAt);
        return Math.sqrt(left[0] * left[0] + left[1] * left[1]);
    }

    /** The moment left over, toward 0° and toward 90°, each piece in its own seat. */
    double[] trueGMm(int[] pieceAt) {
        WheelOrder order = new WheelOrder(this, pieceAt);
        double[] left = {order.xGMm, order.yGMm};
        for (int place = 0; place < unevenMm.length; place++) {
            double moreGMm = (massesG[pieceAt[place]] - meanMassG) * unevenMm[place];
            left[0] -= moreGMm * compass.cos[place];
            left[1] -= moreGMm * compass.sin[place];
        }
        return left;
    }

    /** The most by which the searches' own sum can miss the true one, whichever pieces stand where; 0 with seats alike. */
    double missGMm() {
        double[] offG = Arrays.stream(massesG)
                .map(g -> Math.abs(g - meanMassG))
                .sorted()
                .toArray();
        double[] mm = Arrays.stream(unevenMm).map(Math::abs).sorted().toArray();
        double miss = 0;
        for (int i = 0; i < mm.length; i++) {
            miss += mm[mm.length - 1 - i]
                    * offG[offG.length - 1 - i]; // the heaviest in the deepest: no order adds more
        }
        return miss * (1 + 1e-12);
    }
}
