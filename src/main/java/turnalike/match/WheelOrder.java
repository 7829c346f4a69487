package turnalike.match;

import java.util.Arrays;

/**
 * One order round the wheel while it is being improved: the piece at each place, the spares, and the moment left over. Its moves keep the
 * set passing.
 */
final class WheelOrder {
    private final double[] massesG;
    private final double[] momentsGMm;
    private final PlaceDirections compass;
    private final SetRule rule;
    private final double givenXGMm;
    private final double givenYGMm;

    final int[] pieceAt;
    final int[] spares;
    double xGMm;
    double yGMm;

    WheelOrder(WheelArrays ring, int[] pieceAt) {
        massesG = ring.massesG();
        momentsGMm = ring.momentsGMm();
        compass = ring.compass();
        rule = ring.rule();
        givenXGMm = ring.givenXGMm();
        givenYGMm = ring.givenYGMm();
        this.pieceAt = pieceAt.clone();
        boolean[] placed = new boolean[massesG.length];
        for (int piece : pieceAt) {
            placed[piece] = true;
        }
        spares = new int[massesG.length - pieceAt.length];
        int filled = 0;
        for (int piece = 0; piece < placed.length; piece++) {
            if (!placed[piece]) {
                spares[filled++] = piece;
            }
        }
        weigh();
    }

    double leftGMm() {
        return Math.sqrt(xGMm * xGMm + yGMm * yGMm);
    }

    /** Sums the moment afresh, so that rounding does not pile up over many moves. */
    void weigh() {
        xGMm = givenXGMm;
        yGMm = givenYGMm;
        for (int place = 0; place < pieceAt.length; place++) {
            xGMm += momentsGMm[pieceAt[place]] * compass.cos[place];
            yGMm += momentsGMm[pieceAt[place]] * compass.sin[place];
        }
    }

    /** Swaps pieces, with one another or with spares, as long as that helps. */
    void descend() {
        boolean moved = true;
        while (moved) {
            moved = swapPlaced();
            moved |= swapSpares();
            weigh();
        }
    }

    private boolean swapPlaced() {
        boolean moved = false;
        for (int i = 0; i < pieceAt.length; i++) {
            int best = -1;
            double bestSquare = (xGMm * xGMm + yGMm * yGMm) * (1 - 1e-9);
            double moment = momentsGMm[pieceAt[i]];
            for (int j = 0; j < pieceAt.length; j++) {
                double change = momentsGMm[pieceAt[j]] - moment;
                double x = xGMm + change * (compass.cos[i] - compass.cos[j]);
                double y = yGMm + change * (compass.sin[i] - compass.sin[j]);
                if (x * x + y * y < bestSquare) {
                    bestSquare = x * x + y * y;
                    best = j;
                }
            }
            if (best >= 0) {
                double change = momentsGMm[pieceAt[best]] - moment;
                xGMm += change * (compass.cos[i] - compass.cos[best]);
                yGMm += change * (compass.sin[i] - compass.sin[best]);
                int held = pieceAt[i];
                pieceAt[i] = pieceAt[best];
                pieceAt[best] = held;
                moved = true;
            }
        }
        return moved;
    }

    private boolean swapSpares() {
        boolean moved = false;
        for (int i = 0; i < pieceAt.length && spares.length > 0; i++) {
            int best = bestSpareFor(i);
            if (best >= 0) {
                double change = momentsGMm[spares[best]] - momentsGMm[pieceAt[i]];
                xGMm += change * compass.cos[i];
                yGMm += change * compass.sin[i];
                int held = pieceAt[i];
                pieceAt[i] = spares[best];
                spares[best] = held;
                moved = true;
            }
        }
        return moved;
    }

    private int bestSpareFor(int place) {
        int best = -1;
        double bestSquare = (xGMm * xGMm + yGMm * yGMm) * (1 - 1e-9);
        double lightestG = Double.POSITIVE_INFINITY;
        double heaviestG = 0;
        double sumG = 0;
        for (int k = 0; k < pieceAt.length; k++) {
            if (k != place) {
                lightestG = Math.min(lightestG, massesG[pieceAt[k]]);
                heaviestG = Math.max(heaviestG, massesG[pieceAt[k]]);
                sumG += massesG[pieceAt[k]];
            }
        }
        for (int j = 0; j < spares.length; j++) {
            double massG = massesG[spares[j]];
            double change = momentsGMm[spares[j]] - momentsGMm[pieceAt[place]];
            double x = xGMm + change * compass.cos[place];
            double y = yGMm + change * compass.sin[place];
            if (x * x + y * y < bestSquare
                    && rule.passes(Math.min(lightestG, massG), Math.max(heaviestG, massG), sumG + massG)) {
                bestSquare = x * x + y * y;
                best = j;
            }
        }
        return best;
    }

    /** Changes up to {@code count} random pieces for random spares, where the set still passes. */
    void exchange(SplitMix64 dice, int count) {
        for (int i = 0; i < count && spares.length > 0; i++) {
            int place = dice.below(pieceAt.length);
            int spare = dice.below(spares.length);
            int held = pieceAt[place];
            pieceAt[place] = spares[spare];
            if (rule.passes(pieceAt)) {
                spares[spare] = held;
            } else {
                pieceAt[place] = held;
            }
        }
        weigh();
    }

    WheelOrder copy() {
        return new WheelOrder(
                new WheelArrays(massesG, momentsGMm, compass, rule, givenXGMm, givenYGMm),
                Arrays.copyOf(
                        pieceAt, pieceAt.length)); // a sum of the searches' own: uneven seats are in the given moment
    }
}
