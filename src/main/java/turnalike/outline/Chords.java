package turnalike.outline;

import java.util.List;

/**
 * How far a curve of several cubics, end to end, lies off the straight line between two of its own places. Places are in millimetres from
 * the start of the first.
 */
public final class Chords {
    private final List<Polynomial> pieces;
    /** Where each piece starts, and after the last of them where it ends. */
    private final double[] startMm;

    private Chords(List<Polynomial> pieces) {
        this.pieces = List.copyOf(pieces);
        this.startMm = new double[pieces.size() + 1];
        for (int i = 0; i < pieces.size(); i++) {
            startMm[i + 1] = startMm[i] + pieces.get(i).length().mm();
        }
    }

    /**
     * {@return the chords of these pieces}
     *
     * @param pieces in order along the axis, each starting at the radius where the last ends; at least one
     */
    public static Chords of(List<Polynomial> pieces) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("a chord needs a curve, had no pieces");
        }
        return new Chords(pieces);
    }

    /**
     * {@return the radius at a place, in millimetres}
     *
     * @param xMm from the start; outside, the nearer end counts
     */
    public double radiusMm(double xMm) {
        int piece = pieceAt(xMm);
        return pieces.get(piece).radiusMm(xMm - startMm[piece]);
    }

    /**
     * The greatest distance, in radius, between the curve and the straight line from its place {@code fromMm} to its place {@code toMm}.
     * Exact but for rounding: on each piece the difference is a cubic, which is greatest or least at an end or where its derivative, a
     * quadratic, is zero.
     *
     * @param fromMm from the start, not outside the curve
     * @param toMm beyond it, not outside the curve
     * @return in millimetres, not negative; costs one look at each piece between
     */
    public double gapMm(double fromMm, double toMm) {
        if (!(fromMm < toMm)) {
            throw new IllegalArgumentException("a chord goes forwards, was from %s to %s mm".formatted(fromMm, toMm));
        }
        double fromRadius = radiusMm(fromMm);
        double slope = (radiusMm(toMm) - fromRadius) / (toMm - fromMm);
        double most = 0;
        for (int i = pieceAt(fromMm); i < pieces.size() && startMm[i] < toMm; i++) {
            double atPieceStart = fromRadius + slope * (startMm[i] - fromMm);
            double first = Math.max(0, fromMm - startMm[i]);
            double last = Math.min(pieces.get(i).length().mm(), toMm - startMm[i]);
            most = Math.max(most, pieces.get(i).furthestMm(first, last, atPieceStart, slope));
        }
        return most;
    }

    private int pieceAt(double xMm) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (startMm[middle] <= xMm) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
